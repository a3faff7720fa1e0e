import { accept, type Checked, type Point, point, refuse, sin, WELD_MM } from '../base/index.ts';
import { type Chain, chainThrough, distanceToSpans, spansContain, spansOf } from '../curve/index.ts';
import {
  type EdgeState,
  type HollowPlate,
  insideHeight,
  levelLines,
  plateHeight,
} from '../instrument/index.ts';
import { gridPlaces, type PlaceGrid } from './gridPlaces.ts';
import type { Mesh } from './mesh.ts';
import { openingRings } from './openingRings.ts';
import { along, edgeLines, type Ring, spaced, underLines } from './plateRings.ts';
import { betweenSkins, type HeightAt, plateSkin } from './plateSkin.ts';
import { refinedPlaces } from './refinedPlaces.ts';

/** What of a plate a solid holds. */
export interface PlateSolidPlan {
  readonly state: EdgeState;
  /** Hollowed to its thicknesses, or flat below. */
  readonly hollowed: boolean;
  /** Closed lines inside which the plate is cut through, square to its gluing face. */
  readonly openings?: readonly Chain<'body'>[];
  /** Radius of the round below the edge, toward the ribs; 0 for a square arris. */
  readonly underRoundingMm?: number;
  /** Height of the inside, where several solids of one plate share what was found of it. */
  readonly insideAt?: HeightAt;
}

/** mm that the skin may stand off the true outside; the steps below are chosen for it, and tests measure it. */
export const PLATE_CHORD_MM = 0.02;

/**
 * mm that the skin of the inside may stand off, straight down: it is laid for {@link PLATE_CHORD_MM}, which places beside the wall of a
 * sound hole may miss by a hundredth.
 */
export const INSIDE_CHORD_MM = 0.035;

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

/** The heights of a plate's inside, each found once however often it is asked for. */
export function rememberedInside(plate: HollowPlate): HeightAt {
  const columns = new Map<number, Map<number, number>>();
  return (x, y) => {
    const column = columns.get(x) ?? new Map<number, number>();
    columns.set(x, column);
    const zMm = column.get(y) ?? insideHeight(plate, x, y);
    column.set(y, zMm);
    return zMm;
  };
}

/** mm between places along an opening. */
const OPENING_MM = 0.5;

/**
 * The solid of a plate: its outside, the wall of its edge, and its inside or its flat gluing face. Plate frame: heights from
 * the gluing face up. Openings are cut square to the gluing face.
 *
 * The edge is laid in rings at exact distances, so that its crest stands in the skin as a line; inside it, places on a grid.
 * What is flat has places along its border only; the inside has them where it bends.
 * Faults: `solid.edge` for an edge too narrow to be rounded all round, or too low for its roundings.
 */
export function plateSolid(plate: HollowPlate, outline: Chain<'body'>, plan: PlateSolidPlan): Checked<Mesh> {
  const { arch } = plate;
  const { state, hollowed, openings = [], underRoundingMm = 0 } = plan;
  const { crestInsetMm, edgeHeightMm } = arch.numbers;
  const roundMm = state === 'finished' ? crestInsetMm : 0;
  if (!(underRoundingMm >= 0 && roundMm + underRoundingMm < edgeHeightMm))
    return refuse({
      code: 'solid.edge',
      at: 'edgeUnderRounding',
      found: `roundings of ${underRoundingMm} mm below and ${roundMm} mm above on an edge of ${edgeHeightMm} mm`,
      need: 'an upright face between two roundings',
      remedy: 'make the lower one smaller, or the crest less far in',
    });
  const lines = edgeLines(outline, roundMm);
  const under = underLines(outline, underRoundingMm);
  if (!lines.ok || !under.ok) return refuse(...[lines, under].flatMap((one) => (one.ok ? [] : one.faults)));
  const closeMm = CLOSE_MM * Math.sqrt(arch.bodyLengthMm / REFERENCE_LENGTH_MM);
  const ringOf = (line: Chain<'body'>): Ring => spaced(line, PLATE_CHORD_MM / 2, RING_MM);
  const cut = openingRings(openings, PLATE_CHORD_MM / 2, OPENING_MM);
  const crease = state === 'arched' ? creaseOf(plate, RING_MM) : [];
  const outside: HeightAt = (x, y) => plateHeight(arch, x, y, state);
  const rings = lines.value.map(({ line }) => ({ places: ringOf(line), heightAt: outside }));
  const grid = gridPlaces(gridOf(plate, lines.value.at(-1)?.line ?? outline, crease, closeMm, openings));
  const isOpen = insideAny(openings);
  const above = plateSkin(
    rings,
    cut,
    [...crease.flat(), ...grid].filter((at) => !isOpen(at)),
    outside,
  );
  const lower = under.value.map(({ line, turnRad }) => ({
    places: ringOf(line),
    heightAt: () => underRoundingMm * (1 - sin(turnRad)),
  }));
  const insideAt = plan.insideAt ?? ((x, y) => insideHeight(plate, x, y));
  const inside: HeightAt = hollowed ? insideAt : () => 0;
  const innermost = lower.at(-1)?.places ?? [];
  const floor = hollowed ? floorPlaces(plate, insideAt, innermost, cut, openings, closeMm) : [];
  return accept(betweenSkins(above, plateSkin(lower, cut, floor, inside)));
}

