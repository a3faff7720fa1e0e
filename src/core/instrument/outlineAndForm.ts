import { accept, type Checked, refuse } from '../base/index.ts';
import type { Chain, HalfOutline } from '../curve/index.ts';
import type { Design } from '../design/index.ts';
import { blockParts } from './blocks/blockParts.ts';
import { formHalf } from './form/formBoundary.ts';
import { type BodyOutline, bodyOutline } from './outline/bodyOutline.ts';
import { closeAcrossCentre } from './outline/halfLine.ts';
import { planValues } from './planValues.ts';
import { ribFaces } from './ribs/ribLines.ts';

/** Of the parts in the plane what a hand that pulls at the body holds. */
export interface OutlineAndForm {
  readonly outline: BodyOutline;
  /** Edge of the form, closed. */
  readonly formEdge: Chain<'body'>;
}

/**
 * Outline and edge of the form as `planParts` has them, to the bit, and nothing else: quick enough for the frame in which a
 * hand moves. Faults: those of values, outline, ribs and blocks.
 */
export function outlineAndForm(design: Design, half: HalfOutline): Checked<OutlineAndForm> {
  const values = planValues(design);
  const outline = bodyOutline(half);
  if (!values.ok || !outline.ok)
    return refuse(...[values, outline].flatMap((each) => (each.ok ? [] : each.faults)));
  const ribs = ribFaces(outline.value, values.value, design.ribs);
  if (!ribs.ok) return ribs;
  const blocks = blockParts(ribs.value, values.value);
  if (!blocks.ok) return blocks;
  return accept({
    outline: outline.value,
    formEdge: closeAcrossCentre(formHalf(ribs.value.inner, blocks.value)),
  });
}
