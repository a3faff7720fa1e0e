import { atan, atan2, distanceBetween, hypot, type Point, point } from '../../base/index.ts';
import {
  areaOf,
  bulgeLeaving,
  type Chain,
  nearestOnSpans,
  pointOn,
  type Span,
  segmentLength,
  segments,
  spansContain,
  spansOf,
  type Vertex,
} from '../../curve/index.ts';
import { flatPlace, flattenPatch, type HeightField, heightField } from '../../surface/index.ts';
import { type PlateArch, plateHeight } from '../arching/index.ts';
import type { PlacedHoles } from './placedHoles.ts';

/**
 * A treble hole laid flat from the arch: x from the centre line, y from the bridge line, both as they lie on a template that
 * follows the arch. Millimetres.
 */
export interface FlatHole {
  /** Closed, anticlockwise, with its nicks. */
  readonly chain: Chain<'section'>;
  /** The centre line beside the hole, running up. */
  readonly centreLine: Chain<'section'>;
  /** The bridge line from the centre line to the inner nick, and a mark of it beyond the hole where the arch reaches as far. */
  readonly bridgeLine: Chain<'section'>;
  readonly bridgeMark: Chain<'section'> | null;
  /** Centres of the eyes, and the point of the inner nick. */
  readonly upperEye: Point<'section'>;
  readonly lowerEye: Point<'section'>;
  readonly innerNick: Point<'section'>;
  readonly areaMm2: number;
  readonly eyesApartMm: number;
  /** Across the stem from the inner nick, square to it, flat and in plan. */
  readonly stemMm: number;
  readonly planStemMm: number;
  readonly planAreaMm2: number;
  /** How far the flat hole lies off the plan one at most, once laid on it as well as can be. */
  readonly offPlanMm: number;
  /** Slope of the finished outside along the hole's edge, at its steepest. */
  readonly steepestRad: number;
  /** What stretching is left in the patch, as shares. */
  readonly strainMost: number;
  readonly strainRms: number;
}

/**
 * Steps of the grid on the arch along a hole: 2.5 mm on a violin. One of 1 mm moves no place of the violin's hole by more than 0.004,
 * none of the cello's by more than 0.011 mm.
 */
const STEPS = 29;
/** Wood round the hole that is laid flat with it, of the length of the body: 8 mm on an ordinary violin. */
const ROUND_SHARE = 8 / 355;

/**
 * The hole as it lies on a sheet that hugs the outside of the top, from the centre line to beyond the hole: the finished arch laid
 * flat with the least strain, and the hole carried along. Null where the hole comes so near to the edge of the top that no patch
 * of the arch holds all of it.
 */
