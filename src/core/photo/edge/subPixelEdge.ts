import { rescaleFit, seatOf } from '../body/bodySeat.ts';
import { crossedAt, type LocalEdge } from '../body/localEdge.ts';
import { emptyPlacedTemplate, type PlacedTemplate, placeTemplate } from '../body/templateBoth.ts';
import { curvatureAtStation, STATION_STRIDE } from '../body/templateStations.ts';
import { linearLightTable } from '../picture/linearPicture.ts';
import type { Picture } from '../picture/picture.ts';
import { fitEdgeProfile } from './edgeProfileFit.ts';

/** One delivered place before it is named: the edge in photo px with what the profile told. */
export interface MeasuredPlace {
  readonly x: number;
  readonly y: number;
  readonly nx: number;
  readonly ny: number;
  /** mm from the template, outwards. */
  readonly offsetMm: number;
  /** Null where no profile could be fitted. */
  readonly profile: { readonly sigmaPx: number; readonly blurPx: number } | null;
  /** Colour just inside the edge, cube root of linear light, for telling wood from what lies over it. */
  readonly inside: readonly [number, number, number];
}

const STEP_PX = 0.5;
const INSIDE_MM = 2.6;
const OUTSIDE_MM = 3.5;
const LONGEST_PX = 48;
/** px. Length along the edge over which profiles are averaged. */
const AVERAGED_PX = 15;
const AVERAGED_MOST_MM = 3;

/** Profiles of all places on native pixels: red, green and blue planes one after the other. */
interface Profiles {
  readonly samples: number;
  readonly fromPx: number;
  readonly values: Float64Array;
}

/**
 * Every place's edge on the photo's own pixels. Method: profiles along the normals of the smoothed local edge, in
 * linear light, averaged along the edge over about fifteen pixels, brought to one channel along the colour step,
 * and fitted as a blurred step with ramps; a curved edge's blur bias σ²κ/2 is taken off.
 */
export function measureEdge(
  picture: Picture,
  edge: LocalEdge,
  levelFactor: number,
): { readonly places: readonly MeasuredPlace[]; readonly placed: PlacedTemplate } {
  const placed = emptyPlacedTemplate(edge.bench.placed.stations);
  const fit = rescaleFit(edge.fit, 1 / levelFactor);
  placeTemplate(fit, placed);
  const pxPerMm = seatOf(fit).pxPerMm;
  const smooth = smoothOffsets(edge, placed);
  const profiles = sampleProfiles(picture, placed, smooth, pxPerMm);
  const places: MeasuredPlace[] = [];
  const mean = new Float64Array(3 * profiles.samples);
  for (let i = 0; i < smooth.length; i++) {
    averageProfile(profiles, placed, i, pxPerMm, mean);
    places.push(measurePlace(mean, profiles, placed, i, smooth[i] as number, pxPerMm));
  }
  return { places, placed };
}

/** Local straight line through the offsets of ±5 mm of the same piece of the outline; crossed places lie on the template. */
function smoothOffsets(edge: LocalEdge, placed: PlacedTemplate): Float64Array {
  const { count, piece, alongMm } = placed.stations;
  const out = new Float64Array(2 * count);
  for (let i = 0; i < out.length; i++) {
    if (crossedAt(edge, i)) continue;
    const own = i % count;
    let n = 0;
    let st = 0;
    let so = 0;
    let stt = 0;
    let sto = 0;
    for (let k = own - 10; k <= own + 10; k++) {
      if (k < 0 || k >= count || !joined(piece[k] as number, piece[own] as number)) continue;
      const t = (alongMm[k] as number) - (alongMm[own] as number);
      if (Math.abs(t) > 5) continue;
      const o = edge.offsetMm[i - own + k] as number;
      n++;
      st += t;
      so += o;
      stt += t * t;
      sto += t * o;
    }
    const spread = n * stt - st * st;
    out[i] = spread > n ? (so * stt - st * sto) / spread : so / n;
  }
  return out;
}

/** Whether two pieces belong to the same smooth section. */
function joined(a: number, b: number): boolean {
  return sectionOf(a) === sectionOf(b);
}

function sectionOf(piece: number): number {
  if (piece >= 13) return piece;
  if (piece < 5) return 0;
  return piece < 8 ? 1 : 2;
}

function sampleProfiles(
  picture: Picture,
  placed: PlacedTemplate,
  smooth: Float64Array,
  pxPerMm: number,
): Profiles {
  const inPx = Math.min(LONGEST_PX, Math.max(3, INSIDE_MM * pxPerMm));
  const outPx = Math.min(LONGEST_PX, Math.max(5, OUTSIDE_MM * pxPerMm));
  const before = Math.ceil(inPx / STEP_PX);
  const samples = before + Math.ceil(outPx / STEP_PX) + 1;
  const values = new Float64Array(smooth.length * 3 * samples);
  const table = linearLightTable();
  const lines = Math.min(9, Math.max(1, Math.round(pxPerMm)));
  for (let i = 0; i < smooth.length; i++) {
    const at = i * STATION_STRIDE;
    const nx = placed.photo[at + 2] as number;
    const ny = placed.photo[at + 3] as number;
    const bend = curvatureAtStation(placed.laid, placed.stations, i % placed.stations.count) / pxPerMm;
    for (let line = 0; line < lines; line++) {
      const aside = line - (lines - 1) / 2;
      const shift = (smooth[i] as number) * pxPerMm - 0.5 * bend * aside * aside;
      const x0 = (placed.photo[at] as number) + shift * nx - aside * ny;
      const y0 = (placed.photo[at + 1] as number) + shift * ny + aside * nx;
      for (let j = 0; j < samples; j++) {
        const t = (j - before) * STEP_PX;
        addPixel(picture, table, x0 + t * nx, y0 + t * ny, values, i * 3 * samples + j, samples, 1 / lines);
      }
    }
  }
  return { samples, fromPx: -before * STEP_PX, values };
}

