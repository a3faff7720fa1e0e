import {
  accept,
  type Checked,
  type Fault,
  type Finding,
  type Point,
  point,
  refuse,
} from '../../base/index.ts';
import { type MarkerFinder, type TracedProfile, toScene, traceProfile } from '../../photo/index.ts';
import { fitCrossArch, fitLongArch } from '../../surface/index.ts';
import {
  crossFit,
  longFit,
  type ProfileDocument,
  type ProfileFit,
  pairsOf,
  pointPlusMinus,
} from './profileDocument.ts';
import type { ArchProfileRequest } from './profileRequest.ts';
import { type OnPaper, scaleShare, seeOnPaper, sideFindings } from './seeOnPaper.ts';

/** A traced profile as a document, and what is to be known about it. */
export interface ProfileOutcome {
  readonly document: ProfileDocument;
  readonly findings: readonly Finding[];
}

/**
 * An arch from a photograph of a card cut to it, or of a line drawn along it, on the calibration sheet: its points in millimetres and the
 * arch fitted to them. Where no arch can be fitted the points are given all the same, and a caution says why.
 * Faults: those of the sheet, the camera and the tracing. Findings: those of the stages, `profile.no-fit`.
 */
export function traceArchProfile(request: ArchProfileRequest, finder: MarkerFinder): Checked<ProfileOutcome> {
  const seen = seeOnPaper(request, finder);
  if (!seen.ok) return seen;
  const { scene, view, findings } = seen.value;
  const ends = request.ends?.map((end) => toScene(view, end)) as [Point<'scene'>, Point<'scene'>] | undefined;
  const { kind, base } = request;
  const traced = traceProfile(scene, { kind, base, ...(ends && { ends }) });
  if (!traced.ok) return traced;
  const places = isTurned(request) ? turned(traced.value.places) : traced.value.places;
  const fitted = fitOf(request, { ...traced.value, places }, seen.value);
  const { of, name, face, station } = request;
  const scale = scaleShare(view, traced.value.endsInScene);
  return accept({
    document: {
      format: 'garland-profile',
      version: 1,
      units: 'mm',
      of,
      name,
      ...(face && { face }),
      ...(station && { station }),
      base,
      sidesKnown: request.rightIs !== undefined,
      ...(request.leaveOut && { leaveOut: true }),
      points: pairsOf(places),
      plusMinus: { point: pointPlusMinus(places), scale },
      ...(fitted.ok && { fit: fitted.value.fit }),
    },
    findings: [
      ...findings,
      ...traced.value.findings,
      ...sideFindings(view, traced.value.endsInScene, request.heightMm ?? 0),
      ...(fitted.ok ? fitted.value.findings : fitted.faults.map(noFit)),
    ],
  });
}

/** Whether the profile lay the other way round than a table reads it: treble to the right on a top, neck to the right along the body. */
function isTurned({ face, rightIs }: ArchProfileRequest): boolean {
  if (rightIs === 'lower-end') return true;
  if (rightIs === 'treble') return face === 'back';
  return rightIs === 'bass' && face !== 'back';
}

function turned(places: TracedProfile['places']): TracedProfile['places'] {
  return places.map(({ x, y, sigmaMm }) => ({ ...point<'section'>(-x, y), sigmaMm })).reverse();
}

function fitOf(
  { of, face, station, leaveOut, name, rightIs }: ArchProfileRequest,
  { places, base, endsInScene }: TracedProfile,
  { view }: OnPaper,
): Checked<{ readonly fit: ProfileFit; readonly findings: readonly Finding[] }> {
  const scale = scaleShare(view, endsInScene);
  const knowns = {
    base: base === 'face' ? 'given' : 'free',
    leaveOut: leaveOut === true,
    sidesKnown: rightIs !== undefined,
    ...(face && { face }),
    ...(station && { station }),
  } as const;
  if (of === 'longArch') {
    const long = fitLongArch(places, knowns, name);
    return long.ok ? accept({ fit: longFit(long.value, scale), findings: long.value.findings }) : long;
  }
  const cross = fitCrossArch(places, knowns, name);
  return cross.ok
    ? accept({ fit: crossFit(cross.value, scale), findings: cross.value.findings })
    : refuse(...cross.faults);
}

function noFit(fault: Fault): Finding {
  return { ...fault, weight: 'caution', code: 'profile.no-fit', found: `no arch was fitted: ${fault.found}` };
}
