import type { Finding } from '../base/index.ts';
import { boundsOf, type HalfOutline } from '../curve/index.ts';
import type { Design, ValueName } from '../design/index.ts';
import { findingOn, shown, valueOf } from './valueOf.ts';

/** mm. More than rounding and fitting leave between a traced outline and the sizes told of it; chosen by us. */
const AGREE_MM = 0.3;

/**
 * A traced outline does not follow the values: where one of its sizes was changed afterwards the two contradict
 * each other.
 */
export function tracedFindings(design: Design): readonly Finding[] {
  if (design.outline.kind !== 'traced') return [];
  return Object.entries(sizesOf(design.outline.half)).flatMap(([key, traced]) => {
    const name = key as ValueName;
    const value = valueOf(design, name);
    const allowed = Math.max(AGREE_MM, design.values[name]?.plusMinus ?? 0);
    if (!(Math.abs(value - traced) > allowed)) return [];
    return [
      findingOn([name], 'contradiction', 'check.traced-disagrees', {
        found: `${shown(value, 2)} mm in the values, ${shown(traced, 2)} mm on the traced outline`,
        need: `the two within ${shown(allowed, 2)} mm: a traced outline does not follow its values`,
        remedy: 'set the value back, or draft the outline from the values instead',
      }),
    ];
  });
}

function sizesOf(half: HalfOutline): Readonly<Partial<Record<ValueName, number>>> {
  return {
    bodyLength: boundsOf(half.upperBout).max.y,
    lowerBout: 2 * boundsOf(half.lowerBout).max.x,
    waist: 2 * boundsOf(half.cBout).min.x,
    upperBout: 2 * boundsOf(half.upperBout).max.x,
  };
}
