import { type Finding, hypot } from '../../base/index.ts';
import type { BodyTrace } from '../body/bodyTrace.ts';
import type { Picture } from '../picture/picture.ts';
import { bridgeLoops, type LoopPoint, widenBridges } from './bridgeLoops.ts';
import { compareHoles, type HoleDifference } from './compareHoles.ts';
import { holeContours } from './holeContour.ts';
import { type EyeCircle, holeEye } from './holeEye.ts';
import { type HoleFrame, holeFrame } from './holeFrame.ts';
import { holeNick, type StemNick } from './holeNick.ts';
import { holePatch, MOST_GAP } from './holePatch.ts';
import { type LightSampler, lightSampler } from './lightSampler.ts';
import type { HoleEye, HoleNick, HolePoint, SoundHole, SoundHolesTrace } from './soundHoleTrace.ts';

/** 355ths of the body length from the lower end to the inner nicks: a stop of 195 on 355. */
const USUAL_NICK_Y = 160;
/** 355ths by which the holes must differ at a place to make it doubtful. */
const UNLIKE = 1.2;
/** Share by which the treble hole must be better seen to be drawn from. */
const PLAINLY_BETTER = 0.03;

/**
 * Both sound holes of a top, found from where the body lies: closed edges at sub-pixel places, eyes, nicks, the stop
 * line through the inner nicks, and how alike the two are. What crosses a hole is bridged straight and marked.
 * Places are the photograph's own: a hole lies on the arch, higher than the edge; {@link soundHoleOnPlane} carries it.
 * Method: dark pieces near the usual course; the line half way between the light of hole and wood by marching squares.
 */
export function traceSoundHoles(picture: Picture, seat: Pick<BodyTrace, 'pose' | 'edge'>): SoundHolesTrace {
  const lightAt = lightSampler(picture);
  const bass = seeHole(lightAt, seat, 'bass');
  const treble = seeHole(lightAt, seat, 'treble');
  const difference = bass && treble ? compareHoles(bass.loop, treble.loop) : null;
  const holes = {
    bass: bass && soundHole(bass, 'bass', difference?.first ?? null),
    treble: treble && soundHole(treble, 'treble', difference?.second ?? null),
  };
  const [left, right] = [holes.bass?.innerNick, holes.treble?.innerNick];
  return {
    ...holes,
    clearer: clearerOf(holes.bass, holes.treble),
    stopLine: left && right ? [left.place, right.place] : null,
    difference: bass && difference && inPx(difference, bass.frame),
    findings: findingsOf(holes.bass, holes.treble, difference),
  };
}

interface SeenHole {
  readonly frame: HoleFrame;
  readonly loop: readonly LoopPoint[];
  readonly upperEye: EyeCircle | null;
  readonly lowerEye: EyeCircle | null;
  readonly innerNick: StemNick | null;
  readonly outerNick: StemNick | null;
  readonly darkness: number;
}

function seeHole(
  lightAt: LightSampler,
  { pose, edge }: Pick<BodyTrace, 'pose' | 'edge'>,
  side: 'bass' | 'treble',
): SeenHole | null {
  const frame = holeFrame(pose, side === 'treble');
  const patch = holePatch(
    lightAt,
    frame,
    edge.filter((place) => place.side === side),
  );
  if (patch === null) return null;
  const loops = holeContours(lightAt, frame, patch).map((loop) =>
    loop.map(([x, y]): LoopPoint => ({ x, y, bridged: false })),
  );
  const joined = bridgeLoops(loops, MOST_GAP);
  if (joined === null) return null;
  const loop = widenBridges(joined);
  const wood = patch.wood.filter((_, i) => patch.hole[i] === 1);
  return {
    frame,
    loop,
    upperEye: holeEye(loop, 'upper', USUAL_NICK_Y),
    lowerEye: holeEye(loop, 'lower', USUAL_NICK_Y),
    innerNick: holeNick(loop, 'inner', USUAL_NICK_Y),
    outerNick: holeNick(loop, 'outer', USUAL_NICK_Y),
    darkness: patch.darkLight / (wood.reduce((sum, one) => sum + one, 0) / wood.length),
  };
}

