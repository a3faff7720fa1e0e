import { Bug, log, power } from '../../base/index.ts';

/** A place along a run: how far the line was found from the arcs there, or null where nothing was found. */
export interface GapPlace {
  readonly alongMm: number;
  readonly gapMm: number | null;
  readonly sigmaMm: number;
}

/** The smooth gap at a place and its standard deviation. */
export interface SmoothGap {
  readonly gapMm: number;
  readonly sigmaMm: number;
}

/** How a run begins: level on the centre line, pinned there, or free. */
export type RunStart = 'level' | 'pinned' | 'free';

/** Where a run begins before anything is seen: standard deviations of the gap (mm) and of its slope. */
const FREE_GAP_MM = 2;
const FREE_SLOPE = 0.05;
const HELD = 0.000_01;

/** mm²/mm³. How fast the slope of the gap may wander: the least tried (0.1 mm in 40 mm), the factor to the next, and how many. */
const WANDER = { least: 0.000_000_4, factor: 4, count: 6 };

/** Spreads beyond which a place loses weight, and rounds in which it does. */
const STANDS_OFF = 3;
const ROUNDS = 3;

/**
 * The smooth line behind scattered gaps along a run, and how sure it is at every place, hidden ones too: the estimate
 * for a slope that wanders at random (an integrated Wiener process), filtered forwards and smoothed backwards, how fast
 * it wanders being what makes the gaps likeliest. Places that stand off by more than 3 spreads lose weight.
 *
 * Places stand in order of `alongMm`. Method: R. E. Kalman's filter, smoothed after H. E. Rauch, F. Tung and
 * C. T. Striebel (1965).
 */
export function smoothGap(places: readonly GapPlace[], start: RunStart): readonly SmoothGap[] {
  if (places.length === 0) return [];
  let sigmas = places.map(({ sigmaMm }) => sigmaMm);
  let best = likeliest(places, sigmas, start);
  for (let round = 0; round < ROUNDS; round++) {
    const smooth = smoothed(best);
    sigmas = places.map(({ gapMm, sigmaMm }, i) => {
      const off = gapMm === null ? 0 : Math.abs(gapMm - smooth[i].gapMm) / sigmaMm;
      return sigmaMm * Math.max(1, (off / STANDS_OFF) ** 2);
    });
    best = likeliest(places, sigmas, start);
  }
  return smoothed(best);
}

/** A symmetric two by two matrix over gap and slope, and a pair of them. */
type Spread = readonly [gap: number, both: number, slope: number];
type State = readonly [gap: number, slope: number];

interface Filtered {
  readonly likelihood: number;
  readonly wander: number;
  readonly along: readonly number[];
  readonly states: readonly State[];
  readonly spreads: readonly Spread[];
}

function likeliest(places: readonly GapPlace[], sigmas: readonly number[], start: RunStart): Filtered {
  let best: Filtered | null = null;
  for (let k = 0; k < WANDER.count; k++) {
    const tried = filtered(places, sigmas, start, WANDER.least * power(WANDER.factor, k));
    if (best === null || tried.likelihood > best.likelihood) best = tried;
  }
  if (best === null) throw new Bug('no rate of wandering was tried');
  return best;
}

function filtered(
  places: readonly GapPlace[],
  sigmas: readonly number[],
  start: RunStart,
  wander: number,
): Filtered {
  const gap = start === 'pinned' ? HELD : FREE_GAP_MM;
  const slope = start === 'free' ? FREE_SLOPE : HELD;
  let state: State = [0, 0];
  let spread: Spread = [gap * gap, 0, slope * slope];
  let likelihood = 0;
  const states: State[] = [];
  const spreads: Spread[] = [];
  places.forEach((place, i) => {
    const stepMm = i === 0 ? 0 : place.alongMm - places[i - 1].alongMm;
    state = [state[0] + stepMm * state[1], state[1]];
    spread = ahead(spread, stepMm, wander);
    if (place.gapMm !== null) {
      const variance = spread[0] + sigmas[i] * sigmas[i];
      const off = place.gapMm - state[0];
      likelihood -= (off * off) / variance + log(variance);
      const [gain, gainSlope] = [spread[0] / variance, spread[1] / variance];
      state = [state[0] + gain * off, state[1] + gainSlope * off];
      spread = [
        spread[0] - gain * spread[0],
        spread[1] - gain * spread[1],
        spread[2] - gainSlope * spread[1],
      ];
    }
    states.push(state);
    spreads.push(spread);
  });
  return { likelihood, wander, along: places.map(({ alongMm }) => alongMm), states, spreads };
}

function ahead([gap, both, slope]: Spread, stepMm: number, wander: number): Spread {
  return [
    gap + 2 * stepMm * both + stepMm * stepMm * slope + (wander * power(stepMm, 3)) / 3,
    both + stepMm * slope + (wander * stepMm * stepMm) / 2,
    slope + wander * stepMm,
  ];
}

function smoothed({ along, states, spreads, wander }: Filtered): readonly SmoothGap[] {
  const last = states.length - 1;
  let state = states[last];
  let spread = spreads[last];
  const found: SmoothGap[] = [];
  found[last] = { gapMm: state[0], sigmaMm: Math.sqrt(Math.max(0, spread[0])) };
  for (let i = last - 1; i >= 0; i--) {
    const stepMm = along[i + 1] - along[i];
    const [gap, both, slope] = spreads[i];
    const [nextGap, nextBoth, nextSlope] = ahead(spreads[i], stepMm, wander);
    const determinant = nextGap * nextSlope - nextBoth * nextBoth;
    // Gain of the step back: spread · transition′ · next⁻¹.
    const [a, b] = [gap + stepMm * both, both];
    const [c, d] = [both + stepMm * slope, slope];
    const gain =
      determinant > 0
        ? [
            (a * nextSlope - b * nextBoth) / determinant,
            (b * nextGap - a * nextBoth) / determinant,
            (c * nextSlope - d * nextBoth) / determinant,
            (d * nextGap - c * nextBoth) / determinant,
          ]
        : [0, 0, 0, 0];
    const [g, h, k, l] = gain;
    const offGap = state[0] - (states[i][0] + stepMm * states[i][1]);
    const offSlope = state[1] - states[i][1];
    const [p, q, r] = [spread[0] - nextGap, spread[1] - nextBoth, spread[2] - nextSlope];
    state = [states[i][0] + g * offGap + h * offSlope, states[i][1] + k * offGap + l * offSlope];
    spread = [
      gap + g * g * p + 2 * g * h * q + h * h * r,
      both + g * k * p + (g * l + h * k) * q + h * l * r,
      slope + k * k * p + 2 * k * l * q + l * l * r,
    ];
    found[i] = { gapMm: state[0], sigmaMm: Math.sqrt(Math.max(0, spread[0])) };
  }
  return found;
}
