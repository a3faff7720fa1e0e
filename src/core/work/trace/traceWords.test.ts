import { describe, expect, test } from 'vitest';
import { knownAsDrawn } from './knownAsDrawn.ts';
import { parseKnownLength } from './traceWords.ts';

describe('a known length as typed', () => {
  test.each([
    ['bodyLength=354', { name: 'bodyLength', mm: 354 }],
    ['lowerBout = 206,5 mm ± 0.3', { name: 'lowerBout', mm: 206.5, plusMinusMm: 0.3 }],
    ['bodyLength=14 1/8 in over-arch', { name: 'bodyLength', mm: 358.775, taken: 'over-arch' }],
    ['upperBout=160±0.2 purfling', { name: 'upperBout', mm: 160, plusMinusMm: 0.2, taken: 'purfling' }],
    ['waist=112, edge', { name: 'waist', mm: 112, taken: 'edge' }],
  ])('%s', (text, known) => {
    expect(parseKnownLength(text)).toEqual({ ok: true, value: known });
  });

  test.each([
    ['bodyLength', 'known.form'],
    ['stomach=206', 'known.name'],
    ['bodyLength=354 purfling', 'known.taken'],
    ['waist=112 over-arch', 'known.taken'],
  ])('%s is refused as %s', (text, code) => {
    const result = parseKnownLength(text);
    expect(result.ok ? [] : result.faults.map((fault) => fault.code)).toEqual([code]);
  });
});

describe('known lengths as the photograph shows them', () => {
  test('a tape over the arch becomes the chord, a millimetre shorter on a violin', () => {
    const [length] = knownAsDrawn([{ name: 'bodyLength', mm: 356, taken: 'over-arch' }], 'violin');
    expect(length?.mm).toBeGreaterThan(354.5);
    expect(length?.mm).toBeLessThan(355.6);
    expect(length?.plusMinusMm).toBeGreaterThan(0.3);
  });

  test('a width over the purfling gains two borders of about 4 mm', () => {
    const [width] = knownAsDrawn([{ name: 'lowerBout', mm: 198, taken: 'purfling' }], 'violin');
    expect(width?.mm).toBeGreaterThan(205);
    expect(width?.mm).toBeLessThan(207.5);
  });

  test('what was taken straight and at the edge stays as it is', () => {
    const known = [
      { name: 'bodyLength', mm: 355, taken: 'straight' },
      { name: 'waist', mm: 112, plusMinusMm: 0.2 },
    ] as const;
    expect(knownAsDrawn(known, 'violin')).toEqual([
      { name: 'bodyLength', mm: 355 },
      { name: 'waist', mm: 112, plusMinusMm: 0.2 },
    ]);
  });
});