function soundHole(seen: SeenHole, side: 'bass' | 'treble', unlike: Float64Array | null): SoundHole {
  const { frame, loop } = seen;
  const contour = loop.map(({ x, y, bridged }, i): HolePoint => {
    const state = bridged ? 'bridged' : unlike && unlike[i] > UNLIKE ? 'doubtful' : 'seen';
    return { ...frame.toPhoto(x, y), state };
  });
  return {
    side,
    contour,
    upperEye: seen.upperEye && eyeInPhoto(seen.upperEye, frame),
    lowerEye: seen.lowerEye && eyeInPhoto(seen.lowerEye, frame),
    innerNick: seen.innerNick && nickInPhoto(seen.innerNick, frame),
    outerNick: seen.outerNick && nickInPhoto(seen.outerNick, frame),
    seenShare: seenShareOf(contour),
    darkness: seen.darkness,
  };
}

function eyeInPhoto({ x, y, radius, turnShare, rough }: EyeCircle, frame: HoleFrame): HoleEye {
  return {
    centre: frame.toPhoto(x, y),
    diameterPx: 2 * radius * frame.pxPerUnit,
    turnShare,
    roughPx: rough * frame.pxPerUnit,
  };
}

function nickInPhoto({ x, y, depth }: StemNick, frame: HoleFrame): HoleNick {
  return { place: frame.toPhoto(x, y), depthPx: depth * frame.pxPerUnit };
}

function seenShareOf(contour: readonly HolePoint[]): number {
  let [seen, all] = [0, 0];
  contour.forEach((a, i) => {
    const b = contour[(i + 1) % contour.length];
    const length = hypot(b.x - a.x, b.y - a.y);
    all += length;
    if (a.state === 'seen' && b.state === 'seen') seen += length;
  });
  return all > 0 ? seen / all : 0;
}

function clearerOf(bass: SoundHole | null, treble: SoundHole | null): 'bass' | 'treble' | null {
  if (bass === null) return treble && 'treble';
  if (treble === null) return 'bass';
  return treble.seenShare > bass.seenShare + PLAINLY_BETTER ? 'treble' : 'bass';
}

function inPx({ rms, most }: HoleDifference, { pxPerUnit }: HoleFrame) {
  return { rmsPx: rms * pxPerUnit, mostPx: most * pxPerUnit };
}

function findingsOf(
  bass: SoundHole | null,
  treble: SoundHole | null,
  difference: HoleDifference | null,
): readonly Finding[] {
  const missing = [...(bass ? [] : ['bass']), ...(treble ? [] : ['treble'])];
  const findings: Finding[] = missing.map((side) => notSeen(side));
  for (const hole of [bass, treble]) if (hole && isCrossed(hole.contour)) findings.push(crossed(hole.side));
  if (difference && difference.most > UNLIKE) findings.push(unlike(difference));
  return findings;
}

function isCrossed(contour: readonly HolePoint[]): boolean {
  return contour.some((place) => place.state === 'bridged');
}

function notSeen(side: string): Finding {
  return {
    weight: 'remark',
    code: 'soundHole.not-seen',
    at: `sound hole, ${side} side`,
    found: 'nothing dark with the size and place of a sound hole',
    need: 'a hole that is darker than the wood round it and stands alone',
    remedy: 'take the other side mirrored, or photograph the top with light from the side',
  };
}

function crossed(side: string): Finding {
  return {
    weight: 'remark',
    code: 'soundHole.crossed',
    at: `sound hole, ${side} side`,
    found: 'a string, the bridge or a reflection crosses it; the edge is carried straight over',
    need: 'the whole hole in view for an edge measured all round',
    remedy: 'look at the bridged stretch, or photograph the top without strings',
  };
}

function unlike({ most }: HoleDifference): Finding {
  return {
    weight: 'remark',
    code: 'soundHole.unlike',
    at: 'sound holes',
    found: `the two differ by up to ${most.toFixed(1)} mm on a body of 355 when one is laid on the other`,
    need: 'no more than about a millimetre for holes cut to one template and seen whole',
    remedy: 'look at the doubtful stretches: something may lie over one of them, or the holes are not alike',
  };
}
