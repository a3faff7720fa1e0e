import { expect, test } from 'vitest';
import { instrumentOf } from '../../../test/fixtures/heads.ts';
import { soundHoleTruth } from '../../../test/fixtures/soundHolePolygon.ts';
import { chainThrough, nearestOnSpans, sampleChain, spansOf } from '../curve/index.ts';
import type { TraceDocument } from '../files/index.ts';
import { deriveInstrument } from '../instrument/index.ts';
import { draft } from './draft.ts';
import { holeOfTrace } from './tracedHole.ts';

/** mm. Height of the inner nicks above the lower end. */
const NICKS_MM = 158;
const OUTLINE = instrumentOf('violin', 355).plan.outline;

/** A trace of a full-size body with the mean hole of twelve, which our fixtures hold as a polygon of its own. */
function traceWith(
  side: 'bass' | 'treble',
  change: (x: number, y: number) => readonly [number, number] = (x, y) => [x, y],
): TraceDocument {
  const way = side === 'bass' ? -1 : 1;
  const { polygon, innerNick, outerNick } = soundHoleTruth();
  const place = ([x, y]: readonly [number, number]): [number, number] => {
    const [a, b] = change(x, y);
    return [way * a, b + NICKS_MM];
  };
  const { plan } = instrumentOf('violin', 355);
  return {
    format: 'garland-trace',
    version: 1,
    units: 'mm',
    frame: 'body',
    name: 'violin.jpg',
    bodyLength: { value: 355, plusMinus: 0.4 },
    outline: sampleChain(plan.outline.chain, 0.02).map(({ x, y }): [number, number] => [x, y]),
    soundHoles: {
      drawnFrom: side,
      [side]: {
        contour: polygon.map(place),
        innerNick: place(innerNick),
        outerNick: place(outerNick),
        plusMinus: 0.3,
      },
    },
  };
}

test.each(['bass', 'treble'] as const)(
  'a hole traced on the %s side comes out of a drafted design again',
  (side) => {
    const trace = traceWith(side);
    const drafted = draft([{ name: 'trace', json: trace }]);
    if (!drafted.ok) throw new Error(JSON.stringify(drafted.faults));
    const { design, findings } = drafted.value;
    expect(findings.filter(({ code }) => code.startsWith('draft.hole'))).toEqual([]);
    expect(design.holeShape?.fitRmsMm).toBeLessThan(0.05);
    expect(design.holeShape?.misfits.length).toBe(8);
    for (const name of [
      'holeLength',
      'upperEyesApart',
      'upperEyeDiameter',
      'lowerEyeDiameter',
      'stop',
    ] as const)
      expect(design.values[name]?.origin).toEqual({
        kind: 'measured',
        from: `${side} sound hole of the trace of violin.jpg`,
      });
    expect(design.values.holeLength?.value).toBeCloseTo(75, 1);
    expect(design.values.upperEyeDiameter?.value).toBeCloseTo(6.9, 1);
    expect(design.values.stop?.value).toBeCloseTo(355 - NICKS_MM, 1);
    const instrument = deriveInstrument(design);
    if (!instrument.ok) throw new Error(JSON.stringify(instrument.faults));
    const made = spansOf(instrument.value.soundHoles.treble);
    const { polygon } = soundHoleTruth();
    const off = polygon.map(([x, y]) => nearestOnSpans(made, { x, y: y + NICKS_MM }).distanceMm);
    const rms = Math.sqrt(off.reduce((sum, one) => sum + one * one, 0) / off.length);
    expect(rms).toBeLessThan(0.05);
    // The traced hole stands as it was seen: its own distance to the edge turns it by nothing.
    expect(Math.abs(instrument.value.soundHoles.turnRad)).toBeLessThan(0.0005);
  },
);

test('a stop that is given stands: the nicks lie so far above it', () => {
  const { values } = holeOfTrace(traceWith('treble'), OUTLINE, 195);
  expect(values.stop).toBeUndefined();
  expect(values.nickAboveStop?.value).toBeCloseTo(NICKS_MM - 160, 1);
});

test('a hole that no drafted one comes near is told of, stretch by stretch; one far off is not taken', () => {
  // A dent in the outer edge of the stem, as a string that lies over it makes.
  const dent = (x: number, y: number): readonly [number, number] =>
    x > 41 && y > 8 && y < 20 ? [x - 1.6 * Math.sin((Math.PI * (y - 8)) / 12), y] : [x, y];
  const { holeShape, findings } = holeOfTrace(traceWith('bass', dent), OUTLINE, 195);
  expect(holeShape?.fitRmsMm).toBeGreaterThan(0.1);
  expect(holeShape?.misfits.find(({ place }) => place.startsWith('outer'))?.rmsMm).toBeGreaterThan(0.2);
  expect(findings[0]).toMatchObject({ code: 'draft.hole-misfit', at: 'sound hole, bass side' });
  expect(findings[0]?.found).toContain('outer edge of the stem');
  const square = traceWith('treble');
  const box = chainThrough(
    [
      [20, 120],
      [60, 120],
      [60, 200],
      [20, 200],
    ].map(([x = 0, y = 0]) => ({ x, y })),
    true,
  );
  const contour = sampleChain(box, 0.1).map(({ x, y }): [number, number] => [x, y]);
  const odd = { ...square, soundHoles: { treble: { contour } } };
  const refused = holeOfTrace(odd, OUTLINE, 195);
  expect(refused.values).toEqual({});
  expect(refused.findings.map(({ code }) => code)).toEqual(['draft.hole-not-drafted']);
});

test('a trace without holes gives nothing', () => {
  const { soundHoles: _, ...rest } = traceWith('bass');
  expect(holeOfTrace(rest as TraceDocument, OUTLINE, undefined)).toEqual({ values: {}, findings: [] });
});
