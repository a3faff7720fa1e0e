import { accept, type Checked, type Point, refuse } from '../../base/index.ts';
import { type Rectified, rectifiedToScene } from '../camera/rectify.ts';
import { type PaperShares, paperShares } from '../paper/paperLight.ts';
import type { ShapeGround } from '../paper/sheetGround.ts';
import { type StandOut, standOut } from '../paper/standOut.ts';
import { type ThingColour, thingColour, thingness } from '../paper/thingColour.ts';
import { planeField } from '../picture/planeField.ts';
import { type FinePlace, fineContour } from './fineContour.ts';
import { noPaper, nothing, offSheet, sameColour } from './profileTrouble.ts';
import { evenClosed, outerBoundary } from './thingContour.ts';

/** A place of a contour in the scene, with its spread across the contour (one standard deviation). */
export interface ContourPlace extends Point<'scene'> {
  readonly sigmaMm: number;
  /** An edge so soft that it may be the border of a shadow. */
  readonly soft: boolean;
}

/** The outer edge of the one thing on the paper, closed, anticlockwise, about every half millimetre; holes are ignored. */
export interface Silhouette {
  readonly contour: readonly ContourPlace[];
  /** Share of the contour where an edge could be fitted; the rest lies at the level between thing and paper. */
  readonly fittedShare: number;
}

const STEP_MM = 0.5;
const SMOOTH_MM = 0.4;
/** mm kept round the coarse finding. */
const ROUND_MM = 3;
/** mm. No edge in focus is blurred so widely; shadows are (chosen by us, from painted pictures). */
const SOFT_MM = 0.4;
/** Between paper (0) and thing (1). */
const LEVEL = 0.5;
/** mm. A thing shorter round than this is a speck. */
const LEAST_ROUND_MM = 40;

/**
 * The silhouette of whatever lies on the paper, its shadow not taken for it.
 *
 * Faults: `profile.no-paper` (too little bare paper seen to know its light), `profile.nothing` (nothing stands out), `profile.colour`
 * (it cannot be told from the paper), `profile.off-sheet` (it reaches out of the calm middle).
 * Method: the direction in colour that parts thing from paper and from grey shadow; its level set; then {@link fineContour}.
 */
export function traceSilhouette(rectified: Rectified, ground: ShapeGround): Checked<Silhouette> {
  const shares = paperShares(rectified, ground.whites);
  if (shares === null) return refuse(noPaper('thing'));
  const seen = standOut(shares, rectified, ground);
  if (seen === null) return refuse(nothing());
  const colour = thingColour(shares, seen);
  if (colour === null) return refuse(sameColour());
  const plane = thingPlane(shares, colour);
  const { widthPx, heightPx } = shares;
  const near = nearThing(seen, widthPx, heightPx, ROUND_MM / rectified.mmPerPixel);
  const inside = Uint8Array.from(plane, (value, i) => (near[i] && value > LEVEL ? 1 : 0));
  const boundary = outerBoundary({ widthPx, heightPx, inside });
  const { mmPerPixel } = rectified;
  if (boundary.length * mmPerPixel < LEAST_ROUND_MM) return refuse(nothing());
  if (touchesBorder(boundary, widthPx, heightPx)) return refuse(offSheet());
  const even = evenClosed(boundary, Math.max(1, Math.round(SMOOTH_MM / mmPerPixel)), STEP_MM / mmPerPixel);
  const fine = fineContour(planeField(plane, widthPx, heightPx), even, { mmPerPixel, closed: true });
  return accept({
    contour: fine.map((place) => contourPlace(rectified, place)).reverse(),
    fittedShare: fine.filter(({ fitted }) => fitted).length / fine.length,
  });
}

function contourPlace(rectified: Rectified, place: FinePlace): ContourPlace {
  const { mmPerPixel } = rectified;
  return {
    ...rectifiedToScene(rectified, place),
    sigmaMm: place.sigmaPx * mmPerPixel,
    soft: place.blurPx * mmPerPixel > SOFT_MM,
  };
}

function thingPlane({ planes }: PaperShares, colour: ThingColour): Float32Array {
  const [r, g, b] = planes;
  return r.map((share, i) => thingness(colour, share, g[i], b[i]));
}

/** The pixels of the coarse finding and those within some px of it. */
function nearThing(seen: StandOut, widthPx: number, heightPx: number, roundPx: number): Uint8Array {
  const cells = Math.ceil(roundPx / seen.cellPx);
  const wide = seen.mask.slice();
  for (let row = 0; row < seen.rows; row++)
    for (let column = 0; column < seen.columns; column++) {
      if (!seen.mask[row * seen.columns + column]) continue;
      const first = Math.max(0, column - cells);
      const last = Math.min(seen.columns - 1, column + cells);
      for (let r = Math.max(0, row - cells); r <= Math.min(seen.rows - 1, row + cells); r++)
        wide.fill(1, r * seen.columns + first, r * seen.columns + last + 1);
    }
  const near = new Uint8Array(widthPx * heightPx);
  for (let y = 0; y < Math.min(heightPx, seen.rows * seen.cellPx); y++) {
    const row = Math.floor(y / seen.cellPx) * seen.columns;
    for (let x = 0; x < Math.min(widthPx, seen.columns * seen.cellPx); x++)
      near[y * widthPx + x] = wide[row + Math.floor(x / seen.cellPx)];
  }
  return near;
}

function touchesBorder(boundary: readonly Point<'photo'>[], widthPx: number, heightPx: number): boolean {
  return boundary.some(({ x, y }) => x < 1 || y < 1 || x > widthPx - 2 || y > heightPx - 2);
}
