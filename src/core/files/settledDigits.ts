/** Digits of a number; decimals of a coordinate, mm, and of a bulge. */
const DIGITS = 10;
const COORDINATE_DECIMALS = 6;
const BULGE_DECIMALS = 9;

/**
 * A document without the digits that differ from engine to engine: the last ones of a sine do, and files are to be the same
 * wherever they are made. Only for what nobody reads back to work on. Vertices are `[x, y, bulge]`.
 */
export function settledDigits<Document extends object>(document: Document): Document {
  return settled(document, false) as Document;
}

function settled(value: unknown, isVertices: boolean): unknown {
  if (typeof value === 'number') return Number(value.toPrecision(DIGITS));
  if (Array.isArray(value)) return value.map((entry) => (isVertices ? vertex(entry) : settled(entry, false)));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, entry]) => [key, settled(entry, key === 'vertices')]),
  );
}

function vertex(entry: unknown): unknown {
  if (!Array.isArray(entry)) return settled(entry, false);
  return entry.map((value, index) =>
    typeof value === 'number'
      ? // Adding 0 turns −0 into 0.
        Number(value.toFixed(index === 2 ? BULGE_DECIMALS : COORDINATE_DECIMALS)) + 0
      : value,
  );
}
