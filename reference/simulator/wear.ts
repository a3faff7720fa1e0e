import type { Spot } from './bentLine.ts';
import { type Chance, slowWave } from './chance.ts';
import type { MeantShape } from './meantShape.ts';

export type Side = 'right' | 'left';

/** A place where wood is gone: deepest at `at`, on the outline as meant. */
export interface Loss {
  readonly side: Side;
  readonly at: Spot;
  readonly depthMm: number;
  readonly extentMm: number;
}

/** Both halves as they are today, as the camera sees them with the neck up, each from the lower to the upper end. */
export interface WornShape {
  readonly right: readonly Spot[];
  readonly left: readonly Spot[];
  readonly losses: readonly Loss[];
  /** How far the corner tips are rubbed down: right lower, right upper, left lower, left upper. */
  readonly tipLossesMm: readonly number[];
  readonly leanMm: number;
}

/** How worn an instrument may be. */
export interface WearHabit {
  readonly mostLosses: number;
  readonly deepestMm: number;
  readonly generalMm: number;
  readonly mostTipMm: number;
}

export const WORN: WearHabit = { mostLosses: 6, deepestMm: 1.5, generalMm: 0.06, mostTipMm: 1.6 };

/** mm. No single loss lies nearer to a corner tip than this; tips wear by themselves. */
const TIP_PEACE_MM = 14;

/** Wear by chance: a slow lean that no turning or shifting explains, rubbing all round, single losses, rounded tips. */
export function wearDown(shape: MeantShape, habit: WearHabit, chance: Chance): WornShape {
  const leanMm = chance.between(0.1, 0.3);
  const lean = drawLean(shape, leanMm, chance);
  const losses: Loss[] = [];
  const worn = (['right', 'left'] as const).map((side) => ({
    side,
    rub: rubbing(shape, habit.generalMm, chance),
  }));
  const count = chance.whole(0, habit.mostLosses);
  const arcs = lengthsAlong(shape.half);
  for (let i = 0; i < count; i++) {
    const loss = drawLoss(shape, habit, chance);
    if (
      losses.every(
        (other) =>
          other.side !== loss.side || apart(other.at, loss.at) > (other.extentMm + loss.extentMm) / 2 + 3,
      )
    )
      losses.push(loss);
  }
  const tipLossesMm = [0, 1, 2, 3].map(() => chance.between(0.15, habit.mostTipMm));
  const [right, left] = worn.map(({ side, rub }, index) => {
    const sign = side === 'right' ? 1 : -1;
    const rubbed = insideBy(shape.half, (i) => rub(i) + lossAt(losses, side, shape.half, arcs, i));
    const tipped = [0, 1].reduce<readonly Spot[]>(
      (spots, corner) => roundTip(spots, shape, corner, tipLossesMm[2 * index + corner] as number),
      rubbed,
    );
    return tipped.map(({ x, y }) => ({ x: sign * x + lean(y), y }));
  }) as [Spot[], Spot[]];
  return {
    right,
    left,
    losses: losses.map((one) => ({
      ...one,
      at: { x: one.side === 'right' ? one.at.x : -one.at.x, y: one.at.y },
    })),
    tipLossesMm,
    leanMm,
  };
}

function apart(a: Spot, b: Spot): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Sideways bend of the body by height, free of what a shift or a turn of the axis would do to the outline. */
function drawLean({ half, lengthMm }: MeantShape, sizeMm: number, chance: Chance): (y: number) => number {
  const wave = slowWave(chance, 3);
  const raw = (y: number) => wave(y / lengthMm);
  const high = (y: number) => y - lengthMm / 2;
  const sums = { shift: [0, 0, 0], turn: [0, 0, 0] };
  for (let i = 1; i < half.length; i++) {
    const [a, b] = [half[i - 1], half[i]] as [Spot, Spot];
    const step = Math.max(apart(a, b), 1e-9);
    const [nx, ny] = [(b.y - a.y) / step, (a.x - b.x) / step];
    const turn = nx * high(b.y) - ny * b.x;
    [1, high(b.y), raw(b.y)].forEach((size, k) => {
      sums.shift[k] = (sums.shift[k] as number) + nx * nx * size * step;
      sums.turn[k] = (sums.turn[k] as number) + turn * nx * size * step;
    });
  }
  const [s0, s1, s2] = sums.shift as [number, number, number];
  const [t0, t1, t2] = sums.turn as [number, number, number];
  const det = s0 * t1 - s1 * t0;
  const shift = (s2 * t1 - s1 * t2) / det;
  const turn = (s0 * t2 - s2 * t0) / det;
  const plain = (y: number) => raw(y) - shift - turn * high(y);
  let most = 0;
  for (let y = 0; y <= lengthMm; y += 2) most = Math.max(most, Math.abs(plain(y)));
  return (y) => (sizeMm * plain(y)) / most;
}

