import { type Point, point } from '../base/index.ts';
import { edgeLine } from './edgeLine.ts';
import type { EdgeSpot, FoundEdge } from './foundEdge.ts';
import type { MirrorAxis } from './mirrorAxis.ts';
import { slowDifference } from './slowDifference.ts';
import type { OutlineSection } from './templateStations.ts';

/** A place of the outline as meant, on the treble side of the centre line, mm across and along it. */
export interface MeantSpot extends Point<'body'> {
  readonly section: OutlineSection;
  readonly alongMm: number;
  /** Which halves it stands on: both, one (the other worn there or not seen), or none seen (bridged). */
  readonly from: 'both' | 'bass' | 'treble' | 'bridged';
  readonly sigmaMm: number;
}

/** A stretch where one half has lost wood that the other still has. */
export interface WearStretch {
  readonly side: 'bass' | 'treble';
  /** Deepest place, on that side (bass x negative). */
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

/** mm. A loss must be at least this deep somewhere to count, and is followed out to where it is this shallow. */
const LOSS_MM = { counts: 0.22, ends: 0.07 };
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
  const treble = fold(edge.treble, axis, 1);
  const bass = fold(edge.bass, axis, -1);
  const pairs = pairStations(treble, bass);
  const ways = offsets(pairs, treble, bass);
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
  readonly treble: EdgeSpot<'body'>;
  readonly bass: EdgeSpot<'body'>;
  /** Middle of the two where both are seen, else the seen one; and its outward normal. */
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
}

interface Ways {
  /** How far each half's edge lies outside the middle place; null where it was not seen. */
  readonly treble: number | null;
  readonly bass: number | null;
  /** Treble less bass. */
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
  treble: readonly EdgeSpot<'body'>[],
  bass: readonly EdgeSpot<'body'>[],
): readonly Pair[] {
  const byStation = new Map(bass.map((spot) => [spot.alongMm, spot]));
  const both = treble.flatMap((spot) => {
    const other = byStation.get(spot.alongMm);
    return other === undefined ? [] : [{ treble: spot, bass: other }];
  });
  const middles = both.map((pair) => middleOf(pair.treble, pair.bass));
  return both.map((pair, i) => {
    const before = both[i - 1]?.treble.section === pair.treble.section ? i - 1 : i;
    const after = both[i + 1]?.treble.section === pair.treble.section ? i + 1 : i;
    const dx = middles[after].x - middles[before].x;
    const dy = middles[after].y - middles[before].y;
    const length = Math.hypot(dx, dy) || 1;
    return {
      ...pair,
      alongMm: pair.treble.alongMm,
      section: pair.treble.section,
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
  treble: readonly EdgeSpot<'body'>[],
  bass: readonly EdgeSpot<'body'>[],
): readonly Ways[] {
  const lines = { treble: edgeLine(treble, 1), bass: edgeLine(bass, 1) };
  const way = (pair: Pair, side: 'treble' | 'bass'): number | null => {
    if (!pair[side].seen) return null;
    const link = lines[side].nearest(pair.x, pair.y, pair.alongMm);
    return link === null ? null : -link.distanceMm;
  };
  return pairs.map((pair) => {
    const t = way(pair, 'treble');
    const b = way(pair, 'bass');
    return { treble: t, bass: b, difference: t === null || b === null ? null : t - b };
  });
}

/** Which side has lost wood at each station: grown out from places where the loss is plain. */
function lostStretches(
  pairs: readonly Pair[],
  rest: readonly (number | null)[],
  counts: number,
): readonly ('bass' | 'treble' | null)[] {
  const lost = new Array<'bass' | 'treble' | null>(pairs.length).fill(null);
  const side = (i: number) => ((rest[i] ?? 0) > 0 ? 'bass' : 'treble');
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
  lost: 'bass' | 'treble' | null,
  slow: number,
): MeantSpot {
  const seen = pair.treble.seen || pair.bass.seen;
  const sigmaMm = Math.min(pair.treble.sigmaMm, pair.bass.sigmaMm);
  const common = { section: pair.section, alongMm: pair.alongMm, sigmaMm };
  if (!seen) return { ...point<'body'>(pair.x, pair.y), ...common, from: 'bridged' };
  if (ways.difference === null) {
    const from = pair.treble.seen ? 'treble' : 'bass';
    const out = from === 'treble' ? -slow / 2 : slow / 2;
    return { ...point<'body'>(pair.x + out * pair.normalX, pair.y + out * pair.normalY), ...common, from };
  }
  const out = ((ways.treble ?? 0) + (ways.bass ?? 0)) / 2 + (lost === null ? 0 : Math.abs(rest ?? 0) / 2);
  const from = lost === null ? 'both' : lost === 'bass' ? 'treble' : 'bass';
  return { ...point<'body'>(pair.x + out * pair.normalX, pair.y + out * pair.normalY), ...common, from };
}

function wearStretches(
  pairs: readonly Pair[],
  rest: readonly (number | null)[],
  lost: readonly ('bass' | 'treble' | null)[],
): readonly WearStretch[] {
  const found: WearStretch[] = [];
  for (let i = 0; i < pairs.length; i++) {
    const side = lost[i];
    if (side === null || (i > 0 && lost[i - 1] === side)) continue;
    let to = i;
    while (to + 1 < pairs.length && lost[to + 1] === side) to++;
    let deepest = i;
    for (let j = i; j <= to; j++) if (Math.abs(rest[j] ?? 0) > Math.abs(rest[deepest] ?? 0)) deepest = j;
    const sign = side === 'bass' ? -1 : 1;
    found.push({
      side,
      at: point(sign * pairs[deepest].x, pairs[deepest].y),
      depthMm: Math.abs(rest[deepest] ?? 0),
      extentMm: pairs[to].alongMm - pairs[i].alongMm,
    });
  }
  return found;
}