export function flatHole(arch: PlateArch, outline: Chain<'body'>, holes: PlacedHoles): FlatHole | null {
  const roundMm = ROUND_SHARE * arch.bodyLengthMm;
  const pieces = inPieces(holes.treble);
  const [right, low, high] = [
    Math.max(...pieces.map(({ x }) => x)) + roundMm,
    Math.min(...pieces.map(({ y }) => y)) - roundMm,
    Math.max(...pieces.map(({ y }) => y)) + roundMm,
  ];
  const stepMm = holes.sizes.lengthMm / STEPS;
  // A cell reaches a diagonal of a step beyond the hole: so much wood more than that is left to the patch.
  const fromEdgeMm = Math.min(
    EDGE_SHARE * arch.bodyLengthMm,
    Math.max(0, holes.nearestEdge.distanceMm - 2 * stepMm),
  );
  const box = { right, low, high, stepMm, fromEdgeMm };
  const patch = flattenPatch(fieldOf(arch, spansOf(outline), box));
  const raw = (at: Point<'body'>): Point<'section'> => {
    const flat = flatPlace(patch, at.x, at.y);
    return flat ? point(flat.uMm, flat.vMm) : point(Number.NaN, Number.NaN);
  };
  const place = alongCentreLine(raw, holes.bridgeLineMm, low, high);
  const placed = pieces.map(place);
  if (placed.some(({ x, y }) => Number.isNaN(x + y))) return null;
  const chain = throughPieces(placed, true);
  const levels = Array.from(
    { length: CENTRE_PLACES + 1 },
    (_, index) => low + ((high - low) * index) / CENTRE_PLACES,
  );
  const { stem } = holes;
  const level = (from: number, to: number): Chain<'section'> =>
    throughPieces(
      Array.from({ length: CENTRE_PLACES + 1 }, (_, index) =>
        place(point(from + ((to - from) * index) / CENTRE_PLACES, holes.bridgeLineMm)),
      ),
      false,
    );
  const markFrom = stem.outer.x + MARK_SHARES[0] * arch.bodyLengthMm;
  const mark = level(markFrom, markFrom + MARK_SHARES[1] * arch.bodyLengthMm);
  return {
    chain,
    centreLine: throughPieces(
      levels.map((y) => place(point(0, y))),
      false,
    ),
    bridgeLine: level(0, holes.innerNick.x),
    bridgeMark: mark.vertices.some(({ x, y }) => Number.isNaN(x + y)) ? null : mark,
    upperEye: place(holes.upperEye.centre),
    lowerEye: place(holes.lowerEye.centre),
    innerNick: place(holes.innerNick),
    areaMm2: areaOf(chain),
    eyesApartMm: between(place(holes.upperEye.centre), place(holes.lowerEye.centre)),
    stemMm: between(place(stem.inner), place(stem.outer)),
    planStemMm: distanceBetween(stem.inner, stem.outer),
    planAreaMm2: areaOf(holes.treble),
    offPlanMm: offPlan(
      pieces.map((at) => point(at.x, at.y)),
      placed,
    ),
    steepestRad: Math.max(...pieces.map((at) => slopeAt(arch, at))),
    strainMost: patch.strainMost,
    strainRms: patch.strainRms,
  };
}

/** mm. Heights this far to either side tell a slope. */
const SLOPE_MM = 0.5;

function slopeAt(arch: PlateArch, { x, y }: Point<'body'>): number {
  const height = (dx: number, dy: number): number => plateHeight(arch, x + dx, y + dy, 'finished');
  const across = (height(SLOPE_MM, 0) - height(-SLOPE_MM, 0)) / (2 * SLOPE_MM);
  const along = (height(0, SLOPE_MM) - height(0, -SLOPE_MM)) / (2 * SLOPE_MM);
  return atan(hypot(across, along));
}

/** From the outer edge of the stem to where the bridge line goes on, clear of the outer nick, and how far it goes: 2.5 and 4 mm on an ordinary violin. */
const MARK_SHARES = [2.5 / 355, 4 / 355] as const;

/** Even number of steps along the lines that are carried along. */
const CENTRE_PLACES = 8;

/** Wood of the patch stops so far inside the edge of the top, as a share of the body's length, unless a hole comes nearer: there the edge is rounded. */
const EDGE_SHARE = 7 / 355;

interface PatchBox {
  readonly right: number;
  readonly low: number;
  readonly high: number;
  readonly stepMm: number;
  /** Wood left out along the edge. */
  readonly fromEdgeMm: number;
}

function fieldOf(
  arch: PlateArch,
  edge: readonly Span<'body'>[],
  { right, low, high, stepMm, fromEdgeMm }: PatchBox,
): HeightField {
  const isIn = (at: Point<'body'>): boolean =>
    spansContain(edge, at) && nearestOnSpans(edge, at, fromEdgeMm).segment < 0;
  const columns = Math.ceil(right / stepMm) + 1;
  const rows = Math.ceil((high - low) / stepMm) + 1;
  return heightField({ fromXMm: 0, fromYMm: low, stepMm, columns, rows }, (x, y) =>
    isIn(point(x, y)) ? plateHeight(arch, x, y, 'finished') : Number.NaN,
  );
}

