import { atan2, cos, distanceBetween, type Finding, type Point, sin } from '../../base/index.ts';
import {
  arcOf,
  type Chain,
  joinChains,
  lengthOf,
  mirrorChain,
  nearestOn,
  parallelChain,
  placeAlong,
  pointAlong,
  reverseChain,
  segmentLength,
  segments,
  subChain,
} from '../../curve/index.ts';
import type { BlockParts } from '../blocks/blockParts.ts';
import type { ClampHole } from '../form/clampHoles.ts';
import type { FormParts } from '../form/formParts.ts';
import type { PlanValues } from '../planValues.ts';
import type { RibLines } from '../ribs/ribLines.ts';
import type { Caul, CaulName, CaulParts, ClampReach } from './caul.ts';
import { caulFindings, noFace } from './caulFindings.ts';
import { type FormedPiece, formedPiece } from './formedPiece.ts';

/** mm at a body length of 355 mm: clear of a rib corner or of the glue at the end of a block; common practice, 3. */
const CLEAR_MM = 3;
/** mm at a body length of 355 mm, beyond the end of a block. */
const BEYOND_BLOCK_MM = 4;
/** mm at a body length of 355 mm: length of a caul along a bout, from memory 35 to 45. */
const ALONG_BOUT_MM = 40;
const USUAL_BODY_MM = 355;

/** mm of both edges of a rib together that a caul leaves free; from memory. */
const LOWER_THAN_RIB_MM = 4;

/** mm. Radius of the groove over a joint of two ribs that keeps squeezed-out glue off the caul. */
const GROOVE_MM = 2;

/** mm. Greatest radius of the hole, and its share of the caul's thickness; walls stay as thick as the hole. */
const HOLE_MM = 5;
const HOLE_SHARE = 0.25;

/**
 * The cauls: along both faces of the corner blocks, over the end blocks, and one that holds the waist rib on the form between
 * its blocks. Faces lie a facing outside the outer face of the ribs.
 *
 * Findings: `cauls.tight` where a facing leaves no face to cut, `cauls.pull-aside` where no hole of the form lies square behind
 * a caul.
 */
export function caulParts(
  bodyLengthMm: number,
  ribs: RibLines,
  blocks: BlockParts,
  form: FormParts,
  values: Pick<PlanValues, 'caulDepth' | 'caulFacing'>,
): CaulParts {
  const scale = bodyLengthMm / USUAL_BODY_MM;
  const { lowerBout, cBout, upperBout } = ribs.outer.sections;
  const inner = ribs.inner.sections;
  const { lowerCorner, upperCorner } = blocks;
  const [clear, beyond, along] = [CLEAR_MM * scale, BEYOND_BLOCK_MM * scale, ALONG_BOUT_MM * scale];
  const at = (outer: Chain<'body'>, line: Chain<'body'>, place: { segment: number; fraction: number }) =>
    stationOf(outer, pointAt(line, place));
  const waistFrom = at(cBout, inner.cBout, lowerCorner.onWaist);
  const waistTo = at(cBout, inner.cBout, upperCorner.onWaist);
  const boutEnd = lengthOf(lowerBout);
  const lowerReach = Math.max(along, boutEnd - at(lowerBout, inner.lowerBout, lowerCorner.onBout) + beyond);
  const upperReach = Math.max(along, at(upperBout, inner.upperBout, upperCorner.onBout) + beyond);
  const waistMm = lengthOf(cBout);
  const wanted: readonly (readonly [CaulName, Chain<'body'>, number, number])[] = [
    ['lower corner, bout side', lowerBout, boutEnd - lowerReach, boutEnd - clear],
    ['lower corner, waist side', cBout, clear, waistFrom + beyond],
    ['waist', cBout, waistFrom + clear, waistTo - clear],
    ['upper corner, waist side', cBout, waistTo - beyond, waistMm - clear],
    ['upper corner, bout side', upperBout, clear, upperReach],
  ];
  const findings: Finding[] = [];
  const cauls: Caul[] = [];
  const add = (name: CaulName, face: Chain<'body'> | undefined, count: 1 | 2): void => {
    if (!face) {
      findings.push(noFace(name));
      return;
    }
    const piece = formedPiece(face, values.caulDepth);
    cauls.push({ name, piece, count, clamp: clampReach(piece, form.clampHoles) });
  };
  const ends = [
    ['lower block', lowerBout, at(lowerBout, inner.lowerBout, blocks.lower.onBout) + beyond],
    ['upper block', upperBout, at(upperBout, inner.upperBout, blocks.upper.onBout) - beyond],
  ] as const;
  const grooved = {
    'lower block': ribs.choice.lowerRib === 'two-pieces',
    'upper block': ribs.choice.upperRib === 'two-pieces',
  };
  add('lower block', endFace(...ends[0], values.caulFacing, grooved['lower block']), 1);
  for (const [name, section, fromMm, toMm] of wanted)
    add(name, faceOf(section, fromMm, toMm, values.caulFacing), 2);
  add('upper block', endFace(...ends[1], values.caulFacing, grooved['upper block']), 1);
  return {
    cauls,
    heightMm: Math.floor(Math.min(ribs.heightNeckMm, ribs.heightTailMm) - LOWER_THAN_RIB_MM),
    facingMm: values.caulFacing,
    holeRadiusMm: Math.min(HOLE_MM, HOLE_SHARE * values.caulDepth),
    waistRoomMm: waistRoom(cauls),
    findings: [...findings, ...caulFindings(cauls)],
  };
}

