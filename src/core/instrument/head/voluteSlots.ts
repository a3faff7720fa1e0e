import { atan2, cos, distanceBetween, type Point, point, sin } from '../../base/index.ts';
import {
  arcOf,
  type Chain,
  lengthOf,
  parallelChain,
  placeAlong,
  pointAlong,
  reverseChain,
  segments,
  subChain,
} from '../../curve/index.ts';
import { arcsChain, type HeadProfile } from './headProfile.ts';
import { QUARTERS_TO_THROAT } from './volute.ts';

/** How a template lets a pencil follow the spiral without falling apart. */
export interface VoluteSlots {
  /** Closed slots along the spiral from the throat inward, clockwise, parallel to it to the last figure. */
  readonly slots: readonly Chain<'head'>[];
  /** Where wood is too narrow for a slot: places on the spiral to prick through. */
  readonly pricks: readonly Point<'head'>[];
  /** Middle of the eye, pricked through. */
  readonly eye: Point<'head'>;
  /** The spiral from the last slot to the eye, to be seen only; null where a slot runs up to it. */
  readonly rest: Chain<'head'> | null;
  /** The least wood between a slot and the next turn's, or the prick of the eye. */
  readonly leastLandMm: number;
}

/** mm. Width of a slot: a sharp pencil or a scriber runs in it. Common practice. */
const SLOT_MM = 1;
/** mm. Diameters of the hole at the eye and of those that stand for a slot. */
export const EYE_PRICK_MM = 1;
export const PRICK_MM = 0.8;
/** mm. Wood left between slots end to end: less breaks out of thin plywood. From memory. */
const BRIDGE_MM = 2.2;
/** mm on a head of 107 mm. Wished from bridge to bridge. */
const PITCH_MM = 13;
const PITCH_FOR_MM = 107;
/** mm. Narrower wood between two turns gets no slot; narrower beside a hole is a sliver. Chosen by us. */
const LEAST_LAND_MM = 2;
const SLIVER_MM = 1.5;
/** mm. A shorter slot guides no pencil. */
const LEAST_SLOT_MM = 3;
/** rad. Bridges of neighbouring turns nearer than this as seen from the eye make one weak ray. */
const IN_LINE_RAD = (12 * Math.PI) / 180;
/** Lengths of a slot that are tried one after the other until its bridge is clear of those of the turn outside. */
const TRIED = [1, 0.85, 1.15, 0.7, 1.3, 0.55, 1.45] as const;
/** mm along the spiral at which the wood beside it is looked at. */
const LOOK_MM = 0.25;
/** rad between pricks, and least mm. */
const PRICK_RAD = Math.PI / 6;

/** The slots along the spiral of a head, with bridges between them. */
export function voluteSlots(head: HeadProfile): VoluteSlots {
  const line = spiralFromThroat(head);
  const wholeMm = lengthOf(line);
  const eye = (head.volute.arcs.at(-1) as HeadProfile['volute']['arcs'][number]).centre;
  const looks = looked(line, wholeMm, eye);
  const narrow = looks.find(({ landMm }) => landMm < LEAST_LAND_MM);
  const nearEye = looks.find(({ toEyeMm }) => toEyeMm < EYE_PRICK_MM / 2 + SLIVER_MM + SLOT_MM / 2);
  const endMm = Math.min(narrow?.atMm ?? wholeMm, nearEye?.atMm ?? wholeMm);
  // The round of the throat reaches on beside the spiral by its radius.
  const startMm = head.throat.radiusMm + BRIDGE_MM;
  const pitchMm = (PITCH_MM * head.sizes.lengthMm) / PITCH_FOR_MM;
  const spans = slotSpans(line, startMm, endMm, eye, pitchMm);
  const slottedMm = spans.at(-1)?.[1] ?? 0;
  return {
    slots: spans.map(([from, to]) => slotOf(line, from, to)),
    pricks: pricksAfter(line, slottedMm, wholeMm, looks),
    eye,
    rest:
      wholeMm - slottedMm < SLOT_MM
        ? null
        : subChain(line, placeAlong(line, slottedMm), placeAlong(line, wholeMm)),
    leastLandMm: Math.min(
      ...looks
        .filter(({ atMm }) => atMm <= slottedMm)
        .map(({ landMm, toEyeMm }) => Math.min(landMm, toEyeMm - (EYE_PRICK_MM + SLOT_MM) / 2)),
    ),
  };
}

function spiralFromThroat({ volute, throat }: HeadProfile): Chain<'head'> {
  const inner = arcsChain(volute.arcs.slice(QUARTERS_TO_THROAT));
  const last = { segment: inner.vertices.length - 2, fraction: 1 };
  return subChain(inner, { segment: 0, fraction: throat.share }, last);
}

interface Look {
  readonly atMm: number;
  /** Wood between slots here and a turn farther out. */
  readonly landMm: number;
  readonly toEyeMm: number;
  readonly rad: number;
}

