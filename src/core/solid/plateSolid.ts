import Delaunator from 'delaunator';
import { accept, type Checked, type Point, point, refuse, WELD_MM } from '../base/index.ts';
import {
  type Chain,
  chainThrough,
  containsPoint,
  nearestOn,
  nearestOnSpans,
  offsetChain,
  type Span,
  sampleChain,
  spansOf,
} from '../curve/index.ts';
import {
  type EdgeState,
  type HollowPlate,
  insideHeight,
  levelLines,
  plateHeight,
} from '../instrument/index.ts';
import type { Mesh } from './mesh.ts';
import { zipRings } from './zipRings.ts';

/** What of a plate a solid holds. */
export interface PlateSolidPlan {
  readonly state: EdgeState;
  /** Hollowed to its thicknesses, or flat below. */
  readonly hollowed: boolean;
}

/** mm between places: beside edge and channel, on the ramp of the hollow, and elsewhere where the arch is gentle. */
const CLOSE_MM = 1;
const RAMP_MM = 0.5;
const WIDE_MM = 2;

/** mm that the skin may stand off the true outside; the steps above are chosen for it, and tests measure it. */
export const PLATE_CHORD_MM = 0.02;

/** rad of the rounded edge between two rings of places. */
const ROUND_STEP_RAD = Math.PI / 14;

/** mm inside the last ring where places stand as close as on the ramp: the scoop bends most there. */
const BESIDE_RING_MM = 2;

/** mm from the crest in to the last rings, where the scoop falls away steepest, most of all in the corners. */
const INSIDE_CREST_MM = [0.5, 1] as const;

/** Share of the body length inside the edge, 24 mm on a violin, over which places stand close: channel and steep flank. */
const CLOSE_SHARE = 24 / 355;

/** Share of the distance along a line at which places stand clear of it: from a half on none hides a side of it. */
const CLEAR_SHARE = 0.62;

type Ring = readonly Point<'body'>[];

/**
 * The solid of a plate: its outside, the wall of its edge, and its inside or its flat gluing face. Plate frame: heights from
 * the gluing face up.
 *
 * The edge is laid in rings at exact distances, so that its crest stands in the skin as a line; inside it, places on a grid.
 * Fault: `solid.edge` for an edge too narrow to be rounded all round.
 */
export function plateSolid(plate: HollowPlate, outline: Chain<'body'>, plan: PlateSolidPlan): Checked<Mesh> {
  const { arch } = plate;
  const lines = edgeLines(outline, plan.state === 'finished' ? arch.numbers.crestInsetMm : 0);
  if (!lines.ok) return lines;
  const rings = lines.value.map(spaced);
  const inner = rings.at(-1) as Ring;
  const crease = plan.state === 'arched' ? creaseOf(plate) : [];
  const grid = placesInside(plate, lines.value.at(-1) as Chain<'body'>, inner, crease);
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
  return accept(closed(plate, places, top, (rings[0] as Ring).length, plan));
}

/** Lines at the distances where the round of the edge is cut, from the edge to just inside its crest. */
function edgeLines(outline: Chain<'body'>, crestMm: number): Checked<readonly Chain<'body'>[]> {
  const steps = crestMm > 0 ? Math.ceil(Math.PI / 2 / ROUND_STEP_RAD) : 0;
  const lines: Chain<'body'>[] = [];
  const insets = Array.from(
    { length: steps + 1 },
    (_, step) => crestMm * (1 - Math.cos((step * Math.PI) / 2 / Math.max(1, steps))),
  );
  if (steps > 0) insets.push(...INSIDE_CREST_MM.map((insideMm) => crestMm + insideMm));
  for (const insetMm of insets) {
    const [line, second] = insetMm === 0 ? [outline] : offsetChain(outline, -insetMm, { join: 'mitre' });
    if (!line || second)
      return refuse({
        code: 'solid.edge',
        at: 'edgeCrestInset',
        found: `an outline that is too narrow for a crest ${crestMm} mm inside its edge`,
        need: 'one line inside the edge all round',
        remedy: 'move the crest nearer to the edge, or widen the corners',
      });
    lines.push(line);
  }
  return accept(lines);
}

/** Points along a closed chain as {@link along} has them, from its lowest point on. */
function spaced(chain: Chain<'body'>): Ring {
  const dense = along(chain);
  const lowest = dense.reduce(
    (best, at, index) => (at.y < (dense[best] as Point<'body'>).y ? index : best),
    0,
  );
  return [...dense.slice(lowest), ...dense.slice(0, lowest)];
}

