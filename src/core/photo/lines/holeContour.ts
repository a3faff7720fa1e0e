import { letGo } from '../../base/index.ts';
import type { HoleFrame } from './holeFrame.ts';
import { type HolePatch, PATCH } from './holePatch.ts';
import { levelLoops } from './levelLoops.ts';
import type { LightSampler } from './lightSampler.ts';

type XY = readonly [number, number];

/** 355ths round the hole that are looked at. */
const MARGIN = 2.5;
/** Square 355ths: smaller loops are specks. */
const LEAST_LOOP = 1.5;

/**
 * The closed lines, in the frame's units, where the light is half way between the hole's and that of the wood beside
 * it, on a grid as fine as the picture's pixels; anticlockwise, without their first point repeated.
 */
export function holeContours(
  lightAt: LightSampler,
  frame: HoleFrame,
  patch: HolePatch,
): readonly (readonly XY[])[] {
  const bounds = boundsOf(patch);
  const step = Math.min(PATCH.step, 1 / frame.pxPerUnit);
  const columns = Math.ceil((bounds.right - bounds.left) / step) + 1;
  const rows = Math.ceil((bounds.high - bounds.low) / step) + 1;
  // How far the light lies below halfway from wood to hole, row by row from below: the hole's edge is where it passes 0.
  const field = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const x = bounds.left + column * step;
      const y = bounds.low + row * step;
      const at = frame.toPhoto(x, y);
      const half = (woodAt(patch, x, y) + patch.darkLight) / 2;
      field[row * columns + column] = half - lightAt(at.x, at.y);
    }
  const loops = levelLoops(field, columns, rows);
  letGo(field);
  return loops
    .map((loop) => loop.map(([u, v]): XY => [bounds.left + u * step, bounds.low + v * step]))
    .filter((loop) => areaOf(loop) > LEAST_LOOP && holdsHole(patch, loop));
}

function boundsOf({ columns, hole }: HolePatch) {
  let [left, right] = [Number.POSITIVE_INFINITY, 0];
  let [low, high] = [Number.POSITIVE_INFINITY, 0];
  hole.forEach((here, i) => {
    if (!here) return;
    left = Math.min(left, i % columns);
    right = Math.max(right, i % columns);
    low = Math.min(low, Math.floor(i / columns));
    high = Math.max(high, Math.floor(i / columns));
  });
  return {
    left: PATCH.left + left * PATCH.step - MARGIN,
    right: PATCH.left + right * PATCH.step + MARGIN,
    low: PATCH.low + low * PATCH.step - MARGIN,
    high: PATCH.low + high * PATCH.step + MARGIN,
  };
}

function woodAt({ wood, columns, rows }: HolePatch, x: number, y: number): number {
  const u = Math.min(columns - 1.001, Math.max(0, (x - PATCH.left) / PATCH.step));
  const v = Math.min(rows - 1.001, Math.max(0, (y - PATCH.low) / PATCH.step));
  const column = Math.floor(u);
  const row = Math.floor(v);
  const fx = u - column;
  const fy = v - row;
  const at = row * columns + column;
  return (
    (wood[at] * (1 - fx) + wood[at + 1] * fx) * (1 - fy) +
    (wood[at + columns] * (1 - fx) + wood[at + columns + 1] * fx) * fy
  );
}

/** Enclosed area, positive where the loop runs anticlockwise. */
export function areaOf(loop: readonly XY[]): number {
  let sum = 0;
  for (let i = 0; i < loop.length; i++) {
    const [a, b] = [loop[i], loop[(i + 1) % loop.length]];
    sum += a[0] * b[1] - b[0] * a[1];
  }
  return sum / 2;
}

/** Whether a loop runs along cells of the hole. */
function holdsHole({ columns, rows, hole }: HolePatch, loop: readonly XY[]): boolean {
  let near = 0;
  for (const [x, y] of loop) {
    const column = Math.round((x - PATCH.left) / PATCH.step);
    const row = Math.round((y - PATCH.low) / PATCH.step);
    let found = false;
    for (let r = Math.max(0, row - 2); r <= Math.min(rows - 1, row + 2) && !found; r++)
      for (let c = Math.max(0, column - 2); c <= Math.min(columns - 1, column + 2); c++)
        if (hole[r * columns + c]) found = true;
    if (found) near++;
  }
  return near > 0.7 * loop.length;
}
