import { beforeAll, expect, test } from 'vitest';
import { type PaintedPlate, type PlateScene, paintPlate } from '../../../../test/fixtures/paintedPlate.ts';
import type { PurflingTrace } from './purflingTrace.ts';
import { tracePurfling } from './tracePurfling.ts';

const PURFLING = { depth: 4.1, width: 0.9, line: 0.3, strength: 0.9 };

/** A smooth bump of a given height. */
function bump(x0: number, y0: number, spread: number, height: number) {
  return (x: number, y: number): number =>
    height * Math.exp(-((x - x0) ** 2 + (y - y0) ** 2) / (2 * spread * spread));
}

const LOSSES = [bump(100, 80, 9, 1.5), bump(-83, 300, 12, 1.2), bump(55, 185, 8, 0.8)];
const WORN: PlateScene = {
  pxPerMm: 5,
  purfling: PURFLING,
  grain: 0.15,
  wear: (x, y) => LOSSES.reduce((sum, loss) => sum + loss(x, y), 0),
  glare: bump(-80, 80, 25, 0.4),
  over: [{ inside: (x, y) => 20 - Math.hypot(x + 60, y - 20), light: 0.01 }],
};

/** mm by which each place misses the true middle line. */
function misses(plate: PaintedPlate, { places }: PurflingTrace): readonly number[] {
  return places.map((place) => {
    const [x, y] = plate.toBody(place.point);
    return plate.insideOf.at(x, y) - PURFLING.depth;
  });
}

function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, one) => sum + one * one, 0) / values.length);
}

let plate: PaintedPlate;
let traced: PurflingTrace;

beforeAll(() => {
  plate = paintPlate(WORN);
  traced = tracePurfling(plate.picture, plate.edge, WORN.pxPerMm);
});

test('beside a worn edge, across grain and glare, the middle line is within 0.03 mm rms of the true one', () => {
  const off = misses(plate, traced);
  expect(rms(off)).toBeLessThan(0.03);
  expect(Math.max(...off.map(Math.abs))).toBeLessThan(0.15);
  expect(traced.share).toBeGreaterThan(0.88);
});

test('twice the spread that a place tells covers what it misses by nineteen times in twenty', () => {
  const off = misses(plate, traced);
  const covered = traced.places.filter(
    (place, i) => Math.abs(off[i]) <= (2 * place.sigmaPx) / WORN.pxPerMm,
  ).length;
  expect(covered / off.length).toBeGreaterThan(0.93);
});

test('the distance between the dark lines is told within its own interval', () => {
  const width = traced.widthPx;
  expect(width).not.toBeNull();
  if (width === null) return;
  expect(Math.abs(width.value / WORN.pxPerMm - PURFLING.width)).toBeLessThan(
    (2 * width.sigmaPx) / WORN.pxPerMm,
  );
});

test('under something that lies over the rim no place is invented, and the stretch is named', () => {
  const covered = traced.places.filter((place) => {
    const [x, y] = plate.toBody(place.point);
    return Math.hypot(x + 60, y - 20) < 19;
  });
  expect(covered).toEqual([]);
  const hidden = traced.unseen.find(
    ({ name, fromAlong, toAlong }) => name.includes('lower bout') && toAlong - fromAlong > 25,
  );
  expect(hidden?.name).toBe('purfling, lower bout, bass side');
});

test('a plate with grain and no purfling is said to show none', () => {
  const bare = paintPlate({ pxPerMm: 3, grain: 0.15 });
  const none = tracePurfling(bare.picture, bare.edge, 3);
  expect(none).toMatchObject({ seen: false, places: [], widthPx: null });
  expect(none.findings.map(({ code }) => code)).toEqual(['purfling.not-seen']);
});

test('at two pixels to the millimetre the line is still found, without a width', () => {
  const coarse = paintPlate({ pxPerMm: 2, purfling: PURFLING });
  const found = tracePurfling(coarse.picture, coarse.edge, 2);
  expect(rms(misses(coarse, found))).toBeLessThan(0.1);
  expect(found.widthPx).toBeNull();
});

test('an edge without places has no purfling', () => {
  const none = tracePurfling({ widthPx: 1, heightPx: 1, rgb: new Uint8Array(3) }, [], 1);
  expect(none.seen).toBe(false);
});
