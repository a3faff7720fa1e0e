import { type Point, point } from '../../base/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';
import { edgeLine } from '../edge/edgeLine.ts';
import type { EdgeSpot, FoundEdge } from '../edge/foundEdge.ts';
import type { MirrorAxis } from './mirrorAxis.ts';
import { slowDifference } from './slowDifference.ts';

/** A place of the outline as meant, on one side of the centre line, mm across and along it. */
export interface MeantSpot extends Point<'body'> {
  readonly section: OutlineSection;
  readonly alongMm: number;
  /** Which halves it stands on: both, one (the other worn there or not seen), or none seen (bridged). */
  readonly from: 'both' | 'left' | 'right' | 'bridged';
  readonly sigmaMm: number;
}

/** A stretch where one half has lost wood that the other still has. */
export interface WearStretch {
  readonly side: 'left' | 'right';
  /** Deepest place as seen, left x negative. */
  readonly at: Point<'body'>;
  readonly depthMm: number;
  readonly extentMm: number;
}

export interface MergedHalves {
  readonly meant: readonly MeantSpot[];
  readonly wear: readonly WearStretch[];
  /** Root mean square and largest of half the slow difference between the halves: the body's own lean. */
  readonly leanRmsMm: number;
  readonly leanMaxMm: number;
}

/** mm. A loss must be at least this deep somewhere to be put back, and is followed out to where it is this shallow. */
const LOSS_MM = { counts: 0.22, ends: 0.07 };
/** mm. A stretch is told as wear only if deeper than this; shallower ones are within what an edge is read to. */
const TOLD_FROM_MM = 0.3;
/** mm. Stretches of one side nearer than this along the edge are one piece of wear. */
const ONE_STRETCH_MM = 6;
/** A loss must also stand out of the noise by this many spreads. */
const LOSS_SPREADS = 3;
/** mm. Shorter losses are noise, except at a corner. */
const LEAST_EXTENT_MM = 5;

/**
 * Both halves, folded onto each other about the axis and merged by two facts: wear only takes wood away, so where one
 * half lies inside the other by more than the body's slow lean explains, the outer one is right; string load only
 * moves it, so the slow lean is averaged out. Along is measured from the axis's `through`.
 */
export function mergeHalves(edge: FoundEdge<'scene'>, axis: MirrorAxis<'scene'>): MergedHalves {
  const right = fold(edge.right, axis, 1);
  const left = fold(edge.left, axis, -1);
  const pairs = pairStations(right, left);
  const ways = offsets(pairs, right, left);
  const slow = slowDifference(
    pairs.map((pair, i) => ({
      alongMm: pair.alongMm,
      difference: ways[i].difference,
      section: pair.section,
    })),
  );
  const rest = ways.map((way, i) => (way.difference === null ? null : way.difference - slow.values[i]));
  const lost = lostStretches(pairs, rest, Math.max(LOSS_MM.counts, LOSS_SPREADS * slow.spreadMm));
  const meant = pairs.map((pair, i) => meantSpot(pair, ways[i], rest[i], lost[i], slow.values[i]));
  const lean = slow.values.map((value) => Math.abs(value) / 2);
  return {
    meant,
    wear: wearStretches(pairs, rest, lost),
    leanRmsMm: Math.sqrt(lean.reduce((sum, value) => sum + value * value, 0) / lean.length),
    leanMaxMm: Math.max(...lean),
  };
}

interface Pair {
  readonly alongMm: number;
  readonly section: OutlineSection;
  readonly right: EdgeSpot<'body'>;
  readonly left: EdgeSpot<'body'>;
  /** Middle of the two where both are seen, else the seen one; and its outward normal. */
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
}

interface Ways {
  /** How far each half's edge lies outside the middle place; null where it was not seen. */
  readonly right: number | null;
  readonly left: number | null;
  /** Treble less left. */
  readonly difference: number | null;
}

function fold(
  spots: readonly EdgeSpot<'scene'>[],
  axis: MirrorAxis<'scene'>,
  side: 1 | -1,
): readonly EdgeSpot<'body'>[] {
  const c = Math.cos(axis.headingRad);
  const s = Math.sin(axis.headingRad);
  return spots.map((spot) => {
    const dx = spot.x - axis.through.x;
    const dy = spot.y - axis.through.y;
    const { section, alongMm, seen, sigmaMm } = spot;
    return { ...point<'body'>(side * (s * dx - c * dy), c * dx + s * dy), section, alongMm, seen, sigmaMm };
  });
}

function pairStations(
  right: readonly EdgeSpot<'body'>[],
  left: readonly EdgeSpot<'body'>[],
): readonly Pair[] {
  const byStation = new Map(left.map((spot) => [spot.alongMm, spot]));
  const both = right.flatMap((spot) => {
    const other = byStation.get(spot.alongMm);
    return other === undefined ? [] : [{ right: spot, left: other }];
  });
  const middles = both.map((pair) => middleOf(pair.right, pair.left));
  return both.map((pair, i) => {
    const before = both[i - 1]?.right.section === pair.right.section ? i - 1 : i;
    const after = both[i + 1]?.right.section === pair.right.section ? i + 1 : i;
    const dx = middles[after].x - middles[before].x;
    const dy = middles[after].y - middles[before].y;
    const length = Math.hypot(dx, dy) || 1;
    return {
      ...pair,
      alongMm: pair.right.alongMm,
      section: pair.right.section,
      ...middles[i],
      normalX: dy / length,
      normalY: -dx / length,
    };
  });
}

