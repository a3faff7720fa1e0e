import { hypot, type Point, point } from '../../base/index.ts';
import { largestPiece, type Mask } from '../picture/largestPiece.ts';

/**
 * The outer boundary of the largest piece of a mask, from pixel corner to pixel corner, its holes ignored; clockwise as seen in the
 * picture (y down). Empty where the mask is. Method: walk along the cracks between pixels with the piece on the right.
 */
export function outerBoundary(mask: Mask): readonly Point<'photo'>[] {
  const piece = largestPiece(mask);
  const start = piece.inside.indexOf(1);
  if (start < 0) return [];
  const { widthPx, heightPx, inside } = piece;
  const isInside = (x: number, y: number): boolean =>
    x >= 0 && y >= 0 && x < widthPx && y < heightPx && inside[y * widthPx + x] === 1;
  const first = { x: start % widthPx, y: Math.floor(start / widthPx) };
  const boundary: Point<'photo'>[] = [];
  let [x, y, dx, dy] = [first.x, first.y, 1, 0];
  do {
    boundary.push(point(x - 0.5, y - 0.5));
    x += dx;
    y += dy;
    const [rx, ry] = [-dy, dx];
    if (!isInside(x + (dx + rx - 1) / 2, y + (dy + ry - 1) / 2)) [dx, dy] = [rx, ry];
    else if (isInside(x + (dx - rx - 1) / 2, y + (dy - ry - 1) / 2)) [dx, dy] = [-rx, -ry];
  } while (!(x === first.x && y === first.y && dx === 1 && dy === 0));
  return boundary;
}

/** A closed line smoothed over `reach` of its points to each side and laid out anew every `step` px. */
export function evenClosed(
  line: readonly Point<'photo'>[],
  reach: number,
  step: number,
): readonly Point<'photo'>[] {
  const count = line.length;
  const smooth = line.map((_, i) => {
    let [x, y] = [0, 0];
    for (let k = -reach; k <= reach; k++) {
      const one = line[(i + k + count * reach) % count];
      x += one.x;
      y += one.y;
    }
    return point<'photo'>(x / (2 * reach + 1), y / (2 * reach + 1));
  });
  return evenOpen([...smooth, smooth[0]], step).slice(0, -1);
}

/** An open line laid out anew in steps of about `step`, ends kept. */
export function evenOpen(line: readonly Point<'photo'>[], step: number): readonly Point<'photo'>[] {
  const along = [0];
  for (let i = 1; i < line.length; i++)
    along.push(along[i - 1] + hypot(line[i].x - line[i - 1].x, line[i].y - line[i - 1].y));
  const length = along[along.length - 1];
  const pieces = Math.max(2, Math.round(length / step));
  const even: Point<'photo'>[] = [];
  let at = 1;
  for (let k = 0; k <= pieces; k++) {
    const place = (length * k) / pieces;
    while (at < line.length - 1 && along[at] < place) at++;
    const share = (place - along[at - 1]) / (along[at] - along[at - 1] || 1);
    const [a, b] = [line[at - 1], line[at]];
    even.push(point(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)));
  }
  return even;
}
