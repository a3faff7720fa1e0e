import { accept, type Checked, type Point, point } from '../../base/index.ts';
import { type HalfOutline, nearestOn, type OutlineHabit } from '../../curve/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';
import type { EdgeSpot, FoundEdge } from '../edge/foundEdge.ts';
import { calliperWidths } from './calliperWidths.ts';
import { type FarPlateStretch, farPlateStretches } from './farPlateStretches.ts';
import { foldHalves } from './foldHalves.ts';
import type { ArcKind } from './meantArcs.ts';
import type { MeantCorner } from './meantCorner.ts';
import { type ArcMisfit, type LineOptions, type LineSpot, type MeantLine, meantLine } from './meantLine.ts';
import { type MeantWishes, namedSide, type SeenPurfling, type SeenSide, seenSide } from './meantWishes.ts';
import { type MeantOffset, type MergedHalves, type MergedPlace, mergeHalves } from './mergeHalves.ts';
import { type MirrorAxis, mirrorAxis } from './mirrorAxis.ts';
import type { Heading } from './uprightSpots.ts';
import { uprightSpots } from './uprightSpots.ts';
import { type BodyWear, type WearPlace, wearMap, wearStretches } from './wearMap.ts';

/** A place of the outline as meant, on one side of the centre line. */
export interface MeantSpot extends Point<'body'> {
  readonly section: OutlineSection;
  readonly alongMm: number;
  /** What it stands on: both halves, one (the other worn there or not seen), the purfling, or none seen. */
  readonly from: 'both' | 'bass' | 'treble' | 'purfling' | 'bridged';
  readonly sigmaMm: number;
  /** Half interval (k = 2) of the restored outline across, here. */
  readonly plusMinusMm: number;
}

/** The body's slow lean at a station: half of what the treble side stands out more than the bass side. */
export interface LeanPlace {
  readonly alongMm: number;
  readonly at: Point<'body'>;
  readonly mm: number;
}

/** The outline as meant, and what it was found from; body frame with the lower end at (0, 0), mm. */
export interface RestoredOutline {
  readonly half: HalfOutline;
  /** Each half restored for itself, both as if on the treble side; only where the asymmetry is to be kept. */
  readonly halves?: { readonly bass: HalfOutline; readonly treble: HalfOutline };
  /** Thirteen arcs of the usual scheme, or arcs as needed where those would miss the edge; and where they miss it. */
  readonly arcs: { readonly kind: ArcKind; readonly count: number; readonly misfits: readonly ArcMisfit[] };
  readonly corners: { readonly lower?: MeantCorner; readonly upper?: MeantCorner };
  readonly bodyLengthMm: number;
  /** Where the lower end lies along the axis, from its `through`. */
  readonly lowerEndMm: number;
  readonly axis: MirrorAxis<'scene'>;
  /** The two halves merged, on the side of x ≥ 0. */
  readonly meant: readonly MeantSpot[];
  /** What was put back, station by station, and as pieces of wear from 0.2 mm. */
  readonly wearMap: readonly WearPlace[];
  readonly wear: readonly BodyWear[];
  /** Stretches at which one half was set aside, as followed on ribs or far plate. */
  readonly farPlate: readonly FarPlateStretch[];
  /** The body's own slow lean, which is no wear, and its largest size. */
  readonly lean: readonly LeanPlace[];
  readonly leanMaxMm: number;
  /** Both edges as they are today, unmirrored (bass x negative); places that were only bridged are left out. */
  readonly asFound: {
    readonly bass: readonly Point<'body'>[];
    readonly treble: readonly Point<'body'>[];
  };
  /** Lengths as callipers would read them on the worn instrument, by the name of their value. */
  readonly measures: readonly { readonly name: string; readonly mm: number }[];
  /** How far the merged places lie from the arcs, corner ends left out. */
  readonly fitRmsMm: number;
  readonly fitMaxMm: number;
}

