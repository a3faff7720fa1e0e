import { accept, type Checked, type Finding, type Point, refuse } from '../../base/index.ts';
import { outlineHabit } from '../../knowledge/index.ts';
import {
  edgeInScene,
  lengthBetween,
  type MarkerFinder,
  NO_SHEET_TRUST,
  type RestoredOutline,
  restoreOutline,
  type ScaleCorrection,
  type SceneTrust,
  SHEET_TRUST,
  scaleFromKnown,
  toPhoto,
  type View,
  viewMap,
} from '../../photo/index.ts';
import { edgeHeightFaults, edgeHeightFindings } from './edgeHeight.ts';
import { type SeenBody, sceneWay, seeBody } from './seeScene.ts';
import type { TraceRequest } from './traceRequest.ts';

/** What a photograph gave: the restored outline with everything it was found from. */
export interface Traced {
  readonly request: Pick<TraceRequest, 'name' | 'face' | 'known'>;
  readonly seen: SeenBody;
  /** The view after the known lengths corrected it. */
  readonly view: View;
  readonly correction: ScaleCorrection;
  readonly restored: RestoredOutline;
  /** Half interval (k = 2) of the body length. */
  readonly lengthPlusMinusMm: number;
  readonly findings: readonly Finding[];
}

/**
 * Photograph to restored outline: scene, body, edge, mirror axis, halves merged, arcs, and the scale checked and
 * corrected by the lengths that are known. Faults: those of the stages; a trace that the picture leaves in doubt is
 * given with findings that ask.
 */
export function trace(request: TraceRequest, finder: MarkerFinder): Checked<Traced> {
  const absurd = scaleFromKnown([], request.known, SHEET_TRUST);
  const heightFaults = edgeHeightFaults(request.edgeHeightMm);
  if (!absurd.ok || heightFaults.length > 0)
    return refuse(...(absurd.ok ? [] : absurd.faults), ...heightFaults);
  const seen = seeBody(request, finder);
  if (!seen.ok) return seen;
  const first = restored(seen.value, seen.value.view, request.face);
  if (!first.ok) return first;
  const trust = trustIn(seen.value, first.value);
  const known = request.known.map(({ name, mm, plusMinusMm }) => ({
    name,
    mm,
    ...(plusMinusMm && { plusMinusMm }),
  }));
  const correction = scaleFromKnown(first.value.measures, known, trust);
  if (!correction.ok) return correction;
  const view = corrected(seen.value.view, first.value, correction.value);
  const second = restored(seen.value, view, request.face);
  if (!second.ok) return second;
  return accept({
    request,
    seen: seen.value,
    view,
    correction: correction.value,
    restored: second.value,
    lengthPlusMinusMm: lengthPlusMinus(view, second.value),
    findings: [
      ...seen.value.findings.filter(
        ({ code }) => code !== HEIGHT_UNSURE || !isCorrected(first.value, request),
      ),
      ...correction.value.findings,
      ...(seen.value.sheet === null
        ? []
        : edgeHeightFindings(request.edgeHeightMm, second.value.bodyLengthMm)),
    ],
  });
}

/** How far the scene's own millimetres go before callipers: with a sheet what camera, print and height leave open. */
function trustIn(seen: SeenBody, first: RestoredOutline): SceneTrust {
  if (seen.sheet === null) return NO_SHEET_TRUST;
  const share = lengthPlusMinus(seen.view, first) / first.bodyLengthMm;
  return { ...SHEET_TRUST, scalePlusMinus: Math.max(share, LEAST_SCALE_SHARE) };
}

/** Share, k = 2. No photograph of a sheet is trusted further than this (chosen by us). */
const LEAST_SCALE_SHARE = 0.0005;

/** What a square-on photograph leaves open, and two calliper lengths settle. */
const HEIGHT_UNSURE = 'camera.heightUnsure';

/** Whether a length along and one across were both known and measured. */
function isCorrected({ measures }: RestoredOutline, { known }: TraceRequest): boolean {
  const used = known.filter(({ name }) => measures.some((measure) => measure.name === name));
  return used.some(({ name }) => name === 'bodyLength') && used.some(({ name }) => name !== 'bodyLength');
}

function restored(seen: SeenBody, view: View, face: 'top' | 'back'): Checked<RestoredOutline> {
  const { edge, start } = edgeInScene(
    seen.trace,
    sceneWay(seen, viewMap(view).toScene),
    seen.mmPerPixel,
    face,
  );
  const { lowerEnd, upperEnd } = seen.trace.pose;
  const lengthMm = Math.hypot(upperEnd.x - lowerEnd.x, upperEnd.y - lowerEnd.y) * seen.mmPerPixel;
  const family = lengthMm < VIOLINS_BELOW_MM ? 'violin' : lengthMm < VIOLAS_BELOW_MM ? 'viola' : 'cello';
  const found = restoreOutline(edge, start, outlineHabit(family), face);
  return found.ok ? found : refuse(...found.faults.map((fault) => ({ ...fault, at: 'photograph' })));
}

/** mm. Which family's habit helps the fit: between the largest violins and the smallest violas, and so on. */
const VIOLINS_BELOW_MM = 374;
const VIOLAS_BELOW_MM = 520;

function corrected(
  view: View,
  first: RestoredOutline,
  { along, across, alongPlusMinus, acrossPlusMinus }: ScaleCorrection,
): View {
  return {
    ...view,
    stretch: { alongRad: first.axis.headingRad, along, across, alongPlusMinus, acrossPlusMinus },
  };
}

function lengthPlusMinus(view: View, { axis, bodyLengthMm }: RestoredOutline): number {
  const { x, y } = axis.through;
  const far: Point<'scene'> = {
    x: x + bodyLengthMm * Math.cos(axis.headingRad),
    y: y + bodyLengthMm * Math.sin(axis.headingRad),
  };
  return lengthBetween(view, toPhoto(view, axis.through), toPhoto(view, far)).plusMinusMm;
}
