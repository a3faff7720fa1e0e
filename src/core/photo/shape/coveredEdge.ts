import { sceneToRectified } from '../camera/rectify.ts';
import { thingness } from '../paper/thingColour.ts';
import { fillPolygon } from '../picture/fillPolygon.ts';
import type { LinesAcross } from './linesAcross.ts';
import type { Look, Outermost } from './outermost.ts';

/** Pixels of the picture that lie on printed squares. */
export function squareMask({ scene }: Look): Uint8Array {
  const { rectified, ground } = scene;
  const { widthPx, heightPx } = rectified.picture;
  const mask = new Uint8Array(widthPx * heightPx);
  for (const square of ground.squares) {
    const corners = square.flatMap((corner) => {
      const { x, y } = sceneToRectified(rectified, corner);
      return [x, y];
    });
    fillPolygon(mask, widthPx, heightPx, corners, 1);
  }
  return mask;
}

/** Levels (0 paper, 1 thing) beyond which something else lies over the edge. */
const LEAST_INSIDE = 0.35;
const MOST_INSIDE = 2.2;
const MOST_OUTSIDE = 0.5;

/** mm left out on either side of an edge for blur. */
const BESIDE_MM = 0.2;
/** mm looked at beyond an edge, where bare paper must lie. */
export const OUTSIDE_MM = 2.6;

/** Whether squares lie beyond the edge, or something that is neither thing nor paper lies over it. */
export function isCovered(
  { scene, colour }: Look,
  { expected, offsetMm }: Outermost,
  lines: LinesAcross,
  i: number,
  squares: Uint8Array,
): boolean {
  const { rectified } = scene;
  for (const beyondMm of [BESIDE_MM, OUTSIDE_MM / 2, OUTSIDE_MM]) {
    const out = offsetMm + beyondMm;
    const { x, y } = sceneToRectified(rectified, {
      x: expected.at.x + out * expected.normal.x,
      y: expected.at.y + out * expected.normal.y,
    });
    const at = Math.round(y) * rectified.picture.widthPx + Math.round(x);
    if (squares[at] === 1) return true;
  }
  const { count, fromMm, stepMm, values } = lines;
  const level = (low: number, high: number): number => {
    const [from, to] = [low, high].map((mm) => Math.round((mm - fromMm) / stepMm)) as [number, number];
    let sum = 0;
    for (let j = from; j <= to; j++) {
      const at = 3 * count * i + j;
      sum += thingness(colour, values[at], values[at + count], values[at + 2 * count]);
    }
    return sum / (to - from + 1);
  };
  const inside = level(Math.max(fromMm, -1), -BESIDE_MM);
  return inside < LEAST_INSIDE || inside > MOST_INSIDE || level(1, OUTSIDE_MM) > MOST_OUTSIDE;
}
