import { nearestSize } from '../knowledge/index.ts';
import { chosen, isSameQuantity, type Quantity } from '../quantity/index.ts';
import type { Design } from './design.ts';
import { filled } from './draftDesign.ts';
import { VALUE_NAMES, VALUES, type ValueName } from './values.ts';

type Values = Design['values'];

/**
 * The design with a number of the maker's own. What was proposed in its place is kept beside it; proposals that were
 * worked out from it follow, numbers that somebody measured or chose stay. `value` is in the unit of {@link VALUES}.
 */
export function overrule(design: Design, name: ValueName, value: number): Design {
  const before = design.values[name];
  const own: Quantity = { value, unit: VALUES[name].unit, origin: chosen() };
  const changed = followed(design, { ...design.values, [name]: own });
  if (before === undefined || isChosenByMaker(before)) return changed;
  return { ...changed, overruled: { ...design.overruled, [name]: before } };
}

/**
 * The design with numbers that were measured in the place of those that stood: what was proposed is kept beside them, and
 * proposals that were worked out from them follow.
 */
export function takeMeasured(design: Design, measured: Values): Design {
  const changed = followed(design, { ...design.values, ...measured });
  const proposed = Object.entries(design.values).filter(
    ([name, quantity]) => name in measured && !isMakersOwn(quantity) && !(name in (design.overruled ?? {})),
  );
  if (proposed.length === 0) return changed;
  return { ...changed, overruled: { ...design.overruled, ...Object.fromEntries(proposed) } };
}

/** The design with the proposal back in the place of the maker's own number; as it is where nothing was overruled. */
export function takeProposal(design: Design, name: ValueName): Design {
  const proposal = design.overruled?.[name];
  if (proposal === undefined) return design;
  const { [name]: _, ...others } = design.overruled ?? {};
  const { overruled: __, ...back } = followed(design, { ...design.values, [name]: proposal });
  return Object.keys(others).length === 0 ? back : { ...back, overruled: others };
}

/** The values with those proposals brought up to date that stood as we would have filled them before. */
function followed(design: Design, values: Values): Design {
  const proposedBefore = proposals(design, design.values);
  const proposedNow = proposals(design, values);
  const updated: Partial<Record<ValueName, Quantity>> = { ...values };
  for (const name of VALUE_NAMES) {
    const stood = design.values[name];
    const now = proposedNow[name];
    if (values[name] !== stood || stood === undefined || now === undefined || isMakersOwn(stood)) continue;
    // What says the same stays the very one that stood: who looks for what changed must not find all of them.
    if (proposedBefore[name]?.value === stood.value && !isSameQuantity(stood, now)) updated[name] = now;
  }
  return { ...design, values: updated };
}

/** Who pulls at one width means that one: the others follow the length of the body alone. */
const WIDTHS: ReadonlySet<string> = new Set(['upperBout', 'waist', 'lowerBout']);

/** What the family's habits give where nothing is measured or chosen, by the numbers that are. */
function proposals(design: Design, values: Values): Values {
  const own = Object.fromEntries(
    Object.entries(values).filter(([name, quantity]) => isMakersOwn(quantity) && !WIDTHS.has(name)),
  ) as Values;
  const length = values.bodyLength?.value ?? Number.NaN;
  return filled(own, nearestSize(design.family, length), length);
}

/** Whether a number is the maker's own: measured, or chosen by them and not by us. */
export function isMakersOwn(quantity: Quantity): boolean {
  return quantity.origin.kind === 'measured' || isChosenByMaker(quantity);
}

/** Numbers that we chose say so in their reason. */
function isChosenByMaker({ origin }: Quantity): boolean {
  return origin.kind === 'chosen' && !origin.why?.startsWith('by us');
}
