import { exp, log, type Point } from '../../base/index.ts';
import { addHold, addRow, emptyEquations, medianOf, solveEquations } from '../../numeric/index.ts';
import type { Rectified } from '../camera/rectify.ts';
import { sceneToRectified } from '../camera/rectify.ts';
import { linearLightTable } from '../picture/linearPicture.ts';

/** A picture as shares of the light that bare paper would give at each place: 1 is paper, three planes. */
export interface PaperShares {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly planes: readonly [Float32Array, Float32Array, Float32Array];
}

const TERMS = 6;
/** Share of the paper's light: places this near to it count as paper when the light is fitted again. */
const LIKE_PAPER = 0.12;
/** Spacing in px of the places looked at for the second fit. */
const GRID_PX = 12;
const FEWEST = 24;

/**
 * The picture divided by the light of bare paper, or null where too little paper is seen. Method: a quadratic in the
 * logarithm of each colour through the white squares of the band, then again through all that looks like paper.
 */
export function paperShares(rectified: Rectified, whites: readonly Point<'scene'>[]): PaperShares | null {
  const { picture } = rectified;
  const { widthPx, heightPx, rgb } = picture;
  const table = linearLightTable();
  const lightAt = (place: number, colour: number) => Math.max(DARKEST, table[rgb[3 * place + colour]]);
  const first = whites.map((white) => {
    const { x, y } = sceneToRectified(rectified, white);
    return Math.round(y) * widthPx + Math.round(x);
  });
  const places = first.filter((place, i) => {
    const { x, y } = sceneToRectified(rectified, whites[i]);
    return place >= 0 && place < widthPx * heightPx && x >= 0 && x < widthPx - 1 && y >= 0;
  });
  if (places.length < FEWEST) return null;
  let models = fitLight(places, lightAt, widthPx, heightPx);
  if (!models) return null;
  const level = medianOf(
    places.map((place) => shareOf(models as LightModels, place, lightAt, 1, widthPx, heightPx)),
  );
  const grid: number[] = [];
  for (let y = GRID_PX; y < heightPx; y += GRID_PX)
    for (let x = GRID_PX; x < widthPx; x += GRID_PX) {
      const place = y * widthPx + x;
      const shares = [0, 1, 2].map(
        (c) => shareOf(models as LightModels, place, lightAt, c, widthPx, heightPx) / level,
      );
      if (shares.every((share) => Math.abs(share - 1) < LIKE_PAPER)) grid.push(place);
    }
  models = (grid.length >= FEWEST && fitLight([...places, ...grid], lightAt, widthPx, heightPx)) || models;
  return divided(models, lightAt, widthPx, heightPx);
}

/** Linear light below which a logarithm would run away. */
const DARKEST = 0.0005;

type LightModels = readonly Float64Array[];
type LightAt = (place: number, colour: number) => number;

function termsAt(place: number, widthPx: number, heightPx: number): readonly number[] {
  const x = (2 * (place % widthPx)) / widthPx - 1;
  const y = (2 * Math.floor(place / widthPx)) / heightPx - 1;
  return [1, x, y, x * x, x * y, y * y];
}

/** Log light of paper by colour; places darker than the fit by far are given up, round by round. */
function fitLight(
  places: readonly number[],
  lightAt: LightAt,
  widthPx: number,
  heightPx: number,
): LightModels | null {
  const models: Float64Array[] = [];
  for (let colour = 0; colour < 3; colour++) {
    let kept = places.map((place) => ({
      terms: termsAt(place, widthPx, heightPx),
      value: log(lightAt(place, colour)),
    }));
    let model: Float64Array | undefined;
    for (let round = 0; round < ROUNDS; round++) {
      model = leastSquares(kept);
      if (!model) return null;
      const fitted = model;
      const misses = kept.map(({ terms, value }) => value - sum(fitted, terms));
      const spread = Math.max(LEAST_SPREAD, medianOf(misses.map(Math.abs)));
      const next = kept.filter((_, i) => misses[i] > -2 * spread && misses[i] < 3 * spread);
      if (next.length < FEWEST || next.length === kept.length) break;
      kept = next;
    }
    if (!model) return null;
    models.push(model);
  }
  return models;
}

const ROUNDS = 8;
/** In the logarithm of light: grain of paper and noise of a camera. */
const LEAST_SPREAD = 0.02;

function leastSquares(
  rows: readonly { readonly terms: readonly number[]; readonly value: number }[],
): Float64Array | undefined {
  const equations = emptyEquations(TERMS);
  for (const { terms, value } of rows) addRow(equations, Float64Array.from(terms), value, 1);
  for (let i = 0; i < TERMS; i++) addHold(equations, i, 0, RIDGE * rows.length);
  return solveEquations(equations) ? equations.right : undefined;
}

/** Share of a row by which curvature is held down where places do not show it. */
const RIDGE = 0.000_01;

function sum(model: Float64Array, terms: readonly number[]): number {
  return terms.reduce((total, term, i) => total + term * model[i], 0);
}

function shareOf(
  models: LightModels,
  place: number,
  lightAt: LightAt,
  colour: number,
  widthPx: number,
  heightPx: number,
): number {
  return lightAt(place, colour) / exp(sum(models[colour], termsAt(place, widthPx, heightPx)));
}

function divided(models: LightModels, lightAt: LightAt, widthPx: number, heightPx: number): PaperShares {
  const plane = (colour: number): Float32Array => {
    const out = new Float32Array(widthPx * heightPx);
    const [c, cx, cy, cxx, cxy, cyy] = models[colour];
    for (let row = 0, place = 0; row < heightPx; row++) {
      const y = (2 * row) / heightPx - 1;
      const [level, slope] = [c + y * (cy + y * cyy), cx + y * cxy];
      for (let column = 0; column < widthPx; column++, place++) {
        const x = (2 * column) / widthPx - 1;
        out[place] = lightAt(place, colour) / exp(level + x * (slope + x * cxx));
      }
    }
    return out;
  };
  return { widthPx, heightPx, planes: [plane(0), plane(1), plane(2)] };
}
