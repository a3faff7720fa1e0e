import { accept, type Checked, cos, type Point, point, refuse, sin } from '../base/index.ts';
import {
  arcOf,
  areaOf,
  type Chain,
  headingOn,
  reverseChain,
  segments,
  spansOf,
  wrapAngle,
} from '../curve/index.ts';
import { continuedArchHeight, type PlateArch, plateHeight } from '../instrument/index.ts';
import {
  longArchJoints,
  type SpaceCurve,
  type SplinePatch,
  type SplineSurface,
  splineSurface,
  splineSurfaceAt,
} from '../surface/index.ts';
import { KNOT_SHARES, MEASURED_SHARE, PROBE_SHARE, SURFACE_MM } from './archedShape.ts';
import { channelRound } from './channelRound.ts';
import { mitreCurve, mitrePlace } from './edgeMitre.ts';
import { crossingsAt } from './rowCrossings.ts';
import { type ScoopGround, scoopBorderOff, scoopOff, scoopPatch } from './scoopPatch.ts';

/**
 * The finished outside of a plate over a flat gluing face, bounded by true surfaces: upright walls, the quarter round outside the
 * crest (tori and cylinders along the outline's arcs and lines), the scoop between crest and channel, and the arch.
 */
export interface EdgedShape {
  /** Anticlockwise. */
  readonly outline: Chain<'body'>;
  readonly edgeHeightMm: number;
  readonly crestInsetMm: number;
  /** The crest inside each vertex of the outline. */
  readonly crest: readonly Point<'body'>[];
  /** For each vertex that is a corner the curve over its mitre, from the wall up; null where the edge runs on smoothly. */
  readonly mitres: readonly (SpaceCurve | null)[];
  readonly arch: SplineSurface;
  /** Anticlockwise. */
  readonly scoops: readonly Scoop[];
  /** The most by which arch and scoops stand off the plate, as measured all over them. */
  readonly offMm: number;
}

/** The scoop from corner to corner: u from the channel (0) to the crest (1), v along the channel, anticlockwise. */
export interface Scoop {
  readonly patch: SplinePatch;
  /** The outline's vertices between whose crests it lies. */
  readonly fromVertex: number;
  readonly toVertex: number;
}

/** mm that the edges of a scoop may stand off the faces beside it. */
export const SCOOP_EDGE_MM = 0.0005;

/** Share of the step between knots of the arch that knots along the scoop stand apart: 0.6 mm on a violin. */
const SCOOP_SHARE = 0.2;

/** rad. Sharper turns of the outline than this are corners, where the crest is mitred. */
const CORNER_RAD = 0.01;

/**
 * The finished outside of a plate in true surfaces.
 *
 * Faults: `solid.crest` (an outline whose crest does not follow it side by side: hollow corners, no corners, or arcs rounder
 * than the crest is deep inside), `solid.surface` (no surfaces keep to {@link SURFACE_MM}).
 */
export function edgedShape(plate: PlateArch, anyOutline: Chain<'body'>): Checked<EdgedShape> {
  const outline = areaOf(anyOutline) < 0 ? reverseChain(anyOutline) : anyOutline;
  const { crestInsetMm, edgeHeightMm } = plate.numbers;
  const crest = crestOf(outline, crestInsetMm);
  if (!crest) return crestRefusal(plate);
  const sides = segments(outline);
  const mitres = sides.map((side, k) => {
    const before = sides.at(k - 1) ?? side;
    const round = { radiusMm: crestInsetMm, wallMm: edgeHeightMm - crestInsetMm, way: 1 } as const;
    return crest.corners.includes(k) ? mitreCurve(before, side, round) : null;
  });
  const [round, spans] = [channelRound(plate), spansOf(outline)];
  let leastMm = Number.POSITIVE_INFINITY;
  for (const share of KNOT_SHARES) {
    const stepMm = share * plate.bodyLengthMm;
    const arch = archTo(plate, stepMm);
    const ground = { plate, round, outline: spans, arch, alongMm: SCOOP_SHARE * stepMm };
    const archMm = archOff(ground);
    // No scoop comes closer than the arch that it joins.
    const scoops = archMm < MEASURED_SHARE * SURFACE_MM ? scoopsOf(ground, crest) : [];
    const offMm = Math.max(archMm, ...scoops.map(({ patch }) => scoopOff(ground, patch)));
    const edgeOffMm = Math.max(0, ...scoops.map(({ patch }) => scoopBorderOff(ground, patch)));
    leastMm = Math.min(leastMm, Math.max(offMm, edgeOffMm));
    if (offMm >= MEASURED_SHARE * SURFACE_MM || edgeOffMm >= MEASURED_SHARE * SCOOP_EDGE_MM) continue;
    const places = crest.places;
    return accept({ outline, edgeHeightMm, crestInsetMm, crest: places, mitres, arch, scoops, offMm });
  }
  return refuse({
    code: 'solid.surface',
    at: plate.plate,
    found: `a finished outside whose smooth surfaces and their edges miss by up to ${leastMm.toFixed(3)} mm`,
    need: `an outside that is met within ${SURFACE_MM} mm, to be written as STEP`,
    remedy: 'use the STL or 3MF of this plate, or smooth the arch',
  });
}

