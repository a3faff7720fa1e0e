import type { Finding } from '../../base/index.ts';
import type { Design } from '../../design/index.ts';
import type { RegisterEntry } from '../../quantity/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { plateValueNames } from './archNumbers.ts';

/** With less than this share of the edge left under the groove a plate may break along it: 1.5 mm on a violin; from memory. */
const LEAST_SHARE = 0.4;

/** The wood that a purfling groove leaves above the gluing face, and whether that is too little; nothing where no depth is known. */
export function purflingWood(
  values: Design['values'],
  { plate, numbers }: PlateArch,
): { readonly entries: readonly RegisterEntry[]; readonly findings: readonly Finding[] } {
  const depthMm = values.purflingDepth?.value;
  if (depthMm === undefined) return { entries: [], findings: [] };
  const leftMm = numbers.edgeHeightMm - depthMm;
  const leastMm = LEAST_SHARE * numbers.edgeHeightMm;
  const from = [plateValueNames(plate).edge, 'purflingDepth'];
  const how = 'wood under the groove, before the channel is cut';
  return {
    entries: [
      { name: `${plate}.purflingWood`, value: leftMm, unit: 'mm', origin: { kind: 'derived', from, how } },
    ],
    findings: leftMm >= leastMm ? [] : [thin(plate, depthMm, leftMm, leastMm)],
  };
}

function thin(plate: PlateArch['plate'], depthMm: number, leftMm: number, leastMm: number): Finding {
  return {
    code: 'purfling.deep',
    weight: leftMm > 0 ? 'caution' : 'contradiction',
    at: 'purflingDepth',
    found:
      leftMm > 0
        ? `a purfling groove ${depthMm} mm deep, which leaves ${leftMm.toFixed(1)} mm of the edge of the ${plate}`
        : `a purfling groove ${depthMm} mm deep, which goes through the edge of the ${plate}`,
    need: `at least ${leastMm.toFixed(1)} mm of wood under it`,
    remedy: 'make the groove shallower, or the edge thicker',
  };
}
