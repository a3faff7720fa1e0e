import {
  accept,
  type Checked,
  cos,
  type Finding,
  type Keeper,
  newestKeeper,
  type Point,
  refuse,
  sin,
} from '../../base/index.ts';
import {
  lengthBetween,
  type MarkerFinder,
  NO_SHEET_TRUST,
  type RestoredOutline,
  type ScaleCorrection,
  type SceneTrust,
  SHEET_TRUST,
  scaleFromKnown,
  toPhoto,
  type View,
} from '../../photo/index.ts';
import { apartFindings } from './apartFindings.ts';
import { bridgedFindings } from './bridgedFindings.ts';
import { edgeHeightFaults, edgeHeightFindings } from './edgeHeight.ts';
import { hintsOutsideFaults } from './hintsOutside.ts';
import { knownAsDrawn } from './knownAsDrawn.ts';
import { meantFindings } from './meantFindings.ts';
import { familyOfSeen, restoreSeen } from './restoreSeen.ts';
import { seeBodies } from './seeBodies.ts';
import type { SeenBody } from './seenBody.ts';
import { type SeenLines, seenLines } from './seenLines.ts';
import { partOf, type TraceProgress } from './traceProgress.ts';
import type { TraceRequest } from './traceRequest.ts';

/** What photographs gave: the restored outline with everything it was found from. */
export interface Traced {
  readonly request: TraceRequest;
  /** The first photograph's body; `others` holds those of the further ones. */
  readonly seen: SeenBody;
  readonly others: readonly SeenBody[];
  /** The first view after the known lengths corrected it. */
  readonly view: View;
  readonly correction: ScaleCorrection;
  readonly restored: RestoredOutline;
  /** Half interval (k = 2) of the body length. */
  readonly lengthPlusMinusMm: number;
  /** How far several photographs lie apart; null for one. */
  readonly apart: { readonly rmsMm: number; readonly maxMm: number } | null;
  /** Purfling and sound holes. */
  readonly lines: SeenLines;
  readonly findings: readonly Finding[];
}

/**
 * Photographs to restored outline: scene, body, edge, mirror axis, halves merged, arcs, and the scale checked and
 * corrected by the lengths that are known. Faults: those of the stages; a trace that the picture leaves in doubt is
 * given with findings that ask. `progress` is told each stage as it begins, and the share done. Whoever traces the same pictures
 * again, after a mark or a ruling, hands in the same `keeper` and the same finder: then only what was touched is done anew.
 */
export function trace(
  request: TraceRequest,
  finder: MarkerFinder,
  progress: TraceProgress = () => undefined,
  keeper: Keeper = newestKeeper(),
): Checked<Traced> {
  const absurd = scaleFromKnown([], request.known, SHEET_TRUST);
  const heightFaults = edgeHeightFaults(request.edgeHeightMm);
  const outsideFaults = hintsOutsideFaults(request.photographs);
  if (!absurd.ok || heightFaults.length > 0 || outsideFaults.length > 0)
    return refuse(...(absurd.ok ? [] : absurd.faults), ...heightFaults, ...outsideFaults);
  const all = seeBodies(request, finder, partOf(progress, 0, SEEN_AT), keeper);
  if (!all.ok) return all;
  const [seen, ...others] = all.value;
  progress('restoring the outline', SEEN_AT);
  const first = restoreSeen(all.value, null, request.face, request.meant, keeper);
  if (!first.ok) return first;
  const known = knownAsDrawn(request.known, familyOfSeen(seen));
  const correction = scaleFromKnown(
    first.value.outline.measures,
    known,
    trustIn(request, all.value, first.value.outline),
  );
  if (!correction.ok) return correction;
  const stretch = stretchOf(first.value.outline, correction.value);
  const second = isAsSeen(correction.value)
    ? first
    : restoreSeen(all.value, stretch, request.face, request.meant, keeper);
  if (!second.ok) return second;
  const view: View = { ...seen.view, stretch };
  const { outline, apart } = second.value;
  progress('following purfling, sound holes and joint', RESTORED_AT);
  const lines = seenLines(seen, view, outline, request.face, keeper);
  progress('the outline is restored', 1);
  return accept({
    request,
    seen,
    others,
    view,
    correction: correction.value,
    restored: outline,
    lengthPlusMinusMm: Math.min(
      ...all.value.map((one) => lengthPlusMinus({ ...one.view, stretch }, outline)),
    ),
    apart,
    lines,
    findings: [
      ...(seen.sceneFindings ?? []),
      ...bodyFindings(all.value),
      ...viewFindings(all.value, isCorrected(first.value.outline, request)),
      ...correction.value.findings,
      ...apartFindings(apart),
      ...bridgedFindings(seen.trace),
      ...meantFindings(outline),
      ...lines.findings,
      ...(!seen.onSheet ? [] : edgeHeightFindings(request.edgeHeightMm, outline.bodyLengthMm)),
    ],
  });
}

