import { expect, test } from 'vitest';
import { violinHalf } from '../../../test/fixtures/violinHalf.ts';
import { point } from '../base/index.ts';
import type { RestoredOutline, WearPlace } from '../photo/index.ts';
import { letteringFindings } from './lettering.ts';
import { wearMapDrawing } from './wearMapDrawing.ts';

/** A violin with one loss of 0.8 mm on the treble side of the lower bout, 20 mm long about y = 72. */
function worn(): RestoredOutline {
  const wearMap = Array.from({ length: 21 }, (_, i): WearPlace => {
    const restoredMm = 0.8 * Math.sin((Math.PI * i) / 20) + 0.08;
    const at = point<'body'>(103 - restoredMm, 62 + i);
    return { side: 'treble', section: 'lowerBout', alongMm: 120 + i, at, restoredMm, from: 'otherHalf' };
  });
  const deepest = wearMap[10];
  if (!deepest) throw new Error('no wear');
  const { side, section, at, restoredMm, from } = deepest;
  return {
    half: violinHalf(),
    arcs: { kind: 'thirteen', count: 13, misfits: [] },
    corners: {},
    bodyLengthMm: 355,
    lowerEndMm: 0,
    axis: {
      through: point(0, 0),
      headingRad: Math.PI / 2,
      plusMinus: { acrossMm: 0.1, headingRad: 0.001, correlation: 0 },
      spreadMm: 0.03,
      rounds: 1,
    },
    meant: [],
    wearMap,
    wear: [{ side, section, at, depthMm: restoredMm, extentMm: 20, from }],
    farPlate: [],
    lean: [],
    leanMaxMm: 0.12,
    asFound: { bass: [point(-103, 60), point(-103, 63)], treble: wearMap.map((place) => place.at) },
    measures: [],
    fitRmsMm: 0.02,
    fitMaxMm: 0.1,
  };
}

test('a loss is drawn inwards from the outline, ten times as deep, and lettered with its depth', () => {
  const drawing = wearMapDrawing(worn(), 'a worn violin');
  const reach = drawing.lines
    .filter(({ chain }) => !chain.closed && chain.vertices.length === 2)
    .map(({ chain: { vertices } }) =>
      Math.hypot(vertices[1].x - vertices[0].x, vertices[1].y - vertices[0].y),
    )
    .filter((mm) => mm < 20);
  expect(Math.abs(Math.max(...reach) - 8.8)).toBeLessThan(0.2);
  expect(drawing.lettering.map(({ text }) => text)).toContain('0.9 (other half)');
});

test('no line of the map is for a tool, and its letters can all be written', () => {
  const drawing = wearMapDrawing(worn(), 'a worn violin');
  expect(new Set(drawing.lines.map(({ meaning }) => meaning))).toEqual(new Set(['draw']));
  expect(drawing.routes).toEqual(['print']);
  expect(letteringFindings(drawing.lettering)).toEqual([]);
});

test('an outline without wear is drawn all the same, and says so', () => {
  const drawing = wearMapDrawing({ ...worn(), wearMap: [], wear: [] }, 'a sound violin');
  expect(drawing.notes.join(' ')).toContain('No wear');
});
