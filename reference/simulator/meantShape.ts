import { type BentLine, type Spot, settle, walk } from './bentLine.ts';
import type { Chance } from './chance.ts';

/** One half of an outline as its maker meant it, on the side of x > 0, from the lower to the upper end. */
export interface MeantShape {
  readonly lengthMm: number;
  readonly half: readonly Spot[];
  /** The four ends of the two corner edges: lower corner from below, upper corner from below. */
  readonly tips: readonly [Spot, Spot, Spot, Spot];
  readonly widths: { readonly lowerMm: number; readonly waistMm: number; readonly upperMm: number };
}

const DEGREE = Math.PI / 180;

/**
 * A violin's outline drawn by chance. Sizes range as the measured violins of `data/measured-instruments.csv` do; how the
 * line bends between them is a habit of ours, varied, and flows everywhere.
 */
export function drawMeantShape(chance: Chance): MeantShape {
  const lengthMm = chance.between(350, 360);
  const scale = lengthMm / 355;
  const lower = scale * chance.between(200, 209);
  const upper = scale * chance.between(161, 170);
  const waist = scale * chance.between(106, 114);
  const lowerTip = {
    x: (lower / 2) * chance.between(0.885, 0.9),
    y: lengthMm * chance.between(0.402, 0.417),
  };
  const upperTip = {
    x: (upper / 2) * chance.between(0.952, 0.972),
    y: lengthMm * chance.between(0.649, 0.664),
  };
  const bout = (sizes: readonly number[]) => sizes.map((one) => one * Math.exp(0.06 * chance.normal()));
  const lowerBout = settledBout(
    bout([206, 71.5, 72.4, 133, 22.3]),
    [13.4, 50.4, 96.6, 115, 59.5],
    lower / 2,
    lowerTip,
    0.213 * lengthMm * chance.between(0.98, 1.02),
    chance.between(4, 9),
  );
  const fromTop = { x: upperTip.x, y: lengthMm - upperTip.y };
  const upperBout = settledBout(
    bout([128, 63.5, 66.2, 151, 21.4]),
    [17.3, 51.5, 96, 107.2, 53.6],
    upper / 2,
    fromTop,
    0.19 * lengthMm * chance.between(0.98, 1.02),
    chance.between(4, 9),
  ).map(({ x, y }) => ({ x, y: lengthMm - y }));
  const end = (from: Spot, degrees: number, wide: number) => ({
    x: from.x + wide * Math.cos(degrees * DEGREE),
    y: from.y + wide * Math.sin(degrees * DEGREE),
  });
  const lowTop = end(lowerTip, 114 + 3 * chance.normal(), chance.between(6.2, 7.4));
  const highLow = end(upperTip, 68 + 180 + 3 * chance.normal(), chance.between(6.3, 7.5));
  const middle = settledWaist(lowTop, highLow, waist / 2, scale, chance);
  return {
    lengthMm,
    half: [...lowerBout, ...middle, ...upperBout.reverse()],
    tips: [lowerTip, lowTop, highLow, upperTip],
    widths: { lowerMm: lower, waistMm: waist, upperMm: upper },
  };
}

function settledBout(
  radii: readonly number[],
  headings: readonly number[],
  halfWidth: number,
  tip: Spot,
  widestAt: number,
  flowMm: number,
): Spot[] {
  const turns = headings.map(
    (heading, i) => (heading - (i === 0 ? 0 : (headings[i - 1] as number))) * DEGREE,
  );
  const line = (of: readonly number[]): BentLine => ({
    start: { x: 0, y: 0 },
    headingRad: 0,
    flowMm,
    stretches: stretchesOf(radii, turns, of),
  });
  const found = settle(new Array<number>(10).fill(0), (of) => {
    const spots = walk(line(of));
    const last = spots.at(-1) as Spot;
    const widest = extreme(spots, 1);
    return [last.x - tip.x, last.y - tip.y, widest.x - halfWidth, 0.3 * (widest.y - widestAt)];
  });
  return walk(line(found));
}

/** Stretches of one bend each, mm and radians; `of` holds, as logarithms, how much longer each is than usual, then how much more bent. */
function stretchesOf(
  radii: readonly number[],
  turns: readonly number[],
  of: readonly number[],
): BentLine['stretches'] {
  return radii.map((radius, i) => ({
    lengthMm: Math.abs(turns[i] as number) * radius * Math.exp(of[i] as number),
    bend: (Math.sign(turns[i] as number) / radius) * Math.exp(of[radii.length + i] as number),
  }));
}

function settledWaist(from: Spot, to: Spot, halfWaist: number, scale: number, chance: Chance): Spot[] {
  const radii = [18.8, 89, 14.7].map((one) => one * scale * Math.exp(0.05 * chance.normal()));
  const turns = [-90, -36.8, -104].map((one) => one * DEGREE);
  const flowMm = chance.between(3, 6);
  const heading = (205.3 + 3 * chance.normal()) * DEGREE;
  const line = (of: readonly number[]): BentLine => ({
    start: from,
    headingRad: heading + (of[6] as number),
    flowMm,
    stretches: stretchesOf(radii, turns, of),
  });
  const found = settle(new Array<number>(7).fill(0), (of) => {
    const spots = walk(line(of));
    const last = spots.at(-1) as Spot;
    return [last.x - to.x, last.y - to.y, extreme(spots, -1).x - halfWaist];
  });
  return walk(line(found));
}

/** The spot furthest to the right (or left), between the drawn places by a parabola. */
function extreme(spots: readonly Spot[], way: 1 | -1): Spot {
  let best = 1;
  for (let i = 1; i + 1 < spots.length; i++)
    if (way * (spots[i] as Spot).x > way * (spots[best] as Spot).x) best = i;
  const [a, b, c] = [spots[best - 1], spots[best], spots[best + 1]] as [Spot, Spot, Spot];
  const bend = a.x - 2 * b.x + c.x;
  const share = bend === 0 ? 0 : Math.max(-1, Math.min(1, (a.x - c.x) / (2 * bend)));
  return { x: b.x - ((a.x - c.x) * share) / 4, y: b.y + (share * (c.y - a.y)) / 2 };
}

/** The whole outline anticlockwise from the lower end: the half, then its mirror image. */
export function wholeOf(right: readonly Spot[], left: readonly Spot[]): Spot[] {
  return [...right, ...left.slice(1, -1).reverse()];
}
