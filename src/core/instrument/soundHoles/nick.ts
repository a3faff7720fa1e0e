import { asin, atan, cos, type Point, point, sin, tan } from '../../base/index.ts';
import type { Chain, Vertex } from '../../curve/index.ts';
import type { HoleEnd } from './holeEnd.ts';

/** A nick: its foot on the edge of the stem, where that edge ran on, and its point. */
export interface Nick {
  readonly foot: Point<'section'>;
  readonly apex: Point<'section'>;
}

/** No unit. A nick keeps this share of its width of the stem's arc to either side: about 0.2 mm on a violin, however flat the arc. */
const NICK_MARGIN = 0.1;

/** The stem's arc with a V cut into the wood beside it, at this level; nothing where the arc has no room for it. */
export function nickAt(
  plain: Chain<'section'>,
  segment: number,
  end: HoleEnd,
  levelMm: number,
  mm: { readonly width: number; readonly depth: number },
  way: 1 | -1,
): { readonly vertices: readonly Vertex<'section'>[]; readonly nick: Nick } | undefined {
  const start = plain.vertices[segment];
  if (!start) return undefined;
  const { stemRadiusMm: radius } = end;
  const centre = point<'section'>(way * end.stemCentre.x, way * end.stemCentre.y);
  const angleOf = asin((levelMm - centre.y) / radius);
  const footRad = way === 1 ? angleOf : Math.PI - angleOf;
  const startRad =
    way === 1 ? asin((start.y - centre.y) / radius) : Math.PI - asin((start.y - centre.y) / radius);
  const sweepRad = 4 * atan(start.bulge);
  const halfRad = mm.width / 2 / radius;
  const before = footRad - halfRad - startRad;
  const after = startRad + sweepRad - (footRad + halfRad);
  const leastRad = (NICK_MARGIN * mm.width) / radius;
  if (!(before > leastRad && after > leastRad)) return undefined;
  const on = (rad: number, out = 0): Point<'section'> =>
    point(centre.x + (radius + out) * cos(rad), centre.y + (radius + out) * sin(rad));
  const [from, apex, to] = [on(footRad - halfRad), on(footRad, mm.depth), on(footRad + halfRad)];
  return {
    vertices: [
      { x: start.x, y: start.y, bulge: tan(before / 4) },
      { ...from, bulge: 0 },
      { ...apex, bulge: 0 },
      { ...to, bulge: tan(after / 4) },
    ],
    nick: { foot: on(footRad), apex },
  };
}
