import { accept, type Checked, type Finding, refuse } from '../../base/index.ts';
import { type Design, takeMeasured, takeProposal, type ValueName } from '../../design/index.ts';
import { headFromScroll } from './headFromScroll.ts';
import { measuredArches } from './measuredArches.ts';
import { readProfile } from './readProfile.ts';
import { readScrollSide } from './scrollReading.ts';
import { valuesOfProfile } from './valuesOfProfile.ts';

/** Values that the fit of an arch is told against, and never gives itself. */
const GIVEN_TO_ARCHES = ['bodyLength', 'edgeHeightTop', 'edgeHeightBack'] as const;

/** A design with what `garland-profile`s tell, and what is to be known of it. */
export interface DesignWithProfiles {
  readonly design: Design;
  readonly findings: readonly Finding[];
}

/**
 * A design with what some of the profiles that lie beside it tell, and nothing of the others: numbers that came from any of the
 * photographs `listed` go back to what was proposed, then all that are chosen are taken together. Where a card across and one
 * along a plate both give its height, that along the middle counts; of several heads the last. Faults: those of reading
 * the documents and of the fits.
 */
export function takeProfiles(
  design: Design,
  chosen: readonly unknown[],
  listed: readonly string[],
): Checked<DesignWithProfiles> {
  const bare = listed.reduce(withoutProfile, design);
  const arches = chosen.filter((json) => !isScroll(json)).toSorted((a, b) => alongLast(a) - alongLast(b));
  const withArches = arches.length === 0 ? accept({ design: bare, findings: [] }) : takeArches(bare, arches);
  const head = chosen.findLast(isScroll);
  if (!withArches.ok || head === undefined) return withArches;
  const withHead = takeHead(withArches.value.design, head);
  if (!withHead.ok) return withHead;
  return accept({
    design: withHead.value.design,
    findings: [...withArches.value.findings, ...withHead.value.findings],
  });
}

function withoutProfile(design: Design, photograph: string): Design {
  const { headFit, ...rest } = valuesOfProfile(design, photograph).reduce(withoutValue, design);
  return headFit === undefined || headFit.source === photograph ? rest : { ...rest, headFit };
}

/** Back to the proposal; what nobody had proposed is left out again. */
function withoutValue(design: Design, name: ValueName): Design {
  if (design.overruled?.[name] !== undefined) return takeProposal(design, name);
  const { [name]: _, ...values } = design.values;
  return { ...design, values };
}

function isScroll(json: unknown): boolean {
  return (json as { readonly of?: unknown } | null)?.of === 'scrollSide';
}

function alongLast(json: unknown): number {
  return (json as { readonly of?: unknown } | null)?.of === 'longArch' ? 1 : 0;
}

function takeArches(design: Design, documents: readonly unknown[]): Checked<DesignWithProfiles> {
  const profiles = documents.map(readProfile);
  const faults = profiles.flatMap((one) => (one.ok ? [] : one.faults));
  if (faults.length > 0) return refuse(...faults);
  const values = Object.fromEntries(GIVEN_TO_ARCHES.map((name) => [name, design.values[name]]));
  const arches = measuredArches(
    { family: design.family, name: design.name, values },
    profiles.flatMap((one) => (one.ok ? [one.value] : [])),
  );
  if (!arches.ok) return arches;
  return accept({ design: takeMeasured(design, arches.value.values), findings: arches.value.findings });
}

function takeHead(design: Design, json: unknown): Checked<DesignWithProfiles> {
  const reading = readScrollSide(json);
  if (!reading.ok) return reading;
  const head = headFromScroll(design, reading.value);
  if (!head.ok) return head;
  const { values, fit, findings } = head.value;
  return accept({ design: { ...takeMeasured(design, values), headFit: fit }, findings });
}
