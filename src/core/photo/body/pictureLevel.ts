import { log, power } from '../../base/index.ts';
import { fillPolygon } from '../picture/fillPolygon.ts';
import type { LabPicture } from '../picture/labPicture.ts';
import { labOf } from '../picture/labPicture.ts';
import type { LinearPicture } from '../picture/linearPicture.ts';
import {
  COLOUR_GRID,
  type ColourKind,
  type ColourSource,
  colourCells,
  colourScratch,
} from './colourModel.ts';
import { type EdgeMap, edgeMapOf } from './edgeMap.ts';

/** One size of the picture with what a fit needs of it; blurred gradients are made once a blur and kept. */
export interface PictureLevel {
  readonly lab: LabPicture;
  /** Pixels of this level a pixel of the photo, along a side. */
  readonly factor: number;
  readonly masked: Uint8Array | undefined;
  /** The colours with room for what is learned of them; all kinds share that room. */
  colours(kind: ColourKind): ColourSource;
  /** The gradient after a blur of about `sigmaPx` (steps of a quarter octave). */
  edges(sigmaPx: number): EdgeMap;
  /**
   * What was learned of a body's colours is gone, so that the next fit begins as if it were the first, and so are the gradients, which are
   * many times the picture and quickly made again. Nobody looks at an edge map that was given before.
   */
  forgetBodies(): void;
}

/** A level of the picture; `masked` holds closed polygons in photo px whose inside is ignored. */
export function levelOf(
  linear: LinearPicture,
  factor: number,
  masked: readonly (readonly { readonly x: number; readonly y: number }[])[],
): PictureLevel {
  const lab = labOf(linear);
  const mask = maskOf(linear.widthPx, linear.heightPx, factor, masked);
  const colours = new Map<ColourKind, ColourSource>();
  const edges = new Map<number, EdgeMap>();
  const { widthPx, heightPx } = linear;
  const room = {
    widthPx,
    heightPx,
    masked: mask,
    scratch: colourScratch(widthPx, heightPx),
    posterior: new Float32Array(Math.ceil(widthPx / COLOUR_GRID) * Math.ceil(heightPx / COLOUR_GRID)),
  };
  return {
    lab,
    factor,
    masked: mask,
    colours: (kind) => kept(colours, kind, () => ({ ...room, cells: colourCells(lab, kind) })),
    edges: (sigmaPx) => {
      const step = Math.round((4 * log(sigmaPx)) / Math.LN2);
      return kept(edges, step, () => edgeMapOf(lab, power(2, step / 4), mask));
    },
    forgetBodies: () => {
      room.posterior.fill(0);
      for (const map of edges.values()) map.forget();
      edges.clear();
    },
  };
}

function kept<K, V>(store: Map<K, V>, key: K, make: () => V): V {
  const known = store.get(key);
  if (known !== undefined) return known;
  const made = make();
  store.set(key, made);
  return made;
}

function maskOf(
  widthPx: number,
  heightPx: number,
  factor: number,
  polygons: readonly (readonly { readonly x: number; readonly y: number }[])[],
): Uint8Array | undefined {
  if (polygons.length === 0) return undefined;
  const mask = new Uint8Array(widthPx * heightPx);
  for (const polygon of polygons)
    fillPolygon(
      mask,
      widthPx,
      heightPx,
      polygon.flatMap((p) => [(p.x + 0.5) * factor - 0.5, (p.y + 0.5) * factor - 0.5]),
      1,
    );
  return mask;
}
