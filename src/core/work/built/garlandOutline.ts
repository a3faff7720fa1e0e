import { cos, distanceBetween, type Point, point, sin } from '../../base/index.ts';
import {
  type Chain,
  headingOn,
  type OutlinePoint,
  pointOn,
  segmentLength,
  segments,
} from '../../curve/index.ts';
import type { PlanParts } from '../../instrument/index.ts';
import { medianOf } from '../../numeric/index.ts';
import type { ShapePlace } from '../../photo/index.ts';

/** mm between points of the proposed outline. */
const STEP_MM = 1;
/** mm round a place in which the garland's deviations are taken together; and over which a gap is carried. */
const NEAR_MM = 3;
const CARRIED_MM = 25;
/** No unit, the cosine between normals that belong to one side of a corner. */
const SAME_SIDE = 0.7;
/** Weight of a point whose place on the garland was not measured, only carried on from beside it. */
const CARRIED_WEIGHT = 0.3;

/**
 * Points of the plates' outline as the garland asks for it, folded to the treble side: along the bouts the ribs'
 * outer face plus the overhang; at a corner the plate's corner end as far beyond the rib corner as the design has it.
 * What the garland lies off its design, the outline is moved by. Sides that differ are averaged.
 */
export function garlandOutlinePoints(
  { outline, ribs }: PlanParts,
  places: readonly ShapePlace[],
): readonly OutlinePoint[] {
  const measured = places.filter(({ state }) => state === 'seen' || state === 'by-foot');
  const sides = [
    measured.filter(({ expected }) => expected.x >= 0),
    measured.filter(({ expected }) => expected.x < 0).map(mirrored),
  ] as const;
  const moveAt = (at: Point<'body'>, normal: Point<'body'>): Move => {
    const onRib = point<'body'>(at.x - ribs.outer.insetMm * normal.x, at.y - ribs.outer.insetMm * normal.y);
    const both = sides.flatMap((side) => moveOf(side, onRib, normal) ?? []);
    if (both.length === 0) return { byMm: 0, weight: 0 };
    const mean = (of: (move: Move) => number) => both.reduce((sum, move) => sum + of(move), 0) / both.length;
    return { byMm: mean(({ byMm }) => byMm), weight: mean(({ weight }) => weight) };
  };
  const { lowerBout, cBout, upperBout } = outline.half;
  return [
    ...alongSection(lowerBout, 'lowerBout', moveAt),
    ...cornerPoints(lowerBout, cBout, 'lowerCorner', moveAt),
    ...alongSection(cBout, 'cBout', moveAt),
    ...cornerPoints(cBout, upperBout, 'upperCorner', moveAt),
    ...alongSection(upperBout, 'upperBout', moveAt),
  ];
}

/** How far outwards the outline is moved at a place, and how well that is known. */
interface Move {
  readonly byMm: number;
  readonly weight: number;
}

type MoveAt = (at: Point<'body'>, normal: Point<'body'>) => Move;

function mirrored(place: ShapePlace): ShapePlace {
  const flip = ({ x, y }: Point<'body'>) => point<'body'>(-x, y);
  return { ...place, expected: flip(place.expected), normal: flip(place.normal) };
}

function moveOf(side: readonly ShapePlace[], at: Point<'body'>, normal: Point<'body'>): Move | null {
  const own = side.filter(({ normal: out }) => out.x * normal.x + out.y * normal.y > SAME_SIDE);
  const away = (place: ShapePlace) => distanceBetween(place.expected, at);
  const near = own.filter((place) => away(place) <= NEAR_MM);
  if (near.length > 0) return { byMm: medianOf(near.map(({ missMm }) => missMm)), weight: 1 };
  const nearest = own.reduce<ShapePlace | null>((a, b) => (a && away(a) <= away(b) ? a : b), null);
  if (!nearest || away(nearest) > CARRIED_MM) return null;
  const beside = own.filter(({ expected }) => distanceBetween(expected, nearest.expected) <= NEAR_MM);
  return { byMm: medianOf(beside.map(({ missMm }) => missMm)), weight: CARRIED_WEIGHT };
}

function alongSection(
  chain: Chain<'body'>,
  section: 'lowerBout' | 'cBout' | 'upperBout',
  moveAt: MoveAt,
): readonly OutlinePoint[] {
  return segments(chain).flatMap((segment) => {
    const count = Math.max(1, Math.round(segmentLength(segment) / STEP_MM));
    return Array.from({ length: count }, (_, step) => {
      const share = (step + 0.5) / count;
      const heading = headingOn(segment, share);
      const normal = point<'body'>(sin(heading), -cos(heading));
      const at = pointOn(segment, share);
      const { byMm, weight } = moveAt(at, normal);
      return { x: at.x + byMm * normal.x, y: at.y + byMm * normal.y, weight, section };
    });
  });
}

/** The corner end moved as its two sides are: by the one shift that gives both what they ask for. */
function cornerPoints(
  arriving: Chain<'body'>,
  leaving: Chain<'body'>,
  section: 'lowerCorner' | 'upperCorner',
  moveAt: MoveAt,
): readonly OutlinePoint[] {
  const last = segments(arriving).at(-1);
  const first = segments(leaving)[0];
  if (!last || !first) return [];
  const [inRad, outRad] = [headingOn(last, 1), headingOn(first, 0)];
  const [a, b] = [inRad, outRad].map((rad) => point<'body'>(sin(rad), -cos(rad))) as [
    Point<'body'>,
    Point<'body'>,
  ];
  const [moveA, moveB] = [moveAt(last.end, a), moveAt(first.start, b)];
  const turn = a.x * b.y - a.y * b.x;
  const shift =
    Math.abs(turn) > LEAST_TURN
      ? point((moveA.byMm * b.y - moveB.byMm * a.y) / turn, (moveB.byMm * a.x - moveA.byMm * b.x) / turn)
      : point((moveA.byMm * a.x + moveB.byMm * b.x) / 2, (moveA.byMm * a.y + moveB.byMm * b.y) / 2);
  const widthMm = distanceBetween(first.start, last.end);
  const count = Math.max(1, Math.round(widthMm / STEP_MM));
  return Array.from({ length: count }, (_, step) => {
    const share = (step + 0.5) / count;
    return {
      x: last.end.x + share * (first.start.x - last.end.x) + shift.x,
      y: last.end.y + share * (first.start.y - last.end.y) + shift.y,
      weight: Math.min(moveA.weight, moveB.weight),
      section,
    };
  });
}

/** Sine of the angle between a corner's two sides from which one shift can serve both. */
const LEAST_TURN = 0.3;