function middleOf(a: EdgeSpot<'body'>, b: EdgeSpot<'body'>): Point<'body'> {
  if (a.seen && !b.seen) return point(a.x, a.y);
  if (b.seen && !a.seen) return point(b.x, b.y);
  return point((a.x + b.x) / 2, (a.y + b.y) / 2);
}

function offsets(
  pairs: readonly Pair[],
  right: readonly EdgeSpot<'body'>[],
  left: readonly EdgeSpot<'body'>[],
): readonly Ways[] {
  const lines = { right: edgeLine(right, 1), left: edgeLine(left, 1) };
  const way = (pair: Pair, side: 'right' | 'left'): number | null => {
    if (!pair[side].seen) return null;
    const link = lines[side].nearest(pair.x, pair.y, pair.alongMm);
    return link === null ? null : -link.distanceMm;
  };
  return pairs.map((pair) => {
    const t = way(pair, 'right');
    const b = way(pair, 'left');
    return { right: t, left: b, difference: t === null || b === null ? null : t - b };
  });
}

/** Which side has lost wood at each station: grown out from places where the loss is plain. */
function lostStretches(
  pairs: readonly Pair[],
  rest: readonly (number | null)[],
  counts: number,
): readonly ('left' | 'right' | null)[] {
  const lost = new Array<'left' | 'right' | null>(pairs.length).fill(null);
  const side = (i: number) => ((rest[i] ?? 0) > 0 ? 'left' : 'right');
  for (let i = 0; i < pairs.length; i++) {
    if (lost[i] !== null || Math.abs(rest[i] ?? 0) < counts) continue;
    const grows = (j: number) =>
      j >= 0 && j < pairs.length && Math.abs(rest[j] ?? 0) > LOSS_MM.ends && side(j) === side(i);
    let from = i;
    let to = i;
    while (grows(from - 1)) from--;
    while (grows(to + 1)) to++;
    const extent = pairs[to].alongMm - pairs[from].alongMm;
    const atCorner = pairs.slice(from, to + 1).some((pair) => pair.section.endsWith('Corner'));
    if (extent >= LEAST_EXTENT_MM || atCorner) lost.fill(side(i), from, to + 1);
  }
  return lost;
}

/** The place meant: the middle, moved out by half the loss of the half that lost. */
function meantSpot(
  pair: Pair,
  ways: Ways,
  rest: number | null,
  lost: 'left' | 'right' | null,
  slow: number,
): MeantSpot {
  const seen = pair.right.seen || pair.left.seen;
  const sigmaMm = Math.min(pair.right.sigmaMm, pair.left.sigmaMm);
  const common = { section: pair.section, alongMm: pair.alongMm, sigmaMm };
  if (!seen) return { ...point<'body'>(pair.x, pair.y), ...common, from: 'bridged' };
  if (ways.difference === null) {
    const from = pair.right.seen ? 'right' : 'left';
    const out = from === 'right' ? -slow / 2 : slow / 2;
    return { ...point<'body'>(pair.x + out * pair.normalX, pair.y + out * pair.normalY), ...common, from };
  }
  const out = ((ways.right ?? 0) + (ways.left ?? 0)) / 2 + (lost === null ? 0 : Math.abs(rest ?? 0) / 2);
  const from = lost === null ? 'both' : lost === 'left' ? 'right' : 'left';
  return { ...point<'body'>(pair.x + out * pair.normalX, pair.y + out * pair.normalY), ...common, from };
}

/** The losses worth telling, from the lower end up: near ones of one side joined, shallow ones left out. */
function wearStretches(
  pairs: readonly Pair[],
  rest: readonly (number | null)[],
  lost: readonly ('left' | 'right' | null)[],
): readonly WearStretch[] {
  const depthMm = (i: number) => Math.abs(rest[i] ?? 0);
  return (['left', 'right'] as const)
    .flatMap((side) => joinedRuns(pairs, lost, side).map((run) => ({ ...run, side })))
    .sort((a, b) => a.from - b.from)
    .flatMap(({ from, to, side }) => {
      let deepest = from;
      for (let j = from; j <= to; j++) if (lost[j] === side && depthMm(j) > depthMm(deepest)) deepest = j;
      if (depthMm(deepest) <= TOLD_FROM_MM) return [];
      const sign = side === 'left' ? -1 : 1;
      const at = point<'body'>(sign * pairs[deepest].x, pairs[deepest].y);
      return [{ side, at, depthMm: depthMm(deepest), extentMm: pairs[to].alongMm - pairs[from].alongMm }];
    });
}

/** First and last station of each run that one side has lost, with runs that nearly touch made one. */
function joinedRuns(
  pairs: readonly Pair[],
  lost: readonly ('left' | 'right' | null)[],
  side: 'left' | 'right',
): readonly { readonly from: number; readonly to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (let i = 0; i < pairs.length; i++) {
    if (lost[i] !== side) continue;
    const last = runs[runs.length - 1];
    if (last && pairs[i].alongMm - pairs[last.to].alongMm <= ONE_STRETCH_MM) last.to = i;
    else runs.push({ from: i, to: i });
  }
  return runs;
}
