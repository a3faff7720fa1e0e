import { isLifeSize, screenPxPerMm } from './lifeSize.ts';

/** Where the instrument stands in the drawing: its upper end, its centre line, and how many pixels a millimetre has. */
export interface SheetPlace {
  readonly centreX: number;
  readonly topY: number;
  readonly pxPerMm: number;
  /** Of the whole drawing; larger than its room at life size. */
  readonly width: number;
  readonly height: number;
  /** No room for notes beside it: a phone. */
  readonly isNarrow: boolean;
}

/** px. Above and below the instrument; a narrow sheet has less. */
const ABOVE = 64;
const BELOW = 94;
const NARROW = 700;
/** px beside the instrument at life size: for dimensions on one side, for notes on the other. */
const BESIDE = 210;

/** The instrument at true proportions, from top to bottom of its room, `centreShare` of the way across. */
export function sheetPlace(
  size: { readonly width: number; readonly height: number },
  lengthMm: number,
  widthMm: number,
  centreShare: number,
): SheetPlace {
  const isNarrow = size.width < NARROW;
  const screen = screenPxPerMm.value;
  if (isLifeSize.value && screen !== null) {
    const centreX = (widthMm / 2) * screen + BESIDE;
    const width = Math.max(size.width, centreX + (widthMm / 2) * screen + BESIDE);
    const height = ABOVE + BELOW + lengthMm * screen;
    return { centreX, topY: ABOVE, pxPerMm: screen, isNarrow, width, height };
  }
  const above = isNarrow ? 24 : ABOVE;
  const below = isNarrow ? 30 : BELOW;
  const tall = (size.height - above - below) / lengthMm;
  const wide = (size.width * (isNarrow ? 0.6 : 0.56)) / widthMm;
  const pxPerMm = Math.max(0.1, Math.min(tall, wide));
  const topY = above + (size.height - above - below - pxPerMm * lengthMm) / 2;
  return { centreX: size.width * centreShare, topY, pxPerMm, isNarrow, ...size };
}
