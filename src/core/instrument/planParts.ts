import { accept, type Checked, refuse } from '../base/index.ts';
import { type Chain, chainThrough, type HalfOutline, joinChains } from '../curve/index.ts';
import type { Design } from '../design/index.ts';
import { blockParts } from './blocks/blockParts.ts';
import { caulParts } from './cauls/caulParts.ts';
import { innerForm } from './form/innerForm.ts';
import { liningParts } from './linings/liningParts.ts';
import { bodyOutline } from './outline/bodyOutline.ts';
import { purflingLines } from './outline/purflingLines.ts';
import { stationsOf } from './outline/stations.ts';
import { templateParts } from './outline/templates.ts';
import type { PlanParts } from './plan.ts';
import { registerOfPlan } from './planRegister.ts';
import { planValues } from './planValues.ts';
import { ribLines } from './ribs/ribLines.ts';

/**
 * The parts in the plane of a design whose half outline is known.
 *
 * Faults: those of {@link planValues}, {@link bodyOutline}, {@link purflingLines}, {@link ribLines},
 * {@link blockParts}, {@link liningParts} and {@link innerForm}; parts that do not need each other are all tried, so that every fault is seen at once.
 */
export function planParts(design: Design, half: HalfOutline): Checked<PlanParts> {
  const values = planValues(design);
  const outline = bodyOutline(half);
  if (!values.ok || !outline.ok)
    return refuse(...[values, outline].flatMap((each) => (each.ok ? [] : each.faults)));
  const purfling = purflingLines(half, outline.value.bodyLengthMm, values.value, {
    lengthMm: design.values.stingLength?.value ?? 0,
    asideMm: design.values.stingAside?.value ?? 0,
  });
  const ribs = ribLines(outline.value, values.value, design.ribs);
  if (!ribs.ok) return purfling.ok ? ribs : refuse(...purfling.faults, ...ribs.faults);
  const blocks = blockParts(ribs.value, values.value);
  if (!purfling.ok || !blocks.ok)
    return refuse(...[purfling, blocks].flatMap((each) => (each.ok ? [] : each.faults)));
  const form = innerForm(outline.value, ribs.value, blocks.value, values.value);
  const linings = liningParts(ribs.value, blocks.value, values.value, design.ribs);
  if (!form.ok || !linings.ok)
    return refuse(...[form, linings].flatMap((each) => (each.ok ? [] : each.faults)));
  const cauls = caulParts(outline.value.bodyLengthMm, ribs.value, blocks.value, form.value, values.value);
  const { pins } = form.value;
  const parts: Omit<PlanParts, 'registerEntries'> = {
    name: design.name,
    family: design.family,
    outline: outline.value,
    stations: stationsOf(outline.value, values.value.stop),
    purfling: purfling.value,
    ribs: ribs.value,
    blocks: blocks.value,
    linings: linings.value,
    cauls,
    form: form.value,
    outlineTemplate: templateParts(outline.value.chain, openHalf(half), pins),
    innerTemplate: templateParts(ribs.value.inner.chain, ribs.value.inner.half, pins),
    findings: [purfling.value, ribs.value, linings.value, form.value, cauls].flatMap(
      ({ findings }) => findings,
    ),
  };
  return accept({ ...parts, registerEntries: registerOfPlan(parts) });
}

/** The treble half as one open line, corner ends included; a corner that runs to a point has none. */
function openHalf({ lowerBout, cBout, upperBout }: HalfOutline): Chain<'body'> {
  return joinChains(
    lowerBout,
    ...cornerEnd(lowerBout, cBout),
    cBout,
    ...cornerEnd(cBout, upperBout),
    upperBout,
  );
}

function cornerEnd(arriving: Chain<'body'>, leaving: Chain<'body'>): readonly Chain<'body'>[] {
  const end = chainThrough([...arriving.vertices.slice(-1), ...leaving.vertices.slice(0, 1)], false);
  return end.vertices.length === 2 ? [end] : [];
}
