/** A place of a grid. */
interface GridPlace {
  readonly column: number;
  readonly row: number;
}

/** The largest set of places that hang together side by side, in the order in which they came. */
export function largestPatch<P extends GridPlace>(places: readonly P[]): readonly P[] {
  const key = (column: number, row: number): string => `${column} ${row}`;
  const left = new Map(places.map((place) => [key(place.column, place.row), place]));
  let largest: readonly P[] = [];
  for (const first of places) {
    if (!left.delete(key(first.column, first.row))) continue;
    const patch = [first];
    for (const { column, row } of patch)
      for (const near of [
        key(column + 1, row),
        key(column - 1, row),
        key(column, row + 1),
        key(column, row - 1),
      ]) {
        const next = left.get(near);
        if (next && left.delete(near)) patch.push(next);
      }
    if (patch.length > largest.length) largest = patch;
  }
  return largest;
}
