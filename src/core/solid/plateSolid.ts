import Delaunator from 'delaunator';
import { accept, type Checked, type Point, point, WELD_MM } from '../base/index.ts';
import { type Chain, chainThrough, containsPoint } from '../curve/index.ts';
import {
  type EdgeState,
  type HollowPlate,
  insideHeight,
  levelLines,
  plateHeight,
} from '../instrument/index.ts';
import { gridPlaces, type PlaceGrid } from './gridPlaces.ts';
import type { Mesh } from './mesh.ts';
import { along, edgeLines, type Ring, spaced } from './plateRings.ts';
import { zipRings } from './zipRings.ts';

/** What of a plate a solid holds. */
export interface PlateSolidPlan {
  readonly state: EdgeState;
  /** Hollowed to its thicknesses, or flat below. */
  readonly hollowed: boolean;
}

/** mm that the skin may stand off the true outside; the steps below are chosen for it, and tests measure it. */
export const PLATE_CHORD_MM = 0.02;

/** mm of body length that the steps below are for. */
const REFERENCE_LENGTH_MM = 355;

/**
 * mm between places beside edge and crease. Larger bodies bend less by as much as they are larger, so that for one chord error
 * steps grow with the root of the length.
 */
const CLOSE_MM = 1;

/** mm between places along rings and crease. */
const RING_MM = 1;

/** Lines of the grid from place to place; it has two to each of the steps above. */
const EVERY = { finest: 1, half: 2, close: 3, wide: 5 } as const;

/**
 * Shares of the body length inside the last ring to which places stand on the finest grid, at the step above and close: beside
 * the crest the scoop bends most (2 mm on a violin), then in the rest of it and the foot of the arch (17 mm), then its flank (28 mm).
 */
const BESIDE_RING = [
  { share: 2 / 355, every: EVERY.finest },
  { share: 17 / 355, every: EVERY.half },
  { share: 28 / 355, every: EVERY.close },
] as const;

/** The same inside the crease of an arch that is not scooped yet: 16 mm on a violin. */
const BESIDE_CREASE = { share: 16 / 355, every: EVERY.close } as const;

/** Share of the distance along a line at which places stand clear of it: from a half on none hides a side of it. */
const CLEAR_SHARE = 0.62;

/**
 * The solid of a plate: its outside, the wall of its edge, and its inside or its flat gluing face. Plate frame: heights from
 * the gluing face up.
 *
 * The edge is laid in rings at exact distances, so that its crest stands in the skin as a line; inside it, places on a grid.
 * What is flat has places along its border only.
 * Fault: `solid.edge` for an edge too narrow to be rounded all round.
 */
export function plateSolid(plate: HollowPlate, outline: Chain<'body'>, plan: PlateSolidPlan): Checked<Mesh> {
  const { arch } = plate;
  const lines = edgeLines(outline, plan.state === 'finished' ? arch.numbers.crestInsetMm : 0);
  if (!lines.ok) return lines;
  const closeMm = CLOSE_MM * Math.sqrt(arch.bodyLengthMm / REFERENCE_LENGTH_MM);
  const rings = lines.value.map((line) => spaced(line, PLATE_CHORD_MM / 2, RING_MM));
  const inner = rings.at(-1) as Ring;
  const crease = plan.state === 'arched' ? creaseOf(plate, RING_MM) : [];
  const grid = gridPlaces(gridOf(plate, lines.value.at(-1) as Chain<'body'>, crease, closeMm, plan));
  const field = [...inner, ...crease.flat(), ...grid];
  const places = [...rings.slice(0, -1).flat(), ...field];
  const firstOfField = places.length - field.length;
  const strips: (readonly number[])[] = [];
  let start = 0;
  rings.slice(1).forEach((ring, index) => {
    const outer = rings[index] as Ring;
    strips.push(zipRings(outer, start, ring, start + outer.length));
    start += outer.length;
  });
  const top = [...strips.flat(), ...trianglesInside(inner, field, firstOfField)];
  return accept(closed(plate, places, top, rings[0] as Ring, plan));
}

