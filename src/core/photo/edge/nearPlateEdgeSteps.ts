import { hypot, norm, type Point } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';

/** A plain change of colour across an edge. */
export interface ColourStep {
  /** px along the outward normal from the place that was looked from. */
  readonly outPx: number;
  /** Whether the colour stays changed beyond it; beside a thin dark or light line it does not. */
  readonly stays: boolean;
  /** Whether it is plain beside the strongest step of the profile; a faint one counts only where an edge is expected. */
  readonly plain: boolean;
  /** Levels of 255. */
  readonly size: number;
}

/** mm over which colours are averaged along the edge, either way. */
const ALONG_MM = 0.5;
/** Share of the strongest colour step that still counts as a plain edge. */
const PLAIN = 0.3;
/** Levels of 255. Fainter changes are grain and noise. */
const LEAST_LEVELS = 6;
/** Samples per pixel along a profile, and the half width in samples of the step that is measured. */
const FINE = 2;
const STEP = 2;
/** Samples between a step and the colours beside it. */
const BESIDE = 4;
/** mm on either side of a step that are compared, and the share of the step that must be left over them. */
const STAYS_MM = 0.7;
const STAYS_SHARE = 0.45;

/** Colour steps within `reachPx` of a place along its outward normal, the innermost first. */
export function colourSteps(
  picture: Picture,
  place: { readonly point: Point<'photo'>; readonly normal: Point<'photo'> },
  reachPx: number,
  pxPerMm: number,
): readonly ColourStep[] {
  const count = 2 * Math.ceil(reachPx * FINE) + 1;
  const profile = colourProfile(picture, place, count, Math.round(ALONG_MM * pxPerMm));
  const size = new Float64Array(count);
  for (let i = STEP; i < count - STEP; i++)
    size[i] = hypot(
      profile[3 * (i + STEP)] - profile[3 * (i - STEP)],
      profile[3 * (i + STEP) + 1] - profile[3 * (i - STEP) + 1],
      profile[3 * (i + STEP) + 2] - profile[3 * (i - STEP) + 2],
    );
  const plain = PLAIN * size.reduce((a, b) => Math.max(a, b), 0);
  const least = Math.min(plain, LEAST_LEVELS);
  const width = Math.round(STAYS_MM * pxPerMm * FINE);
  const found: ColourStep[] = [];
  for (let i = STEP + 1; i < count - STEP - 1; i++) {
    if (size[i] < least || size[i] < size[i - 1] || size[i] <= size[i + 1] || !isPeak(size, i)) continue;
    const bend = size[i - 1] - 2 * size[i] + size[i + 1];
    const top = bend < 0 ? (size[i - 1] - size[i + 1]) / (2 * bend) : 0;
    found.push({
      outPx: (i + top - (count - 1) / 2) / FINE,
      stays: staysChanged(profile, i, size[i], width),
      plain: size[i] >= plain,
      size: size[i],
    });
  }
  return found;
}

/** The highest within a step's own width either way. */
function isPeak(size: Float64Array, at: number): boolean {
  for (let i = Math.max(0, at - STEP); i <= Math.min(size.length - 1, at + STEP); i++)
    if (size[i] > size[at]) return false;
  return true;
}

/** Whether the colour outside a step stays unlike the colour inside it; beyond a thin dark line it does not. */
function staysChanged(profile: Float64Array, at: number, size: number, width: number): boolean {
  const mean = (from: number, to: number, colour: number): number => {
    let sum = 0;
    const [low, high] = [Math.max(0, from), Math.min(profile.length / 3 - 1, to)];
    for (let i = low; i <= high; i++) sum += profile[3 * i + colour];
    return sum / Math.max(1, high - low + 1);
  };
  const change = [0, 1, 2].map(
    (colour) =>
      mean(at + BESIDE, at + BESIDE + width, colour) - mean(at - BESIDE - width, at - BESIDE, colour),
  );
  return norm(change) > STAYS_SHARE * size;
}

function colourProfile(
  picture: Picture,
  place: { readonly point: Point<'photo'>; readonly normal: Point<'photo'> },
  count: number,
  alongPx: number,
): Float64Array {
  const profile = new Float64Array(3 * count);
  const { x, y } = place.point;
  const { x: nx, y: ny } = place.normal;
  const rows = 2 * alongPx + 1;
  for (let i = 0; i < count; i++) {
    const out = (i - (count - 1) / 2) / FINE;
    for (let row = -alongPx; row <= alongPx; row++)
      addColour(picture, x + out * nx - row * ny, y + out * ny + row * nx, profile, 3 * i, 1 / rows);
  }
  return profile;
}

function addColour(
  { widthPx, heightPx, rgb }: Picture,
  x: number,
  y: number,
  into: Float64Array,
  to: number,
  share: number,
): void {
  const column = Math.max(0, Math.min(widthPx - 2, Math.floor(x)));
  const row = Math.max(0, Math.min(heightPx - 2, Math.floor(y)));
  const right = Math.max(0, Math.min(1, x - column));
  const down = Math.max(0, Math.min(1, y - row));
  const at = 3 * (row * widthPx + column);
  const below = at + 3 * widthPx;
  for (let c = 0; c < 3; c++)
    into[to + c] +=
      share *
      ((rgb[at + c] * (1 - right) + rgb[at + 3 + c] * right) * (1 - down) +
        (rgb[below + c] * (1 - right) + rgb[below + 3 + c] * right) * down);
}