/** The face of a caul: a stretch of a rib's outer face, a facing outside it. None where an arc has no room for the facing. */
function faceOf(
  section: Chain<'body'>,
  fromMm: number,
  toMm: number,
  facingMm: number,
): Chain<'body'> | undefined {
  const stretch = subChain(section, placeAlong(section, fromMm), placeAlong(section, toMm));
  if (!hasRoom(stretch, facingMm)) return undefined;
  const face = parallelChain(stretch, -facingMm);
  return face.ok ? face.value : undefined;
}

/** mm. A tighter hollow can neither be sawn nor faced; from memory. */
const LEAST_RADIUS_MM = 3;

function hasRoom(line: Chain<'body'>, facingMm: number): boolean {
  return segments(line).every((segment) => {
    const arc = arcOf(segment);
    return arc === null || arc.sweepRad > 0 || arc.radiusMm - facingMm > LEAST_RADIUS_MM;
  });
}

/** Round an end of the body from side to side, with a groove over the joint of two ribs. */
function endFace(
  name: 'lower block' | 'upper block',
  section: Chain<'body'>,
  stationMm: number,
  facingMm: number,
  isGrooved: boolean,
): Chain<'body'> | undefined {
  const upward = name === 'lower block';
  const whole = lengthOf(section);
  const gapMm = isGrooved ? GROOVE_MM : 0;
  const half = upward
    ? faceOf(section, gapMm, stationMm, facingMm)
    : faceOf(section, stationMm, whole - gapMm, facingMm);
  if (!half) return undefined;
  const other = reverseChain(mirrorChain(half));
  const [before, after] = upward ? [other, half] : [half, other];
  const groove: Chain<'body'> = {
    closed: false,
    vertices: [
      { ...(before.vertices.at(-1) ?? { x: 0, y: 0 }), bulge: 1 },
      { ...(after.vertices[0] ?? { x: 0, y: 0 }), bulge: 0 },
    ],
  };
  return isGrooved ? joinChains(before, groove, after) : joinChains(before, after);
}

/** From the middle of a caul's back to the hole that lies best behind it: near, and square to the back. */
function clampReach({ backAt, pressRad }: FormedPiece, holes: readonly ClampHole[]): ClampReach | undefined {
  let best: (ClampReach & { readonly cost: number }) | undefined;
  for (const { centre, radiusMm } of holes) {
    const awayMm = distanceBetween(centre, backAt);
    const turn = atan2(centre.y - backAt.y, centre.x - backAt.x) - pressRad;
    const offSquareRad = Math.abs(atan2(sin(turn), cos(turn)));
    const cost = awayMm * (1 + offSquareRad);
    if (!best || cost < best.cost) best = { openingMm: awayMm - radiusMm, offSquareRad, cost };
  }
  return best && { openingMm: best.openingMm, offSquareRad: best.offSquareRad };
}

/** Between the backs of both cauls on the blocks of the waist, at their nearest corners. */
function waistRoom(cauls: readonly Caul[]): number {
  const at = (name: CaulName) => cauls.find((caul) => caul.name === name)?.piece.backAt;
  const [lower, upper] = [at('lower corner, waist side'), at('upper corner, waist side')];
  return lower && upper ? distanceBetween(lower, upper) : 0;
}

function pointAt(
  line: Chain<'body'>,
  { segment, fraction }: { segment: number; fraction: number },
): Point<'body'> {
  const lengths = segments(line).map(segmentLength);
  const before = lengths.slice(0, segment).reduce((sum, mm) => sum + mm, 0);
  return pointAlong(line, before + fraction * (lengths[segment] ?? 0));
}

/** Length along a line to the place nearest to a point. */
function stationOf(line: Chain<'body'>, at: Point<'body'>): number {
  const { segment, fraction } = nearestOn(line, at);
  const lengths = segments(line).map(segmentLength);
  return lengths.slice(0, segment).reduce((sum, mm) => sum + mm, 0) + fraction * (lengths[segment] ?? 0);
}
