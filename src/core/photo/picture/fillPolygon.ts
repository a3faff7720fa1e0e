/** Fills the closed polygon `outline` ([x, y, x, y, …] in px) with `value`, by whole pixels, even-odd rule. */
export function fillPolygon(
  mask: Uint8Array,
  widthPx: number,
  heightPx: number,
  outline: ArrayLike<number>,
  value: number,
): void {
  const corners = outline.length / 2;
  let top = Number.POSITIVE_INFINITY;
  let low = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < corners; i++) {
    top = Math.min(top, outline[2 * i + 1] as number);
    low = Math.max(low, outline[2 * i + 1] as number);
  }
  const firstRow = Math.max(0, Math.ceil(top));
  const lastRow = Math.min(heightPx - 1, Math.floor(low));
  const crossings: number[] = [];
  for (let y = firstRow; y <= lastRow; y++) {
    crossings.length = 0;
    for (let i = 0; i < corners; i++) {
      const next = (i + 1) % corners;
      const y0 = outline[2 * i + 1] as number;
      const y1 = outline[2 * next + 1] as number;
      if (y0 <= y === y1 <= y) continue;
      const x0 = outline[2 * i] as number;
      const x1 = outline[2 * next] as number;
      crossings.push(x0 + ((y - y0) / (y1 - y0)) * (x1 - x0));
    }
    crossings.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const from = Math.max(0, Math.ceil(crossings[i] as number));
      const to = Math.min(widthPx - 1, Math.floor(crossings[i + 1] as number));
      if (to >= from) mask.fill(value, y * widthPx + from, y * widthPx + to + 1);
    }
  }
}

/**
 * Writes to `distance` how far every cell lies from the nearest cell of the other kind (mask 0 or not), in cells;
 * chamfer 1, √2. A mask of one kind gives a distance longer than the mask's sides.
 */
export function distanceToOther(
  mask: Uint8Array,
  widthPx: number,
  heightPx: number,
  distance: Float32Array,
): void {
  distance.fill(widthPx + heightPx, 0, widthPx * heightPx);
  sweep(mask, distance, widthPx, heightPx, 1);
  sweep(mask, distance, widthPx, heightPx, -1);
}

function sweep(
  mask: Uint8Array,
  distance: Float32Array,
  widthPx: number,
  heightPx: number,
  direction: 1 | -1,
): void {
  const startY = direction === 1 ? 0 : heightPx - 1;
  const startX = direction === 1 ? 0 : widthPx - 1;
  const back = direction * widthPx;
  for (let row = 0; row < heightPx; row++) {
    let i = (startY + direction * row) * widthPx + startX;
    for (let column = 0; column < widthPx; column++, i += direction) {
      const kind = mask[i];
      let least = distance[i];
      if (column > 0) least = nearer(least, mask, distance, i - direction, kind, 1);
      if (row > 0) {
        const j = i - back;
        least = nearer(least, mask, distance, j, kind, 1);
        if (column > 0) least = nearer(least, mask, distance, j - direction, kind, Math.SQRT2);
        if (column < widthPx - 1) least = nearer(least, mask, distance, j + direction, kind, Math.SQRT2);
      }
      distance[i] = least;
    }
  }
}

function nearer(
  least: number,
  mask: Uint8Array,
  distance: Float32Array,
  at: number,
  kind: number,
  step: number,
): number {
  const way = mask[at] === kind ? distance[at] + step : step;
  return way < least ? way : least;
}