/** Weight of a place that stands on one half only, against one that both halves show. */
const SINGLE_WEIGHT = 0.6;

/**
 * The symmetric, unworn outline behind a found edge: mirror axis, halves merged as the wishes say, corners carried out,
 * tangent arcs. The purfling, where given, tells where both edges are worn. A rough one is to look again from: where the arcs of
 * a corner that is not seen cross, the habit places it.
 * Faults: those of {@link mirrorAxis} and of the fit.
 */
export function restoreOutline(
  edge: FoundEdge<'scene'>,
  start: Heading<'scene'>,
  habit: OutlineHabit,
  face: 'top' | 'back',
  wishes: MeantWishes = {},
  purfling?: SeenPurfling,
  isRough = false,
): Checked<RestoredOutline> {
  const axis = mirrorAxis(edge, start);
  if (!axis.ok) return axis;
  const folded = foldHalves(edge, axis.value, {
    left: purfling?.[namedSide('left', face)] ?? [],
    right: purfling?.[namedSide('right', face)] ?? [],
  });
  const follow =
    wishes.slow === undefined || wishes.slow === 'average' ? 'average' : seenSide(wishes.slow, face);
  const options: LineOptions = {
    ...(wishes.cornerEndMm && { cornerEndMm: wishes.cornerEndMm }),
    ...(isRough && { isRough }),
  };
  let merged = mergeHalves(folded, { follow, rules: [] });
  let line = meantLine(
    lineSpots(merged, (place) => place.symmetric),
    habit,
    options,
  );
  if (!line.ok) return line;
  const overrides = wishes.overrides ?? [];
  if (overrides.length > 0) {
    // Rules count from the lower end, which the first line tells.
    const { lowerEndMm } = line.value;
    const rules = overrides.map(({ side, fromMm, toMm, take }) => ({
      side: seenSide(side, face),
      fromMm: fromMm + lowerEndMm,
      toMm: toMm + lowerEndMm,
      take,
    }));
    merged = mergeHalves(folded, { follow, rules });
    line = meantLine(
      lineSpots(merged, (place) => place.symmetric),
      habit,
      options,
    );
    if (!line.ok) return line;
  }
  const halves = wishes.asymmetry === 'keep' ? keptHalves(merged, line.value, habit, face, options) : null;
  if (halves !== null && !halves.ok) return halves;
  return accept({
    ...told(edge, axis.value, merged, line.value, face),
    ...(halves && { halves: halves.value }),
  });
}

function lineSpots(
  { places, together }: MergedHalves,
  offsetOf: (place: MergedPlace) => MeantOffset,
  lowerEndMm = 0,
): readonly LineSpot[] {
  return places.map((place) => {
    const { outMm, from, sigmaMm, sharedSigmaMm } = offsetOf(place);
    const seen = from !== 'bridged';
    return {
      ...point<'body'>(place.x + outMm * place.normalX, place.y + outMm * place.normalY - lowerEndMm),
      section: place.section,
      alongMm: place.alongMm,
      weight: seen ? (from === 'both' ? 1 : SINGLE_WEIGHT) : 0,
      sigmaMm: seen ? sigmaMm * Math.sqrt(together) : null,
      sharedSigmaMm,
    };
  });
}

/** Both halves, each restored for itself, between the ends of the symmetric outline. */
function keptHalves(
  merged: MergedHalves,
  { bodyLengthMm, lowerEndMm }: MeantLine,
  habit: OutlineHabit,
  face: 'top' | 'back',
  options: LineOptions,
): Checked<NonNullable<RestoredOutline['halves']>> {
  const own = (side: SeenSide) =>
    meantLine(
      lineSpots(merged, (place) => place.own[side], lowerEndMm),
      habit,
      { ...options, bodyLengthMm },
    );
  const [bass, treble] = [own(seenSide('bass', face)), own(seenSide('treble', face))];
  if (!bass.ok) return bass;
  if (!treble.ok) return treble;
  return accept({ bass: bass.value.half, treble: treble.value.half });
}

