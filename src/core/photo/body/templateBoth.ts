import { type BodyFit, bodyToPhoto, normalToPhoto, type Seat, seatOf } from './bodySeat.ts';
import { emptyTemplate, type LaidTemplate, layTemplate } from './bodyTemplate.ts';
import { placeStations, STATION_STRIDE, type TemplateStations } from './templateStations.ts';

/** The template's stations of both halves in a photo: the half with x ≥ 0 first, then its mirror image. */
export interface PlacedTemplate {
  readonly stations: TemplateStations;
  readonly laid: LaidTemplate;
  /** x, y, nx, ny in the body frame, of the half with x ≥ 0. */
  readonly half: Float64Array;
  /** x, y, nx, ny in photo px, 2 · count places. */
  readonly photo: Float64Array;
}

export function emptyPlacedTemplate(stations: TemplateStations): PlacedTemplate {
  return {
    stations,
    laid: emptyTemplate(),
    half: new Float64Array(stations.count * STATION_STRIDE),
    photo: new Float64Array(2 * stations.count * STATION_STRIDE),
  };
}

/** Lays the template by `fit` and places every station of both halves; returns the seat used. */
export function placeTemplate(fit: BodyFit, placed: PlacedTemplate): Seat {
  const seat = seatOf(fit);
  const { stations, half, photo } = placed;
  layTemplate(fit, placed.laid);
  placeStations(placed.laid, stations, half);
  for (let i = 0; i < stations.count; i++) {
    const at = i * STATION_STRIDE;
    const x = half[at] as number;
    const y = half[at + 1] as number;
    const nx = half[at + 2] as number;
    const ny = half[at + 3] as number;
    const other = (stations.count + i) * STATION_STRIDE;
    bodyToPhoto(seat, x, y, photo, at);
    normalToPhoto(seat, x, nx, ny, photo, at + 2);
    bodyToPhoto(seat, -x, y, photo, other);
    normalToPhoto(seat, -x, -nx, ny, photo, other + 2);
  }
  return seat;
}

/** The closed outline in photo px, [x, y, …]: up the half with x ≥ 0, down the other. */
export function closedOutline(placed: PlacedTemplate): Float64Array {
  const { count } = placed.stations;
  const out = new Float64Array(4 * count);
  for (let i = 0; i < count; i++) {
    const up = i * STATION_STRIDE;
    const down = (2 * count - 1 - i) * STATION_STRIDE;
    out[2 * i] = placed.photo[up] as number;
    out[2 * i + 1] = placed.photo[up + 1] as number;
    out[2 * (count + i)] = placed.photo[down] as number;
    out[2 * (count + i) + 1] = placed.photo[down + 1] as number;
  }
  return out;
}

/** Whether a place of the half body frame is where neck, fingerboard, button or tail gear cross the edge. */
export function isCrossed(x: number, y: number): boolean {
  return (y > 300 && Math.abs(x) < 23) || (y < 40 && Math.abs(x) < 16);
}
