import { accept, type Checked, exp, log, refuse } from '../../base/index.ts';
import type { MeasuredHeights } from '../../design/index.ts';
import { type FairNet, loftAt, netAt, sumOfNets } from '../../surface/index.ts';
import type { Plate } from './archNumbers.ts';
import { carriedSections, type FairLoft } from './carriedSections.ts';
import type { HeightPull } from './drawnHeights.ts';
import { type CorrectionFrame, netInChannel } from './fairCorrection.ts';
import { heightFindings } from './heightFindings.ts';
import { footOn } from './smoothLine.ts';

/** Half interval of a height of which nothing is said, mm (chosen by us: callipers on a bridge over an uneven plate). */
const USUAL_PLUS_MINUS_MM = 0.2;

/** Weight of one height against the bending integral: with less a plate goes its own way, with more it would be dented. */
const WEIGHTS = { least: 1 / 10_000_000, most: 1 } as const;

/** Steps of the search for the weight at most, and how near to the scatter asked for, from below, is near enough. */
const STEPS = 12;
const NEAR_SHARE = 0.015;

/** The arch as its few numbers make it, over its channel. */
interface ArchBefore extends FairLoft {
  readonly plate: Plate;
  readonly channelZMm: number;
}

/** An arch drawn to measured heights: correction and pull are one net. */
interface DrawnArch extends FairLoft {
  readonly pull: HeightPull;
}

/**
 * An arch that follows measured heights as closely as they are known, and no closer. What whole sections show beyond the numbers is
 * carried along the body first; of all surfaces that then miss the heights by their own scatter it is the one that bends least away from there.
 * 0 and level along the channel; the stations and the centre line go along. Both halves draw the one half there is.
 *
 * Method: {@link carriedSections}; smoothing by bicubic splines, its weight by the discrepancy principle (V. A. Morozov, 1966).
 * Fault: `heights.outside`.
 */
export function heightPull(
  frame: CorrectionFrame,
  arch: ArchBefore,
  given: MeasuredHeights,
): Checked<DrawnArch> {
  const plusMinusMm = given.plusMinus ?? USUAL_PLUS_MINUS_MM;
  const inside = given.heights
    .map(([xMm, yMm, zMm]) => ({ xMm, yMm, zMm }))
    .filter(({ xMm, yMm }) => footOn(frame.channel.line, Math.abs(xMm), yMm).distanceMm > 0);
  if (inside.length === 0) return refuse(allOutside(arch.plate, given.heights.length));
  const folded = inside.map(({ xMm, yMm, zMm }) => ({
    x: Math.abs(xMm),
    y: yMm,
    zMm: zMm - arch.channelZMm,
  }));
  const carried = carriedSections(frame, arch, folded, plusMinusMm / 2);
  const gaps = folded.map(({ x, y, zMm }) => ({ x, y, value: zMm - heightOf(carried, x, y) }));
  const leftOf = (net: FairNet): readonly number[] =>
    gaps.map(({ x, y, value }) => value - netAt(net, x, y).zMm);
  const drawn = (weight: number): FairNet => {
    const net = netInChannel(
      frame,
      gaps.map((gap) => ({ ...gap, weight })),
    );
    // Bending and channel alone settle the net already.
    return net ?? flat(frame);
  };
  const net = asCloseAs(plusMinusMm / 2, leftOf, drawn, flat(frame));
  const after = { loft: carried.loft, correction: sumOfNets(carried.correction, net) };
  const lefts = leftOf(net);
  const left = inside.map((place, i) => ({ ...place, leftMm: lefts[i] as number }));
  const pull = {
    net,
    plusMinusMm,
    source: given.source ?? null,
    left,
    carried: carried.loft.measured?.sections.length ?? 0,
    outside: given.heights.length - inside.length,
    rmsBeforeMm: rms(folded.map(({ x, y, zMm }) => zMm - heightOf(arch, x, y))),
    rmsMm: rms(lefts),
    moved: mostMoved(frame, arch, after),
  };
  return accept({ ...after, pull: { ...pull, findings: heightFindings(arch.plate, pull) } });
}

function heightOf({ loft, correction }: FairLoft, x: number, y: number): number {
  return loftAt(loft, x, y).zMm + netAt(correction, x, y).zMm;
}

/**
 * The net that leaves a scatter of so much: none where the arch is as near already, the closest allowed where none comes
 * near. Method: false position on the logarithms of weight and scatter, the end that stays counting half (Illinois).
 */
function asCloseAs(
  sigmaMm: number,
  leftOf: (net: FairNet) => readonly number[],
  drawn: (weight: number) => FairNet,
  none: FairNet,
): FairNet {
  const over = (net: FairNet): number => log(rms(leftOf(net)) / sigmaMm);
  if (over(none) <= 0) return none;
  let best = drawn(WEIGHTS.most);
  let close = { weight: log(WEIGHTS.most), over: over(best) };
  if (!(close.over < 0)) return best;
  let loose = { weight: log(WEIGHTS.least), over: over(none) };
  for (let step = 0; step < STEPS; step++) {
    const weight = close.weight + ((loose.weight - close.weight) * close.over) / (close.over - loose.over);
    const net = drawn(exp(weight));
    const here = { weight, over: over(net) };
    if (here.over <= 0) {
      best = net;
      if (here.over > -NEAR_SHARE) return best;
      close = here;
      loose = { ...loose, over: loose.over / 2 };
    } else {
      loose = here;
      close = { ...close, over: close.over / 2 };
    }
  }
  return best;
}

function flat({ net: { grid } }: CorrectionFrame): FairNet {
  return { ...grid, coefficients: new Float64Array((grid.columns + 2) * (grid.rows + 3)) };
}

function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}

/** Places asked for the most that the surface moved: a quarter of the net's step apart. */
const FINER = 4;

function mostMoved(
  { channel, net: { grid } }: CorrectionFrame,
  before: FairLoft,
  after: FairLoft,
): HeightPull['moved'] {
  let most = { mm: 0, xMm: 0, yMm: 0 };
  const stepMm = grid.stepMm / FINER;
  for (let row = 0; row <= grid.rows * FINER; row++)
    for (let column = 0; column <= grid.columns * FINER; column++) {
      const [xMm, yMm] = [column * stepMm, grid.fromMm + row * stepMm];
      const mm = heightOf(after, xMm, yMm) - heightOf(before, xMm, yMm);
      if (Math.abs(mm) > Math.abs(most.mm) && footOn(channel.line, xMm, yMm).distanceMm > 0)
        most = { mm, xMm, yMm };
    }
  return most;
}

function allOutside(plate: Plate, count: number) {
  return {
    code: 'heights.outside',
    at: `measuredHeights.${plate}`,
    found: `${count} ${count === 1 ? 'height' : 'heights'}, none at a place inside the channel`,
    need: 'places across from the centre line and up from the lower end, inside the channel',
    remedy: 'count up from the lower end of the body, and give the heights of the arch, not of the edge',
  };
}