function told(
  edge: FoundEdge<'scene'>,
  axis: MirrorAxis<'scene'>,
  merged: MergedHalves,
  line: MeantLine,
  face: 'top' | 'back',
): RestoredOutline {
  const { half, kind, misfits, corners, bodyLengthMm, lowerEndMm, plusMinusMm } = line;
  const left = onBody(edge.left, axis, lowerEndMm);
  const right = onBody(edge.right, axis, lowerEndMm);
  const [bass, treble] = face === 'top' ? [left, right] : [mirrored(right), mirrored(left)];
  const meant = lineSpots(merged, (place) => place.symmetric, lowerEndMm).map((spot, i): MeantSpot => {
    const { x, y, section, alongMm } = spot;
    const { from, sigmaMm } = merged.places[i].symmetric;
    const stands = from === 'left' || from === 'right' ? namedSide(from, face) : from;
    return { x, y, section, alongMm, from: stands, sigmaMm, plusMinusMm: plusMinusMm[i] };
  });
  const map = wearMap(merged.places, corners, lowerEndMm, face);
  const lean = leanPlaces(meant, merged.places, face);
  return {
    half,
    arcs: { kind, count: arcCount(half), misfits },
    corners,
    bodyLengthMm,
    lowerEndMm,
    axis,
    meant,
    wearMap: map,
    wear: wearStretches(map),
    farPlate: farPlateStretches(merged.places, lowerEndMm, face),
    lean,
    leanMaxMm: lean.reduce((most, { mm }) => Math.max(most, Math.abs(mm)), 0),
    asFound: { bass: seenPlaces(bass), treble: seenPlaces(treble) },
    measures: [{ name: 'bodyLength', mm: bodyLengthMm }, ...calliperWidths(bass, treble, bodyLengthMm)],
    ...misses(meant, half),
  };
}

function arcCount({ lowerBout, cBout, upperBout }: HalfOutline): number {
  return [lowerBout, cBout, upperBout].reduce((sum, { vertices }) => sum + vertices.length - 1, 0);
}

function leanPlaces(
  meant: readonly MeantSpot[],
  places: readonly MergedPlace[],
  face: 'top' | 'back',
): readonly LeanPlace[] {
  const sign = namedSide('right', face) === 'treble' ? 1 : -1;
  return meant.map(({ x, y, alongMm }, i) => ({
    alongMm,
    at: point(x, y),
    mm: sign * places[i].leanMm,
  }));
}

function misses(
  meant: readonly MeantSpot[],
  half: HalfOutline,
): Pick<RestoredOutline, 'fitRmsMm' | 'fitMaxMm'> {
  const away = meant.flatMap((spot) => {
    const { section } = spot;
    if (spot.from === 'bridged' || section === 'lowerCorner' || section === 'upperCorner') return [];
    return [nearestOn(half[section], spot).distanceMm];
  });
  const square = away.reduce((sum, mm) => sum + mm * mm, 0);
  return {
    fitRmsMm: Math.sqrt(square / Math.max(1, away.length)),
    fitMaxMm: away.reduce((most, mm) => Math.max(most, mm), 0),
  };
}

function onBody(
  spots: readonly EdgeSpot<'scene'>[],
  axis: MirrorAxis<'scene'>,
  lowerEndMm: number,
): readonly EdgeSpot<'body'>[] {
  return uprightSpots(spots, axis).map((spot) => ({ ...spot, y: spot.y - lowerEndMm }));
}

function mirrored(spots: readonly EdgeSpot<'body'>[]): readonly EdgeSpot<'body'>[] {
  return spots.map((spot) => ({ ...spot, x: -spot.x }));
}

function seenPlaces(spots: readonly EdgeSpot<'body'>[]): readonly Point<'body'>[] {
  return spots.filter((spot) => spot.seen).map(({ x, y }) => point(x, y));
}
