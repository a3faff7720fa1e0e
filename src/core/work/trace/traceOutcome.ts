import type { Finding } from '../../base/index.ts';
import { type HalfOutline, outlineChain, sampleChain } from '../../curve/index.ts';
import { type Drawing, wearMapDrawing } from '../../drawing/index.ts';
import {
  chainToDocument,
  documentText,
  pointsToDocument,
  type TraceDocument,
  toFile,
} from '../../files/index.ts';
import type { View } from '../../photo/index.ts';
import { printSpread } from '../../quantity/index.ts';
import { linesDocument } from './linesDocument.ts';
import { meantDocument } from './meantDocument.ts';
import type { Traced } from './trace.ts';
import { recordOf } from './traceRecord.ts';

/** A trace as a document, and in a few lines. */
export interface TraceOutcome {
  readonly document: TraceDocument;
  readonly text: string;
  readonly summary: readonly string[];
  /** What was restored, as a picture at true size. */
  readonly wearMap: Drawing;
  readonly findings: readonly Finding[];
}

/** mm. Chords of the outline's points leave the arcs by no more than this. */
const CHORD_MM = 0.01;

/** The document, text and summary of a trace. */
export function traceOutcome(traced: Traced): TraceOutcome {
  const document = traceDocument(traced);
  return {
    document,
    text: documentText(document),
    summary: traceSummary(traced),
    wearMap: wearMapDrawing(traced.restored, traced.request.photographs[0].name),
    findings: traced.findings,
  };
}

function traceDocument(traced: Traced): TraceDocument {
  const { request, seen, restored, correction, lengthPlusMinusMm } = traced;
  const { half, axis, asFound, wear, bodyLengthMm } = restored;
  return {
    format: 'garland-trace',
    version: 1,
    units: 'mm',
    frame: 'body',
    name: request.photographs[0].name,
    face: request.face,
    request: recordOf(request),
    bodyLength: { value: toFile(bodyLengthMm), plusMinus: toFile(lengthPlusMinusMm) },
    measures: restored.measures.map(({ name, mm }) => ({ name, value: toFile(mm) })),
    ...(correction.misfits.length > 0 && {
      known: correction.misfits.map(({ name, givenMm, misfitMm }) => ({
        name,
        value: toFile(givenMm),
        misfit: toFile(misfitMm),
      })),
    }),
    ...(seen.view.kind === 'camera' && {
      edgeHeight: {
        value: toFile(seen.view.planeHeightMm),
        plusMinus: toFile(seen.view.planeHeightPlusMinusMm),
      },
    }),
    scale: { mmPerPixel: seen.mmPerPixel * correction.along, uncertainty: lengthPlusMinusMm / bodyLengthMm },
    axis: {
      through: [toFile(axis.through.x), toFile(axis.through.y)],
      headingDeg: degrees(axis.headingRad),
      plusMinus: { across: toFile(axis.plusMinus.acrossMm), headingDeg: degrees(axis.plusMinus.headingRad) },
      frame: 'scene',
    },
    fit: { rms: toFile(restored.fitRmsMm), max: toFile(restored.fitMaxMm) },
    wear: wear.map(({ side, at, depthMm, extentMm, from }) => ({
      side,
      at: [toFile(at.x), toFile(at.y)] as [number, number],
      depth: toFile(depthMm),
      extent: toFile(extentMm),
      from,
    })),
    lean: toFile(restored.leanMaxMm),
    bridged: seen.trace.unseen
      .filter((stretch) => stretch.state === 'bridged')
      .map(({ name, side }) => ({ name, side })),
    arcs: halfDocument(half),
    ...(restored.halves && {
      halves: { bass: halfDocument(restored.halves.bass), treble: halfDocument(restored.halves.treble) },
    }),
    ...meantDocument(restored),
    ...linesDocument(traced.lines),
    outline: pointsToDocument(sampleChain(outlineChain(half), CHORD_MM)),
    asFound: { bass: pointsToDocument(asFound.bass), treble: pointsToDocument(asFound.treble) },
  };
}

function halfDocument({ lowerBout, cBout, upperBout }: HalfOutline) {
  return {
    lowerBout: chainToDocument(lowerBout),
    cBout: chainToDocument(cBout),
    upperBout: chainToDocument(upperBout),
  };
}

function traceSummary({ seen, restored, lengthPlusMinusMm, request, correction }: Traced): string[] {
  const { wear } = restored;
  const bridged = [
    ...new Set(seen.trace.unseen.filter((one) => one.state === 'bridged').map((one) => one.name)),
  ];
  const arcs = [restored.half.lowerBout, restored.half.cBout, restored.half.upperBout];
  const count = arcs.reduce((sum, chain) => sum + chain.vertices.length - 1, 0);
  return [
    `${request.photographs.map(({ name }) => name).join(' and ')}: body ${printSpread(restored.bodyLengthMm, lengthPlusMinusMm)} mm long, as meant`,
    ...heightLines(seen.view, request),
    ...restored.measures
      .filter(({ name }) => name !== 'bodyLength')
      .map(({ name, mm: value }) => `  ${WORDS[name] ?? name} ${mm(value)} as found`),
    ...correction.misfits.map(
      ({ name, givenMm, misfitMm }) =>
        `  known ${WORDS[name] ?? name} ${mm(givenMm)}: ${signed(misfitMm)} mm in the photograph at the scale taken`,
    ),
    `  ${count} arcs a half, ${restored.fitRmsMm.toFixed(2)} mm rms from the edge`,
    ...wear.map(
      ({ side, at, depthMm, extentMm }) =>
        `  restored: ${side} side at ${at.y.toFixed(0)} mm from the lower end, ${depthMm.toFixed(1)} mm deep over ${extentMm.toFixed(0)} mm`,
    ),
    ...(bridged.length > 0 ? [`  bridged: ${bridged.join('; ')}`] : []),
  ];
}

/** How high the edge stands, where the photographs told it. */
function heightLines(view: View, { edgeHeightMm }: Traced['request']): string[] {
  if (view.kind !== 'camera' || edgeHeightMm !== undefined) return [];
  return [
    `  edge ${printSpread(view.planeHeightMm, view.planeHeightPlusMinusMm)} mm above the sheet, as photographed`,
  ];
}

const WORDS: Readonly<Record<string, string>> = {
  bodyLength: 'body length',
  lowerBout: 'lower bout',
  waist: 'waist',
  upperBout: 'upper bout',
};

function mm(value: number): string {
  return `${value.toFixed(1)} mm`;
}

function signed(value: number): string {
  const size = Math.abs(value).toFixed(2);
  if (Number(size) === 0) return '±0';
  return `${value < 0 ? '−' : '+'}${size}`;
}

function degrees(rad: number): number {
  return (rad * 180) / Math.PI;
}
