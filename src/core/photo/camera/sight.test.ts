import fc from 'fast-check';
import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { Camera } from './camera.ts';
import type { Lens } from './lens.ts';
import { CAMERA_UNKNOWNS, emptySight, look, type Pose, poseOf, UNKNOWN } from './sight.ts';
import { turned, turnMatrix, turnTwice } from './turn.ts';

const camera: Camera = {
  focalPx: 3000,
  centre: point(2000, 1500),
  k1: -0.1,
  k2: 0.05,
  k3: 0.02,
  p1: 0.001,
  p2: -0.002,
  turnRad: [0.2, -0.1, 0.4],
  shiftMm: [-150, 120, 900],
};

/** The camera with one of its unknowns moved. */
function movedBy(unknown: number, by: number): { readonly lens: Lens; readonly pose: Pose } {
  const pose = poseOf(camera);
  const step = Array.from({ length: CAMERA_UNKNOWNS }, (_, place) => (place === unknown ? by : 0));
  const at = (place: number) => step[place]!;
  const turn = turnMatrix(at(UNKNOWN.turn), at(UNKNOWN.turn + 1), at(UNKNOWN.turn + 2));
  const shift = pose.shift.map((one, place) => one + at(UNKNOWN.shift + place));
  return {
    lens: {
      focalPx: camera.focalPx * Math.exp(at(UNKNOWN.logFocal)),
      centre: point(camera.centre.x + at(UNKNOWN.centreX), camera.centre.y + at(UNKNOWN.centreY)),
      k1: camera.k1 + at(UNKNOWN.k1),
      k2: camera.k2 + at(UNKNOWN.k2),
      k3: camera.k3 + at(UNKNOWN.k3),
      p1: camera.p1 + at(UNKNOWN.p1),
      p2: camera.p2 + at(UNKNOWN.p2),
    },
    pose: {
      turn: turnTwice(turn, pose.turn),
      shift: turned(turn, [shift[0]!, shift[1]!, shift[2]!]),
    },
  };
}

test('every slope of a sight is what a small step shows', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: CAMERA_UNKNOWNS - 1 }),
      fc.double({ min: 0, max: 420, noNaN: true }),
      fc.double({ min: 0, max: 297, noNaN: true }),
      fc.double({ min: 0, max: 60, noNaN: true }),
      (unknown, x, y, z) => {
        const sight = emptySight();
        const seen = (by: number) => {
          const { lens, pose } = movedBy(unknown, by);
          look(lens, pose, x, y, z, sight);
          return [sight.x, sight.y] as const;
        };
        const step = unknown >= UNKNOWN.shift ? 1e-3 : 1e-6;
        const [ahead, behind] = [seen(step), seen(-step)];
        look(camera, poseOf(camera), x, y, z, sight);
        const byX = (ahead[0] - behind[0]) / (2 * step);
        const byY = (ahead[1] - behind[1]) / (2 * step);
        expect(Math.abs(sight.xBy[unknown]! - byX)).toBeLessThan(1e-3 * (1 + Math.abs(byX)));
        expect(Math.abs(sight.yBy[unknown]! - byY)).toBeLessThan(1e-3 * (1 + Math.abs(byY)));
      },
    ),
  );
});

test('the slopes by the place itself are those of moving it', () => {
  const at = [200, 100, 20] as const;
  const sight = emptySight();
  look(camera, poseOf(camera), ...at, sight);
  const { xByPlace, yByPlace } = sight;
  const slopes = [0, 1, 2].map((place) => [xByPlace[place]!, yByPlace[place]!]);
  slopes.forEach(([byX, byY], place) => {
    const seen = (by: number) => {
      const other = emptySight();
      const [x, y, z] = at.map((one, i) => (i === place ? one + by : one));
      look(camera, poseOf(camera), x!, y!, z!, other);
      return other;
    };
    expect((seen(1e-4).x - seen(-1e-4).x) / 2e-4).toBeCloseTo(byX!, 5);
    expect((seen(1e-4).y - seen(-1e-4).y) / 2e-4).toBeCloseTo(byY!, 5);
  });
});
