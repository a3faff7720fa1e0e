import { expect, test } from 'vitest';
import { seededNormal, seededRandom } from '../../base/index.ts';
import { type CurvePlaces, edgesAcrossCurve } from './curveProfiles.ts';
import type { Picture } from './picture.ts';

interface Ellipse {
  readonly x: number;
  readonly y: number;
}

const LARGE: Ellipse = { x: 270.3, y: 161.8 };
const SMALL: Ellipse = { x: 24.2, y: 23.7 };

const WIDTH_PX = 640;
const HEIGHT_PX = 440;
const MIDDLE = [319.7, 219.4] as const;
/** Levels of 255: the body, the ground, and how much darker a shadow's core is. */
const [BODY, GROUND] = [70, 180];

const toLinear = (code: number): number =>
  code / 255 <= 0.04045 ? code / 255 / 12.92 : ((code / 255 + 0.055) / 1.055) ** 2.4;
const toCode = (v: number): number => 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055);

/** About the distance outside an ellipse moved by (dx, dy), px; good near it. */
function outsidePx(semi: Ellipse, x: number, y: number, dx = 0, dy = 0): number {
  const [u, v] = [(x - MIDDLE[0] - dx) / semi.x, (y - MIDDLE[1] - dy) / semi.y];
  const f = u * u + v * v - 1;
  return f / (2 * Math.hypot(u / semi.x, v / semi.y) || 1);
}

/** A dark ellipse on a light ground, 4 × 4 samples a pixel, a soft shadow to one side, blurred and noisy. */
function ellipsePicture(semi: Ellipse, shadowLevels: number, noise = 3): Picture {
  const linear = new Float64Array(WIDTH_PX * HEIGHT_PX);
  for (let y = 0; y < HEIGHT_PX; y++)
    for (let x = 0; x < WIDTH_PX; x++) {
      const away = outsidePx(semi, x, y, 9, 7);
      const dark = shadowLevels / (1 + Math.exp(away / 4));
      let sum = 0;
      for (let k = 0; k < 16; k++) {
        const [sx, sy] = [x + ((k % 4) + 0.5) / 4 - 0.5, y + (Math.floor(k / 4) + 0.5) / 4 - 0.5];
        sum += toLinear(outsidePx(semi, sx, sy) < 0 ? BODY : GROUND - dark);
      }
      linear[y * WIDTH_PX + x] = sum / 16;
    }
  const soft = blurred(blurred(linear, 1), WIDTH_PX);
  const random = seededRandom(5);
  const rgb = new Uint8Array(3 * soft.length);
  for (let i = 0; i < rgb.length; i++)
    rgb[i] = Math.min(
      255,
      Math.max(0, Math.round(toCode(soft[Math.floor(i / 3)]!) + noise * seededNormal(random))),
    );
  return { widthPx: WIDTH_PX, heightPx: HEIGHT_PX, rgb };
}

/** One pass of a Gaussian of 1 px along the given stride. */
function blurred(plane: Float64Array, stride: number): Float64Array {
  const weights = [-3, -2, -1, 0, 1, 2, 3].map((k) => Math.exp((-k * k) / 2));
  const total = weights.reduce((a, b) => a + b, 0);
  return plane.map((_, i) =>
    weights.reduce(
      (sum, weight, k) => sum + (weight / total) * (plane[i + (k - 3) * stride] ?? plane[i]!),
      0,
    ),
  );
}

/** Linear light of lit wood and of grey ground in shade; how far from its end, px, a rim turns into the shade, and to what share of the light. */
const [WOOD, SHADED_GROUND] = [
  [0.5, 0.29, 0.1],
  [0.17, 0.17, 0.16],
] as const;
const [RIM_PX, RIM_LIGHT] = [7, 0.34];

/** An ellipse of wood whose rounded rim turns from the light to the ground's own darkness, blurred and noisy. */
function shadedRimPicture(semi: Ellipse): Picture {
  const planes = [0, 1, 2].map((c) => {
    const plane = new Float64Array(WIDTH_PX * HEIGHT_PX);
    for (let y = 0; y < HEIGHT_PX; y++)
      for (let x = 0; x < WIDTH_PX; x++) {
        let sum = 0;
        for (let k = 0; k < 16; k++) {
          const [sx, sy] = [x + ((k % 4) + 0.5) / 4 - 0.5, y + (Math.floor(k / 4) + 0.5) / 4 - 0.5];
          const out = outsidePx(semi, sx, sy);
          const dark = Math.min(1, Math.max(0, 1 + out / RIM_PX)) ** 2;
          sum += out < 0 ? WOOD[c]! * (1 - (1 - RIM_LIGHT) * dark) : SHADED_GROUND[c]!;
        }
        plane[y * WIDTH_PX + x] = sum / 16;
      }
    return blurred(blurred(plane, 1), WIDTH_PX);
  });
  const random = seededRandom(5);
  const rgb = new Uint8Array(3 * WIDTH_PX * HEIGHT_PX);
  for (let i = 0; i < rgb.length; i++)
    rgb[i] = Math.min(
      255,
      Math.max(0, Math.round(toCode(planes[i % 3]![Math.floor(i / 3)]!) + 1.5 * seededNormal(random))),
    );
  return { widthPx: WIDTH_PX, heightPx: HEIGHT_PX, rgb };
}

