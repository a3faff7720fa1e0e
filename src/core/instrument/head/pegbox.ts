import {
  accept,
  type Checked,
  cos,
  distanceBetween,
  type Fault,
  hypot,
  type Point,
  point,
  refuse,
  sin,
} from '../../base/index.ts';
import {
  type Chain,
  headingOn,
  intersections,
  lengthOf,
  parallelChain,
  pointOn,
  reverseChain,
  segments,
  subChain,
} from '../../curve/index.ts';
import type { HeadProfile } from './headProfile.ts';
import { type HeadWidths, widthAlong } from './headWidths.ts';

/** What the pegbox is hollowed to. Widths and walls stand on the front; mm. */
export interface PegboxSizes {
  readonly widthNutMm: number;
  readonly widthThroatMm: number;
  /** Of the neck where the pegbox begins, and how far from the nut the shoulders reach, in which it rounds out; 0: none. */
  readonly neckWidthMm: number;
  readonly shoulderMm: number;
  readonly wallNutMm: number;
  readonly wallThroatMm: number;
  /** How much thicker each wall is at the floor. */
  readonly leanMm: number;
  readonly floorMm: number;
  readonly endSlopeMm: number;
  readonly webMm: number;
}

/** The pegbox and its inside. */
export interface Pegbox {
  readonly sizes: PegboxSizes;
  /** From the nut to where the front edge ends at the throat, straight; widths change evenly over it. */
  readonly lengthMm: number;
  /** The inside in the middle of the head, from the end under the nut along the floor, anticlockwise. */
  readonly cavity: Chain<'head'>;
  /** Its floor from the nut to the throat. */
  readonly floor: Chain<'head'>;
  /** Its ends: under the nut and before the throat, each from the front to the floor. */
  readonly ends: readonly [Chain<'head'>, Chain<'head'>];
  /** The open front from the nut to the throat, and how far it starts and ends from the nut, straight. */
  readonly opening: Chain<'head'>;
  readonly opensFromMm: number;
  readonly opensToMm: number;
  /** The thinnest wall beside the floor, and how far from the nut. */
  readonly thinnestWall: { readonly mm: number; readonly fromNutMm: number };
}

/** mm on a head of 107 mm. The inside starts so far from the nut: the nut's edge keeps its seat. Chosen by us. */
const NUT_SEAT_MM = 1;
const SEAT_FOR_MM = 107;

/** mm along the floor at which the walls beside it are measured. */
const STEP_MM = 2;

/**
 * The pegbox of a head: floor parallel to the back, ends under the nut and before the throat, walls that grow thicker
 * toward the floor.
 *
 * Faults: `head.pegbox` (ends that leave no inside between them, walls that leave no room), `head.pegbox-floor`.
 */