/** Shares of the work that are done when the edges are found, and when the outline is restored. */
const [SEEN_AT, RESTORED_AT] = [0.7, 0.9];

/**
 * How far the scene's own millimetres go before callipers: with a sheet what camera, print and height leave open, in a
 * scan what its resolution is good to.
 */
function trustIn({ scan }: TraceRequest, all: readonly SeenBody[], first: RestoredOutline): SceneTrust {
  if (scan) return { ...SHEET_TRUST, scalePlusMinus: Math.max(scan.plusMinus, LEAST_SCALE_SHARE) };
  if (!all.every(({ onSheet }) => onSheet)) return NO_SHEET_TRUST;
  const share = Math.min(...all.map(({ view }) => lengthPlusMinus(view, first))) / first.bodyLengthMm;
  return { ...SHEET_TRUST, scalePlusMinus: Math.max(share, LEAST_SCALE_SHARE) };
}

/** Share, k = 2. No photograph of a sheet is trusted further than this (chosen by us). */
const LEAST_SCALE_SHARE = 0.0005;

/** What was found in each photograph, with its name where there are several. */
function bodyFindings(all: readonly SeenBody[]): readonly Finding[] {
  if (all.length === 1) return all.flatMap(({ findings }) => findings);
  return all.flatMap(({ findings, photograph }) =>
    findings.map((finding) => ({ ...finding, at: `${photograph.name}, ${finding.at}` })),
  );
}

/** What a square-on photograph leaves open, and two calliper lengths settle. */
const HEIGHT_UNSURE = 'camera.heightUnsure';

/** What the views leave unsure; two lengths settle it, and of several photographs the surest counts. */
function viewFindings(all: readonly SeenBody[], corrected: boolean): readonly Finding[] {
  const lists = all.map(({ viewFindings }) =>
    viewFindings.filter(({ code }) => code !== HEIGHT_UNSURE || !corrected),
  );
  return lists.some((list) => list.length === 0) ? [] : (lists[0] ?? []);
}

/** Whether a length along and one across were both known and measured. */
function isCorrected({ measures }: RestoredOutline, { known }: TraceRequest): boolean {
  const used = known.filter(({ name }) => measures.some((measure) => measure.name === name));
  return used.some(({ name }) => name === 'bodyLength') && used.some(({ name }) => name !== 'bodyLength');
}

function stretchOf(
  first: RestoredOutline,
  { along, across, alongPlusMinus, acrossPlusMinus }: ScaleCorrection,
): NonNullable<View['stretch']> {
  return { alongRad: first.axis.headingRad, along, across, alongPlusMinus, acrossPlusMinus };
}

/** Whether nothing corrects the scale: the outline stays as it was restored first. */
function isAsSeen({ along, across }: ScaleCorrection): boolean {
  return along === 1 && across === 1;
}

function lengthPlusMinus(view: View, { axis, bodyLengthMm }: RestoredOutline): number {
  const { x, y } = axis.through;
  const far: Point<'scene'> = {
    x: x + bodyLengthMm * cos(axis.headingRad),
    y: y + bodyLengthMm * sin(axis.headingRad),
  };
  return lengthBetween(view, toPhoto(view, axis.through), toPhoto(view, far)).plusMinusMm;
}