type Carry = (at: Point<'body'>) => Point<'section'>;

/** The flat places turned and shifted: the ends of the centre line upright at x = 0, the bridge line at y = 0 on it. */
function alongCentreLine(raw: Carry, bridgeMm: number, low: number, high: number): Carry {
  const [from, to, bridge] = [low, high, bridgeMm].map((y) => raw(point(0, y))) as [
    Point<'section'>,
    Point<'section'>,
    Point<'section'>,
  ];
  const long = between(from, to);
  const [ux, uy] = [(to.x - from.x) / long, (to.y - from.y) / long];
  return (at) => {
    const flat = raw(at);
    const [dx, dy] = [flat.x - bridge.x, flat.y - bridge.y];
    return point(dx * uy - dy * ux, dx * ux + dy * uy);
  };
}

/** mm. Arcs and lines are carried along in pieces no longer than this, each by its ends and its middle. */
const PIECE_MM = 4;

/** Places along a closed chain: every vertex, between them an odd number of others, so that arcs can be laid through threes. */
function inPieces(chain: Chain<'body'>): readonly Point<'body'>[] {
  return segments(chain).flatMap((segment) => {
    const count = 2 * Math.ceil(segmentLength(segment) / PIECE_MM);
    return Array.from({ length: count }, (_, index) => pointOn(segment, index / count));
  });
}

/** Arcs through threes of places: first, middle, last, and on from there. */
function throughPieces(places: readonly Point<'section'>[], closed: boolean): Chain<'section'> {
  const vertices: Vertex<'section'>[] = [];
  for (let index = 0; index + 1 < places.length; index += 2) {
    const [from, middle] = [places[index], places[index + 1]];
    const to = places[(index + 2) % places.length];
    if (from && middle && to) vertices.push({ x: from.x, y: from.y, bulge: bulgeThrough(from, middle, to) });
  }
  const last = places.at(-1);
  if (!closed && last) vertices.push({ x: last.x, y: last.y, bulge: 0 });
  return { closed, vertices };
}

/** The bulge of the arc through a place between two others: half the tangent-chord angle's tangent. */
function bulgeThrough(from: Point<'section'>, middle: Point<'section'>, to: Point<'section'>): number {
  // The angle at the middle between both ends is that at the circle: the arc turns by twice what it lacks of half a turn.
  const first = atan2(middle.y - from.y, middle.x - from.x);
  const chord = atan2(to.y - from.y, to.x - from.x);
  const second = atan2(to.y - middle.y, to.x - middle.x);
  return bulgeLeaving(from, chord - (second - first), to);
}

function between(a?: Point<'section'>, b?: Point<'section'>): number {
  return a && b ? distanceBetween(a, b) : Number.NaN;
}

/** The farthest distance left between two rows of places once the second is turned and shifted onto the first as well as can be. */
function offPlan(plan: readonly Point<'section'>[], flat: readonly Point<'section'>[]): number {
  const middle = (of: readonly Point<'section'>[]): Point<'section'> =>
    point(
      of.reduce((sum, { x }) => sum + x, 0) / of.length,
      of.reduce((sum, { y }) => sum + y, 0) / of.length,
    );
  const [p, f] = [middle(plan), middle(flat)];
  let [along, across] = [0, 0];
  for (const [index, { x, y }] of plan.entries()) {
    const at = flat[index] as Point<'section'>;
    along += (x - p.x) * (at.x - f.x) + (y - p.y) * (at.y - f.y);
    across += (y - p.y) * (at.x - f.x) - (x - p.x) * (at.y - f.y);
  }
  const far = hypot(along, across);
  const [cos, sin] = [along / far, across / far];
  return Math.max(
    ...plan.map(({ x, y }, index) => {
      const at = flat[index] as Point<'section'>;
      const [dx, dy] = [at.x - f.x, at.y - f.y];
      return hypot(p.x + cos * dx - sin * dy - x, p.y + sin * dx + cos * dy - y);
    }),
  );
}
