import { accept, type Checked, type Finding, KEEP_NOTHING, point, refuse } from '../../base/index.ts';
import { enlargePicture } from '../picture/enlargePicture.ts';
import type { Picture } from '../picture/picture.ts';
import { alongAxis } from './axisPlaces.ts';
import { findBoard } from './boardTest.ts';
import { listBodies, severalBodies } from './bodyList.ts';
import { AT_ANGLE, AT_KEYSTONE, AT_SKEW, type BodyFit, rescaleFit, seatOf } from './bodySeat.ts';
import { TEMPLATE_LENGTH_MM } from './bodyTemplate.ts';
import type { BodyPlace, BodyPose, BodyTrace, TraceOptions } from './bodyTrace.ts';
import { judge } from './confidence.ts';
import { nameEdge } from './edgePoints.ts';
import { type FoundBody, findBodies } from './findBody.ts';
import { scoreFit } from './fitScore.ts';
import { fitBench } from './fitTemplateBench.ts';
import { followedLine } from './followedLine.ts';
import { followEdge, type LocalEdge } from './localEdge.ts';
import { frameFault } from './pictureFrame.ts';
import { ribsShown } from './ribsShown.ts';
import { smallPicture, timesEnlarged, traceReduced } from './smallPicture.ts';
import { measureEdge } from './subPixelEdge.ts';
import { stationsOfTemplate } from './templateStations.ts';
import { forgetBodies, knowledgeAt, lengthRange, type TraceLevels, traceLevels } from './traceLevels.ts';
import {
  isLength,
  LEAST_SIDE_PX,
  noBody,
  noLength,
  noSuchBody,
  tooSmall,
  uncertain,
  unsolved,
} from './traceTrouble.ts';

/**
 * The outline of one body in a picture seen roughly from the front or back, in photo px: dense edge points
 * with outward normals, spread and state, the pose, and how far to believe it. Neither scale nor symmetry is used
 * beyond the template's guess; sides keep their own edge. Where several bodies stand out they are listed, and asked about unless
 * one is chosen by `options.body` or a hint inside it.
 *
 * Faults: `trace.too-small`, `trace.known-length` (length or spread not above zero), `trace.no-body`,
 * `trace.no-such-body`, `trace.cut-off` (part of the body outside the picture), `trace.uncertain`, `trace.unsolved` (no
 * fit has a finite solution). Method: oriented-edge pose search, deformable template of thirteen arcs fitted under
 * several settings, local edge by dynamic programming, blurred-step profiles on native pixels.
 */
export function traceBody(picture: Picture, options: TraceOptions = {}): Checked<BodyTrace> {
  const { lengthPx } = options;
  if (Math.min(picture.widthPx, picture.heightPx) < LEAST_SIDE_PX) return refuse(tooSmall(picture));
  if (lengthPx && !isLength(lengthPx)) return refuse(noLength(lengthPx));
  const { keeper, progress, ...on } = options;
  return (keeper ?? KEEP_NOTHING)(picture, 'body', on, () => tracedAnew(picture, options));
}

function tracedAnew(picture: Picture, options: TraceOptions): Checked<BodyTrace> {
  const times = timesEnlarged(picture);
  if (times === 1) return traceInPicture(picture, options);
  const large = traceInPicture(enlargePicture(picture, times), smallPicture(options, times));
  return large.ok ? accept(traceReduced(large.value, times, picture)) : large;
}

function traceInPicture(picture: Picture, options: TraceOptions): Checked<BodyTrace> {
  options.progress?.('looking for the body', 0);
  const levels = traceLevels(picture, options);
  const trace = traceOnLevels(picture, levels, options);
  forgetBodies(levels);
  return trace;
}

function traceOnLevels(picture: Picture, levels: TraceLevels, options: TraceOptions): Checked<BodyTrace> {
  const progress = options.progress ?? (() => undefined);
  const known = (level: TraceLevels['fit']) => ({ level, known: knowledgeAt(level, options) });
  const found = findBodies(
    levels.pose,
    known(levels.coarse),
    known(levels.fit),
    lengthRange(levels, options),
    (share) => progress('looking for the body', FOUND_AT * share),
    options.keeper ?? KEEP_NOTHING,
  );
  if (found.length === 0) return refuse(unsolved());
  const chosen = chooseBody(found, levels, options);
  if (!chosen.ok) return chosen;
  const { body, bodies, number } = chosen.value;
  progress('following its edge', FOUND_AT);
  const edge = followEdge(
    levels.finish,
    body.candidates[0].fit,
    levels.fit.factor,
    knowledgeAt(levels.finish, options),
  );
  if (edge === null) return refuse(unsolved());
  const shows = bodies.find((one) => one.number === number)?.face ?? null;
  const isAsked = bodies.length > 1 && options.body === undefined && !isMarkedInside(options);
  const trace = believe(picture, levels, edge, body, isAsked ? severalBodies(bodies) : null, shows, options);
  progress('the outline is found', 1);
  return trace.ok ? accept({ ...trace.value, bodies, body: number }) : trace;
}

