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

/** Writes to `distance` the distance in cells from every cell to the nearest cell whose mask equals `target` (chamfer 1, √2). */
export function distanceTo(
  mask: Uint8Array,
  widthPx: number,
  heightPx: number,
  target: number,
  distance: Float32Array,
): void {
  const far = widthPx + heightPx;
  for (let i = 0; i < mask.length; i++) distance[i] = mask[i] === target ? 0 : far;
  sweep(distance, widthPx, heightPx, 1);
  sweep(distance, widthPx, heightPx, -1);
}

function sweep(distance: Float32Array, widthPx: number, heightPx: number, direction: 1 | -1): void {
  const startY = direction === 1 ? 0 : heightPx - 1;
  const startX = direction === 1 ? 0 : widthPx - 1;
  for (let row = 0; row < heightPx; row++) {
    const y = startY + direction * row;
    const before = y - direction;
    const hasRow = before >= 0 && before < heightPx;
    for (let column = 0; column < widthPx; column++) {
      const x = startX + direction * column;
      const i = y * widthPx + x;
      let least = distance[i] as number;
      const behind = x - direction;
      const hasBehind = behind >= 0 && behind < widthPx;
      if (hasBehind) least = Math.min(least, (distance[i - direction] as number) + 1);
      if (hasRow) {
        const j = before * widthPx + x;
        least = Math.min(least, (distance[j] as number) + 1);
        if (hasBehind) least = Math.min(least, (distance[j - direction] as number) + Math.SQRT2);
        const ahead = x + direction;
        if (ahead >= 0 && ahead < widthPx)
          least = Math.min(least, (distance[j + direction] as number) + Math.SQRT2);
      }
      distance[i] = least;
    }
  }
}
