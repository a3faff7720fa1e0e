import { beforeAll, describe, expect, test } from 'vitest';
import { throughJpeg } from '../../../../test/render/jpegOf.ts';
import {
  inScene,
  type LaidPaper,
  type Lens,
  type Look,
  lensMap,
  photographPapers,
} from '../../../../test/render/sheetPhotograph.ts';
import { faultSentence } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import { calibrationSheet } from './calibrationSheet.ts';
import { markerFinder } from './findMarkers.ts';
import type { MeasuredPair } from './photoSaddles.ts';
import { readSheets } from './readSheets.ts';

const find = markerFinder();

/** Looking at the middle of an A4 sheet from 900 mm, so many degrees from square on. */
const lensAt = (tiltDeg: number, widthPx: number): Lens => ({
  widthPx,
  heightPx: Math.round(0.75 * widthPx),
  focalPx: 2.2 * widthPx,
  centreOffsetPx: [3, 2],
  k1: -0.05,
  k2: 0,
  eye: [178, 105 - 900 * Math.sin((tiltDeg * Math.PI) / 180), 900 * Math.cos((tiltDeg * Math.PI) / 180)],
  target: [148, 105, 0],
  rollRad: 0.1,
});
const square = lensAt(10, 1500);
const flat = (number: number, turnRad = 0): LaidPaper => ({
  paper: calibrationSheet('A4', number),
  x: 0,
  y: 0,
  z: 0,
  turnRad,
});
const clear: Look = { blurPx: 0.8, noise: 2, seed: 5 };

function pairsIn(picture: Picture): readonly MeasuredPair[] {
  const reading = readSheets(picture, find);
  if (!reading.ok) throw new Error(reading.faults.map(faultSentence).join());
  return reading.value.sheets[0].pairs;
}

/** Misses in x and in y, px, and the spread that was said of each. */
function missesOf(laid: LaidPaper, lens: Lens, pairs: readonly MeasuredPair[]) {
  const { toPhoto } = lensMap(lens);
  return pairs.flatMap(({ sheet, photo, sigmaPx }) => {
    const at = toPhoto(...inScene(laid, sheet));
    return [photo.x - at.x, photo.y - at.y].map((px) => ({ px, sigmaPx }));
  });
}

const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, one) => sum + one * one, 0) / values.length);

interface Shown {
  readonly laid: LaidPaper;
  readonly lens: Lens;
  readonly change: (picture: Picture) => Picture | Promise<Picture>;
  readonly look: Partial<Look>;
  /** Share of the saddles that must be read. */
  readonly most: number;
}

const asIs = (picture: Picture) => picture;
const SHOWN: readonly (readonly [string, Shown])[] = [
  ['square on', { laid: flat(1), lens: square, change: asIs, look: {}, most: 1 }],
  ['45° from square on', { laid: flat(1), lens: lensAt(45, 1800), change: asIs, look: {}, most: 1 }],
  [
    'saved as a JPEG of quality 80',
    { laid: flat(2), lens: square, change: (one) => throughJpeg(one, 80), look: {}, most: 1 },
  ],
  [
    'blurred by 2 px, codes on both sides',
    { laid: flat(1), lens: square, change: asIs, look: { blurPx: 2 }, most: 0.6 },
  ],
  [
    'blurred by 2 px, codes on one side',
    { laid: flat(2), lens: square, change: asIs, look: { blurPx: 2 }, most: 0.6 },
  ],
];

describe('saddles of a sheet', () => {
  const misses = new Map<string, ReturnType<typeof missesOf>>();
  const shares = new Map<string, number>();
  beforeAll(async () => {
    for (const [name, { laid, lens, change, look }] of SHOWN) {
      const pairs = pairsIn(await change(photographPapers([laid], lens, { ...clear, ...look })));
      misses.set(name, missesOf(laid, lens, pairs));
      shares.set(name, pairs.length / laid.paper.saddles.length);
    }
  });

  test.each(SHOWN)('%s are measured to 0.05 px', (name, { most }) => {
    expect(rms(misses.get(name)!.map(({ px }) => px))).toBeLessThan(0.05);
    expect(shares.get(name)).toBeGreaterThanOrEqual(most);
  });

  test.each(SHOWN)('%s are never off much farther than they say', (name) => {
    expect(rms(misses.get(name)!.map(({ px, sigmaPx }) => px / sigmaPx))).toBeLessThan(1.4);
  });

  test('are over many of them off as far as they say', () => {
    const ratio = rms([...misses.values()].flat().map(({ px, sigmaPx }) => px / sigmaPx));
    expect(ratio).toBeGreaterThan(0.7);
    expect(ratio).toBeLessThan(1.4);
  });
});

describe('a cloth over part of a sheet', () => {
  const covered = [
    { x0: -20, y0: -20, x1: 60, y1: 45 },
    { x0: 240, y0: 100, x1: 330, y1: 140 },
  ];
  const laid = flat(1, 0.06);
  const pairs = pairsIn(photographPapers([laid], square, { ...clear, covered }));

  test('leaves no saddle that it lies on or whose arms it reaches', () => {
    for (const { sheet } of pairs) {
      const [x, y] = inScene(laid, sheet);
      for (const { x0, y0, x1, y1 } of covered)
        expect(x > x0 - 1.5 && x < x1 + 1.5 && y > y0 - 1.5 && y < y1 + 1.5).toBe(false);
    }
  });

  test('leaves the others as true as without it', () => {
    const misses = missesOf(laid, square, pairs).map(({ px }) => px);
    expect(pairs.length).toBeGreaterThan(50);
    expect(rms(misses)).toBeLessThan(0.05);
    expect(Math.max(...misses.map(Math.abs))).toBeLessThan(0.2);
  });
});
