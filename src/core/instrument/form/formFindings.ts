import type { Finding } from '../../base/index.ts';
import type { BlockParts } from '../blocks/blockParts.ts';
import type { PlanValues } from '../instrumentValues.ts';
import type { FormParts } from './formParts.ts';

/** mm of play so that the form slides out past the linings of one side; common practice. */
const LINING_PLAY_MM = 2;

/** Share of the form's width at the waist that must be left between clamp holes; from memory. */
const LEAST_WAIST_SHARE = 0.3;

/** What is to be said of a form that can be made all the same. */
export function formFindings(
  form: Omit<FormParts, 'findings'>,
  blocks: BlockParts,
  values: PlanValues,
): Finding[] {
  return [...thicknessFinding(form, values), ...waistFinding(form), ...pinFinding(form, blocks)];
}

function thicknessFinding(form: Omit<FormParts, 'findings'>, values: PlanValues): Finding[] {
  const lowestMm = Math.min(values.ribHeightNeck, values.ribHeightTail);
  const roomMm = lowestMm - 2 * values.liningWidth - LINING_PLAY_MM;
  if (form.thicknessMm <= roomMm) return [];
  return [
    {
      code: 'form.thick',
      weight: 'remark',
      at: 'formThickness',
      found: `a form ${form.thicknessMm} mm thick with room for ${roomMm.toFixed(1)} mm between the linings`,
      need: 'a form that comes out past the linings',
      remedy: 'glue in the linings of one side only while the form is in place, or take a thinner form',
    },
  ];
}

function waistFinding(form: Omit<FormParts, 'findings'>): Finding[] {
  const waist = form.checkWidths.find((width) => width.name === 'waist');
  if (waist === undefined) return [];
  const bitten = form.clampHoles
    .filter((hole) => Math.abs(hole.centre.y - waist.stationMm) < hole.radiusMm)
    .reduce((sum, hole) => sum + 2 * hole.radiusMm, 0);
  const leftMm = waist.widthMm - bitten;
  if (leftMm >= LEAST_WAIST_SHARE * waist.widthMm) return [];
  return [
    {
      code: 'form.waist-weak',
      weight: 'caution',
      at: 'clampHoleDiameter',
      found: `${leftMm.toFixed(1)} mm of wood left across the waist of the form`,
      need: `at least ${(LEAST_WAIST_SHARE * waist.widthMm).toFixed(1)} mm`,
      remedy: 'take smaller clamp holes',
    },
  ];
}

function pinFinding(form: Omit<FormParts, 'findings'>, blocks: BlockParts): Finding[] {
  const clear = form.pins.every(
    (pin) =>
      pin.centre.y - pin.radiusMm > blocks.lower.faceStationMm &&
      pin.centre.y + pin.radiusMm < blocks.upper.faceStationMm,
  );
  if (clear) return [];
  return [
    {
      code: 'form.pin-in-block',
      weight: 'contradiction',
      at: 'pinFromEnd',
      found: 'a pin hole that falls into the recess of an end block',
      need: 'pin holes in the wood of the form',
      remedy: 'move the pins further from the ends, or make the end blocks shallower',
    },
  ];
}