/** Share of the work that is done when the body is found. */
const FOUND_AT = 0.6;

interface ChosenBody {
  readonly body: FoundBody;
  readonly bodies: readonly BodyPlace[];
  readonly number: number;
}

function chooseBody(
  found: readonly FoundBody[],
  { fit, finish }: TraceLevels,
  options: TraceOptions,
): Checked<ChosenBody> {
  const factor = finish.factor / fit.factor;
  const fits = found.map(({ candidates: [first] }) => rescaleFit(first.fit, factor));
  const listed = listBodies(finish.lab, fits, finish.factor);
  const own = listed.find(({ index, place }) =>
    options.body === undefined ? index === 0 : place.number === options.body,
  );
  if (own === undefined) return refuse(noSuchBody(options.body ?? 0, listed.length));
  return accept({
    body: found[own.index] as FoundBody,
    bodies: listed.map(({ place }) => place),
    number: own.place.number,
  });
}

function isMarkedInside({ hints }: TraceOptions): boolean {
  return (hints?.inside?.length ?? 0) + (hints?.insideStrokes?.length ?? 0) > 0;
}

type OneTrace = Omit<BodyTrace, 'bodies' | 'body'>;

function believe(
  picture: Picture,
  levels: TraceLevels,
  edge: LocalEdge,
  body: FoundBody,
  several: Finding | null,
  shows: BodyPlace['face'],
  options: TraceOptions,
): Checked<OneTrace> {
  const { face, progress } = options;
  const bench = fitBench(stationsOfTemplate(3.6));
  const final = scoreFit(
    levels.fit,
    rescaleFit(edge.fit, levels.fit.factor / levels.finish.factor),
    knowledgeAt(levels.fit, options),
    bench,
  );
  const board = face === 'back' ? null : findBoard(levels.finish.lab, edge.fit);
  const sides = face === 'back' ? (['bass', 'treble'] as const) : (['treble', 'bass'] as const);
  if (final.support < NO_BODY_SUPPORT) return refuse(noBody());
  const nativeFit = rescaleFit(edge.fit, 1 / levels.finish.factor);
  const cutOff = frameFault(picture, nativeFit);
  if (cutOff) return refuse(cutOff);
  progress?.('measuring its edge', MEASURING_AT);
  const { places, placed } = measureEdge(picture, edge, levels.finish.factor);
  const { points, unseen } = nameEdge(edge, places, placed, seatOf(nativeFit).pxPerMm, face ?? 'top');
  const lines = followedLine(levels.finish, points, seatOf(edge.fit).pxPerMm, options.hints?.onEdge);
  const ribs = ribsShown(levels.finish, points, seatOf(edge.fit).pxPerMm);
  const signs = {
    several,
    face: { said: face ?? null, shows },
    board,
    lines,
    ribs,
    platesAreTold: options.platesAreTold === true,
  };
  const confidence = judge(final, body, signs, sides);
  if (confidence.verdict === 'refuse') return refuse(uncertain(final, confidence));
  return accept({
    pose: poseOf(nativeFit),
    edge: points,
    unseen,
    ratios: {
      lowerBout: final.ratios.lower / TEMPLATE_LENGTH_MM,
      upperBout: final.ratios.upper / TEMPLATE_LENGTH_MM,
      waist: final.ratios.waist / TEMPLATE_LENGTH_MM,
    },
    support: final.support,
    worstZone: confidence.worstZone,
    spread: confidence.spread,
    strain: final.strain,
    verdict: confidence.verdict,
    findings: confidence.findings,
  });
}

const MEASURING_AT = 0.8;
/** Below this the likeliest outline is no body at all, whether or not it fits into the picture. */
const NO_BODY_SUPPORT = 0.4;

function poseOf(fit: BodyFit): BodyPose {
  const lower = alongAxis(fit, -0.5);
  const upper = alongAxis(fit, 0.5);
  return {
    lowerEnd: point<'photo'>(lower.x, lower.y),
    upperEnd: point<'photo'>(upper.x, upper.y),
    axisAngleRad: fit[AT_ANGLE],
    pxPerMm: seatOf(fit).pxPerMm,
    skew: fit[AT_SKEW],
    keystonePerMm: fit[AT_KEYSTONE],
  };
}
