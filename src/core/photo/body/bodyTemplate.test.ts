import { expect, test } from 'vitest';
import { emptyTemplate, layTemplate, OUTCOMES, outcomeStrain, SHAPE_NUMBERS } from './bodyTemplate.ts';
import { placeStations, STATION_STRIDE, stationsOfTemplate } from './templateStations.ts';

test('the usual shape, laid forward, comes out within one spread of everything it is held to', () => {
  const laid = emptyTemplate();
  layTemplate(new Float64Array(SHAPE_NUMBERS), laid);
  for (let k = 0; k < OUTCOMES; k++) expect(Math.abs(outcomeStrain(laid, k))).toBeLessThan(1);
});

test('stations run up the half without a gap, each normal square to the way and pointing out', () => {
  const laid = emptyTemplate();
  layTemplate(new Float64Array(SHAPE_NUMBERS), laid);
  const stations = stationsOfTemplate(1, 0.5, 12);
  const places = new Float64Array(stations.count * STATION_STRIDE);
  placeStations(laid, stations, places);
  for (let i = 1; i < stations.count; i++) {
    const at = i * STATION_STRIDE;
    const dx = places[at]! - places[at - STATION_STRIDE]!;
    const dy = places[at + 1]! - places[at - STATION_STRIDE + 1]!;
    expect(Math.hypot(dx, dy)).toBeLessThan(2);
    expect(Math.hypot(places[at + 2]!, places[at + 3]!)).toBeCloseTo(1, 9);
    if (stations.piece[i] === stations.piece[i - 1]) {
      expect(Math.abs(dx * places[at + 2]! + dy * places[at + 3]!)).toBeLessThan(0.06);
      expect(dx * places[at + 3]! - dy * places[at + 2]!).toBeLessThan(0);
    }
  }
});
