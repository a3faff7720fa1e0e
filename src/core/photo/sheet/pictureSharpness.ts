import type { GrayPicture } from '../picture/grayPicture.ts';

/** What a picture is like as a whole, in levels of 255 and pixels of this picture. */
export interface PictureLook {
  /** What all but the lightest hundredth of the pixels stay below. */
  readonly lightest: number;
  /** Width over which even its sharpest edges run from dark to light. */
  readonly sharpestEdgePx: number;
}

/** Method: hundredths of the histogram, and the steepest of all slopes but one in a thousand against their span. */
export function pictureLook({ widthPx, heightPx, data }: GrayPicture): PictureLook {
  const levels = new Uint32Array(256);
  const slopes = new Uint32Array(256);
  for (let y = 1; y < heightPx - 1; y++)
    for (let x = 1; x < widthPx - 1; x++) {
      const place = y * widthPx + x;
      levels[data[place]]++;
      const across = Math.abs(data[place + 1] - data[place - 1]);
      const down = Math.abs(data[place + widthPx] - data[place - widthPx]);
      slopes[Math.max(across, down)]++;
    }
  const lightest = levelAt(levels, 0.99);
  const span = lightest - levelAt(levels, 0.01);
  const steepest = levelAt(slopes, 0.999) / 2;
  return { lightest, sharpestEdgePx: span / Math.max(steepest, 0.5) };
}

function levelAt(counts: Uint32Array, share: number): number {
  const total = counts.reduce((sum, one) => sum + one, 0);
  let below = 0;
  for (let level = 0; level < counts.length; level++) {
    below += counts[level];
    if (below >= share * total) return level;
  }
  return counts.length - 1;
}
