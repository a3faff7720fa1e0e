import type { Chain } from '../../src/core/index.ts';

/** A point of an invented waisted line 356 mm long, at a fraction of once round. */
function waistedPoint(fraction: number): { readonly x: number; readonly y: number } {
  const angle = 2 * Math.PI * fraction;
  const waist = 1 - 0.32 * Math.exp(-((Math.sin(angle) * 3) ** 2));
  return { x: 104 * Math.cos(angle) * waist, y: 178 * Math.sin(angle) };
}

/** The waisted line as so many arcs, each through three of its points. */
export function waistedOutline(arcs: number): Chain<'body'> {
  const vertices = Array.from({ length: arcs }, (_, index) => {
    const [start, middle, end] = [index, index + 0.5, index + 1].map((at) => waistedPoint(at / arcs));
    const chordX = end.x - start.x;
    const chordY = end.y - start.y;
    const across = chordX * (middle.y - start.y) - chordY * (middle.x - start.x);
    return { ...start, bulge: (-2 * across) / (chordX * chordX + chordY * chordY) };
  });
  return { closed: true, vertices };
}
