import type { EdgePoint } from '../body/bodyTrace.ts';
import type { Picture } from '../picture/picture.ts';
import { lightSampler } from './lightSampler.ts';

/** The plate along its edge pulled straight: one row a place, running inward along the normal. */
export interface EdgeStrips {
  readonly samples: number;
  /** mm inside the edge of the first sample, and from one sample to the next. */
  readonly fromMm: number;
  readonly stepMm: number;
  /** Linear light, row by row; whoever asked for the strips lets go of it. */
  readonly light: Float32Array;
}

/** mm. Finer than this a strip tells nothing more about a line 0.3 mm wide. */
const FINEST_STEP_MM = 0.05;
/** mm either way along the edge that one row is the mean of. */
const ALONG_MM = 0.4;

/** The strips from one depth inside the edge to another, mm; negative outside. */
export function edgeStrips(
  picture: Picture,
  edge: readonly EdgePoint[],
  pxPerMm: number,
  [fromMm, toMm]: readonly [number, number],
): EdgeStrips {
  const stepMm = Math.max(FINEST_STEP_MM, 1 / 2 / pxPerMm);
  const samples = Math.floor((toMm - fromMm) / stepMm) + 1;
  const light = new Float32Array(edge.length * samples);
  const lightAt = lightSampler(picture);
  const aside = Math.round(ALONG_MM * pxPerMm);
  for (let i = 0; i < edge.length; i++) {
    const { point, normal } = edge[i];
    for (let j = 0; j < samples; j++) {
      const inPx = (fromMm + j * stepMm) * pxPerMm;
      let sum = 0;
      for (let k = -aside; k <= aside; k++)
        sum += lightAt(point.x - inPx * normal.x - k * normal.y, point.y - inPx * normal.y + k * normal.x);
      light[i * samples + j] = sum / (2 * aside + 1);
    }
  }
  return { samples, fromMm, stepMm, light };
}
