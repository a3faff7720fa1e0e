import type { Finding } from '../../base/index.ts';
import type { RestoredOutline } from '../../photo/index.ts';

/** mm. Both halves this far inside the usual arcs may both be worn (chosen by us). */
const BOTH_WORN_MM = 0.4;

/**
 * Places where both halves lie inside the arcs that the rest of the outline asks for, since wear of both sides at one height cannot be
 * told from the maker's own line; and stretches of one half that were set aside. Findings: `trace.both-worn`, `trace.far-plate`.
 */
export function meantFindings({ arcs, farPlate }: RestoredOutline): readonly Finding[] {
  return [...bothWorn(arcs), ...farPlate.map(setAside)];
}

function setAside({ side, fromMm, toMm, mm }: RestoredOutline['farPlate'][number]): Finding {
  return {
    weight: 'caution',
    code: 'trace.far-plate',
    at: `${side} side, ${fromMm.toFixed(0)} to ${toMm.toFixed(0)} mm above the lower end`,
    found: `what was followed stands ${mm.toFixed(1)} mm outside the other half where ribs can show: taken for ribs or far plate, and the other half used`,
    need: 'the edge of the plate that faces the camera, on both halves',
    remedy: `photograph with the lens straight above the waist; if the other half has lost so much wood, overrule the stretch (--stretch "${side} ${Math.floor(fromMm)}-${Math.ceil(toMm)} as-found")`,
  };
}

function bothWorn(arcs: RestoredOutline['arcs']): readonly Finding[] {
  return arcs.misfits
    .filter(({ mm }) => mm <= -BOTH_WORN_MM)
    .map(({ fromMm, toMm, mm }) => ({
      weight: 'caution' as const,
      code: 'trace.both-worn',
      at: `${fromMm.toFixed(0)} to ${toMm.toFixed(0)} mm above the lower end`,
      found: `both sides lie ${Math.abs(mm).toFixed(1)} mm inside the curve of the rest: worn alike, or so meant`,
      need: 'one side unworn there, or a purfling that tells where the edge stood',
      remedy:
        'look at the wood there; if it is worn, draw the outline from an unworn instrument or overrule the stretch',
    }));
}
