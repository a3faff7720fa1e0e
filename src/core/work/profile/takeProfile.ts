import { accept, type Checked, type Finding } from '../../base/index.ts';
import { type Design, takeMeasured } from '../../design/index.ts';
import { headFromScroll } from './headFromScroll.ts';
import { measuredArches } from './measuredArches.ts';
import { readProfile } from './readProfile.ts';
import { readScrollSide } from './scrollReading.ts';

/** Values that the fit of an arch is told against, and never gives itself. */
const GIVEN_TO_ARCHES = ['bodyLength', 'edgeHeightTop', 'edgeHeightBack'] as const;

/**
 * A design with what one `garland-profile` tells: the side of a head, or height and fullness of a plate's arch. What stood as
 * proposed is kept beside the measured numbers. Faults: those of reading the document and of the fits.
 */
export function takeProfile(
  design: Design,
  json: unknown,
): Checked<{ readonly design: Design; readonly findings: readonly Finding[] }> {
  if ((json as { readonly of?: unknown } | null)?.of === 'scrollSide') return takeHead(design, json);
  const profile = readProfile(json);
  if (!profile.ok) return profile;
  const values = Object.fromEntries(GIVEN_TO_ARCHES.map((name) => [name, design.values[name]]));
  const arches = measuredArches({ family: design.family, name: design.name, values }, [profile.value]);
  if (!arches.ok) return arches;
  return accept({ design: takeMeasured(design, arches.value.values), findings: arches.value.findings });
}

function takeHead(design: Design, json: unknown): ReturnType<typeof takeProfile> {
  const reading = readScrollSide(json);
  if (!reading.ok) return reading;
  const head = headFromScroll(design, reading.value);
  if (!head.ok) return head;
  const { values, fit, findings } = head.value;
  return accept({ design: { ...takeMeasured(design, values), headFit: fit }, findings });
}
