import type { FlatPatch } from './flatten.ts';

/**
 * Where a place of the plan has gone on a flat patch, mm; null where the patch has no flat places round it.
 *
 * Method: what the neighbours moved by, between the four by four places around with the cubic of Catmull and Rom (1974);
 * where one of those is missing, between the four of its cell.
 */
export function flatPlace(
  patch: FlatPatch,
  xMm: number,
  yMm: number,
): { readonly uMm: number; readonly vMm: number } | null {
  const { fromXMm, fromYMm, stepMm, columns, rows } = patch;
  const [across, up] = [(xMm - fromXMm) / stepMm, (yMm - fromYMm) / stepMm];
  const column = Math.min(columns - 2, Math.max(0, Math.floor(across)));
  const row = Math.min(rows - 2, Math.max(0, Math.floor(up)));
  const [s, t] = [across - column, up - row];
  if (s < 0 || s > 1 || t < 0 || t > 1) return null;
  const moved = (c: number, r: number, offset: 0 | 1): number => {
    if (c < 0 || r < 0 || c >= columns || r >= rows) return Number.NaN;
    const place = r * columns + c;
    return offset === 0
      ? (patch.uMm[place] as number) - (fromXMm + c * stepMm)
      : (patch.vMm[place] as number) - (fromYMm + r * stepMm);
  };
  const between = (offset: 0 | 1): number => {
    const wide = cubic(
      t,
      [-1, 0, 1, 2].map((r) =>
        cubic(
          s,
          [-1, 0, 1, 2].map((c) => moved(column + c, row + r, offset)),
        ),
      ),
    );
    if (!Number.isNaN(wide)) return wide;
    const low = (1 - s) * moved(column, row, offset) + s * moved(column + 1, row, offset);
    const high = (1 - s) * moved(column, row + 1, offset) + s * moved(column + 1, row + 1, offset);
    return (1 - t) * low + t * high;
  };
  const [u, v] = [between(0), between(1)];
  return Number.isNaN(u) || Number.isNaN(v) ? null : { uMm: xMm + u, vMm: yMm + v };
}

function cubic(t: number, [a, b, c, d]: readonly number[]): number {
  const [before, from, to, after] = [a as number, b as number, c as number, d as number];
  const slopeFrom = (to - before) / 2;
  const slopeTo = (after - from) / 2;
  const rest = 2 * (from - to) + slopeFrom + slopeTo;
  return from + t * (slopeFrom + t * (to - from - slopeFrom - rest + t * rest));
}
