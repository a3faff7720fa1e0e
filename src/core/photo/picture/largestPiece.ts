/** A raster of yes and no, row by row. */
export interface Mask {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly inside: Uint8Array;
}

/** The largest piece of a mask alone (joined by sides), and its pixels; of two as large the one that comes first. */
export function largestPiece({ widthPx, heightPx, inside }: Mask): Mask & { readonly count: number } {
  const piece = new Int32Array(inside.length);
  const sizes = [0];
  for (let start = 0; start < inside.length; start++) {
    if (!inside[start] || piece[start]) continue;
    sizes.push(flood(inside, widthPx, start, sizes.length, piece));
  }
  const largest = sizes.reduce((best, size, index) => (size > sizes[best] ? index : best), 0);
  const own = Uint8Array.from(piece, (number) => (largest > 0 && number === largest ? 1 : 0));
  return { widthPx, heightPx, inside: own, count: sizes[largest] };
}

/** Writes `own` to all that hangs together with `start`; returns how many pixels that are. */
function flood(inside: Uint8Array, widthPx: number, start: number, own: number, piece: Int32Array): number {
  const stack = [start];
  let count = 0;
  piece[start] = own;
  for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
    count++;
    const column = at % widthPx;
    const near = [
      column > 0 ? at - 1 : -1,
      column < widthPx - 1 ? at + 1 : -1,
      at - widthPx,
      at + widthPx < inside.length ? at + widthPx : -1,
    ];
    for (const next of near)
      if (next >= 0 && inside[next] && !piece[next]) {
        piece[next] = own;
        stack.push(next);
      }
  }
  return count;
}
