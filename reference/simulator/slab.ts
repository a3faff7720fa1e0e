/** A thing of one outline between two heights: board, bridge, string, bow. In the frame of its instrument or the room. */
export interface Slab {
  /** Negative inside; need not be a true distance. */
  readonly at: (x: number, y: number) => number;
  readonly box: { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number };
  readonly topMm: number;
  readonly bottomMm: number;
  readonly tone: readonly [number, number, number];
  readonly gloss: number;
}

type Look = Pick<Slab, 'topMm' | 'bottomMm' | 'tone' | 'gloss'>;

/** A bar from one place to another, so wide at either, with round or square ends. */
export function bar(
  look: Look,
  from: readonly [number, number],
  to: readonly [number, number],
  wide: readonly [number, number],
  isRound: boolean,
): Slab {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.hypot(dx, dy);
  const [ux, uy] = [dx / long, dy / long];
  const most = Math.max(...wide) / 2 + (isRound ? Math.max(...wide) / 2 : 0.1);
  const at = (x: number, y: number) => {
    const along = (x - from[0]) * ux + (y - from[1]) * uy;
    const across = Math.abs((x - from[0]) * uy - (y - from[1]) * ux);
    const share = along < 0 ? 0 : along > long ? 1 : along / long;
    const half = (wide[0] + (wide[1] - wide[0]) * share) / 2;
    const beyond = along < 0 ? -along : along > long ? along - long : 0;
    if (isRound) return Math.sqrt(across * across + beyond * beyond) - half;
    return Math.max(across - half, beyond > 0 ? beyond : -1);
  };
  return { ...look, at, box: boxOf([from, to], most) };
}

/** An ellipse, turned by an angle; `power` above 2 makes it squarer. */
export function oval(
  look: Look,
  middle: readonly [number, number],
  half: readonly [number, number],
  turnRad = 0,
  power = 2,
): Slab {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  const at = (x: number, y: number) => {
    const u = Math.abs((c * (x - middle[0]) + s * (y - middle[1])) / half[0]);
    const v = Math.abs((c * (y - middle[1]) - s * (x - middle[0])) / half[1]);
    return (power === 2 ? u * u + v * v : u ** power + v ** power) - 1;
  };
  return { ...look, at, box: boxOf([middle], Math.max(...half) * 1.3) };
}

function boxOf(places: readonly (readonly [number, number])[], most: number): Slab['box'] {
  return {
    x0: Math.min(...places.map(([x]) => x)) - most,
    x1: Math.max(...places.map(([x]) => x)) + most,
    y0: Math.min(...places.map(([, y]) => y)) - most,
    y1: Math.max(...places.map(([, y]) => y)) + most,
  };
}

const SIDE_STEPS = 5;

/** The height where a falling ray meets the slab, or minus infinity; on its top when that is `topMm`. */
export function slabHit(slab: Slab, ex: number, ey: number, ez: number, mx: number, my: number): number {
  const { box, topMm, bottomMm } = slab;
  const x = ex + (ez - topMm) * mx;
  const y = ey + (ez - topMm) * my;
  const xb = ex + (ez - bottomMm) * mx;
  const yb = ey + (ez - bottomMm) * my;
  if ((x < box.x0 && xb < box.x0) || (x > box.x1 && xb > box.x1)) return Number.NEGATIVE_INFINITY;
  if ((y < box.y0 && yb < box.y0) || (y > box.y1 && yb > box.y1)) return Number.NEGATIVE_INFINITY;
  if (slab.at(x, y) < 0) return topMm;
  for (let i = 1; i <= SIDE_STEPS; i++) {
    const share = i / SIDE_STEPS;
    if (slab.at(x + (xb - x) * share, y + (yb - y) * share) < 0) return topMm + (bottomMm - topMm) * share;
  }
  return Number.NEGATIVE_INFINITY;
}
