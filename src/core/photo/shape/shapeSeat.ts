import { atan2, cos, type Point, point, sin } from '../../base/index.ts';
import { type Chain, momentsOf, sampleChain } from '../../curve/index.ts';
import { type Rectified, rectifiedToScene, sceneToRectified } from '../camera/rectify.ts';
import type { StandOut } from '../paper/standOut.ts';
import { fillPolygon } from '../picture/fillPolygon.ts';

/**
 * Where a thing's body frame lies in the scene: mirrored in x if it lies face down, enlarged, turned anticlockwise,
 * shifted.
 */
export interface ShapeSeat {
  readonly shift: Point<'scene'>;
  readonly turnRad: number;
  readonly scale: number;
  readonly mirrored: boolean;
}

export function bodyToScene(seat: ShapeSeat, { x, y }: Point<'body'>): Point<'scene'> {
  const [c, s] = [cos(seat.turnRad) * seat.scale, sin(seat.turnRad) * seat.scale];
  const across = seat.mirrored ? -x : x;
  return point(seat.shift.x + c * across - s * y, seat.shift.y + s * across + c * y);
}

export function sceneToBody(seat: ShapeSeat, { x, y }: Point<'scene'>): Point<'body'> {
  const [c, s] = [cos(seat.turnRad) / seat.scale, sin(seat.turnRad) / seat.scale];
  const [dx, dy] = [x - seat.shift.x, y - seat.shift.y];
  const across = c * dx + s * dy;
  return point(seat.mirrored ? -across : across, c * dy - s * dx);
}

/** A direction of the body in the scene, length kept. */
export function directionToScene(seat: ShapeSeat, { x, y }: Point<'body'>): Point<'scene'> {
  const [c, s] = [cos(seat.turnRad), sin(seat.turnRad)];
  const across = seat.mirrored ? -x : x;
  return point(c * across - s * y, s * across + c * y);
}

/** A first seat with the share of the area in common among all that either covers. */
export interface CoarseSeat {
  readonly seat: ShapeSeat;
  readonly overlap: number;
  /** Area seen over area expected. */
  readonly areaRatio: number;
}

/** mm. Chords of the outline for filling cells of a millimetre. */
const CHORD_MM = 0.2;

/**
 * The seat in which a shape covers what stands out best: centre, direction and size from the moments of both areas,
 * then either way round.
 */
export function coarseSeat(
  chain: Chain<'body'>,
  mirrored: boolean,
  seen: StandOut,
  rectified: Rectified,
): CoarseSeat {
  const expected = momentsOf(chain);
  const found = momentsOfMask(seen, rectified);
  const areaRatio = found.areaMm2 / expected.areaMm2;
  const scale = Math.sqrt(areaRatio);
  const own = axisOf(expected.aboutYMm4, expected.aboutXMm4, (mirrored ? -1 : 1) * expected.productMm4);
  const axis = axisOf(found.xx, found.yy, found.xy);
  const outline = sampleChain(chain, CHORD_MM);
  const tries = [0, Math.PI].map((half) => {
    const turnRad = axis - own + half;
    const at = bodyToScene({ shift: point(0, 0), turnRad, scale, mirrored }, expected.centroid);
    const seat: ShapeSeat = {
      shift: point(found.centroid.x - at.x, found.centroid.y - at.y),
      turnRad,
      scale,
      mirrored,
    };
    return { seat, overlap: overlapOf(seat, outline, seen, rectified), areaRatio };
  });
  return tries[1].overlap > tries[0].overlap ? tries[1] : tries[0];
}

/** Angle of the long axis from second moments about the centroid. */
function axisOf(xx: number, yy: number, xy: number): number {
  return atan2(2 * xy, xx - yy) / 2;
}

function momentsOfMask({ mask, columns, cellPx }: StandOut, rectified: Rectified) {
  const sums = [0, 0, 0, 0, 0, 0];
  const cellMm = cellPx * rectified.mmPerPixel;
  for (let i = 0; i < mask.length; i++) {
    if (!mask[i]) continue;
    const [x, y] = [i % columns, Math.floor(i / columns)];
    [1, x, y, x * x, x * y, y * y].forEach((term, k) => {
      sums[k] += term;
    });
  }
  const [count, sx, sy, sxx, sxy, syy] = sums;
  const [mx, my] = [sx / count, sy / count];
  const inPx = (cell: number) => (cell + 0.5) * cellPx - 0.5;
  return {
    areaMm2: count * cellMm * cellMm,
    centroid: rectifiedToScene(rectified, point(inPx(mx), inPx(my))),
    xx: sxx / count - mx * mx,
    yy: syy / count - my * my,
    // The picture's y runs down, the scene's up.
    xy: mx * my - sxy / count,
  };
}

function overlapOf(
  seat: ShapeSeat,
  outline: readonly Point<'body'>[],
  { mask, columns, rows, cellPx }: StandOut,
  rectified: Rectified,
): number {
  const own = new Uint8Array(mask.length);
  const inCells = outline.flatMap((place) => {
    const { x, y } = sceneToRectified(rectified, bodyToScene(seat, place));
    return [(x + 0.5) / cellPx - 0.5, (y + 0.5) / cellPx - 0.5];
  });
  fillPolygon(own, columns, rows, inCells, 1);
  let [both, either] = [0, 0];
  for (let i = 0; i < mask.length; i++) {
    if (own[i] && mask[i]) both++;
    if (own[i] || mask[i]) either++;
  }
  return either > 0 ? both / either : 0;
}