function addPixel(
  picture: Picture,
  table: Float32Array,
  x: number,
  y: number,
  into: Float64Array,
  to: number,
  stride: number,
  weight: number,
): void {
  const cx = Math.min(picture.widthPx - 1.001, Math.max(0, x));
  const cy = Math.min(picture.heightPx - 1.001, Math.max(0, y));
  const x0 = Math.floor(cx);
  const y0 = Math.floor(cy);
  const fx = cx - x0;
  const fy = cy - y0;
  const row = 3 * picture.widthPx;
  const at = y0 * row + 3 * x0;
  const { rgb } = picture;
  for (let c = 0; c < 3; c++) {
    const a = at + c;
    const top = (table[rgb[a] as number] as number) * (1 - fx) + (table[rgb[a + 3] as number] as number) * fx;
    const low =
      (table[rgb[a + row] as number] as number) * (1 - fx) +
      (table[rgb[a + row + 3] as number] as number) * fx;
    const slot = to + c * stride;
    into[slot] = (into[slot] as number) + weight * (top * (1 - fy) + low * fy);
  }
}

/** Mean of the profiles near place `i` along the same section, weighted to a triangle, nearer than half the distance to a tip. */
function averageProfile(
  profiles: Profiles,
  placed: PlacedTemplate,
  i: number,
  pxPerMm: number,
  into: Float64Array,
): void {
  const { count, piece, alongMm } = placed.stations;
  const own = i % count;
  const reach = Math.min(AVERAGED_MOST_MM, AVERAGED_PX / pxPerMm);
  into.fill(0);
  let total = 0;
  for (let k = own - 6; k <= own + 6; k++) {
    const mirrored = 2 * own - k;
    if (k < 0 || k >= count || mirrored < 0 || mirrored >= count) continue;
    if (!joined(piece[k] as number, piece[own] as number)) continue;
    if (!joined(piece[mirrored] as number, piece[own] as number)) continue;
    const share = 1 - Math.abs((alongMm[k] as number) - (alongMm[own] as number)) / reach;
    if (share <= 0) continue;
    total += share;
    const from = (i - own + k) * into.length;
    for (let j = 0; j < into.length; j++)
      into[j] = (into[j] as number) + share * (profiles.values[from + j] as number);
  }
  for (let j = 0; j < into.length; j++) into[j] = (into[j] as number) / total;
}

function measurePlace(
  mean: Float64Array,
  profiles: Profiles,
  placed: PlacedTemplate,
  i: number,
  smoothMm: number,
  pxPerMm: number,
): MeasuredPlace {
  const { samples, fromPx } = profiles;
  const zero = Math.round(-fromPx / STEP_PX);
  const inside: [number, number, number] = [0, 0, 0];
  const step: [number, number, number] = [0, 0, 0];
  for (let c = 0; c < 3; c++) {
    const within = meanOf(mean, c * samples, c * samples + Math.max(2, zero >> 1));
    const without = meanOf(
      mean,
      c * samples + samples - Math.max(2, (samples - zero) >> 1),
      (c + 1) * samples,
    );
    inside[c] = Math.cbrt(Math.max(0, within));
    step[c] = without - within;
  }
  const size = Math.hypot(...step) || 1;
  const line = new Float64Array(samples);
  for (let j = 0; j < samples; j++)
    for (let c = 0; c < 3; c++)
      line[j] = (line[j] as number) + ((step[c] as number) / size) * (mean[c * samples + j] as number);
  const found = fitEdgeProfile(line, fromPx, STEP_PX);
  const bend = curvatureAtStation(placed.laid, placed.stations, i % placed.stations.count) / pxPerMm;
  const beyond = found ? found.atPx + 0.5 * bend * found.blurPx ** 2 : 0;
  const offsetMm = smoothMm + beyond / pxPerMm;
  const at = i * STATION_STRIDE;
  const nx = placed.photo[at + 2] as number;
  const ny = placed.photo[at + 3] as number;
  return {
    x: (placed.photo[at] as number) + offsetMm * pxPerMm * nx,
    y: (placed.photo[at + 1] as number) + offsetMm * pxPerMm * ny,
    nx,
    ny,
    offsetMm,
    profile: found && { sigmaPx: found.sigmaPx, blurPx: found.blurPx },
    inside,
  };
}

function meanOf(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i] as number;
  return sum / (to - from);
}