/** The round below an edge, from the wall down to the gluing face. */
export interface UnderRound {
  readonly radiusMm: number;
  /** The gluing face's edge inside every vertex of the outline. */
  readonly places: readonly Point<'body'>[];
  /** Over each vertex from the gluing face up to the wall: a curve where the outline has a corner. */
  readonly mitres: readonly (SpaceCurve | null)[];
}

/** The round below the edge of the shape of a plate. Fault `solid.under`: it does not follow the outline side by side, or leaves no wall. */
export function underRound(shape: EdgedShape, radiusMm: number, at: string): Checked<UnderRound> {
  const { outline, edgeHeightMm, crestInsetMm } = shape;
  const foot = radiusMm > 0 && radiusMm + crestInsetMm < edgeHeightMm ? crestOf(outline, radiusMm) : null;
  if (!foot)
    return refuse({
      code: 'solid.under',
      at,
      found: `an outline with a side that a round of ${radiusMm} mm below its edge does not follow`,
      need: 'an outline whose every arc is wider than the round is deep, to be written as STEP',
      remedy: 'use the STL or 3MF of the whole plate, or round the edge less below',
    });
  const sides = segments(outline);
  const round = { radiusMm, wallMm: radiusMm, way: -1 } as const;
  const mitres = sides.map((side, k) =>
    foot.corners.includes(k) ? mitreCurve(sides.at(k - 1) ?? side, side, round) : null,
  );
  return accept({ radiusMm, places: foot.places, mitres });
}

interface Crest {
  readonly places: readonly Point<'body'>[];
  readonly corners: readonly number[];
}

/** The crest inside every vertex; null where its sides are not those of the outline, one for one. */
function crestOf(outline: Chain<'body'>, insetMm: number): Crest | null {
  const sides = segments(outline);
  const turns = sides.map((side, k) => wrapAngle(headingOn(side, 0) - headingOn(sides.at(k - 1) ?? side, 1)));
  const corners = turns.flatMap((turn, k) => (Math.abs(turn) > CORNER_RAD ? [k] : []));
  const places = sides.map((side, k): Point<'body'> => {
    if (corners.includes(k)) return mitrePlace(sides.at(k - 1) ?? side, side, insetMm);
    const headingRad = headingOn(side, 0);
    return point(side.start.x - insetMm * sin(headingRad), side.start.y + insetMm * cos(headingRad));
  });
  const follows = sides.every((side, k) => {
    const [from, to] = [places[k] as Point<'body'>, places[(k + 1) % places.length] as Point<'body'>];
    const [alongX, alongY] = [side.end.x - side.start.x, side.end.y - side.start.y];
    const arc = arcOf(side);
    const hasRoom = !arc || arc.sweepRad < 0 || arc.radiusMm > insetMm;
    return hasRoom && (to.x - from.x) * alongX + (to.y - from.y) * alongY > 0;
  });
  const areFull = corners.every((k) => (turns[k] as number) > 0);
  return follows && areFull && corners.length > 1 ? { places, corners } : null;
}

function crestRefusal({ plate }: PlateArch): Checked<never> {
  return refuse({
    code: 'solid.crest',
    at: plate,
    found: 'an outline with a side that its crest does not follow',
    need: 'an outline whose every arc is wider than the crest is deep inside it, with corners that stand out, to be written as STEP',
    remedy: 'use the STL or 3MF of this plate, or move the crest nearer to the edge',
  });
}

/** mm beyond the channel that the arch's surface reaches, so that the channel lies on it and not on its end. */
const MARGIN_MM = 1;

function archTo(plate: PlateArch, stepMm: number): SplineSurface {
  const { startMm, endMm } = plate.longArch;
  const widestMm = plate.channel.line.points.reduce((most, { x }) => Math.max(most, x), 0) + MARGIN_MM;
  const stopsY = [startMm - MARGIN_MM, ...longArchJoints(plate.longArch), endMm + MARGIN_MM];
  return splineSurface({ stopsX: [-widestMm, widestMm], stopsY, stepMm }, (x, y) =>
    continuedArchHeight(plate, x, y),
  );
}

/** The most by which the arch's surface stands off the plate inside the channel, treble half. */
function archOff({ plate, arch }: ScoopGround): number {
  const stepMm = PROBE_SHARE * plate.bodyLengthMm;
  const { points } = plate.channel.line;
  let most = 0;
  for (let y = plate.longArch.startMm; y < plate.longArch.endMm; y += stepMm) {
    const crossings = crossingsAt(points, y);
    const widestMm = Math.max(0, ...crossings);
    for (let x = 0; x < widestMm; x += stepMm)
      if (crossings.filter((crossing) => crossing > x).length % 2 === 1)
        most = Math.max(
          most,
          Math.abs(splineSurfaceAt(arch, x, y).zMm - plateHeight(plate, x, y, 'finished')),
        );
  }
  return most;
}

function scoopsOf(ground: ScoopGround, { places, corners }: Crest): readonly Scoop[] {
  const { round } = ground;
  const feet = places.map(round.footOf);
  return corners.map((fromVertex, index) => {
    const toVertex = corners[(index + 1) % corners.length] as number;
    const fromMm = feet[fromVertex] as number;
    const toMm = round.after(feet[toVertex] as number, fromMm);
    const joints = [...feet, ...round.jointsMm].map((at) => round.after(at, fromMm));
    return { patch: scoopPatch(ground, fromMm, toMm, joints), fromVertex, toVertex };
  });
}
