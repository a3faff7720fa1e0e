// Worn violins whose unworn outline is known: cubic splines through bent places of a violin-sized outline, so no chain
// of arcs and nothing that the code under test drew.

import { sampleChain } from '../../src/core/curve/index.ts';
import { violinHalf } from '../../test/fixtures/violinHalf.ts';
import { normalOf, randomOf } from './mirrorAxisBodies.ts';

type Section = 'lowerBout' | 'lowerCorner' | 'cBout' | 'upperCorner' | 'upperBout';

export interface TruePlace {
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
  readonly section: Section;
  readonly alongMm: number;
}

export interface MadeSpot {
  readonly x: number;
  readonly y: number;
  readonly section: Section;
  readonly alongMm: number;
  readonly seen: boolean;
  readonly sigmaMm: number;
}

export interface ViolinMaking {
  readonly seed: number;
  readonly noiseMm: number;
  /** Root mean square by which the outline departs from the arcs that it was bent from. */
  readonly bentMm: number;
  /** Largest half difference of the halves, slow. */
  readonly leanMm: number;
  /** Local losses a side, and the deepest. */
  readonly losses: number;
  readonly deepestMm: number;
  /** Wood lost at the tips of both corners, each side, mm. */
  readonly tips: { readonly left: number; readonly right: number };
  /** What is rubbed off all round in the mean, half as much more or less along either half; none where left out. */
  readonly rubbedMm?: number;
  /** A loss on both halves at the same place. */
  readonly bothWorn?: { readonly alongMm: number; readonly reachMm: number; readonly depthMm: number };
}

export interface MadeViolin {
  readonly truth: readonly TruePlace[];
  /** True tips of the corner ends: bout side and waist side. */
  readonly tips: Readonly<
    Record<'lower' | 'upper', readonly [{ x: number; y: number }, { x: number; y: number }]>
  >;
  readonly edge: { readonly left: readonly MadeSpot[]; readonly right: readonly MadeSpot[] };
  readonly purfling: Readonly<Record<'left' | 'right', readonly { x: number; y: number; sigmaMm: number }[]>>;
  readonly start: { readonly through: { x: number; y: number }; readonly headingRad: number };
  readonly losses: readonly {
    readonly side: 'left' | 'right';
    readonly alongMm: number;
    readonly reachMm: number;
    readonly depthMm: number;
  }[];
}

const PURFLING_MM = 4.1;
/** mm from the centre line hidden at the lower and the upper end. */
const HIDDEN_MM = { lower: 6, upper: 22 };

export function makeViolin(making: ViolinMaking): MadeViolin {
  const random = randomOf(making.seed + 77);
  for (let i = 0; i < 5; i++) random();
  const { truth, tips } = trueHalf(random, making.bentMm);
  const whole = truth[truth.length - 1].alongMm;
  const losses = lossesApart(random, making, whole);
  const lean = [0, 1, 2].map(() => normalOf(random) / 2);
  const turn = Math.PI / 2 + 0.2 * (random() - 0.5);
  const at = { x: 30 + 10 * random(), y: 20 + 10 * random() };
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const laid = (x: number, y: number) => ({ x: at.x + s * x + c * y, y: at.y - c * x + s * y });
  const leanAt = (along: number) =>
    making.leanMm *
    lean.reduce((sum, size, k) => sum + size * Math.cos((Math.PI * (k + 1) * along) / whole), 0);
  const tipsOf = (section: Section) => truth.filter((place) => place.section === section);
  const [lowerEnd, upperEnd] = [tipsOf('lowerCorner'), tipsOf('upperCorner')];
  const half = (side: 'left' | 'right') => {
    const sign = side === 'right' ? 1 : -1;
    let noise = 0;
    return truth.map((place) => {
      // Neighbouring places err together, as they do when an edge is averaged along itself.
      noise = 0.6 * noise + 0.8 * normalOf(random);
      const local = losses
        .filter((loss) => loss.side === side && Math.abs(loss.alongMm - place.alongMm) < loss.reachMm)
        .reduce(
          (sum, loss) =>
            sum +
            loss.depthMm * Math.cos((Math.PI * (place.alongMm - loss.alongMm)) / (2 * loss.reachMm)) ** 2,
          0,
        );
      const both = making.bothWorn;
      const joint =
        both && Math.abs(both.alongMm - place.alongMm) < both.reachMm
          ? both.depthMm * Math.cos((Math.PI * (place.alongMm - both.alongMm)) / (2 * both.reachMm)) ** 2
          : 0;
      const rubbed =
        (making.rubbedMm ?? 0) *
        (1 + 0.5 * Math.sin((2 * Math.PI * place.alongMm) / whole + making.seed + sign));
      const off = making.noiseMm * noise - local - joint - rubbed + sign * leanAt(place.alongMm);
      const worn = wornTip(place, making.tips[side], lowerEnd, upperEnd);
      const x = sign * (worn.x + off * place.normalX);
      const y = worn.y + off * place.normalY;
      return {
        ...laid(x, y),
        section: place.section,
        alongMm: place.alongMm,
        seen: place.x > (place.y < 177 ? HIDDEN_MM.lower : HIDDEN_MM.upper),
        sigmaMm: making.noiseMm,
      };
    });
  };
  const purfling = (side: 'left' | 'right') => {
    const sign = side === 'right' ? 1 : -1;
    return truth
      .filter((place) => !place.section.endsWith('Corner') && place.x > 25)
      .map((place) => {
        const off = -PURFLING_MM + 0.04 * normalOf(random) + sign * leanAt(place.alongMm);
        return {
          ...laid(sign * (place.x + off * place.normalX), place.y + off * place.normalY),
          sigmaMm: 0.05,
        };
      });
  };
  return {
    truth,
    tips,
    edge: { left: half('left'), right: half('right') },
    purfling: { left: purfling('left'), right: purfling('right') },
    start: { through: laid(0.7, -0.4), headingRad: turn + 0.006 },
    losses,
  };
}

