import { beforeAll, describe, expect, test } from 'vitest';
import { curledRise, foldedRise } from '../../../../test/render/risenPaper.ts';
import {
  inScene,
  type LaidPaper,
  type Lens,
  type Look,
  lensMap,
  photographPapers,
} from '../../../../test/render/sheetPhotograph.ts';
import { faultSentence } from '../../base/index.ts';
import { solveCamera } from '../camera/solveCamera.ts';
import type { Picture } from '../picture/picture.ts';
import { calibrationSheet } from './calibrationSheet.ts';
import { markerFinder } from './findMarkers.ts';
import { heightCard } from './heightCard.ts';
import type { MarkerFinder } from './markerFinder.ts';
import type { MeasuredPair } from './photoSaddles.ts';
import { readSheets } from './readSheets.ts';

const find = markerFinder();
const lens: Lens = {
  widthPx: 2500,
  heightPx: 1705,
  focalPx: 2954,
  centreOffsetPx: [3, 2],
  k1: -0.06,
  k2: 0,
  eye: [330, 60, 800],
  target: [300, 130, 0],
  rollRad: 0.1,
};
/** The same nearer, for one sheet. */
const near: Lens = { ...lens, widthPx: 1150, heightPx: 784, focalPx: 2453, target: [308, 125, 0] };
const clear: Look = { blurPx: 0.7, noise: 2, seed: 3 };
const lay = (paper: LaidPaper['paper'], x: number, y: number, turnRad = 0, z = 0): LaidPaper => ({
  paper,
  x,
  y,
  z,
  turnRad,
});

function misses(laid: LaidPaper, pairs: readonly MeasuredPair[], seenBy = lens) {
  const { toPhoto } = lensMap(seenBy);
  return pairs.map((pair) => {
    const at = toPhoto(...inScene(laid, pair.sheet));
    return Math.hypot(at.x - pair.photo.x, at.y - pair.photo.y) / Math.SQRT2;
  });
}

const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, one) => sum + one * one, 0) / values.length);

const codeOf = (picture: Picture) => {
  const reading = readSheets(picture, find);
  return reading.ok ? ['none'] : reading.faults.map((fault) => fault.code);
};

const mirrored = ({ widthPx, heightPx, rgb }: Picture): Picture => {
  const out = new Uint8Array(rgb.length);
  for (let y = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++)
      out.set(
        rgb.subarray(3 * (y * widthPx + x), 3 * (y * widthPx + x) + 3),
        3 * (y * widthPx + widthPx - 1 - x),
      );
  return { widthPx, heightPx, rgb: out };
};

describe('two sheets and two height cards in one photograph', () => {
  const papers = [
    lay(calibrationSheet('A4', 2), 0, 20),
    lay(calibrationSheet('A4', 3), 640, 10, 1.5),
    lay(heightCard(2), 320, 40, 0.3, 30),
    lay(heightCard(7), 330, 180, 2, 30),
  ];
  let picture: Picture;
  beforeAll(() => {
    picture = photographPapers(papers, lens, clear);
  });

  test('are all read, each in its own frame, to 0.05 px', () => {
    const reading = readSheets(picture, find);
    if (!reading.ok) throw new Error(reading.faults.map(faultSentence).join());
    const { sheets, cards } = reading.value;
    expect(sheets.map(({ sheet }) => sheet.number).sort()).toEqual([2, 3]);
    expect(cards.map(({ card }) => card.number)).toEqual([2, 7]);
    for (const { sheet, pairs } of sheets) {
      expect(pairs.length).toBeGreaterThan(0.9 * sheet.saddles.length);
      expect(rms(misses(papers[sheet.number - 2]!, pairs))).toBeLessThan(0.05);
    }
    for (const [place, { pairs }] of cards.entries()) {
      expect(pairs.length).toBe(8);
      expect(rms(misses(papers[2 + place]!, pairs))).toBeLessThan(0.05);
    }
  });

  test('are told to be mirrored when the picture is', () => {
    expect(codeOf(mirrored(picture))).toEqual(['sheet.mirrored']);
  });
});

test('one sheet twice in a photograph is refused, and says which', () => {
  const twice = [lay(calibrationSheet('A4', 2), 0, 20), lay(calibrationSheet('A4', 2), 640, 10, 1.5)];
  const far = { ...lens, widthPx: 1500, heightPx: 1023, focalPx: 1772 };
  const reading = readSheets(photographPapers(twice, far, clear), find);
  expect(reading.ok ? [] : reading.faults.map((one) => one.code)).toEqual(['sheet.twice']);
  if (!reading.ok) expect(reading.faults[0]!.found).toContain('A4 sheet number 2 lies in it twice');
});

