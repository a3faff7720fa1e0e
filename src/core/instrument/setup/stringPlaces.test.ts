import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CELLO_NECK, VIOLIN_NECK } from '../../../../test/fixtures/neckSizes.ts';
import { boardThickness } from '../neck/boardSection.ts';
import { neckPlace, neckSet } from '../neck/neckSet.ts';
import { bowingRoomsMm, bowOverEdgeMm, type StringPlace, stringPlaces } from './stringPlaces.ts';

const EVEN = { nutMm: 16.5, bridgeMm: 33.5, spread: 'centres' } as const;
const heights = (over: readonly [number, number][], diameterMm = 0.8) =>
  over.map(([overNutMm, overEndMm]) => ({ overNutMm, overEndMm, diameterMm }));
const VIOLIN_HEIGHTS = heights([
  [0.5, 5.5],
  [0.45, 5],
  [0.4, 4.2],
  [0.35, 3.5],
]);

function angle(sizes = VIOLIN_NECK): number {
  const set = neckSet(sizes);
  if (!set.ok) throw new Error('no neck');
  return set.value.neckAngleRad;
}

test('over the end of the board each string is as high as asked, wherever the board is round', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 3, max: 6, noNaN: true }),
      fc.double({ min: 3, max: 6, noNaN: true }),
      fc.double({ min: 34, max: 60, noNaN: true }),
      (bass, treble, radiusMm) => {
        const sizes = { ...VIOLIN_NECK, board: { ...VIOLIN_NECK.board, radiusMm } };
        const neckRad = angle(sizes);
        const asked = heights([
          [0.5, bass],
          [0.4, treble],
        ]);
        for (const place of stringPlaces(sizes, neckRad, asked, EVEN)) {
          const { board, bodyStopMm, archAtBridgeMm } = sizes;
          const nut = neckPlace(sizes, neckRad, 0, place.nutUpMm);
          // Walked along the string until it is over the end of the board, and down to its round.
          const crownUp = boardThickness(board, board.lengthMm);
          const up = crownUp - radiusMm + Math.sqrt(radiusMm ** 2 - place.atEndMm ** 2);
          const boardEnd = neckPlace(sizes, neckRad, board.lengthMm, up);
          const bridgeZ = place.bridgeUpMm + archAtBridgeMm;
          const slope = (bridgeZ - nut.zMm) / (bodyStopMm - nut.xMm);
          const overMm =
            (nut.zMm + slope * (boardEnd.xMm - nut.xMm) - boardEnd.zMm) /
            (Math.cos(neckRad) + slope * Math.sin(neckRad));
          expect(overMm).toBeCloseTo(place.overEndMm, 6);
        }
      },
    ),
  );
});

test('the violin of our notes: the crown rises over its lowest string as worked there by the short rule', () => {
  const places = stringPlaces(VIOLIN_NECK, angle(), VIOLIN_HEIGHTS, EVEN);
  // Worked by the rule zb = zn + (ze - zn) L / FB on the crown of the board: differences of two strings, not the level.
  const [g = 0, d = 0, a = 0, e = 0] = places.map(({ bridgeUpMm }) => bridgeUpMm);
  expect(d - g).toBeCloseTo(5.62 - 3.27, 1);
  expect(d - a).toBeCloseTo(5.62 - 4.66, 1);
  expect(g - e).toBeCloseTo(3.27 - 0.87, 1);
  // The same four places: D over the line from G to A, A over the line from D to E.
  expect(bowingRoomsMm(places)[0]).toBeCloseTo(1.65, 1);
  expect(bowingRoomsMm(places)[1]).toBeCloseTo(1.38, 1);
});

test('with equal gaps between their edges thick strings lie farther apart, the outer ones where they were', () => {
  const thick = VIOLIN_HEIGHTS.map((string, index) => ({ ...string, diameterMm: 1.2 - 0.3 * index }));
  const places = stringPlaces(VIOLIN_NECK, angle(), thick, { ...EVEN, spread: 'edges' });
  const gaps = places.slice(1).map((place, index) => {
    const before = places[index] as StringPlace;
    return place.atBridgeMm - before.atBridgeMm - (place.diameterMm + before.diameterMm) / 2;
  });
  for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 9);
  expect(places[0]?.atBridgeMm).toBeCloseTo(-16.75, 9);
  expect(places[3]?.atBridgeMm).toBeCloseTo(16.75, 9);
});

test('a bow on the lowest string passes higher over the edge than one on the highest', () => {
  const places = stringPlaces(VIOLIN_NECK, angle(), VIOLIN_HEIGHTS, EVEN);
  const [low, high] = (['lowest', 'highest'] as const).map((side) => bowOverEdgeMm(places, side, 56));
  expect(low).toBeGreaterThan(high ?? 0);
  // Of our notes, over the edge: about 34 and 26 with the arch of 11.5.
  expect((low ?? 0) + 11.5).toBeCloseTo(34, -1);
  expect((high ?? 0) + 11.5).toBeCloseTo(26, -1);
});

test('a cello’s strings lie in order from the bass', () => {
  const places = stringPlaces(CELLO_NECK, angle(CELLO_NECK), VIOLIN_HEIGHTS, {
    ...EVEN,
    nutMm: 22.3,
    bridgeMm: 47,
  });
  expect(places.map(({ atBridgeMm }) => atBridgeMm)).toEqual(
    [-23.5, -47 / 6, 47 / 6, 23.5].map((x) => expect.closeTo(x, 9)),
  );
});
