import { describe, expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { knownAsDrawn } from './knownAsDrawn.ts';
import { parseMeant } from './meantWords.ts';
import { recordOf, requestOf } from './traceRecord.ts';
import type { TraceRequest } from './traceRequest.ts';
import { parseKnownLength, parseScan, parseSheetBar } from './traceWords.ts';

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
    ['bodyLenght=354', 'known.name'],
    ['bodyLength=354±-1', 'known.form'],
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

describe('the scale of a scan', () => {
  test('a resolution is turned into millimetres a pixel', () => {
    const scan = parseScan('300 dpi', undefined);
    expect(scan.ok && scan.value?.mmPerPixel).toBeCloseTo(0.084667, 6);
  });

  test('a scale bar gives the scale, and is good to what a pointed pixel is worth', () => {
    const scan = parseScan(undefined, '120,80 1320,80 = 100 mm');
    if (!scan.ok || scan.value === null) throw new Error();
    expect(scan.value.mmPerPixel).toBeCloseTo(100 / 1200, 12);
    expect(scan.value.plusMinus).toBeCloseTo(2 / 1200, 12);
  });

  test.each([
    [['3000000', undefined], 'scan.resolution'],
    [['fine', undefined], 'scan.resolution'],
    [[undefined, '120,80 = 100'], 'scan.bar'],
    [[undefined, '120,80 121,80 = 100 mm'], 'scan.bar'],
    [['300', '120,80 1320,80 = 100 mm'], 'scan.both'],
  ] as const)('%j is refused as %s', ([resolution, bar], code) => {
    const result = parseScan(resolution, bar);
    expect(result.ok ? [] : result.faults.map((fault) => fault.code)).toEqual([code]);
  });
});

describe('wishes for the outline as meant', () => {
  test('all of them at once', () => {
    const words = {
      follow: 'bass',
      keepAsymmetry: true,
      cornerEnd: '7,6.5',
      stretches: ['bass 120-150 as-found', 'treble 40 to 62.5 other'],
    };
    expect(parseMeant(words)).toEqual({
      ok: true,
      value: {
        slow: 'bass',
        asymmetry: 'keep',
        cornerEnd: { lower: 7, upper: 6.5 },
        stretches: [
          { side: 'bass', from: 120, to: 150, take: 'asFound' },
          { side: 'treble', from: 40, to: 62.5, take: 'other' },
        ],
      },
    });
  });

  test.each([
    ['7.2', 7.2, 7.2],
    ['7.2,6.8', 7.2, 6.8],
    ['7, 6', 7, 6],
    ['7; 6', 7, 6],
    ['7,2; 6,8', 7.2, 6.8],
  ])('corner ends of %s', (cornerEnd, lower, upper) => {
    expect(parseMeant({ cornerEnd })).toEqual({ ok: true, value: { cornerEnd: { lower, upper } } });
  });

  test('nothing said is no wish', () => {
    expect(parseMeant({})).toEqual({ ok: true, value: null });
  });

  test.each([
    [{ follow: 'left' }, 'meant.follow'],
    [{ cornerEnd: '70' }, 'meant.corner-end'],
    // 7.2, or 7 and 2?
    [{ cornerEnd: '7,2' }, 'meant.corner-end'],
    [{ stretches: ['bass 150-120 outer'] }, 'meant.stretch'],
    [{ stretches: ['bass 120-150 wood'] }, 'meant.stretch'],
  ])('%j is refused as %s', (words, code) => {
    const result = parseMeant(words);
    expect(result.ok ? [] : result.faults.map((fault) => fault.code)).toEqual([code]);
  });
});

test('a request written down and read again is the same request', () => {
  const picture = { widthPx: 1, heightPx: 1, rgb: new Uint8Array(3) };
  const spot = (x: number, y: number) => point<'photo'>(x, y);
  const request: TraceRequest = {
    photographs: [
      {
        name: 'a.jpg',
        picture,
        sha256: 'aa',
        hints: { inside: [spot(3, 4)], outsideStrokes: [[spot(1, 2), spot(5, 6)]] },
      },
      { name: 'b.jpg', picture, sha256: 'bb' },
    ],
    face: 'back',
    edgeHeightMm: 36.5,
    sheetBarMm: { xMm: 149.8, yMm: 150 },
    known: [{ name: 'bodyLength', mm: 356, plusMinusMm: 0.3, taken: 'over-arch' }],
    body: 2,
    meant: { slow: 'treble' },
  };
  const record = JSON.parse(JSON.stringify(recordOf(request)));
  const again = requestOf(record, [
    { name: 'renamed.jpg', picture, sha256: 'aa' },
    { name: 'b.jpg', picture, sha256: 'cc' },
  ]);
  expect(again.request.photographs[0]?.hints).toEqual(request.photographs[0].hints);
  expect({ ...again.request, photographs: [] }).toEqual({ ...request, photographs: [] });
  expect(again.findings.map(({ code, at }) => [code, at])).toEqual([['trace.other-photograph', 'b.jpg']]);
});

describe('the height of the edge and the bars', () => {
  test('a height with its interval, and two bars', () => {
    expect(parseSheetBar('149.6,149.8', '36.5±0.3')).toEqual({
      ok: true,
      value: { sheetBarMm: { xMm: 149.6, yMm: 149.8 }, edgeHeightMm: 36.5, edgeHeightPlusMinusMm: 0.3 },
    });
  });

  test('three bars are one too many', () => {
    const result = parseSheetBar('149.6,149.8,150.1', undefined);
    expect(result.ok ? [] : result.faults.map((fault) => fault.code)).toEqual(['sheet.bars']);
  });
});
