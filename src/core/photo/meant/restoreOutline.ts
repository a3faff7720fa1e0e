import { accept, type Checked, type Point, point } from '../../base/index.ts';
import { fitHalfOutline, type HalfOutline, type OutlineHabit } from '../../curve/index.ts';
import { type EdgeSpot, type FoundEdge, isCornerEnd } from '../edge/foundEdge.ts';
import { type MeantSpot, mergeHalves, type WearStretch } from './mergeHalves.ts';
import { type MirrorAxis, mirrorAxis } from './mirrorAxis.ts';

/** The outline as meant, and what it was found from; body frame with the lower end at (0, 0), mm. */
export interface RestoredOutline {
  readonly half: HalfOutline;
  readonly bodyLengthMm: number;
  /** Where the lower end lies along the axis, from its `through`. */
  readonly lowerEndMm: number;
  readonly axis: MirrorAxis<'scene'>;
  /** The two halves merged, on the side of x ≥ 0. */
  readonly meant: readonly MeantSpot[];
  readonly wear: readonly BodyWear[];
  /** Largest half difference of the halves that is the body's own slow lean. */
  readonly leanMaxMm: number;
  /** Both edges as they are today, unmirrored (bass x negative); places that were only bridged are left out. */
  readonly asFound: {
    readonly bass: readonly Point<'body'>[];
    readonly treble: readonly Point<'body'>[];
  };
  /** Lengths as callipers would read them on the worn instrument, by the name of their value. */
  readonly measures: readonly { readonly name: string; readonly mm: number }[];
  /** How far the merged places lie from the arcs. */
  readonly fitRmsMm: number;
  readonly fitMaxMm: number;
}

/** A stretch where wood was lost, restored from the other half. */
export interface BodyWear {
  readonly side: 'bass' | 'treble';
  /** Deepest place; bass x negative. */
  readonly at: Point<'body'>;
  readonly depthMm: number;
  readonly extentMm: number;
}

/** Weight of a place that stands on one half only, against one that both halves show. */
const SINGLE_WEIGHT = 0.6;

/**
 * The symmetric, unworn outline behind a found edge: mirror axis, halves merged, tangent arcs fitted.
 * Faults: those of {@link mirrorAxis} and of the fit.
 */
export function restoreOutline(
  edge: FoundEdge<'scene'>,
  start: { readonly through: Point<'scene'>; readonly headingRad: number },
  habit: OutlineHabit,
  face: 'top' | 'back',
): Checked<RestoredOutline> {
  const axis = mirrorAxis(edge, start);
  if (!axis.ok) return axis;
  const merged = mergeHalves(edge, axis.value);
  const fitted = fitHalfOutline(
    merged.meant.map((spot) => ({
      ...point<'body'>(spot.x, spot.y),
      weight: spot.from === 'bridged' ? 0 : spot.from === 'both' ? 1 : SINGLE_WEIGHT,
      section: spot.section,
    })),
    habit,
  );
  if (!fitted.ok) return fitted;
  const { half, bodyLengthMm, lowerEndMm, rmsMm, maxMm } = fitted.value;
  const left = toBody(edge.left, axis.value, lowerEndMm);
  const right = toBody(edge.right, axis.value, lowerEndMm);
  const [bass, treble] = face === 'top' ? [left, right] : [mirrored(right), mirrored(left)];
  return accept({
    half,
    bodyLengthMm,
    lowerEndMm,
    axis: axis.value,
    meant: merged.meant.map((spot) => ({ ...spot, y: spot.y - lowerEndMm })),
    wear: merged.wear.map((stretch) => wearOnBody(stretch, lowerEndMm, face)),
    leanMaxMm: merged.leanMaxMm,
    asFound: { bass: seenPlaces(bass), treble: seenPlaces(treble) },
    measures: [{ name: 'bodyLength', mm: bodyLengthMm }, ...widths(bass, treble, bodyLengthMm)],
    fitRmsMm: rmsMm,
    fitMaxMm: maxMm,
  });
}

function toBody(
  spots: readonly EdgeSpot<'scene'>[],
  axis: MirrorAxis<'scene'>,
  lowerEndMm: number,
): readonly EdgeSpot<'body'>[] {
  const c = Math.cos(axis.headingRad);
  const s = Math.sin(axis.headingRad);
  return spots.map(({ x, y, section, alongMm, seen, sigmaMm }) => {
    const dx = x - axis.through.x;
    const dy = y - axis.through.y;
    return {
      ...point<'body'>(s * dx - c * dy, c * dx + s * dy - lowerEndMm),
      section,
      alongMm,
      seen,
      sigmaMm,
    };
  });
}

function mirrored(spots: readonly EdgeSpot<'body'>[]): readonly EdgeSpot<'body'>[] {
  return spots.map((spot) => ({ ...spot, x: -spot.x }));
}

function wearOnBody(stretch: WearStretch, lowerEndMm: number, face: 'top' | 'back'): BodyWear {
  const { side, at, depthMm, extentMm } = stretch;
  const isTreble = (side === 'right') === (face === 'top');
  return {
    side: isTreble ? 'treble' : 'bass',
    at: point(face === 'top' ? at.x : -at.x, at.y - lowerEndMm),
    depthMm,
    extentMm,
  };
}

function seenPlaces(spots: readonly EdgeSpot<'body'>[]): readonly Point<'body'>[] {
  return spots.filter((spot) => spot.seen).map(({ x, y }) => point(x, y));
}

/** Where each width is looked for, shares of the body length. */
const WIDTHS = [
  { name: 'lowerBout', section: 'lowerBout', from: 0.1, to: 0.34, widest: true },
  { name: 'waist', section: 'cBout', from: 0.44, to: 0.64, widest: false },
  { name: 'upperBout', section: 'upperBout', from: 0.72, to: 0.9, widest: true },
] as const;

function widths(
  bass: readonly EdgeSpot<'body'>[],
  treble: readonly EdgeSpot<'body'>[],
  lengthMm: number,
): { readonly name: string; readonly mm: number }[] {
  return WIDTHS.flatMap(({ name, section, from, to, widest }) => {
    const reach = (spots: readonly EdgeSpot<'body'>[]): number | null => {
      const across = spots
        .filter((spot) => spot.seen && !isCornerEnd(spot.section) && spot.section === section)
        .filter((spot) => spot.y > from * lengthMm && spot.y < to * lengthMm)
        .map((spot) => Math.abs(spot.x));
      if (across.length < LEAST_PLACES) return null;
      return widest ? Math.max(...across) : Math.min(...across);
    };
    const [left, right] = [reach(bass), reach(treble)];
    return left === null || right === null ? [] : [{ name, mm: left + right }];
  });
}

/** Seen places that a width needs on either side. */
const LEAST_PLACES = 8;