/** Places every 3 px or so along the ellipse, moved off it by up to 1.5 px; and how far each stands off. */
function places(semi: Ellipse): { readonly curve: CurvePlaces; readonly off: readonly number[] } {
  const count = Math.round((Math.PI * (semi.x + semi.y)) / 3);
  const off: number[] = [];
  const at = new Float64Array(4 * count);
  const bend = new Float64Array(count);
  const along = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const t = (2 * Math.PI * i) / count;
    const [dx, dy] = [semi.x * Math.cos(t), semi.y * Math.sin(t)];
    const long = Math.hypot(Math.cos(t) / semi.x, Math.sin(t) / semi.y);
    const [nx, ny] = [Math.cos(t) / semi.x / long, Math.sin(t) / semi.y / long];
    off.push(Math.min(1.5, semi.x / 60) * Math.sin(5 * t));
    at.set([MIDDLE[0] + dx + off[i]! * nx, MIDDLE[1] + dy + off[i]! * ny, nx, ny], 4 * i);
    const speed = Math.hypot(semi.x * Math.sin(t), semi.y * Math.cos(t));
    bend[i] = (semi.x * semi.y) / speed ** 3;
    along[i] = i === 0 ? 0 : along[i - 1]! + (speed * 2 * Math.PI) / count;
  }
  return { curve: { places: at, bend, along, stretch: new Int32Array(count) }, off };
}

const REACH = { insidePx: 26, outsidePx: 35, nearPx: 8, lines: 5, averagedPx: 15 };

function errors(semi: Ellipse, picture: Picture): readonly number[] {
  const { curve, off } = places(semi);
  return edgesAcrossCurve(picture, curve, REACH).map(({ edge }, i) => edge!.atPx + off[i]!);
}

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
const rms = (values: readonly number[]): number => Math.sqrt(mean(values.map((v) => v * v)));

test('the edge of an ellipse without a shadow is found to 0.03 px rms', () => {
  const found = errors(LARGE, ellipsePicture(LARGE, 0));
  expect(rms(found)).toBeLessThan(0.03);
  expect(Math.abs(mean(found))).toBeLessThan(0.01);
});

test('under a soft shadow of 60 levels on one side it is found to 0.10 px rms with a bias below 0.05', () => {
  const found = errors(LARGE, ellipsePicture(LARGE, 60));
  expect(rms(found)).toBeLessThan(0.1);
  expect(Math.abs(mean(found))).toBeLessThan(0.05);
});

test('the bend of a disc of 24 px does not draw its edge inwards', () => {
  const found = errors(SMALL, ellipsePicture(SMALL, 0, 0));
  expect(Math.abs(mean(found))).toBeLessThan(0.01);
});

test('a rim that darkens to the shade of the ground before it ends is found where it ends', () => {
  const found = errors(LARGE, shadedRimPicture(LARGE));
  expect(rms(found)).toBeLessThan(0.12);
  expect(Math.abs(mean(found))).toBeLessThan(0.1);
});

test('profiles are averaged within one stretch only', () => {
  const { curve } = places(SMALL);
  const picture = ellipsePicture(SMALL, 0);
  const apart = { ...curve, stretch: curve.stretch.map((_, i) => i) };
  const alone = { ...REACH, averagedPx: 0.1 };
  expect(edgesAcrossCurve(picture, apart, REACH)).toEqual(edgesAcrossCurve(picture, curve, alone));
  expect(edgesAcrossCurve(picture, apart, REACH)).not.toEqual(edgesAcrossCurve(picture, curve, REACH));
});

test('an edge farther off than the curve can miss its own is another one, and is not taken', () => {
  const { curve } = places(LARGE);
  const outside = { x: LARGE.x - 14, y: LARGE.y - 14 };
  const found = edgesAcrossCurve(ellipsePicture(outside, 0), curve, { ...REACH, nearPx: 4 });
  expect(found.length).toBe(curve.bend.length);
  for (const { edge } of found) expect(Math.abs(edge?.atPx ?? 0)).toBeLessThanOrEqual(4);
});

test('the colour inside is that of the body, as the cube root of its light', () => {
  const { curve } = places(LARGE);
  for (const { inside } of edgesAcrossCurve(ellipsePicture(LARGE, 0), curve, REACH))
    for (const channel of inside) expect(channel).toBeCloseTo(Math.cbrt(toLinear(BODY)), 2);
});