function rubbing({ half }: MeantShape, sizeMm: number, chance: Chance): (index: number) => number {
  const slow = slowWave(chance, 5);
  const quick = slowWave(chance, 24);
  return (index) =>
    Math.max(0, sizeMm * (1 + 0.5 * slow(index / half.length)) + 0.012 * quick(index / half.length));
}

function drawLoss(shape: MeantShape, habit: WearHabit, chance: Chance): Loss {
  for (;;) {
    const at = shape.half[chance.whole(20, shape.half.length - 21)] as Spot;
    const extentMm = chance.between(10, 40);
    if (shape.tips.some((tip) => apart(tip, at) < TIP_PEACE_MM + extentMm / 2)) continue;
    return {
      side: chance.isHappening(0.5) ? 'right' : 'left',
      at,
      depthMm: chance.between(0.4, habit.deepestMm),
      extentMm,
    };
  }
}

function lossAt(
  losses: readonly Loss[],
  side: Side,
  half: readonly Spot[],
  arcs: readonly number[],
  index: number,
): number {
  return losses.reduce((sum, loss) => {
    if (loss.side !== side) return sum;
    const middle = arcs[half.indexOf(loss.at)] as number;
    const share = Math.abs((arcs[index] as number) - middle) / (loss.extentMm / 2);
    return share >= 1 ? sum : sum + loss.depthMm * (1 - share * share) ** 1.5;
  }, 0);
}

function lengthsAlong(spots: readonly Spot[]): number[] {
  const arcs = [0];
  for (let i = 1; i < spots.length; i++)
    arcs.push((arcs[i - 1] as number) + apart(spots[i - 1] as Spot, spots[i] as Spot));
  return arcs;
}

/** Every place moved in along its own normal. */
function insideBy(half: readonly Spot[], depthMm: (index: number) => number): Spot[] {
  return half.map((spot, i) => {
    const before = half[Math.max(0, i - 1)] as Spot;
    const after = half[Math.min(half.length - 1, i + 1)] as Spot;
    const long = Math.max(apart(before, after), 1e-9);
    const depth = depthMm(i);
    const level = i === 0 || i === half.length - 1;
    return {
      x: level ? 0 : spot.x - (depth * (after.y - before.y)) / long,
      y: level ? spot.y + (i === 0 ? depth : -depth) : spot.y + (depth * (after.x - before.x)) / long,
    };
  });
}

/** A corner rubbed down from its end by so much, softly: what stands further out than that is gone. */
function roundTip(spots: readonly Spot[], { tips }: MeantShape, corner: number, depthMm: number): Spot[] {
  const [one, other] = [tips[2 * corner], tips[2 * corner + 1]] as [Spot, Spot];
  const middle = { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 };
  const wide = apart(one, other);
  const [ux, uy] = [(other.y - one.y) / wide, (one.x - other.x) / wide];
  const softMm = 0.25;
  return spots.map((spot) => {
    if (apart(spot, middle) > 9) return spot;
    const out = (spot.x - middle.x) * ux + (spot.y - middle.y) * uy + depthMm;
    const cut = out > 8 ? out : softMm * Math.log1p(Math.exp(out / softMm));
    return { x: spot.x - cut * ux, y: spot.y - cut * uy };
  });
}