export function pegbox(profile: HeadProfile, widths: HeadWidths, sizes: PegboxSizes): Checked<Pegbox> {
  const backSegments = BACK_SEGMENTS;
  const back: Chain<'head'> = {
    closed: false,
    vertices: profile.spine.vertices
      .slice(0, backSegments + 1)
      .map((vertex, index) => (index === backSegments ? { ...vertex, bulge: 0 } : vertex)),
  };
  const parallel = parallelChain(back, sizes.floorMm);
  if (!parallel.ok) return refuse(floorFault(sizes));
  const front = reverseChain(profile.front);
  const lengthMm = hypot(front.vertices.at(-1)?.x ?? 0, front.vertices.at(-1)?.y ?? 0);
  const seatMm = (NUT_SEAT_MM * profile.sizes.lengthMm) / SEAT_FOR_MM;
  const upperMm = profile.throat.centre.y - profile.throat.radiusMm - sizes.webMm;
  const opensAt = level(front, seatMm, profile.sizes.depthMm);
  const opensTo = level(front, upperMm, profile.sizes.depthMm);
  const floorFrom = level(parallel.value, seatMm + sizes.endSlopeMm, profile.sizes.depthMm);
  const floorTo = level(parallel.value, upperMm, profile.sizes.depthMm);
  if (!opensAt || !opensTo || !floorFrom || !floorTo) return refuse(endsFault(sizes));
  const opening = between(front, opensAt, opensTo);
  const floor = between(parallel.value, floorFrom, floorTo);
  if (!opening || !floor) return refuse(endsFault(sizes));
  const ends = [...floor.vertices.slice(0, -1), { ...floor.vertices.at(-1), bulge: 0 }];
  const way = reverseChain(opening).vertices;
  const cavity = {
    closed: true,
    vertices: [...ends, ...way] as Chain<'head'>['vertices'],
  };
  const first = opening.vertices[0];
  const last = opening.vertices.at(-1);
  const made: Omit<Pegbox, 'thinnestWall'> = {
    sizes,
    lengthMm,
    cavity,
    floor,
    opening,
    ends: [endWall(opening.vertices[0], floor.vertices[0]), endWall(last, floor.vertices.at(-1))],
    opensFromMm: hypot(first?.x ?? 0, first?.y ?? 0),
    opensToMm: hypot(last?.x ?? 0, last?.y ?? 0),
  };
  const narrowestMm = Math.min(insideWidth(made, 0, 1), insideWidth(made, lengthMm, 1));
  if (!(narrowestMm > 0)) return refuse(roomFault(sizes));
  return accept({ ...made, thinnestWall: thinnestWall(made, profile, widths) });
}

/** Segments of the spine that are the pegbox's back: hollow, straight, round. */
const BACK_SEGMENTS = 3;

/** Width of the pegbox on the front, at a straight distance from the nut; its shoulders are quarters of ellipses. */
export function outsideWidth(
  { sizes, lengthMm }: Pick<Pegbox, 'sizes' | 'lengthMm'>,
  fromNutMm: number,
): number {
  const { neckWidthMm, shoulderMm } = sizes;
  const wideMm = taperedWidth({ sizes, lengthMm }, fromNutMm);
  if (fromNutMm >= shoulderMm) return wideMm;
  const rounded = Math.sqrt(1 - (1 - Math.max(0, fromNutMm) / shoulderMm) ** 2);
  return neckWidthMm + (wideMm - neckWidthMm) * rounded;
}

/** The same without shoulders. */
function taperedWidth({ sizes, lengthMm }: Pick<Pegbox, 'sizes' | 'lengthMm'>, fromNutMm: number): number {
  return sizes.widthNutMm + ((sizes.widthThroatMm - sizes.widthNutMm) * fromNutMm) / lengthMm;
}

/** Width of the inside at a straight distance from the nut; `depth` runs from 0 on the front to 1 on the floor. */
export function insideWidth(
  box: Pick<Pegbox, 'sizes' | 'lengthMm'>,
  fromNutMm: number,
  depth: number,
): number {
  const { wallNutMm, wallThroatMm, leanMm } = box.sizes;
  const wallMm = wallNutMm + ((wallThroatMm - wallNutMm) * fromNutMm) / box.lengthMm;
  return taperedWidth(box, fromNutMm) - 2 * (wallMm + leanMm * depth);
}

/** Walls beside the floor: the head narrows from front to back while the inside narrows less. */
function thinnestWall(
  box: Omit<Pegbox, 'thinnestWall'>,
  profile: HeadProfile,
  widths: HeadWidths,
): Pegbox['thinnestWall'] {
  const backLine = segments(profile.spine).slice(0, BACK_SEGMENTS);
  let alongMm = 0;
  let best = { mm: Number.POSITIVE_INFINITY, fromNutMm: 0 };
  for (const segment of backLine) {
    const lengthMm = lengthOf({
      closed: false,
      vertices: [
        { ...segment.start, bulge: segment.bulge },
        { ...segment.end, bulge: 0 },
      ],
    });
    const count = Math.max(1, Math.ceil(lengthMm / STEP_MM));
    for (let step = 0; step <= count; step++) {
      const share = step / count;
      const at = pointOn(segment, share);
      const inward = headingOn(segment, share) + Math.PI / 2;
      const floor = point<'head'>(
        at.x + box.sizes.floorMm * cos(inward),
        at.y + box.sizes.floorMm * sin(inward),
      );
      const fromNutMm = hypot(floor.x, floor.y);
      if (!onFloor(box, floor)) continue;
      const frontMm = frontAcross(box.opening, floor, inward);
      if (frontMm === null) continue;
      const backMm = widthAlong(widths, alongMm + share * lengthMm);
      const outer = outsideWidth(box, fromNutMm);
      // The outside runs straight from the front edge to the back edge.
      const outsideMm = backMm + ((outer - backMm) * box.sizes.floorMm) / (box.sizes.floorMm + frontMm);
      const mm = (outsideMm - insideWidth(box, fromNutMm, 1)) / 2;
      if (mm < best.mm) best = { mm, fromNutMm };
    }
    alongMm += lengthMm;
  }
  return best;
}

