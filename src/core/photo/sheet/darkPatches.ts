import { letGo } from '../../base/index.ts';
import type { GrayPicture } from '../picture/grayPicture.ts';

/** A connected stretch of pixels darker than what lies round it: the first and last pixel of each of its runs. */
export interface DarkPatch {
  /** Row, first and last column of a run, one run after another, from the top down. */
  readonly runs: Int32Array;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Which patches are wanted, by the size of their upright bounds. */
export interface PatchSize {
  readonly leastPx: number;
  readonly mostPx: number;
}

/**
 * The dark patches of a picture whose bounds are of the size wanted, in the order of their first runs.
 *
 * Method: a pixel is dark when it is well below the mean of the window round it; runs of dark pixels that touch along
 * an edge (not over a corner, where squares of a sheet meet) are one patch.
 */
export function darkPatches(picture: GrayPicture, windowPx: number, size: PatchSize): readonly DarkPatch[] {
  const runs = darkRuns(picture, windowPx);
  const first = joinedRuns(runs, picture.heightPx);
  const patches = patchesOf(runs, first, size);
  letGo(runs.at);
  return patches;
}

interface Runs {
  /** Row, first and last column, three numbers a run. */
  readonly at: Int32Array;
  readonly count: number;
  /** The first run of every row, and one more for the end. */
  readonly ofRow: Int32Array;
}

/** Dark is below this share of the mean, less a step for the noise of shadows. */
const DARK_SHARE = 0.93;
const DARK_STEP = 1;

function darkRuns({ widthPx, heightPx, data }: GrayPicture, windowPx: number): Runs {
  const half = Math.max(1, Math.min(windowPx >> 1, (Math.min(widthPx, heightPx) - 1) >> 1));
  // The window's sum in every column: a row is added below and one taken off above as it moves down.
  const columns = new Uint32Array(widthPx);
  let at = new Int32Array(3 * 4096);
  let count = 0;
  const ofRow = new Int32Array(heightPx + 1);
  const addRow = (row: number, sign: 1 | -1) => {
    const from = row * widthPx;
    for (let x = 0; x < widthPx; x++) columns[x] += sign * data[from + x];
  };
  for (let row = 0; row < Math.min(half, heightPx); row++) addRow(row, 1);
  for (let y = 0; y < heightPx; y++) {
    if (y + half < heightPx) addRow(y + half, 1);
    if (y - half - 1 >= 0) addRow(y - half - 1, -1);
    const rows = Math.min(heightPx - 1, y + half) - Math.max(0, y - half) + 1;
    ofRow[y] = count;
    if (3 * (count + widthPx) > at.length) at = grown(at, 3 * widthPx);
    let sum = 0;
    for (let x = 0; x < half; x++) sum += columns[x];
    let start = -1;
    for (let x = 0; x < widthPx; x++) {
      if (x + half < widthPx) sum += columns[x + half];
      if (x - half - 1 >= 0) sum -= columns[x - half - 1];
      const across = Math.min(widthPx - 1, x + half) - Math.max(0, x - half) + 1;
      const isDark = (data[y * widthPx + x] + DARK_STEP) * rows * across < DARK_SHARE * sum;
      if (isDark && start < 0) start = x;
      if (start >= 0 && (!isDark || x === widthPx - 1)) {
        at[3 * count] = y;
        at[3 * count + 1] = start;
        at[3 * count + 2] = isDark ? x : x - 1;
        count++;
        start = -1;
      }
    }
  }
  ofRow[heightPx] = count;
  return { at, count, ofRow };
}

/** The same runs with room for as many more, and `least`; the old room is given back. */
function grown(runs: Int32Array, least: number): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(2 * runs.length + least);
  larger.set(runs);
  letGo(runs);
  return larger;
}

/** For every run, the first run of its patch. */
function joinedRuns({ at, count, ofRow }: Runs, heightPx: number): Int32Array {
  const parent = new Int32Array(count);
  for (let run = 0; run < count; run++) parent[run] = run;
  const root = (run: number): number => {
    let top = run;
    while (parent[top] !== top) {
      parent[top] = parent[parent[top]];
      top = parent[top];
    }
    return top;
  };
  for (let y = 1; y < heightPx; y++) {
    let upper = ofRow[y - 1];
    let lower = ofRow[y];
    while (upper < ofRow[y] && lower < ofRow[y + 1]) {
      const touch = at[3 * upper + 1] <= at[3 * lower + 2] && at[3 * lower + 1] <= at[3 * upper + 2];
      if (touch) {
        const [a, b] = [root(upper), root(lower)];
        if (a < b) parent[b] = a;
        else parent[a] = b;
      }
      if (at[3 * upper + 2] < at[3 * lower + 2]) upper++;
      else lower++;
    }
  }
  for (let run = 0; run < count; run++) parent[run] = root(run);
  return parent;
}

function patchesOf({ at, count }: Runs, first: Int32Array, size: PatchSize): readonly DarkPatch[] {
  const members = new Int32Array(count);
  const left = new Int32Array(count).fill(1 << 30);
  const right = new Int32Array(count).fill(-1);
  const bottom = new Int32Array(count);
  for (let run = 0; run < count; run++) {
    const patch = first[run];
    members[patch]++;
    left[patch] = Math.min(left[patch], at[3 * run + 1]);
    right[patch] = Math.max(right[patch], at[3 * run + 2]);
    bottom[patch] = at[3 * run];
  }
  const filled = new Int32Array(count);
  const wanted: (DarkPatch & { readonly runs: Int32Array })[] = [];
  const placeOf = new Int32Array(count).fill(-1);
  for (let run = 0; run < count; run++) {
    const patch = first[run];
    if (patch === run) {
      const widthPx = right[run] - left[run] + 1;
      const heightPx = bottom[run] - at[3 * run] + 1;
      if (Math.min(widthPx, heightPx) < size.leastPx || Math.max(widthPx, heightPx) > size.mostPx) continue;
      placeOf[run] = wanted.length;
      wanted.push({ runs: new Int32Array(3 * members[run]), widthPx, heightPx });
    }
    if (placeOf[patch] < 0) continue;
    wanted[placeOf[patch]].runs.set(at.subarray(3 * run, 3 * run + 3), 3 * filled[patch]++);
  }
  return wanted;
}
