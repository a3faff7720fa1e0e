import { type CurvePlaces, edgesAcrossCurve } from '../picture/curveProfiles.ts';
import type { Picture } from '../picture/picture.ts';
import { rescaleFit, seatOf } from './bodySeat.ts';
import { crossedAt, type LocalEdge } from './localEdge.ts';
import { emptyPlacedTemplate, type PlacedTemplate, placeTemplate } from './templateBoth.ts';
import { curvatureAtStation, STATION_STRIDE } from './templateStations.ts';

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

const INSIDE_MM = 2.6;
const OUTSIDE_MM = 3.5;
const LONGEST_PX = 48;
/** mm. How near the finished template's edge lies to the true one. */
const NEAR_MM = 1;
/** px. Length along the edge over which profiles are averaged. */
const AVERAGED_PX = 15;
const AVERAGED_MOST_MM = 3;
const MOST_LINES = 9;

/**
 * Every place's edge on the photo's own pixels: profiles across the smoothed local edge, averaged along it over about
 * fifteen pixels.
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
  const curve = curveOf(placed, smooth, pxPerMm);
  const edges = edgesAcrossCurve(picture, curve, {
    insidePx: Math.min(LONGEST_PX, Math.max(3, INSIDE_MM * pxPerMm)),
    outsidePx: Math.min(LONGEST_PX, Math.max(5, OUTSIDE_MM * pxPerMm)),
    nearPx: NEAR_MM * pxPerMm,
    lines: Math.min(MOST_LINES, Math.max(1, Math.round(pxPerMm))),
    averagedPx: Math.min(AVERAGED_MOST_MM * pxPerMm, AVERAGED_PX),
  });
  const places = edges.map((found, i): MeasuredPlace => {
    const [x, y, nx, ny] = curve.places.subarray(4 * i, 4 * i + 4);
    const beyond = found.edge?.atPx ?? 0;
    return {
      x: x + beyond * nx,
      y: y + beyond * ny,
      nx,
      ny,
      offsetMm: smooth[i] + beyond / pxPerMm,
      profile: found.edge && { sigmaPx: found.edge.sigmaPx, blurPx: found.edge.blurPx },
      inside: found.inside,
    };
  });
  return { places, placed };
}

/** The smoothed local edge as a curve in photo px, both halves one after the other. */
function curveOf(
  { stations, laid, photo }: PlacedTemplate,
  smooth: Float64Array,
  pxPerMm: number,
): CurvePlaces {
  const { count, piece, alongMm } = stations;
  const places = new Float64Array(4 * smooth.length);
  for (let i = 0; i < smooth.length; i++) {
    const at = i * STATION_STRIDE;
    const shift = smooth[i] * pxPerMm;
    places[4 * i] = photo[at] + shift * photo[at + 2];
    places[4 * i + 1] = photo[at + 1] + shift * photo[at + 3];
    places[4 * i + 2] = photo[at + 2];
    places[4 * i + 3] = photo[at + 3];
  }
  const each = (valueOf: (station: number, half: number) => number) => (_: unknown, i: number) =>
    valueOf(i % count, i < count ? 0 : 1);
  return {
    places,
    bend: smooth.map(each((station) => curvatureAtStation(laid, stations, station) / pxPerMm)),
    along: smooth.map(each((station) => alongMm[station] * pxPerMm)),
    stretch: Int32Array.from(
      smooth,
      each((station, half) => STRETCHES * half + sectionOf(piece[station])),
    ),
  };
}

/** More than the stretches of one half, so that the halves have none in common. */
const STRETCHES = 100;

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
