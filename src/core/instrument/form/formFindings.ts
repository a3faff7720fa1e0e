import type { Fault, Finding } from '../../base/index.ts';
import type { BlockParts } from '../blocks/blockParts.ts';
import type { PlanValues } from '../planValues.ts';
import type { FormParts, PinHole } from './formParts.ts';

/** mm of play so that the form slides out past the linings of one side; common practice. */
const LINING_PLAY_MM = 2;

/** Share of the form's width at the waist that must be left between clamp holes; from memory. */
const LEAST_WAIST_SHARE = 0.3;

/** What is to be said of a form that can be made all the same. */
export function formFindings(form: Omit<FormParts, 'findings'>, values: PlanValues): Finding[] {
  return [...thicknessFinding(form, values), ...waistFinding(form)];
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

/** Pins that would fall into an end block, or into each other; wood of one diameter is left round each. */
export function pinFaults(pins: readonly PinHole[], blocks: BlockParts): Fault[] {
  const from = blocks.lower.faceStationMm;
  const to = blocks.upper.faceStationMm;
  const edges = [
    from,
    ...pins.flatMap(({ centre, radiusMm }) => [centre.y - radiusMm, centre.y + radiusMm]),
    to,
  ];
  const leastMm = 2 * Math.max(...pins.map((pin) => pin.radiusMm));
  const clear = edges.every((edge, at) => at % 2 === 0 || edge - (edges[at - 1] as number) >= leastMm);
  if (clear) return [];
  return [
    {
      code: 'form.pin-misplaced',
      at: 'pinFromEnd',
      found: `pin holes ${pins.map((pin) => pin.centre.y.toFixed(1)).join(' and ')} mm above the lower end`,
      need: `places between the end blocks, ${from.toFixed(1)} to ${to.toFixed(1)} mm, clear of each other`,
      remedy: 'move the pins, or make the end blocks shallower',
    },
  ];
}