/** A corner worn back along itself: everything beyond a line across it is brought back to that line. */
function wornTip(
  place: TruePlace,
  lostMm: number,
  lowerEnd: readonly TruePlace[],
  upperEnd: readonly TruePlace[],
): { x: number; y: number } {
  let { x, y } = place;
  for (const end of [lowerEnd, upperEnd]) {
    const [a, b] = [end[0], end[end.length - 1]];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const size = Math.hypot(dx, dy);
    const [outX, outY] = [dy / size, -dx / size];
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    if (Math.hypot(x - middle.x, y - middle.y) > 15) continue;
    // Out of square to the end is out of the corner.
    const beyond = (x - middle.x) * outX + (y - middle.y) * outY + lostMm;
    if (beyond > 0 && lostMm > 0) {
      x -= beyond * outX;
      y -= beyond * outY;
    }
  }
  return { x, y };
}

/** Local losses on both halves, none opposite another: what both halves lost, neither can tell. */
function lossesApart(random: () => number, making: ViolinMaking, wholeMm: number): MadeViolin['losses'] {
  const losses: MadeViolin['losses'][number][] = [];
  for (const side of ['left', 'right'] as const) {
    for (let left = making.losses, tries = 0; left > 0 && tries < 200; tries++) {
      const loss = {
        side,
        alongMm: wholeMm * (0.06 + 0.88 * random()),
        reachMm: 5 + 15 * random(),
        depthMm: making.deepestMm * (0.3 + 0.7 * random()),
      };
      const meets = losses.some(
        ({ alongMm, reachMm }) => Math.abs(alongMm - loss.alongMm) < reachMm + loss.reachMm + 5,
      );
      if (meets) continue;
      losses.push(loss);
      left--;
    }
  }
  return losses;
}

