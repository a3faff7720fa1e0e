import { atan2, cos, type Fault, type Point, point, sin } from '../../base/index.ts';
import {
  bulgeOfSweep,
  type Chain,
  headingOn,
  lengthOf,
  nearestOnSpans,
  pointAlong,
  pointOn,
  segments,
  spansOf,
} from '../../curve/index.ts';

/** The point of the purfling in a corner: how far it reaches beyond the mitre, and bends toward the waist, mm. */
export interface StingSizes {
  readonly lengthMm: number;
  /** Square to the middle of the corner; negative away from the waist. */
  readonly asideMm: number;
}

/** A mitre of the purfling: where its outer lines meet, and the point that runs on from there. Treble side. */
export interface PurflingCorner {
  readonly apex: Point<'body'>;
  /** Of the middle of the mitre, outward. */
  readonly outwardRad: number;
  /** As it could be made: shorter than wished where the corner has no more room; zeros where there is none. */
  readonly sting: StingSizes;
  /** Its two sides, arcs that run from the outer lines into one tip: closed, anticlockwise; none where it has no room. */
  readonly shape?: Chain<'body'>;
}

/** Width at its root as a share of the purfling's: both outer strips, run together; from memory. */
const ROOT_SHARE = 0.3;

/** Wood left outside it, as a share of the purfling's distance from the edge; from memory. */
const WOOD_SHARE = 0.2;

/** A shorter part of what was wished is no point any more. */
const LEAST_SHARE = 0.3;

/** Places along its sides, as shares, where the wood outside is looked at. */
const ALONG_SIDE = [0, 0.2, 0.4, 0.6, 0.8, 1] as const;

/** Steps and halvings in which the room for it is found. */
const STEPS = 32;
const HALVINGS = 16;

/** A point that bends aside by more than this many times its length would turn back. */
const MOST_ASIDE = 1.5;

/** What is wrong with the sizes of a point, none when they can be drawn; a length of 0 means none is wished. */
export function stingFaults({ lengthMm, asideMm }: StingSizes): readonly Fault[] {
  const fault = (at: string, found: string, need: string, remedy: string): readonly Fault[] => [
    { code: 'purfling.sting-size', at, found, need, remedy },
  ];
  if (!(lengthMm >= 0 && Number.isFinite(lengthMm)))
    return fault('stingLength', `a length of ${lengthMm} mm`, 'a length of 0 mm or more', 'give 0 for none');
  if (lengthMm > 0 && !(Math.abs(asideMm) <= MOST_ASIDE * lengthMm))
    return fault(
      'stingAside',
      `a point ${lengthMm} mm long that bends ${asideMm} mm aside`,
      `at most ${(MOST_ASIDE * lengthMm).toFixed(1)} mm to either side, or it turns back`,
      'bend it less, or make it longer',
    );
  return [];
}

/** What the point of one corner is drawn from: both outer lines up to their meeting, and the edge around it. */
export interface StingTask {
  readonly arriving: Chain<'body'>;
  readonly leaving: Chain<'body'>;
  /** Whether the waist is on the left of someone who looks out of the corner. */
  readonly waistOnLeft: boolean;
  readonly edge: readonly Chain<'body'>[];
  readonly wished: StingSizes;
  readonly purflingWidthMm: number;
  readonly purflingToEdgeMm: number;
}

/**
 * The mitre and its point. The point leaves the apex along the middle of the mitre and bends, in an arc, to one side of
 * it; it keeps its shape and is made smaller where it would come too near to the edge.
 */
export function purflingCorner(task: StingTask): PurflingCorner {
  const apex = pointAlong(task.arriving, lengthOf(task.arriving));
  const inRad = endHeading(task.arriving);
  const outRad = startHeading(task.leaving);
  const outwardRad = atan2(sin(inRad) - sin(outRad), cos(inRad) - cos(outRad));
  const share = shareWithRoom(task, apex, outwardRad);
  if (share < LEAST_SHARE) return { apex, outwardRad, sting: { lengthMm: 0, asideMm: 0 } };
  const sting = {
    lengthMm: share * task.wished.lengthMm,
    asideMm: share * task.wished.asideMm,
  };
  return { apex, outwardRad, sting, shape: stingShape(task, apex, outwardRad, sting) };
}