function onFloor({ floor }: Pick<Pegbox, 'floor'>, at: Point<'head'>): boolean {
  const [first, last] = [floor.vertices[0], floor.vertices.at(-1)];
  return first !== undefined && last !== undefined && at.y >= first.y && at.y <= last.y;
}

/** How far the open front lies from a place of the floor, square to the back; null where there is none. */
function frontAcross(opening: Chain<'head'>, at: Point<'head'>, inwardRad: number): number | null {
  const reachMm = 1000;
  const line: Chain<'head'> = {
    closed: false,
    vertices: [at, { x: at.x + reachMm * cos(inwardRad), y: at.y + reachMm * sin(inwardRad) }].map((one) => ({
      ...one,
      bulge: 0,
    })),
  };
  const [hit] = intersections(line, opening);
  return hit ? distanceBetween(hit.point, at) : null;
}

function endWall(front: Point<'head'> | undefined, floor: Point<'head'> | undefined): Chain<'head'> {
  const vertices = [front, floor].flatMap((at) => (at ? [{ x: at.x, y: at.y, bulge: 0 }] : []));
  return { closed: false, vertices };
}

/** Where a line crosses a height over the nut, the first along it. */
function level(line: Chain<'head'>, yMm: number, reachMm: number) {
  const across: Chain<'head'> = {
    closed: false,
    vertices: [-reachMm, 2 * reachMm].map((x) => ({ x, y: yMm, bulge: 0 })),
  };
  return intersections(line, across)[0]?.a;
}

function between(
  line: Chain<'head'>,
  from: { readonly segment: number; readonly fraction: number },
  to: { readonly segment: number; readonly fraction: number },
): Chain<'head'> | null {
  const ahead = to.segment - from.segment || to.fraction - from.fraction;
  return ahead > 0 ? subChain(line, from, to) : null;
}

function endsFault({ endSlopeMm, webMm }: PegboxSizes): Fault {
  return {
    code: 'head.pegbox',
    at: 'pegboxWeb',
    found: `an end sloping in by ${endSlopeMm} mm under the nut and ${webMm} mm of wood before the throat, which leave no inside`,
    need: 'a pegbox that is open between its ends',
    remedy: 'make pegboxWeb or pegboxEndSlope smaller',
  };
}

function roomFault({ widthNutMm, widthThroatMm, wallNutMm, wallThroatMm, leanMm }: PegboxSizes): Fault {
  return {
    code: 'head.pegbox',
    at: 'pegboxWallThroat',
    found: `walls of ${wallNutMm} to ${wallThroatMm} mm, ${leanMm} mm more at the floor, in a pegbox ${widthNutMm} to ${widthThroatMm} mm wide`,
    need: 'room between the walls, down to the floor',
    remedy: 'thin the walls, or widen the pegbox',
  };
}

function floorFault({ floorMm }: PegboxSizes): Fault {
  return {
    code: 'head.pegbox-floor',
    at: 'pegboxFloor',
    found: `a floor ${floorMm} mm inside the back of the head`,
    need: 'a floor thinner than the round of the back',
    remedy: 'lower pegboxFloor, or check headDepth',
  };
}
