/** A height that was measured inside the channel, folded onto one half: across from the centre line, along the body, over the channel. */
export interface FoldedHeight {
  readonly x: number;
  readonly y: number;
  readonly zMm: number;
}

/** Heights that make a whole section across, all at one y. */
export interface WholeSection {
  readonly yMm: number;
  readonly heights: readonly FoldedHeight[];
}

/** Fewer heights show no shape. */
const FEWEST = 8;

/** Share of the body length, 0.5 mm on a violin: what lies nearer is at one place of the body, or on the centre line. */
const TOGETHER_SHARE = 0.5 / 355;

/** Shares of the half width that a section must reach from and to, and the widest gap in it. */
const ACROSS = { from: 0.15, to: 0.8, gap: 0.2 } as const;

/** Shares of the channel's length within which a reading along the centre line must begin and end, and the widest gap in it. */
const ALONG = { ends: 0.1, gap: 0.08 } as const;

/** Of heights anywhere on a plate those that make whole sections, from the lower end up. */
export function wholeSections(
  heights: readonly FoldedHeight[],
  bodyLengthMm: number,
  halfWidthAt: (yMm: number) => number,
): readonly WholeSection[] {
  const together = TOGETHER_SHARE * bodyLengthMm;
  const groups: FoldedHeight[][] = [];
  for (const height of heights.toSorted((a, b) => a.y - b.y)) {
    const group = groups.at(-1);
    if (group?.[0] && height.y - group[0].y <= together) group.push(height);
    else groups.push([height]);
  }
  return groups.flatMap((group): readonly WholeSection[] => {
    const yMm = group.reduce((sum, { y }) => sum + y, 0) / group.length;
    const half = halfWidthAt(yMm);
    const shares = group.map(({ x }) => x / half);
    const isWhole = covers(shares, { from: ACROSS.from, to: ACROSS.to, gap: ACROSS.gap });
    return isWhole ? [{ yMm, heights: group }] : [];
  });
}

/** The heights along the centre line where they make a whole reading of it; else none. */
export function wholeLongReading(
  heights: readonly FoldedHeight[],
  bodyLengthMm: number,
  channel: { readonly startMm: number; readonly endMm: number },
): readonly FoldedHeight[] {
  const onLine = heights.filter(({ x }) => x <= TOGETHER_SHARE * bodyLengthMm);
  const length = channel.endMm - channel.startMm;
  const shares = onLine.map(({ y }) => (y - channel.startMm) / length);
  return covers(shares, { from: ALONG.ends, to: 1 - ALONG.ends, gap: ALONG.gap }) ? onLine : [];
}

/** Whether places reach from one share to another without a wider gap. */
function covers(places: readonly number[], reach: { from: number; to: number; gap: number }): boolean {
  if (places.length < FEWEST) return false;
  const sorted = places.toSorted((a, b) => a - b);
  const isClose = sorted.every((at, index) => at - (sorted[index - 1] ?? at) <= reach.gap);
  return isClose && (sorted[0] as number) <= reach.from && (sorted.at(-1) as number) >= reach.to;
}