/** Points along a chain, its vertices among them, no farther apart than places stand close. */
function along(chain: Chain<'body'>): Ring {
  const points = sampleChain(chain, PLATE_CHORD_MM / 2);
  return points.flatMap((from, index) => {
    const to = points[index + 1] ?? (chain.closed ? points[0] : undefined);
    if (to === undefined) return [from];
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / CLOSE_MM));
    return Array.from({ length: count }, (_, step) => {
      const between = point<'body'>(
        from.x + ((to.x - from.x) * step) / count,
        from.y + ((to.y - from.y) * step) / count,
      );
      return step === 0 ? from : onto(chain, between);
    });
  });
}

function onto(chain: Chain<'body'>, at: Point<'body'>): Point<'body'> {
  return nearestOn(chain, at).point;
}

/** Places of a grid inside the innermost ring: close beside the edge, closer on the ramp of the hollow, else wide. */
function placesInside(
  { arch, line, rampMm }: HollowPlate,
  edge: Chain<'body'>,
  ring: Ring,
  crease: readonly Ring[],
): readonly Point<'body'>[] {
  const halfWidth = Math.max(...ring.map(({ x }) => x));
  const columns = Math.ceil(halfWidth / RAMP_MM);
  const rows = Math.ceil(arch.bodyLengthMm / RAMP_MM);
  const [close, wide] = [Math.round(CLOSE_MM / RAMP_MM), Math.round(WIDE_MM / RAMP_MM)];
  const [ringSpans, hollowSpans] = [spansOf(edge), spansOf(line)];
  // The grid is the treble half's, and so is the crease that can be near it.
  const creaseSpans = crease.slice(0, 1).map((treble) => spansOf(chainThrough(treble, false)));
  const apart = (spans: readonly Span<'body'>[], at: Point<'body'>): number =>
    nearestOnSpans(spans, at).distanceMm;
  const places: Point<'body'>[] = [];
  for (let row = 1; row < rows; row++)
    for (let column = 0; column <= columns; column++) {
      const at = point<'body'>(column * RAMP_MM, row * RAMP_MM);
      const isWide = column % wide === 0 && row % wide === 0;
      const isClose = column % close === 0 && row % close === 0;
      if (!containsPoint(edge, at)) continue;
      const insideMm = apart(ringSpans, at);
      const needed =
        isWide ||
        insideMm < BESIDE_RING_MM ||
        (isClose && insideMm < CLOSE_SHARE * arch.bodyLengthMm) ||
        apart(hollowSpans, at) < rampMm;
      if (!needed) continue;
      // Nearer than this to ring or crease a place would hide one of their sides.
      const clearMm = Math.min(insideMm, ...creaseSpans.map((spans) => apart(spans, at)));
      if (clearMm < CLEAR_SHARE * CLOSE_MM) continue;
      places.push(at, ...(column > 0 ? [point<'body'>(-at.x, at.y)] : []));
    }
  return places;
}

/** The line on which an arch that is not yet scooped rises out of its flat edge, on either half. */
function creaseOf({ arch }: HollowPlate): readonly Ring[] {
  return levelLines(arch, [arch.numbers.edgeHeightMm]).flatMap((treble) => {
    const line = along(treble);
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

/** The skin over and under the same places, and the wall between both along the first ring. */
function closed(
  plate: HollowPlate,
  places: readonly Point<'body'>[],
  top: readonly number[],
  ringLength: number,
  { state, hollowed }: PlateSolidPlan,
): Mesh {
  const count = places.length;
  const positions = new Float64Array(6 * count);
  places.forEach(({ x, y }, index) => {
    const across = Math.abs(x) < WELD_MM ? 0 : x;
    positions.set([across, y, plateHeight(plate.arch, x, y, state)], 3 * index);
    positions.set([across, y, hollowed ? insideHeight(plate, x, y) : 0], 3 * (count + index));
  });
  const triangles: number[] = [...top];
  for (let at = 0; at < top.length; at += 3)
    triangles.push(
      count + (top[at] as number),
      count + (top[at + 2] as number),
      count + (top[at + 1] as number),
    );
  for (let at = 0; at < ringLength; at++) {
    const next = (at + 1) % ringLength;
    triangles.push(at + count, next + count, next, at + count, next, at);
  }
  return { positions, triangles: Uint32Array.from(triangles) };
}
