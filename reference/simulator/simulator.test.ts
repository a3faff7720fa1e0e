import { describe, expect, test } from 'vitest';
import type { Spot } from './bentLine.ts';
import { chanceFrom } from './chance.ts';
import { drawClutteredScene } from './clutteredScene.ts';
import { distanceGrid } from './distanceGrid.ts';
import { laidOnto, moved } from './distances.ts';
import { drawInstrument, type Instrument } from './instrument.ts';
import { drawMeantShape } from './meantShape.ts';
import { photograph, truthOf } from './photograph.ts';
import { type Pinhole, pinhole, sights } from './pinhole.ts';
import { render } from './render.ts';
import { wearDown } from './wear.ts';

const CAMERA = pinhole({
  widthPx: 900,
  heightPx: 1200,
  focalPx: 3000,
  centrePx: [455, 590],
  radial: [-0.12, 0.04],
  tangential: [0.0006, -0.0004],
  eye: [160, -40, 1100],
  target: [200, 180, 20],
  rollRad: 0.2,
});

describe('the camera', () => {
  test('looks where it projects: the ray of a pixel meets the ground at a place seen in that pixel', () => {
    const sight = sights(CAMERA);
    const way = new Float64Array(3);
    for (const [x, y] of [
      [3.3, 7.1],
      [450, 600],
      [880.6, 1190.2],
    ] as const) {
      sight(x, y, way);
      const far = -CAMERA.eye[2] / (way[2] as number);
      const [u, v] = CAMERA.project([
        CAMERA.eye[0] + far * (way[0] as number),
        CAMERA.eye[1] + far * (way[1] as number),
        0,
      ]);
      expect(Math.hypot(u - x, v - y)).toBeLessThan(0.002);
    }
  });
});

describe('the distance to an outline', () => {
  test('is that of a circle, inside and outside', () => {
    const circle = Array.from({ length: 2000 }, (_, i) => ({
      x: 50 * Math.cos((i * Math.PI) / 1000),
      y: 50 * Math.sin((i * Math.PI) / 1000),
    }));
    const { at } = distanceGrid(circle, 20);
    for (const radius of [46.3, 49.9, 50.2, 53.7])
      expect(at(radius * 0.6, radius * 0.8)).toBeCloseTo(radius - 50, 2);
  });
});

describe('a made instrument', () => {
  test('closes at both ends, has the sizes it was drawn to and corners in order', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const { half, lengthMm, tips, widths } = drawMeantShape(chanceFrom(seed));
      expect(half[0]).toEqual({ x: 0, y: 0 });
      expect(half.at(-1)?.x).toBeCloseTo(0, 9);
      expect(half.at(-1)?.y).toBeCloseTo(lengthMm, 9);
      expect(2 * Math.max(...half.map(({ x }) => x))).toBeCloseTo(widths.lowerMm, 2);
      expect([...tips].sort((a, b) => a.y - b.y)).toEqual([...tips]);
    }
  });

  test('leans without having moved: laid back onto its meant outline it stays where it is', () => {
    for (const seed of [3]) {
      const chance = chanceFrom(seed);
      const shape = drawMeantShape(chance);
      const habit = { mostLosses: 0, deepestMm: 0, generalMm: 0, mostTipMm: 0.15 };
      const { right, left, leanMm } = wearDown(shape, habit, chance);
      const whole = [...shape.half, ...shape.half.map(({ x, y }) => ({ x: -x, y })).reverse()];
      const back = laidOnto(
        [...right, ...left].filter((_, i) => i % 7 === 0),
        whole,
        1,
        false,
      );
      const axis = [0.1, 0.5, 0.9].map((share) => moved(back, { x: 0, y: share * shape.lengthMm }).x);
      expect(leanMm).toBeGreaterThanOrEqual(0.1);
      expect(Math.max(...axis.map(Math.abs))).toBeLessThan(0.02);
    }
  });
});

