import type { GrayPicture } from '../picture/grayPicture.ts';
import type { Picture } from '../picture/picture.ts';

/**
 * The picture in grey, each block of `times` by `times` pixels averaged into one; a rest at the right and lower edge is
 * dropped. Small pixel (x, y) has its centre at large ((x + ½)·times − ½, (y + ½)·times − ½).
 */
export function shrunkGrayOf(picture: Picture, times: number): GrayPicture {
  const widthPx = Math.max(1, Math.floor(picture.widthPx / times));
  const heightPx = Math.max(1, Math.floor(picture.heightPx / times));
  const data = new Uint8Array(widthPx * heightPx);
  const sums = new Uint32Array(widthPx);
  const across = Math.min(times, picture.widthPx);
  const [first, last] = middleRows(Math.min(times, picture.heightPx));
  const share = 1 / (256 * across * (last - first));
  for (let row = 0; row < heightPx; row++) {
    sums.fill(0);
    for (let inner = first; inner < last; inner++)
      addRow(picture.rgb, 3 * (row * times + inner) * picture.widthPx, across, sums);
    const to = row * widthPx;
    for (let column = 0; column < widthPx; column++) data[to + column] = Math.round(sums[column] * share);
  }
  return { widthPx, heightPx, data };
}

/** Of blocks the middle rows, a third of them or more: their mean lies where that of all does, at less work. */
function middleRows(rows: number): readonly [number, number] {
  const skipped = Math.floor(rows / 3);
  return [skipped, rows - skipped];
}

function addRow(rgb: Uint8Array, start: number, across: number, sums: Uint32Array): void {
  let from = start;
  for (let column = 0; column < sums.length; column++) {
    let sum = 0;
    for (let step = 0; step < across; step++, from += 3)
      sum += 77 * rgb[from] + 150 * rgb[from + 1] + 29 * rgb[from + 2];
    sums[column] += sum;
  }
}
