import { beforeAll, expect, test } from 'vitest';
import { toPolygon, type XY } from '../../../../test/fixtures/distanceGrid.ts';
import { type PaintedPlate, type PlateScene, paintPlate } from '../../../../test/fixtures/paintedPlate.ts';
import { soundHoleTruth } from '../../../../test/fixtures/soundHolePolygon.ts';
import type { SoundHole, SoundHolesTrace } from './soundHoleTrace.ts';
import { traceSoundHoles } from './traceSoundHoles.ts';

const TRUTH = soundHoleTruth();
const NICK_Y = 160;
const PX_PER_MM = 6.7;
const HOLES = {
  treble: TRUTH.polygon.map(([x, y]): XY => [x, y + NICK_Y]),
  bass: TRUTH.polygon.map(([x, y]): XY => [-x, y + NICK_Y]),
};
const SCENE: PlateScene = {
  pxPerMm: PX_PER_MM,
  box: [-80, 102, 80, 216],
  holes: [HOLES.treble, HOLES.bass],
  grain: 0.15,
};

function traceIn(plate: PaintedPlate): SoundHolesTrace {
  return traceSoundHoles(plate.picture, {
    pose: {
      lowerEnd: plate.toPhoto([0.3, 0]),
      upperEnd: plate.toPhoto([-0.3, 355]),
      axisAngleRad: 0,
      pxPerMm: PX_PER_MM,
      skew: 0,
      keystonePerMm: 0,
    },
    edge: plate.edge,
  });
}

function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, one) => sum + one * one, 0) / values.length);
}

/** mm from the seen places to the true edge, and from the true edge to the whole traced one. */
function misses(plate: PaintedPlate, hole: SoundHole) {
  const own = hole.contour.map((place) => plate.toBody(place));
  const truth = HOLES[hole.side];
  return {
    there: own.filter((_, i) => hole.contour[i].state === 'seen').map(([x, y]) => toPolygon(x, y, truth)),
    back: truth.map(([x, y]) => toPolygon(x, y, own)),
  };
}

let plate: PaintedPlate;
let traced: SoundHolesTrace;

beforeAll(() => {
  plate = paintPlate({ ...SCENE, glare: (x, y) => 0.35 * Math.exp(-((x - 45) ** 2 + (y - 150) ** 2) / 450) });
  traced = traceIn(plate);
});

test('at 0.15 mm a pixel both edges lie within 0.03 mm rms of the true ones, beside a glare too', () => {
  for (const hole of [traced.bass, traced.treble]) {
    expect(hole).not.toBeNull();
    if (hole === null) continue;
    const { there, back } = misses(plate, hole);
    expect(rms(there)).toBeLessThan(0.03);
    expect(rms(back)).toBeLessThan(0.03);
    expect(Math.max(...back)).toBeLessThan(0.25);
    expect(hole.seenShare).toBe(1);
  }
  expect(traced.clearer).toBe('bass');
  expect(traced.findings).toEqual([]);
});

test('eyes are found as the circles they are, nicks where they are cut, and the stop line through the inner ones', () => {
  for (const hole of [traced.bass, traced.treble]) {
    const way = hole?.side === 'bass' ? -1 : 1;
    for (const name of ['upperEye', 'lowerEye'] as const) {
      const eye = hole?.[name];
      const [x, y] = plate.toBody(eye?.centre ?? { x: 0, y: 0 });
      expect(Math.hypot(way * x - TRUTH[name].centre[0], y - NICK_Y - TRUTH[name].centre[1])).toBeLessThan(
        0.06,
      );
      expect(Math.abs((eye?.diameterPx ?? 0) / PX_PER_MM - TRUTH[name].diameter)).toBeLessThan(0.06);
    }
    for (const name of ['innerNick', 'outerNick'] as const) {
      const [x, y] = plate.toBody(hole?.[name]?.place ?? { x: 0, y: 0 });
      expect(Math.hypot(way * x - TRUTH[name][0], y - NICK_Y - TRUTH[name][1])).toBeLessThan(0.1);
    }
  }
  const heights = traced.stopLine?.map((place) => plate.toBody(place)[1]) ?? [];
  expect(heights).toHaveLength(2);
  for (const y of heights) expect(Math.abs(y - NICK_Y)).toBeLessThan(0.08);
});

test('strings across one hole are bridged and told, and the other hole is drawn from', () => {
  const string = (x0: number) => ({
    inside: (x: number, y: number): number => 0.35 - Math.abs(x - x0 - (y - 160) / 5),
    light: 0.5,
  });
  const crossed = paintPlate({ ...SCENE, over: [string(-44), string(-36)] });
  const found = traceIn(crossed);
  expect(found.clearer).toBe('treble');
  expect(found.findings.map(({ code }) => code)).toContain('soundHole.crossed');
  expect(found.bass?.seenShare).toBeLessThan(0.97);
  if (found.bass === null) return;
  const { there, back } = misses(crossed, found.bass);
  expect(rms(there)).toBeLessThan(0.1);
  expect(Math.max(...back)).toBeLessThan(1.1);
});

test('a top without holes is said to show none', () => {
  const { bass, treble, clearer, findings } = traceIn(
    paintPlate({ ...SCENE, holes: [], pxPerMm: PX_PER_MM }),
  );
  expect([bass, treble, clearer]).toEqual([null, null, null]);
  expect(findings.map(({ code }) => code)).toEqual(['soundHole.not-seen', 'soundHole.not-seen']);
});
