import { kin } from '../notebook/kin.ts';
import { findingAt } from '../notebook/NumberList.tsx';
import { findings, touched } from '../store.ts';

/**
 * How the dimension of some number is drawn, the first of its names being its own: lit where the hand is on it, cold where it is
 * questioned, warm where it rests on what the hand is on, or that on it.
 */
export function toneOf(...names: readonly string[]): string {
  if (names.some((name) => touched.value === name)) return 'lit';
  if (names.some((name) => findingAt(findings.value, name))) return 'cold';
  return kinTone(names);
}

/** How a line is drawn that stands for some numbers. */
export function lineTone(answersTo: readonly string[]): string {
  return touched.value !== null && answersTo.includes(touched.value) ? 'lit' : kinTone(answersTo);
}

function kinTone(names: readonly string[]): string {
  const found = names.flatMap((name) => kin.value.get(name) ?? []);
  if (found.length === 0) return '';
  return found.some(({ isNear }) => isNear) ? 'kin near' : 'kin';
}
