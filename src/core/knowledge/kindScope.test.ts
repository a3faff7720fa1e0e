import { expect, test } from 'vitest';
import { kindScope } from './kindScope.ts';

test.each([
  ['violin', 'drawn', 'violin'],
  ['violin 3/4?', 'drawn', 'violin'],
  ['tenor viola', 'drawn', 'viola'],
  ['cello (church bass)', 'drawn', 'cello'],
  ['Cello (small, narrow)', 'drawn', 'cello'],
  ['INNER FORM viola', 'questioned', 'viola'],
  ['violin-pochette', 'questioned', 'violin'],
  ["viola d'amore", 'questioned', 'viola'],
  ['viola (festooned)', 'refused', undefined],
  ['viola in gamba form', 'refused', undefined],
  ['tenor viol', 'refused', undefined],
  ['violin, cornerless', 'refused', undefined],
  ['cello, guitar-shaped', 'refused', undefined],
  ['double bass', 'refused', undefined],
  ['hurdy-gurdy', 'refused', undefined],
])('a %s is %s', (kind, scope, family) => {
  const verdict = kindScope(kind);
  expect(verdict.scope).toBe(scope);
  expect('family' in verdict ? verdict.family : undefined).toBe(family);
  if ('fault' in verdict) expect(verdict.fault.found).toContain(kind);
});
