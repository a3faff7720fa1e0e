import { atan2, cos, hypot, letGo, power, sin } from '../../base/index.ts';
import { emptyTemplate, layTemplate, SHAPE_NUMBERS, TEMPLATE_LENGTH_MM } from './bodyTemplate.ts';
import type { EdgeMap } from './edgeMap.ts';
import { placeStations, STATION_STRIDE, stationsOfTemplate } from './templateStations.ts';

/** A first guess where a body lies: middle (px), angle of the centre line from neck-up, clockwise, and length. */
export interface Pose {
  readonly x: number;
  readonly y: number;
  readonly angleRad: number;
  readonly lengthPx: number;
  readonly score: number;
}

/** Directions of edges, over half a turn, that are told apart; neck directions over a whole turn that are tried. */
const BINS = 8;
const ANGLES = 36;
/** From one length that is tried to the next. */
const LENGTH_RATIO = 1.13;
/** px from one place that is tried to the next. */
const GRID_PX = 2;
const KEPT = 5;
/** Share of the picture's long side that a body may reach beyond the picture, and of its own length that it may. */
const BEYOND = { ofPicture: 0.14, ofBody: 0.12 };
/** An edge as strong as this share of those that 85 of 100 are weaker than, and Lab units a px more, counts half of what the strongest do. */
const HALF_COUNTS = { percentile: 0.85, share: 0.6, more: 0.3 };
/** mm of the template between the places of the outline that are looked at. */
const STATION_MM = 7.2;

/** Range of body lengths to look for, px of the searched picture. */
export interface LengthRange {
  readonly fromPx: number;
  readonly toPx: number;
}

/**
 * The up to five likeliest poses, best first. Method: oriented edges in eight bins correlated with the mean
 * outline over place, angle and length; the two halves are summed apart and the poorer one counts more, so
 * that a coincidence on one side dies; then non-maximum suppression. Raw scores do not tell right from wrong.
 */
export function searchPoses(map: EdgeMap, lengths: LengthRange): readonly Pose[] {
  const bins = orientedEdges(map);
  const found: Pose[] = [];
  for (let lengthPx = lengths.fromPx; lengthPx <= lengths.toPx * 1.001; lengthPx *= LENGTH_RATIO)
    for (let step = 0; step < ANGLES; step++)
      scanPlaces(bins, probeAt(lengthPx, (step * 2 * Math.PI) / ANGLES, bins), found);
  const poses = keepApart(found).map((pose) => refinePose(bins, pose));
  letGo(bins.strength);
  return poses;
}

/**
 * How plainly an edge of each direction runs near every pixel, 0 to 1: `BINS` planes one after the other, each the picture with `pad` empty
 * pixels all round, `stride` pixels a row and `planeSize` in all. A pixel (x, y) stands at (y + pad) · stride + x + pad of its plane.
 */
interface OrientedEdges {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pad: number;
  readonly stride: number;
  readonly planeSize: number;
  readonly strength: Float32Array;
}

function orientedEdges(map: EdgeMap): OrientedEdges {
  const { widthPx, heightPx } = map;
  const pad = Math.ceil(BEYOND.ofPicture * Math.max(widthPx, heightPx)) + 2;
  const stride = widthPx + 2 * pad;
  const planeSize = stride * (heightPx + 2 * pad);
  const raw = new Float32Array(planeSize * BINS);
  const sizes = Float32Array.from(map.gx, (gx, i) => hypot(gx, map.gy[i] as number));
  const { percentile: weaker, share: ofThat, more } = HALF_COUNTS;
  const reference = ofThat * percentile(sizes, weaker) + more;
  for (let y = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++) {
      const i = y * widthPx + x;
      const size = sizes[i] as number;
      if (size === 0) continue;
      const turn = atan2(map.gy[i] as number, map.gx[i] as number) / Math.PI;
      const at = (turn - Math.floor(turn)) * BINS;
      const low = Math.floor(at) % BINS;
      const share = at - Math.floor(at);
      const edge = size / (size + reference);
      const to = (y + pad) * stride + x + pad;
      raw[low * planeSize + to] = edge * (1 - share);
      raw[((low + 1) % BINS) * planeSize + to] = edge * share;
    }
  const strength = widen(raw, stride, planeSize);
  letGo(raw);
  return { widthPx, heightPx, pad, stride, planeSize, strength };
}

