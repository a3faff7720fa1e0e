/** Where the instrument stands in the drawing: its upper end, its centre line, and how many pixels a millimetre has. */
export interface SheetPlace {
  readonly centreX: number;
  readonly topY: number;
  readonly pxPerMm: number;
  /** No room for notes beside it: a phone. */
  readonly isNarrow: boolean;
}

/** px. Above and below the instrument; a narrow sheet has less. */
const ABOVE = 64;
const BELOW = 94;
const NARROW = 700;

/** The instrument at true proportions, from top to bottom of its room, `centreShare` of the way across. */
export function sheetPlace(
  size: { readonly width: number; readonly height: number },
  lengthMm: number,
  widthMm: number,
  centreShare: number,
): SheetPlace {
  const isNarrow = size.width < NARROW;
  const above = isNarrow ? 24 : ABOVE;
  const below = isNarrow ? 30 : BELOW;
  const tall = (size.height - above - below) / lengthMm;
  const wide = (size.width * (isNarrow ? 0.6 : 0.56)) / widthMm;
  const pxPerMm = Math.max(0.1, Math.min(tall, wide));
  const topY = above + (size.height - above - below - pxPerMm * lengthMm) / 2;
  return { centreX: size.width * centreShare, topY, pxPerMm, isNarrow };
}
