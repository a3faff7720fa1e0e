import type { Box, Point } from '../base/index.ts';

/** Whether a line enters an upright box. Slab test: the stretches of it inside the box's columns and inside its rows overlap. */
export function lineEnters(from: Point<'drawing'>, to: Point<'drawing'>, box: Box<'drawing'>): boolean {
  let enter = 0;
  let leave = 1;
  for (const axis of ['x', 'y'] as const) {
    const step = to[axis] - from[axis];
    if (step === 0) {
      if (from[axis] < box.min[axis] || from[axis] > box.max[axis]) return false;
      continue;
    }
    const one = (box.min[axis] - from[axis]) / step;
    const other = (box.max[axis] - from[axis]) / step;
    enter = Math.max(enter, Math.min(one, other));
    leave = Math.min(leave, Math.max(one, other));
  }
  return enter <= leave;
}
