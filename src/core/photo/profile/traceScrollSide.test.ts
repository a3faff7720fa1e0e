import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SCROLL, scrollOutline } from '../../../../test/fixtures/profilePictures.ts';
import { traceScrollSide } from './traceScrollSide.ts';

/** The outline every half millimetre, turned and shifted as it lay. */
function silhouette(turn: number, x0: number, y0: number, mirrored: boolean) {
  const corners = scrollOutline();
  const contour = corners.flatMap(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length]!;
    const count = Math.max(1, Math.round(2 * Math.hypot(nextX - x, nextY - y)));
    return Array.from({ length: count }, (_, k) => {
      const [px, py] = [x + (k / count) * (nextX - x), (y + (k / count) * (nextY - y)) * (mirrored ? -1 : 1)];
      return {
        x: x0 + px * Math.cos(turn) - py * Math.sin(turn),
        y: y0 + px * Math.sin(turn) + py * Math.cos(turn),
        sigmaMm: 0.01,
        soft: false,
      };
    });
  });
  return { contour, fittedShare: 1 };
}

describe('the side of a scroll', () => {
  test('has its nut end at the left and its front up, however it lay', () => {
    fc.assert(
      fc.property(fc.double({ min: -3.1, max: 3.1, noNaN: true }), fc.boolean(), (turn, mirrored) => {
        const side = traceScrollSide(silhouette(turn, 40, -70, mirrored));
        if (!side.ok) throw new Error(side.faults[0]!.code);
        const { nutEnd, crest, eyeGuess, throat, backLine, lengthMm } = side.value;
        expect(side.value.mirrored).toBe(mirrored);
        expect(lengthMm).toBeCloseTo(SCROLL.length, 1);
        expect(nutEnd.back.at).toEqual({ x: 0, y: 0 });
        expect(nutEnd.front.at.x).toBeCloseTo(0, 6);
        expect(nutEnd.front.at.y).toBeCloseTo(24, 6);
        expect(Math.hypot(crest.at.x - SCROLL.length, crest.at.y - SCROLL.eye[1])).toBeLessThan(1.5);
        expect(Math.hypot(eyeGuess.at.x - SCROLL.eye[0], eyeGuess.at.y - SCROLL.eye[1])).toBeLessThan(1);
        expect(eyeGuess.turnRadiusMm).toBeCloseTo(SCROLL.radius, 0);
        expect(Math.abs(throat.at.x - SCROLL.throatX)).toBeLessThan(3);
        expect(backLine.bowMm).toBeGreaterThan(0.1);
        expect(backLine.bowMm).toBeLessThan(1);
      }),
      { numRuns: 30 },
    );
  });

  test('is refused for a thing that is no scroll', () => {
    const board = Array.from({ length: 200 }, (_, i) => {
      const t = i / 50;
      const at = [
        [t * 80, 0],
        [80, (t - 1) * 20],
        [(3 - t) * 80, 20],
        [0, (4 - t) * 20],
      ][Math.floor(t)]!;
      return { x: at[0]!, y: at[1]!, sigmaMm: 0.01, soft: false };
    });
    const side = traceScrollSide({ contour: board, fittedShare: 1 });
    expect(side.ok ? [] : side.faults.map(({ code }) => code)).toEqual(['scroll.no-turn']);
  });
});
