import { accept, type Checked, type Fault, point, refuse } from '../../base/index.ts';
import { nameEdge } from '../edge/edgePoints.ts';
import { measureEdge } from '../edge/subPixelEdge.ts';
import { shrinkLinear, shrinkToLinear } from '../picture/linearPicture.ts';
import type { Picture } from '../picture/picture.ts';
import { frameFault } from '../picture/pictureFrame.ts';
import { levelOf, type PictureLevel } from '../picture/pictureLevel.ts';
import { findBoard } from './boardTest.ts';
import { AT_ANGLE, AT_KEYSTONE, AT_SKEW, type BodyFit, rescaleFit, seatOf } from './bodySeat.ts';
import { TEMPLATE_LENGTH_MM } from './bodyTemplate.ts';
import type { BodyPose, BodyTrace, TraceOptions } from './bodyTrace.ts';
import { type Confidence, judge } from './confidence.ts';
import { alongAxis, findBody } from './findBody.ts';
import type { FitKnowledge } from './fitRows.ts';
import { type FitScore, scoreFit } from './fitScore.ts';
import { fitBench } from './fitTemplateBench.ts';
import { followEdge } from './localEdge.ts';
import { stationsOfTemplate } from './templateStations.ts';

const FINISH_PIXELS = 1500000;
const FIT_PIXELS = 250000;
const POSE_SIDE_PX = 180;
const LEAST_SIDE_PX = 120;

/**
 * The outline of the one body in a picture seen roughly from the front or back, in photo px: dense edge points
 * with outward normals, spread and state, the pose, and how far to believe it. Neither scale nor symmetry is used
 * beyond the template's guess; sides keep their own edge.
 *
 * Faults: `trace.too-small`, `trace.known-length` (length or spread not above zero), `trace.no-body`, `trace.cut-off`
 * (part of the body outside the picture), `trace.uncertain`, `trace.unsolved` (no fit has a finite solution). Method: oriented-edge pose search, deformable template of thirteen arcs fitted under several
 * settings, local edge by dynamic programming, blurred-step profiles on native pixels.
 */
