import type { Finding, Weight } from '../base/index.ts';
import type { Design } from '../design/index.ts';
import { archFindings } from './archChecks.ts';
import { edgeFindings } from './edgeChecks.ts';
import { outlineFindings, stopFindings } from './outlineChecks.ts';
import { lengthFindings, rangeFindings, soundFindings } from './rangeChecks.ts';
import { ribFindings } from './ribChecks.ts';
import { tracedFindings } from './tracedChecks.ts';

const HEAVIEST_FIRST: readonly Weight[] = ['contradiction', 'caution', 'remark'];

/**
 * Everything in a design that contradicts itself, is risky or is unusual, heaviest first, each with the names of
 * the values it lies in; never the first only. An outline that cannot be drafted is one of them. A value is called
 * unusual only where nothing else is said of it.
 */
export function checkDesign(design: Design): readonly Finding[] {
  const findings = [
    ...soundFindings(design),
    ...lengthFindings(design),
    ...outlineFindings(design),
    ...tracedFindings(design),
    ...stopFindings(design),
    ...edgeFindings(design),
    ...archFindings(design),
    ...ribFindings(design),
  ];
  // A finding on several values names the one that it is about first.
  const spokenOf = new Set(findings.map(({ at }) => at.split(', ')[0]));
  findings.push(...rangeFindings(design).filter(({ at }) => !spokenOf.has(at)));
  return heaviestFirst(findings);
}

export function heaviestFirst(findings: readonly Finding[]): readonly Finding[] {
  return HEAVIEST_FIRST.flatMap((weight) => findings.filter((finding) => finding.weight === weight));
}
