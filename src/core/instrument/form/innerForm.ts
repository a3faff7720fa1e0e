import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import { boundsOf, selfCrossings } from '../../curve/index.ts';
import type { BlockParts } from '../blocks/blockParts.ts';
import type { BodyOutline } from '../outline/bodyOutline.ts';
import { closeAcrossCentre, closeOnCentreLine, notchedEdge } from '../outline/halfLine.ts';
import { stationsOf } from '../outline/stations.ts';
import type { PlanValues } from '../planValues.ts';
import type { RibLines } from '../ribs/ribLines.ts';
import { clampHoles } from './clampHoles.ts';
import { formHalf } from './formBoundary.ts';
import { formFindings, pinFaults } from './formFindings.ts';
import type { CheckWidth, FormParts, PinHole } from './formParts.ts';

/**
 * The inner form: inner face of the ribs, recesses, clamp holes and pins.
 *
 * Faults: `form.pin-misplaced`, `form.blocks-meet`. Findings: `form.no-clamp-holes`, `form.thick`, `form.waist-weak`.
 */
export function innerForm(
  outline: BodyOutline,
  ribs: RibLines,
  blocks: BlockParts,
  values: PlanValues,
): Checked<FormParts> {
  const pins = pinHoles(outline.bodyLengthMm, values);
  const misplaced = pinFaults(pins, blocks);
  if (misplaced.length > 0) return refuse(...misplaced);
  const half = formHalf(ribs.inner, blocks);
  const edge = closeAcrossCentre(half);
  if (selfCrossings(edge).length > 0) return refuse(blocksMeet());
  const drilled = clampHoles(outline.half, edge, {
    radiusMm: values.clampHoleDiameter / 2,
    wallMm: values.clampHoleWall,
    pitchMm: values.clampHolePitch,
    pinRadiusMm: values.pinDiameter / 2,
    formInsetMm: ribs.inner.insetMm,
  });
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
  return accept({ ...form, findings: [...drilled.findings, ...formFindings(form, values)] });
}

/** Two holes on the centre line, equally far from both ends of the body. */
function pinHoles(
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

function blocksMeet(): Fault {
  return {
    code: 'form.blocks-meet',
    at: 'lowerBlockWidth',
    found: 'recesses that run into each other',
    need: 'wood of the form between all blocks',
    remedy: 'make the blocks smaller',
  };
}
