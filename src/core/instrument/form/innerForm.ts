import { boundsOf } from '../../curve/index.ts';
import type { BlockParts } from '../blocks/blockParts.ts';
import type { PlanValues } from '../instrumentValues.ts';
import type { BodyOutline } from '../outline/bodyOutline.ts';
import { closeAcrossCentre, closeOnCentreLine, notchedEdge } from '../outline/halfLine.ts';
import { stationsOf } from '../outline/stations.ts';
import type { RibLines } from '../ribs/ribLines.ts';
import { clampHoles } from './clampHoles.ts';
import { formHalf } from './formBoundary.ts';
import { formFindings } from './formFindings.ts';
import type { CheckWidth, FormParts, PinHole } from './formParts.ts';

/**
 * The inner form: inner face of the ribs, recesses, clamp holes and pins.
 *
 * Findings: `form.no-clamp-holes`, `form.thick`, `form.waist-weak`, `form.pin-in-block`.
 */
export function innerForm(
  outline: BodyOutline,
  ribs: RibLines,
  blocks: BlockParts,
  values: PlanValues,
): FormParts {
  const half = formHalf(ribs.inner, blocks);
  const edge = closeAcrossCentre(half);
  const drilled = clampHoles(outline.half, edge, {
    radiusMm: values.clampHoleDiameter / 2,
    wallMm: values.clampHoleWall,
    pitchMm: values.clampHolePitch,
    formInsetMm: ribs.inner.insetMm,
  });
  const pins = pinHoles(outline.bodyLengthMm, values);
  const box = boundsOf(edge);
  const form: Omit<FormParts, 'findings'> = {
    half,
    outline: edge,
    halfOutline: closeOnCentreLine(half, notchedEdge(pins)),
    clampHoles: drilled.holes,
    pins,
    stations: stationsOf(outline, values.stop),
    thicknessMm: values.formThickness,
    widthMm: box.max.x - box.min.x,
    lengthMm: box.max.y - box.min.y,
    checkWidths: [
      checkWidth('waist', outline.waist, ribs.inner.insetMm),
      checkWidth('lower bout', outline.lowerBout, ribs.inner.insetMm),
    ],
    leastWallMm: drilled.holes.length > 0 ? Math.min(...drilled.holes.map((hole) => hole.wallMm)) : undefined,
  };
  return { ...form, findings: [...drilled.findings, ...formFindings(form, blocks, values)] };
}

/** Two holes on the centre line, equally far from both ends of the body. */
export function pinHoles(
  bodyLengthMm: number,
  values: Pick<PlanValues, 'pinFromEnd' | 'pinDiameter'>,
): readonly PinHole[] {
  return [values.pinFromEnd, bodyLengthMm - values.pinFromEnd].map((stationMm) => ({
    centre: { x: 0, y: stationMm },
    radiusMm: values.pinDiameter / 2,
  }));
}

function checkWidth(
  name: CheckWidth['name'],
  place: { readonly widthMm: number; readonly stationMm: number },
  insetMm: number,
): CheckWidth {
  return { name, stationMm: place.stationMm, widthMm: place.widthMm - 2 * insetMm };
}