describe('a made photograph', () => {
  test('is the same from the same seed, to the byte', async () => {
    const twice = [];
    for (let i = 0; i < 2; i++) {
      const { scene, camera, how } = drawClutteredScene(7, 0.05);
      twice.push((await photograph(scene, camera, how, chanceFrom(8))).picture.rgb);
    }
    expect(Buffer.compare(twice[0] as Uint8Array, twice[1] as Uint8Array)).toBe(0);
  });

  test('shows the edge of the near plate where the truth says, as far as its rounding lets it', () => {
    const offs = edgeOffsets(seenFromAbove());
    const mean = offs.reduce((a, b) => a + b, 0) / offs.length;
    expect(offs.length).toBeGreaterThan(400);
    expect(Math.abs(mean)).toBeLessThan(0.08);
    // Eight rays a pixel settle an edge to an eighth of it.
    expect(Math.sqrt(offs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / offs.length)).toBeLessThan(
      0.125,
    );
  });
});

/** A dark body on white under even light, from high above, so that the far plate is hidden. */
function seenFromAbove(): {
  readonly picture: Float32Array;
  readonly camera: Pinhole;
  readonly body: Instrument;
} {
  const drawn = drawInstrument(
    { face: 'back', varnish: { tone: [0, 0, 0], grainMm: 1, grainDepth: 0, flame: 0, gloss: 0, salt: 1 } },
    chanceFrom(2),
  );
  const body = { ...drawn, place: { x: 0, y: 0, turnRad: 0 } };
  const camera = pinhole({ ...CAMERA, eye: [0, 178, 1200], target: [0, 178, 0], rollRad: 0 });
  const scene = {
    standing: [{ body, slabs: [] }],
    lying: [],
    ground: white,
    light: { lamps: [], ambient: [1, 1, 1] as const, slope: [0, 0] as const },
  };
  return { picture: render(scene, camera), camera, body };
}

function white(_x: number, _y: number, out: Float64Array): void {
  out.fill(1);
}

/**
 * px, outward: where the light is half of that outside, along the normals of the true outline away from corners, less
 * what a rounded edge of some thickness stands out further for an eye that looks at it aslant.
 */
function edgeOffsets({ picture, camera, body }: ReturnType<typeof seenFromAbove>): number[] {
  const { wornPx, worn, pxPerMm } = truthOf(body, camera);
  const grey = (x: number, y: number) => {
    const [i, j] = [Math.floor(x), Math.floor(y)];
    const at = (a: number, b: number) => picture[3 * (b * camera.widthPx + a)] as number;
    return (
      (at(i, j) * (1 - x + i) + at(i + 1, j) * (x - i)) * (1 - y + j) +
      (at(i, j + 1) * (1 - x + i) + at(i + 1, j + 1) * (x - i)) * (y - j)
    );
  };
  return wornPx.flatMap((spot, k) => {
    const place = worn[k] as Spot;
    if (
      k % 5 !== 0 ||
      body.meant.tips.some((tip) => Math.hypot(Math.abs(place.x) - tip.x, place.y - tip.y) < 12)
    )
      return [];
    const [before, after] = [wornPx.at(k - 3), wornPx[(k + 3) % wornPx.length]] as [Spot, Spot];
    const long = Math.hypot(after.x - before.x, after.y - before.y);
    const [nx, ny] = [-(after.y - before.y) / long, (after.x - before.x) / long];
    const aslant = pxPerMm * standsOut(body, camera, place, [nx, -ny]);
    const outside = grey(spot.x + 4 * nx, spot.y + 4 * ny);
    let last = 0;
    for (let t = -3; t <= 3; t += 0.05) {
      const share = grey(spot.x + t * nx, spot.y + t * ny) / outside;
      if (share >= 0.5) return [t - (0.05 * (share - 0.5)) / Math.max(share - last, 0.001) - aslant];
      last = share;
    }
    return [];
  });
}

/** mm. The highest or lowest part of the rounding that an eye sees outermost, carried to the middle of the edge. */
function standsOut(
  body: Instrument,
  camera: Pinhole,
  { x, y }: Spot,
  [nx, ny]: readonly [number, number],
): number {
  const deep = camera.eye[2] - body.edgeHeightMm;
  const slant = Math.abs(((x - camera.eye[0]) * nx + (y - camera.eye[1]) * ny) / deep);
  return (body.halfThickMm - body.roundMm) * slant + body.roundMm * (Math.hypot(1, slant) - 1);
}