export function traceBody(picture: Picture, options: TraceOptions = {}): Checked<BodyTrace> {
  if (Math.min(picture.widthPx, picture.heightPx) < LEAST_SIDE_PX) return refuse(tooSmall(picture));
  const { lengthPx } = options;
  if (lengthPx && !isLength(lengthPx)) return refuse(noLength(lengthPx));
  const levels = levelsOf(picture, options);
  const known = (level: PictureLevel): FitKnowledge => knowledgeAt(level.factor, options);
  const found = findBody(levels.pose, levels.fit, known(levels.fit));
  const leader = found.candidates[0];
  if (leader === undefined) return refuse(found.poses.length === 0 ? noBody() : unsolved());
  const edge = followEdge(levels.finish, leader.fit, levels.fit.factor, known(levels.finish));
  if (edge === null) return refuse(unsolved());
  const bench = fitBench(stationsOfTemplate(3.6));
  const final = scoreFit(levels.fit, rescaleFit(edge.fit, levels.fit.factor / levels.finish.factor), bench);
  const board = options.face === 'back' ? null : findBoard(levels.finish.lab, edge.fit);
  const sides = options.face === 'back' ? (['bass', 'treble'] as const) : (['treble', 'bass'] as const);
  const confidence = judge(final, found.candidates, found.quick, board, sides);
  if (final.support < NO_BODY_SUPPORT) return refuse(noBody());
  const nativeFit = rescaleFit(edge.fit, 1 / levels.finish.factor);
  const cutOff = frameFault(picture, nativeFit);
  if (cutOff) return refuse(cutOff);
  if (confidence.verdict === 'refuse') return refuse(uncertain(final, confidence));
  const { places, placed } = measureEdge(picture, edge, levels.finish.factor);
  const { points, unseen } = nameEdge(edge, places, placed, seatOf(nativeFit).pxPerMm, options.face ?? 'top');
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

/** Below this the likeliest outline is no body at all, whether or not it fits into the picture. */
const NO_BODY_SUPPORT = 0.4;

type KnownLength = NonNullable<TraceOptions['lengthPx']>;

function isLength({ value, sigma }: KnownLength): boolean {
  return value > 0 && sigma > 0 && Number.isFinite(value) && Number.isFinite(sigma);
}

interface Levels {
  readonly finish: PictureLevel;
  readonly fit: PictureLevel;
  readonly pose: PictureLevel;
}

function levelsOf(picture: Picture, options: TraceOptions): Levels {
  const pixels = picture.widthPx * picture.heightPx;
  const masked = [...(options.masked ?? []), ...(options.hints?.excluded ?? [])];
  const finish = Math.min(1, Math.sqrt(FINISH_PIXELS / pixels));
  const fit = Math.min(1, Math.sqrt(FIT_PIXELS / pixels));
  const pose = Math.min(1, POSE_SIDE_PX / Math.max(picture.widthPx, picture.heightPx));
  const large = shrinkToLinear(picture, finish);
  const middle = shrinkLinear(large, fit / finish);
  const small = shrinkLinear(middle, pose / fit);
  return {
    finish: levelOf(large, finish, masked),
    fit: levelOf(middle, fit, masked),
    pose: levelOf(small, pose, masked),
  };
}

function knowledgeAt(factor: number, options: TraceOptions): FitKnowledge {
  const place = (p: { readonly x: number; readonly y: number }) => ({
    x: (p.x + 0.5) * factor - 0.5,
    y: (p.y + 0.5) * factor - 0.5,
  });
  const { lengthPx, hints } = options;
  return {
    lengthPx: lengthPx && { value: lengthPx.value * factor, sigma: lengthPx.sigma * factor },
    onEdge: (hints?.onEdge ?? []).map(place),
    inside: (hints?.inside ?? []).map(place),
    outside: (hints?.outside ?? []).map(place),
  };
}

function poseOf(fit: BodyFit): BodyPose {
  const lower = alongAxis(fit, -0.5);
  const upper = alongAxis(fit, 0.5);
  return {
    lowerEnd: point<'photo'>(lower.x, lower.y),
    upperEnd: point<'photo'>(upper.x, upper.y),
    axisAngleRad: fit[AT_ANGLE] as number,
    pxPerMm: seatOf(fit).pxPerMm,
    skew: fit[AT_SKEW] as number,
    keystonePerMm: fit[AT_KEYSTONE] as number,
  };
}

function tooSmall(picture: Picture): Fault {
  return {
    code: 'trace.too-small',
    at: 'photograph',
    found: `${picture.widthPx} × ${picture.heightPx} pixels`,
    need: `at least ${LEAST_SIDE_PX} pixels a side, better 2000 along the body`,
    remedy: 'use the original photograph, not a preview',
  };
}

function noLength({ value, sigma }: KnownLength): Fault {
  return {
    code: 'trace.known-length',
    at: 'known body length in the photograph',
    found: `${value} px with a spread of ${sigma} px`,
    need: 'a length and a spread that are both above zero',
    remedy: 'give the length with its standard deviation, or leave it out',
  };
}

function noBody(): Fault {
  return {
    code: 'trace.no-body',
    at: 'photograph',
    found: 'no body of a violin, viola or cello seen from the front or the back',
    need: 'the whole body, square to the camera, on a calm ground',
    remedy: 'photograph it lying flat on a plain ground, or draw the outline by hand',
  };
}

function unsolved(): Fault {
  return {
    code: 'trace.unsolved',
    at: 'photograph',
    found: 'no outline for which the equations of the fit have a finite solution',
    need: 'a picture and hints that agree, and a known length with a spread as large as it really is',
    remedy: 'leave the known length and the hints out, and add them again one by one',
  };
}

function uncertain(final: FitScore, confidence: Confidence): Fault {
  return {
    code: 'trace.uncertain',
    at: 'photograph',
    found: `only ${Math.round(100 * final.support)} % of the likeliest outline shows an edge (worst: ${confidence.worstZone.name})`,
    need: 'an edge on 55 % at least',
    remedy:
      'use a plainer ground, more even light or a squarer view, or set a few points on the edge by hand',
  };
}