/** The largest value of every 3 × 3 neighbourhood, bin by bin, in planes of its own: an edge a pixel aside counts, too. */
function widen(raw: Float32Array, stride: number, planeSize: number): Float32Array {
  const rows = new Float32Array(raw.length);
  for (let i = 1; i < raw.length - 1; i++)
    rows[i] = Math.max(raw[i - 1] as number, raw[i] as number, raw[i + 1] as number);
  const out = new Float32Array(raw.length);
  for (let bin = 0; bin < BINS; bin++) {
    const end = (bin + 1) * planeSize - stride;
    for (let i = bin * planeSize + stride; i < end; i++)
      out[i] = Math.max(rows[i - stride] as number, rows[i] as number, rows[i + stride] as number);
  }
  letGo(rows);
  return out;
}

/** The value that this share of all stays below. */
export function percentile(values: Float32Array, share: number): number {
  const sorted = Float32Array.from(values).sort();
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

/** The outline at one length and angle: where its places lie from its middle, in `strength` for either half, and its bounds, px. */
interface Probe {
  readonly lengthPx: number;
  readonly angleRad: number;
  readonly left: Int32Array;
  readonly right: Int32Array;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** The mean outline as offsets into `strength`, each into the plane of its own direction; what neck and button cover is left out. */
function probeAt(lengthPx: number, angleRad: number, bins: OrientedEdges): Probe {
  const stations = stationsOfTemplate(STATION_MM);
  const laid = emptyTemplate();
  layTemplate(new Float64Array(SHAPE_NUMBERS), laid);
  const places = new Float64Array(stations.count * STATION_STRIDE);
  placeStations(laid, stations, places);
  const scale = lengthPx / TEMPLATE_LENGTH_MM;
  const cosine = cos(angleRad);
  const sine = sin(angleRad);
  const halves: [number[], number[]] = [[], []];
  const xs: number[] = [];
  const ys: number[] = [];
  for (let i = 0; i < stations.count; i++) {
    const x = places[i * STATION_STRIDE] as number;
    const y = places[i * STATION_STRIDE + 1] as number;
    if (isCovered(x, y)) continue;
    for (const side of [0, 1] as const) {
      const mirror = side === 0 ? -1 : 1;
      const up = y - TEMPLATE_LENGTH_MM / 2;
      const px = Math.round(scale * (mirror * x * cosine + up * sine));
      const py = Math.round(scale * (mirror * x * sine - up * cosine));
      const nx = mirror * (places[i * STATION_STRIDE + 2] as number);
      const ny = places[i * STATION_STRIDE + 3] as number;
      const turn = atan2(nx * sine - ny * cosine, nx * cosine + ny * sine) / Math.PI;
      const bin = Math.round((turn - Math.floor(turn)) * BINS) % BINS;
      halves[side].push(bin * bins.planeSize + py * bins.stride + px);
      xs.push(px);
      ys.push(py);
    }
  }
  return {
    lengthPx,
    angleRad,
    left: Int32Array.from(halves[0]),
    right: Int32Array.from(halves[1]),
    minX: Math.min(...xs),
    maxX: Math.max(...xs),
    minY: Math.min(...ys),
    maxY: Math.max(...ys),
  };
}

/** Whether neck or button stand over a place of the template, mm from the centre line and above the lower end. */
function isCovered(x: number, y: number): boolean {
  return (y > 300 && x < 23) || (y < 40 && x < 16);
}

/** Where the middle of the body is looked for, px. */
interface Places {
  readonly fromX: number;
  readonly toX: number;
  readonly fromY: number;
  readonly toY: number;
}

/** Adds to `found` the likely places of one probe: all over the picture every other pixel, or every one of `only`. */
function scanPlaces(bins: OrientedEdges, probe: Probe, found: Pose[], only?: Places): void {
  const { pad, stride, strength } = bins;
  const out = Math.floor(Math.min(pad, BEYOND.ofBody * probe.lengthPx));
  const fromX = Math.max(0, -out - probe.minX, only?.fromX ?? 0);
  const toX = Math.min(bins.widthPx - 1, bins.widthPx - 1 + out - probe.maxX, only?.toX ?? bins.widthPx);
  const fromY = Math.max(0, -out - probe.minY, only?.fromY ?? 0);
  const toY = Math.min(bins.heightPx - 1, bins.heightPx - 1 + out - probe.maxY, only?.toY ?? bins.heightPx);
  const stepPx = only ? 1 : GRID_PX;
  const size = power(probe.lengthPx, 0.15);
  const { left, right } = probe;
  const count = left.length;
  let best = 0;
  const here: Pose[] = [];
  for (let y = fromY; y <= toY; y += stepPx)
    for (let x = fromX; x <= toX; x += stepPx) {
      const at = (y + pad) * stride + x + pad;
      let sumLeft = 0;
      let sumRight = 0;
      for (let i = 0; i < count; i++) {
        sumLeft += strength[at + (left[i] as number)] as number;
        sumRight += strength[at + (right[i] as number)] as number;
      }
      const score = ((0.6 * Math.min(sumLeft, sumRight) + 0.2 * (sumLeft + sumRight)) / count) * size;
      if (score < 0.8 * best) continue;
      best = Math.max(best, score);
      here.push({ x, y, angleRad: probe.angleRad, lengthPx: probe.lengthPx, score });
    }
  for (const pose of here) if (pose.score >= 0.85 * best) found.push(pose);
}

const FINE_LENGTHS = [0.93, 0.955, 0.98, 1, 1.02, 1.045, 1.07];
const FINE_ANGLES = [-6, -4, -2, 0, 2, 4, 6];
const FINE_PX = 4;

/** The best place, angle and length between the steps of the coarse search: its fits start from within their reach. */
function refinePose(bins: OrientedEdges, pose: Pose): Pose {
  const near: Pose[] = [];
  for (const factor of FINE_LENGTHS)
    for (const degrees of FINE_ANGLES) {
      const angleRad = pose.angleRad + (degrees * Math.PI) / 180;
      const probe = probeAt(pose.lengthPx * factor, angleRad, bins);
      scanPlaces(bins, probe, near, {
        fromX: pose.x - FINE_PX,
        toX: pose.x + FINE_PX,
        fromY: pose.y - FINE_PX,
        toY: pose.y + FINE_PX,
      });
    }
  return near.reduce((best, one) => (one.score > best.score ? one : best), pose);
}

function keepApart(found: Pose[]): readonly Pose[] {
  const sorted = [...found].sort((a, b) => b.score - a.score);
  const kept: Pose[] = [];
  for (const pose of sorted) {
    if (kept.length === KEPT) break;
    if (!kept.some((other) => near(pose, other))) kept.push(pose);
  }
  return kept;
}

/** Two poses are one when within 30 template mm, 20 % of length and 17 degrees of each other. */
function near(a: Pose, b: Pose): boolean {
  const mm = TEMPLATE_LENGTH_MM / b.lengthPx;
  const turn = Math.abs(atan2(sin(a.angleRad - b.angleRad), cos(a.angleRad - b.angleRad)));
  return (
    hypot(a.x - b.x, a.y - b.y) * mm < 30 &&
    Math.abs(a.lengthPx / b.lengthPx - 1) < 0.2 &&
    turn < (17 * Math.PI) / 180
  );
}
