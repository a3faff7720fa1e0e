/** A brightness between pixels; any field over the picture. */
export type Field = (x: number, y: number) => number;

/** A plane of numbers read between its pixels, straight from one to the next; beyond the rim the nearest pixel's. */
export function planeField(plane: ArrayLike<number>, widthPx: number, heightPx: number): Field {
  return (x, y) => {
    const inX = Math.min(Math.max(x, 0), widthPx - 1.001);
    const inY = Math.min(Math.max(y, 0), heightPx - 1.001);
    const [column, row] = [Math.floor(inX), Math.floor(inY)];
    const [right, down] = [inX - column, inY - row];
    const at = row * widthPx + column;
    return (
      (plane[at] * (1 - right) + plane[at + 1] * right) * (1 - down) +
      (plane[at + widthPx] * (1 - right) + plane[at + widthPx + 1] * right) * down
    );
  };
}