function shareWithRoom(task: StingTask, apex: Point<'body'>, outwardRad: number): number {
  if (!(task.wished.lengthMm > 0)) return 0;
  const woodMm = WOOD_SHARE * task.purflingToEdgeMm;
  const edge = task.edge.map(spansOf);
  const hasRoom = (share: number): boolean => {
    const { lengthMm, asideMm } = task.wished;
    const shape = stingShape(task, apex, outwardRad, {
      lengthMm: share * lengthMm,
      asideMm: share * asideMm,
    });
    const [intoTip, fromTip] = segments(shape);
    if (!intoTip || !fromTip) return false;
    const places = ALONG_SIDE.flatMap((at) => [pointOn(intoTip, at), pointOn(fromTip, at)]);
    return edge.every((line) => places.every((at) => nearestOnSpans(line, at, woodMm).distanceMm >= woodMm));
  };
  // Step by step, since a tip beyond the edge would again be far from it.
  let low = 0;
  for (let step = 1; step <= STEPS; step++) {
    if (hasRoom(step / STEPS)) low = step / STEPS;
    else break;
  }
  let high = Math.min(1, low + 1 / STEPS);
  for (let step = 0; step < HALVINGS && low < 1; step++) {
    const middle = (low + high) / 2;
    if (hasRoom(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function tipAt(
  { waistOnLeft }: StingTask,
  apex: Point<'body'>,
  outwardRad: number,
  { lengthMm, asideMm }: StingSizes,
): Point<'body'> {
  const left = waistOnLeft ? asideMm : -asideMm;
  return point(
    apex.x + lengthMm * cos(outwardRad) - left * sin(outwardRad),
    apex.y + lengthMm * sin(outwardRad) + left * cos(outwardRad),
  );
}

/** Two arcs from the outer lines that touch each other in the tip, closed straight across behind the apex. */
function stingShape(
  task: StingTask,
  apex: Point<'body'>,
  outwardRad: number,
  sting: StingSizes,
): Chain<'body'> {
  const tip = tipAt(task, apex, outwardRad, sting);
  const chord = atan2(tip.y - apex.y, tip.x - apex.x);
  // The middle leaves along the mitre: it ends as far beyond the chord as the chord is beyond the mitre.
  const tipRad = 2 * chord - outwardRad;
  const opening = sin(turnBetween(outwardRad, endHeading(task.arriving)));
  const rootMm = Math.min(ROOT_SHARE * task.purflingWidthMm, sting.lengthMm / 2);
  const backMm = rootMm / 2 / Math.max(Math.abs(opening), ROOT_SHARE);
  const right = pointAlong(task.arriving, lengthOf(task.arriving) - backMm);
  const left = pointAlong(task.leaving, backMm);
  const intoTip = (from: Point<'body'>): number =>
    bulgeOfSweep(2 * turnBetween(atan2(tip.y - from.y, tip.x - from.x), tipRad));
  return {
    closed: true,
    vertices: [
      { x: right.x, y: right.y, bulge: intoTip(right) },
      { x: tip.x, y: tip.y, bulge: -intoTip(left) },
      { x: left.x, y: left.y, bulge: 0 },
    ],
  };
}

function endHeading(chain: Chain<'body'>): number {
  const last = segments(chain).at(-1);
  return last ? headingOn(last, 1) : 0;
}

function startHeading(chain: Chain<'body'>): number {
  const [first] = segments(chain);
  return first ? headingOn(first, 0) : 0;
}

function turnBetween(fromRad: number, toRad: number): number {
  return atan2(sin(toRad - fromRad), cos(toRad - fromRad));
}
