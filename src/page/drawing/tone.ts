import { findingAt } from '../notebook/NumberList.tsx';
import { findings, touched } from '../store.ts';

/** How a dimension is drawn: lit where the hand is on it, cold where it is questioned. */
export function toneOf(name: string): string {
  if (touched.value === name) return 'lit';
  return findingAt(findings.value, name) ? 'cold' : '';
}

/** How a line is drawn that stands for some numbers. */
export function lineTone(answersTo: readonly string[]): string {
  return touched.value !== null && answersTo.includes(touched.value) ? 'lit' : '';
}