function insideAny(openings: readonly Chain<'body'>[]): (at: Point<'body'>) => boolean {
  const spans = openings.map((line) => spansOf(line));
  return (at) => spans.some((one) => spansContain(one, at));
}

/** Where places of the inside stand: along its border, wide apart inside it, and closer where it bends. */
function floorPlaces(
  plate: HollowPlate,
  heightAt: HeightAt,
  outer: Ring,
  cut: readonly Ring[],
  openings: readonly Chain<'body'>[],
  closeMm: number,
): readonly Point<'body'>[] {
  const [edge, isOpen] = [spansOf(chainThrough(outer, true)), insideAny(openings)];
  const around = openings.flatMap((line) => spansOf(line));
  const isClear = (at: Point<'body'>): boolean =>
    distanceToSpans(around, at.x, at.y, OPENING_MM) > CLEAR_SHARE * OPENING_MM &&
    !isOpen(at) &&
    distanceToSpans(edge, at.x, at.y, RING_MM) > CLEAR_SHARE * RING_MM;
  const grid = gridPlaces({
    edge: plate.line,
    stepMm: closeMm / EVERY.half,
    every: EVERY.wide,
    bands: [],
    clearOf: [],
    clearMm: CLEAR_SHARE * RING_MM,
  });
  return refinedPlaces(
    {
      outer,
      openings: cut,
      places: [...spaced(plate.line, PLATE_CHORD_MM, BORDER_MM), ...grid].filter(isClear),
      heightAt,
      isClear,
    },
    MEASURED_SHARE * PLATE_CHORD_MM,
  );
}

/** mm between places along the border of the hollow, which lies in the gluing face. */
const BORDER_MM = 2;

/** Share of the chord error that the places which are measured keep to, so that those between them keep to the whole. */
const MEASURED_SHARE = 0.8;

/** Where places stand: all over what bends, closer beside lines at which it bends most. */
function gridOf(
  { arch }: HollowPlate,
  edge: Chain<'body'>,
  [treble, bass]: readonly Ring[],
  closeMm: number,
  openings: readonly Chain<'body'>[],
): PlaceGrid {
  const shared = {
    stepMm: closeMm / EVERY.half,
    every: EVERY.wide,
    clearMm: CLEAR_SHARE * RING_MM,
  };
  if (treble === undefined || bass === undefined)
    return {
      ...shared,
      edge,
      bands: BESIDE_RING.map(({ share, every }) => ({
        lines: [edge],
        reachMm: share * arch.bodyLengthMm,
        every,
      })),
      clearOf: openings,
    };
  const crease = chainThrough(treble, false);
  const { share, every } = BESIDE_CREASE;
  const flank = { lines: [crease], reachMm: share * arch.bodyLengthMm, every };
  const round = chainThrough([...treble, ...bass.toReversed()], true);
  return { ...shared, edge: round, bands: [flank], clearOf: openings };
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