function trueHalf(random: () => number, bentMm: number): Pick<MadeViolin, 'truth' | 'tips'> {
  const { lowerBout, cBout, upperBout } = violinHalf();
  const waves = [90, 55, 140, 35].map((lengthMm) => ({
    lengthMm,
    size: normalOf(random),
    phase: 2 * Math.PI * random(),
  }));
  const scale = bentMm / Math.sqrt(waves.reduce((sum, { size }) => sum + (size * size) / 2, 0));
  let start = 0;
  const sections = [lowerBout, cBout, upperBout].map((chain, index) => {
    const fine = sampleChain(chain, 0.0005);
    const along = [0];
    for (let i = 1; i < fine.length; i++)
      along.push(along[i - 1] + Math.hypot(fine[i].x - fine[i - 1].x, fine[i].y - fine[i - 1].y));
    const total = along[along.length - 1];
    const count = Math.max(8, Math.round(total / 9));
    const knots = Array.from({ length: count + 1 }, (_, k) => {
      const target = (total * k) / count;
      let i = 0;
      while (i < along.length - 2 && along[i + 1] < target) i++;
      const share = (target - along[i]) / (along[i + 1] - along[i]);
      const [dx, dy] = [fine[i + 1].x - fine[i].x, fine[i + 1].y - fine[i].y];
      const size = Math.hypot(dx, dy);
      // Bent less near the ends of the body, where the outline stays level.
      const atCentre = Math.min(
        1,
        Math.max(0, (index === 0 ? target : index === 2 ? total - target : 99) / 40),
      );
      const bent =
        atCentre *
        waves.reduce(
          (sum, wave) =>
            sum + scale * wave.size * Math.sin((2 * Math.PI * (start + target)) / wave.lengthMm + wave.phase),
          0,
        );
      return {
        x: fine[i].x + share * dx + (bent * dy) / size,
        y: fine[i].y + share * dy - (bent * dx) / size,
      };
    });
    start += total;
    const heading = (a: { x: number; y: number }, b: { x: number; y: number }) => {
      const size = Math.hypot(b.x - a.x, b.y - a.y);
      return { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
    };
    return splineThrough(
      knots,
      heading(fine[0], fine[1]),
      heading(fine[fine.length - 2], fine[fine.length - 1]),
    );
  });
  const line = (a: { x: number; y: number }, b: { x: number; y: number }) =>
    Array.from({ length: 51 }, (_, i) => ({
      x: a.x + ((b.x - a.x) * i) / 50,
      y: a.y + ((b.y - a.y) * i) / 50,
    }));
  const [lower, waist, upper] = sections;
  const pieces: readonly (readonly [Section, readonly { x: number; y: number }[], number])[] = [
    ['lowerBout', lower, 1],
    ['lowerCorner', line(lower[lower.length - 1], waist[0]), 0.5],
    ['cBout', waist, 1],
    ['upperCorner', line(waist[waist.length - 1], upper[0]), 0.5],
    ['upperBout', upper, 1],
  ];
  let from = 0;
  const truth = pieces.flatMap(([section, fine, step]) => {
    const found: TruePlace[] = [];
    let walked = 0;
    let next = 0;
    for (let i = 0; i + 1 < fine.length; i++) {
      const [dx, dy] = [fine[i + 1].x - fine[i].x, fine[i + 1].y - fine[i].y];
      const size = Math.hypot(dx, dy);
      for (; next <= walked + size; next += step) {
        const share = (next - walked) / size;
        found.push({
          x: fine[i].x + share * dx,
          y: fine[i].y + share * dy,
          normalX: dy / size,
          normalY: -dx / size,
          section,
          alongMm: from + next,
        });
      }
      walked += size;
    }
    from += walked + 0.001;
    return found;
  });
  const [first, last] = [0, waist.length - 1];
  return {
    truth,
    tips: { lower: [lower[lower.length - 1], waist[first]], upper: [upper[0], waist[last]] },
  };
}

/** A cubic spline through knots that starts and ends in given directions, finely sampled. */
function splineThrough(
  knots: readonly { x: number; y: number }[],
  start: { x: number; y: number },
  end: { x: number; y: number },
): { x: number; y: number }[] {
  const t = [0];
  for (let i = 1; i < knots.length; i++)
    t.push(t[i - 1] + Math.hypot(knots[i].x - knots[i - 1].x, knots[i].y - knots[i - 1].y));
  const xs = secondSlopes(
    t,
    knots.map((k) => k.x),
    start.x,
    end.x,
  );
  const ys = secondSlopes(
    t,
    knots.map((k) => k.y),
    start.y,
    end.y,
  );
  const value = (v: readonly number[], m: readonly number[], i: number, u: number) => {
    const h = t[i + 1] - t[i];
    const [a, b] = [1 - u, u];
    return a * v[i] + b * v[i + 1] + (((a ** 3 - a) * m[i] + (b ** 3 - b) * m[i + 1]) * (h * h)) / 6;
  };
  const places: { x: number; y: number }[] = [];
  for (let i = 0; i + 1 < knots.length; i++)
    for (let k = 0; k < 60; k++)
      places.push({
        x: value(
          knots.map((p) => p.x),
          xs,
          i,
          k / 60,
        ),
        y: value(
          knots.map((p) => p.y),
          ys,
          i,
          k / 60,
        ),
      });
  places.push(knots[knots.length - 1]);
  return places;
}

function secondSlopes(t: readonly number[], v: readonly number[], start: number, end: number): number[] {
  const n = v.length;
  const [a, b, c, d] = [0, 0, 0, 0].map(() => new Array<number>(n).fill(0));
  for (let i = 1; i < n - 1; i++) {
    const [h0, h1] = [t[i] - t[i - 1], t[i + 1] - t[i]];
    a[i] = h0;
    b[i] = 2 * (h0 + h1);
    c[i] = h1;
    d[i] = 6 * ((v[i + 1] - v[i]) / h1 - (v[i] - v[i - 1]) / h0);
  }
  const first = t[1] - t[0];
  b[0] = 2 * first;
  c[0] = first;
  d[0] = 6 * ((v[1] - v[0]) / first - start);
  const last = t[n - 1] - t[n - 2];
  b[n - 1] = 2 * last;
  a[n - 1] = last;
  d[n - 1] = 6 * (end - (v[n - 1] - v[n - 2]) / last);
  for (let i = 1; i < n; i++) {
    const factor = a[i] / b[i - 1];
    b[i] -= factor * c[i - 1];
    d[i] -= factor * d[i - 1];
  }
  const m = new Array<number>(n).fill(0);
  m[n - 1] = d[n - 1] / b[n - 1];
  for (let i = n - 2; i >= 0; i--) m[i] = (d[i] - c[i] * m[i + 1]) / b[i];
  return m;
}
