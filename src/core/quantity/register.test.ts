import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chosen, derivedFrom, measured, originText, published } from './origin.ts';
import type { RegisterEntry } from './quantity.ts';
import { dependentsOf, makeRegister, registerText } from './register.ts';

const entry = (name: string, from: readonly string[] = []): RegisterEntry => ({
  name,
  value: 1,
  unit: 'mm',
  origin: from.length > 0 ? derivedFrom(from) : chosen(),
});

test('faults of a register are all named at once', () => {
  const made = makeRegister([entry('a', ['b']), entry('b', ['a']), entry('b'), entry('c', ['x'])]);
  expect(made.ok ? [] : made.faults.map((fault) => fault.code)).toEqual([
    'register.twice',
    'register.unknown',
    'register.circle',
  ]);
});

test('what hangs on a number is found near and far, in order', () => {
  const made = makeRegister([entry('a'), entry('c', ['b']), entry('b', ['a']), entry('d')]);
  if (!made.ok) throw new Error('refused');
  expect(dependentsOf(made.value, 'a')).toEqual(['c', 'b']);
  expect(dependentsOf(made.value, 'd')).toEqual([]);
});

test('a number that only looks back never makes a circle', () => {
  const chain = fc
    .array(fc.nat(), { minLength: 1, maxLength: 30 })
    .map((picks) => picks.map((pick, at) => entry(`n${at}`, at === 0 ? [] : [`n${pick % at}`])));
  fc.assert(
    fc.property(chain, (entries) => {
      const made = makeRegister(entries);
      if (!made.ok) throw new Error('refused');
      expect(dependentsOf(made.value, 'n0')).toHaveLength(entries.length - 1);
      const last = entries.at(-1) as RegisterEntry;
      const knot = [entry('n0', [last.name]), ...entries.slice(1)];
      expect(makeRegister(knot).ok).toBe(false);
    }),
  );
});

test('the table gives value, unit, ± and origin in columns', () => {
  const made = makeRegister([
    { name: 'bodyLength', value: 355.48, unit: 'mm', origin: measured('calliper'), plusMinus: 0.24 },
    { name: 'fullness', value: 0.05214, unit: 'ratio', origin: measured('gauge'), plusMinus: 0.0012 },
    { name: 'waist', value: 112, unit: 'mm', origin: published('A. Author, Table, 1901') },
    { name: 'ratio', value: 112 / 355.5, unit: 'ratio', origin: derivedFrom(['waist', 'bodyLength']) },
  ]);
  if (!made.ok) throw new Error('refused');
  expect(registerText(made.value).split('\n')).toEqual([
    'name         value  unit        ±  origin',
    'bodyLength   355.5  mm       ±0.2  measured: calliper',
    'fullness    0.0521        ±0.0012  measured: gauge',
    'waist          112  mm             published: A. Author, Table, 1901',
    'ratio        0.315                 derived from waist, bodyLength',
  ]);
});

test('every kind of origin reads as words', () => {
  expect(originText(chosen('by us: it holds'))).toBe('chosen by us: it holds');
  expect(originText(chosen('a friend has this tool'))).toBe('chosen: a friend has this tool');
  expect(originText(derivedFrom([], 'scaled'))).toBe('derived: scaled');
});