describe('one sheet', () => {
  const one = lay(calibrationSheet('A4', 1), 160, 20);
  const seen = (look: Partial<Look>) => photographPapers([one], near, { ...clear, ...look });

  test('with two corners and the neck’s side covered is still read; with half of it covered what is hidden is named', () => {
    const some = seen({
      covered: [
        { x0: 150, y0: 10, x1: 200, y1: 60 },
        { x0: 430, y0: 80, x1: 470, y1: 150 },
      ],
    });
    const reading = readSheets(some, find);
    if (!reading.ok) throw new Error(faultSentence(reading.faults[0]!));
    expect(rms(misses(one, reading.value.sheets[0].pairs, near))).toBeLessThan(0.05);
    const half = readSheets(seen({ covered: [{ x0: 150, y0: 0, x1: 320, y1: 240 }] }), find);
    expect(half.ok ? [] : half.faults.map((fault) => fault.code)).toEqual(['sheet.too-little']);
    if (!half.ok) expect(half.faults[0]!.found).toContain('left short side');
  });

  test('that cannot be found says whether the picture is too dark or blurred', () => {
    const found = (look: Partial<Look>) => {
      const reading = readSheets(seen(look), find);
      return reading.ok ? '' : `${reading.faults[0]!.code}: ${reading.faults[0]!.found}`;
    };
    expect(found({ light: 0.02, noise: 4 })).toMatch(/^sheet.notFound: .*too dark/);
    expect(found({ blurPx: 9 })).toMatch(/^sheet.notFound: .*blurred/);
  });

  test('in half a dark room is read all the same', () => {
    expect(codeOf(seen({ light: 0.3 }))).toEqual(['none']);
  });
});

describe('one flat sheet, its codes told wrong', () => {
  const sheet = calibrationSheet('A4', 1);
  let picture: Picture;
  beforeAll(() => {
    picture = photographPapers([lay(sheet, 160, 20)], near, clear);
  });
  const codesWith = (finder: MarkerFinder) => {
    const reading = readSheets(picture, finder);
    return reading.ok ? [] : reading.faults.map((fault) => fault.code);
  };

  test('those that lie in another plane than the rest tell a fold', () => {
    const isRight = (id: number) => sheet.markers.find((one) => one.id === id)!.corners[0].x > 180;
    const bent: MarkerFinder = (gray) =>
      find(gray).map((marker) => {
        if (!isRight(marker.id)) return marker;
        const lift = (at: { x: number; y: number }) => ({ x: at.x * 0.9 + 60, y: at.y * 0.94 + 90 });
        const [a, b, c, d] = marker.corners;
        return { ...marker, corners: [lift(a), lift(b), lift(c), lift(d)] as const };
      });
    expect(codesWith(bent)).toEqual(['sheet.folded']);
  });

  test('those of the family in a layout that no sheet has tell a sheet of another version', () => {
    expect(codesWith((gray) => find(gray).map((one) => ({ ...one, id: 999 })))).toEqual(['sheet.unknown']);
  });
});

describe('a sheet that does not lie flat', () => {
  const sheet = calibrationSheet('A4', 1);
  const told = (rise: LaidPaper['rise']) => {
    const laid = { ...lay(sheet, 160, 20), ...(rise && { rise }) };
    const reading = readSheets(photographPapers([laid], near, clear), find);
    if (!reading.ok) return reading.faults.map((fault) => fault.code);
    const solved = solveCamera(reading.value.sheets[0], near, { sheetBarMm: { xMm: 150, yMm: 150 } });
    return solved.ok
      ? solved.value.findings.map((finding) => finding.code)
      : solved.faults.map((fault) => fault.code);
  };

  test('is not doubted when it does', () => {
    expect(told(undefined)).toEqual([]);
  });

  test('with a third of it folded up by 40° is refused as folded', () => {
    expect(told(foldedRise(200, (40 * Math.PI) / 180))).toEqual(['sheet.folded']);
  });

  test('with one end curled up by 3 mm is told to be curled', () => {
    expect(told(curledRise(180, 297, 3))).toContain('sheet.curled');
  });
});