/** Where places stand: all over what bends, closer beside lines at which it bends most. */
function gridOf(
  { arch, line, rampMm }: HollowPlate,
  edge: Chain<'body'>,
  [treble, bass]: readonly Ring[],
  closeMm: number,
  { hollowed }: PlateSolidPlan,
): PlaceGrid {
  const ramp = { lines: [line], reachMm: rampMm, every: EVERY.finest };
  const shared = {
    stepMm: closeMm / EVERY.half,
    every: EVERY.wide,
    clearMm: CLEAR_SHARE * RING_MM,
  };
  if (treble === undefined || bass === undefined)
    return {
      ...shared,
      edge,
      bands: [
        ...(hollowed ? [ramp] : []),
        ...BESIDE_RING.map(({ share, every }) => ({
          lines: [edge],
          reachMm: share * arch.bodyLengthMm,
          every,
        })),
      ],
      clearOf: [],
    };
  const crease = chainThrough(treble, false);
  const { share, every } = BESIDE_CREASE;
  const flank = { lines: [crease], reachMm: share * arch.bodyLengthMm, every };
  if (hollowed) return { ...shared, edge, bands: [ramp, flank], clearOf: [crease] };
  const round = chainThrough([...treble, ...bass.toReversed()], true);
  return { ...shared, edge: round, bands: [flank], clearOf: [] };
}

/** The line on which an arch that is not yet scooped rises out of its flat edge, on either half; both run up. */
function creaseOf({ arch }: HollowPlate, stepMm: number): readonly Ring[] {
  return levelLines(arch, [arch.numbers.edgeHeightMm]).flatMap((treble) => {
    const line = along(treble, PLATE_CHORD_MM / 2, stepMm);
    // Both halves meet on the centre line, where one of two equal places is enough.
    const bass = line.filter(({ x }) => x > WELD_MM).map(({ x, y }) => point<'body'>(-x, y));
    return line.length > 1 ? [line, bass] : [];
  });
}

/** Delaunay's triangles over the places, without those outside the ring. */
function trianglesInside(ring: Ring, field: readonly Point<'body'>[], first: number): readonly number[] {
  const edge: Chain<'body'> = { closed: true, vertices: ring.map(({ x, y }) => ({ x, y, bulge: 0 })) };
  const { triangles } = Delaunator.from(
    [...field],
    ({ x }) => x,
    ({ y }) => y,
  );
  const kept: number[] = [];
  for (let at = 0; at < triangles.length; at += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => triangles[at + corner] as number) as [number, number, number];
    const [p, q, r] = [field[a], field[b], field[c]] as [Point<'body'>, Point<'body'>, Point<'body'>];
    const onRing = a < ring.length && b < ring.length && c < ring.length;
    if (onRing && !containsPoint(edge, point<'body'>((p.x + q.x + r.x) / 3, (p.y + q.y + r.y) / 3))) continue;
    const turn = (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
    kept.push(first + a, ...(turn > 0 ? [first + b, first + c] : [first + c, first + b]));
  }
  return kept;
}

/** The skin over the places, the one under them, and the wall between both along the first ring. */
function closed(
  plate: HollowPlate,
  places: readonly Point<'body'>[],
  top: readonly number[],
  ring: Ring,
  { state, hollowed }: PlateSolidPlan,
): Mesh {
  const count = places.length;
  // What is flat below needs no places but those of its border.
  const [below, under] = hollowed ? [places, top] : [ring, trianglesInside(ring, ring, 0)];
  const positions = new Float64Array(3 * (count + below.length));
  const put = (at: number, { x, y }: Point<'body'>, zMm: number): void => {
    positions[3 * at] = Math.abs(x) < WELD_MM ? 0 : x;
    positions[3 * at + 1] = y;
    positions[3 * at + 2] = zMm;
  };
  places.forEach((place, index) => put(index, place, plateHeight(plate.arch, place.x, place.y, state)));
  below.forEach((place, index) =>
    put(count + index, place, hollowed ? insideHeight(plate, place.x, place.y) : 0),
  );
  const triangles = new Uint32Array(top.length + under.length + 6 * ring.length);
  triangles.set(top);
  for (let at = 0; at < under.length; at += 3) {
    const to = top.length + at;
    triangles[to] = count + (under[at] as number);
    triangles[to + 1] = count + (under[at + 2] as number);
    triangles[to + 2] = count + (under[at + 1] as number);
  }
  ring.forEach((_, at) => {
    const next = (at + 1) % ring.length;
    triangles.set([at + count, next + count, next, at + count, next, at], top.length + under.length + 6 * at);
  });
  return { positions, triangles };
}