/** The wood beside the spiral, place by place. Angles about the eye go on growing turn after turn. */
function looked(line: Chain<'head'>, wholeMm: number, eye: Point<'head'>): readonly Look[] {
  const count = Math.ceil(wholeMm / LOOK_MM);
  const places = Array.from({ length: count + 1 }, (_, index) => {
    const atMm = (index / count) * wholeMm;
    const at = pointAlong(line, atMm);
    return { atMm, at, toEyeMm: distanceBetween(at, eye), rad: headingAbout(line, atMm) };
  });
  return places.map(({ atMm, at, toEyeMm, rad }) => {
    // Only what is cut already takes wood away: the turn outside.
    const outer = places.filter((other) => other.rad < rad - Math.PI);
    const gapMm = Math.min(...outer.map((other) => distanceBetween(other.at, at)));
    return { atMm, toEyeMm, rad, landMm: gapMm - SLOT_MM };
  });
}

/** The polar angle of a place of the spiral in its own quarter circle, counted on from the throat. */
function headingAbout(line: Chain<'head'>, atMm: number): number {
  const { segment, fraction } = placeAlong(line, atMm);
  const sweeps = segments(line).map((one) => arcOf(one)?.sweepRad ?? 0);
  return sweeps.slice(0, segment).reduce((sum, one) => sum + one, 0) + fraction * (sweeps[segment] ?? 0);
}

/** From and to of each slot along the spiral, rounded ends counted in. */
function slotSpans(
  line: Chain<'head'>,
  startMm: number,
  endMm: number,
  eye: Point<'head'>,
  pitchMm: number,
): readonly (readonly [number, number])[] {
  const spans: [number, number][] = [];
  const bridges: { readonly rad: number; readonly turnedRad: number }[] = [];
  const bridgeAt = (mm: number) => {
    const at = pointAlong(line, mm);
    return { rad: atan2(at.y - eye.y, at.x - eye.x), turnedRad: headingAbout(line, mm) };
  };
  const wished = pitchMm - BRIDGE_MM;
  let from = startMm;
  while (endMm - from >= LEAST_SLOT_MM) {
    const lengths = TRIED.map((share) => share * wished);
    const clear = lengths.find((mm) => !inLine(bridges, bridgeAt(from + mm + BRIDGE_MM / 2)));
    const left = endMm - from;
    const mm = clear ?? wished;
    const isLast = left - mm < BRIDGE_MM + LEAST_SLOT_MM;
    const to = isLast ? endMm : from + mm;
    spans.push([from, to]);
    bridges.push(bridgeAt(to + BRIDGE_MM / 2));
    from = to + BRIDGE_MM;
  }
  return spans;
}

function inLine(
  bridges: readonly { readonly rad: number; readonly turnedRad: number }[],
  { rad, turnedRad }: { readonly rad: number; readonly turnedRad: number },
): boolean {
  return bridges.some((other) => {
    const apart = Math.abs(atan2(sin(rad - other.rad), cos(rad - other.rad)));
    return apart < IN_LINE_RAD && turnedRad - other.turnedRad < 3 * Math.PI;
  });
}

/** A slot between two places of the spiral, its ends round. */
function slotOf(line: Chain<'head'>, fromMm: number, toMm: number): Chain<'head'> {
  const middle = subChain(line, placeAlong(line, fromMm + SLOT_MM / 2), placeAlong(line, toMm - SLOT_MM / 2));
  const [inside, outside] = [SLOT_MM / 2, -SLOT_MM / 2].map((mm) => parallelChain(middle, mm));
  if (!inside?.ok || !outside?.ok) return { closed: true, vertices: [] };
  const back = reverseChain(outside.value).vertices;
  const capped = (vertices: Chain<'head'>['vertices']) =>
    vertices.map((vertex, index) => (index === vertices.length - 1 ? { ...vertex, bulge: -1 } : vertex));
  return { closed: true, vertices: [...capped(inside.value.vertices), ...capped(back)] };
}

/** Places to prick after the last slot, each clear of the others, of the eye's and of the turn outside. */
function pricksAfter(
  line: Chain<'head'>,
  slottedMm: number,
  wholeMm: number,
  looks: readonly Look[],
): readonly Point<'head'>[] {
  const pricks: Point<'head'>[] = [];
  let lastMm = slottedMm + PRICK_MM / 2;
  for (const { atMm, toEyeMm } of looks) {
    const stepMm = Math.max(SLIVER_MM + PRICK_MM, PRICK_RAD * toEyeMm);
    if (atMm < lastMm + stepMm || atMm > wholeMm) continue;
    if (toEyeMm < (EYE_PRICK_MM + PRICK_MM) / 2 + SLIVER_MM) continue;
    const at = pointAlong(line, atMm);
    if (pricks.some((other) => distanceBetween(other, at) < SLIVER_MM + PRICK_MM)) continue;
    pricks.push(point(at.x, at.y));
    lastMm = atMm;
  }
  return pricks;
}
