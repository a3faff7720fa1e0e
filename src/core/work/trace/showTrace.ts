import { point } from '../../base/index.ts';
import { outlineChain } from '../../curve/index.ts';
import { viewMap } from '../../photo/index.ts';
import { type ShownLine, shownLine } from '../../showing/index.ts';
import type { Traced } from './trace.ts';

/** A picture square on to the body, neck up, as it was photographed: `rgba` row by row, clear where the photograph ends. */
export interface SquareOn {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgba: Uint8ClampedArray;
  readonly pxPerMm: number;
  /** The picture's left and upper edges: mm right of the centre line, and down from the upper end of the body. */
  readonly leftMm: number;
  readonly topMm: number;
}

/** A piece of wood put back. */
export interface ShownWear {
  readonly side: 'bass' | 'treble';
  readonly section: string;
  /** Deepest place: mm right of the centre line as photographed, down from the upper end; and above the lower end. */
  readonly at: readonly [number, number];
  readonly stationMm: number;
  readonly depthMm: number;
  readonly extentMm: number;
  readonly from: string;
}

/**
 * A trace to be looked at over its photograph. Millimetres as photographed: x to the right of the centre line, whose side that
 * is depends on the face; y down from the upper end of the body.
 */
export interface ShownTrace {
  readonly face: 'top' | 'back';
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly lengthPlusMinusMm: number;
  readonly picture: SquareOn;
  readonly restored: ShownLine<'restored'>;
  /** Both edges as they are today, as many pieces as were seen. */
  readonly asFound: readonly string[];
  readonly wear: readonly ShownWear[];
  readonly leanMm: number;
  readonly bridged: readonly string[];
  readonly arcs: number;
  readonly fitRmsMm: number;
}

/** mm round the body that its picture shows, for the usual length; its pixels to a millimetre there. */
const ROUND_MM = { side: 110, end: 50 } as const;
const PX_PER_MM = 2.6;
const USUAL_LENGTH_MM = 355;
/** mm between two places of an edge that belong to one piece, at most. */
const APART_MM = 4;

/** What a trace found, over the first photograph. */
export function showTrace(traced: Traced): ShownTrace {
  const { restored, request, seen, lengthPlusMinusMm } = traced;
  const { half, bodyLengthMm, asFound, wear } = restored;
  const sign = request.face === 'back' ? -1 : 1;
  const outline = outlineChain(half);
  const xs = outline.vertices.map(({ x }) => x);
  const widthMm = 2 * Math.max(...xs);
  const place = ({ x, y }: { readonly x: number; readonly y: number }) =>
    [sign * x, bodyLengthMm - y] as const;
  return {
    face: request.face,
    lengthMm: bodyLengthMm,
    widthMm,
    lengthPlusMinusMm,
    picture: squareOn(traced, widthMm),
    restored: shownLine('restored', outline, bodyLengthMm),
    asFound: [...piecesOf(asFound.bass.map(place)), ...piecesOf(asFound.treble.map(place))],
    wear: wear.map(({ side, section, at, depthMm, extentMm, from }) => ({
      side,
      section,
      at: place(at),
      stationMm: at.y,
      depthMm,
      extentMm,
      from,
    })),
    leanMm: restored.leanMaxMm,
    bridged: [
      ...new Set(seen.trace.unseen.filter(({ state }) => state === 'bridged').map(({ name }) => name)),
    ],
    arcs: [half.lowerBout, half.cBout, half.upperBout].reduce(
      (sum, chain) => sum + chain.vertices.length - 1,
      0,
    ),
    fitRmsMm: restored.fitRmsMm,
  };
}

function squareOn({ view, restored, seen }: Traced, widthMm: number): SquareOn {
  const size = restored.bodyLengthMm / USUAL_LENGTH_MM;
  const pxPerMm = PX_PER_MM / size;
  const leftMm = -(widthMm / 2 + ROUND_MM.side * size);
  const topMm = -ROUND_MM.end * size;
  const widthPx = Math.round(-2 * leftMm * pxPerMm);
  const heightPx = Math.round((restored.bodyLengthMm - 2 * topMm) * pxPerMm);
  const { widthPx: across, heightPx: down, rgb } = seen.photograph.picture;
  const { through, headingRad } = restored.axis;
  const [c, s] = [Math.cos(headingRad), Math.sin(headingRad)];
  const { toPhoto } = viewMap(view);
  const rgba = new Uint8ClampedArray(4 * widthPx * heightPx);
  for (let row = 0; row < heightPx; row++)
    for (let column = 0; column < widthPx; column++) {
      // As photographed: whichever side lies right is right.
      const right = leftMm + (column + 0.5) / pxPerMm;
      const along = restored.bodyLengthMm - (topMm + (row + 0.5) / pxPerMm) + restored.lowerEndMm;
      const at = toPhoto(point(through.x + c * along + s * right, through.y + s * along - c * right));
      const [px, py] = [Math.round(at.x), Math.round(at.y)];
      if (!(px >= 0 && py >= 0 && px < across && py < down)) continue;
      const from = 3 * (py * across + px);
      const to = 4 * (row * widthPx + column);
      rgba[to] = rgb[from] as number;
      rgba[to + 1] = rgb[from + 1] as number;
      rgba[to + 2] = rgb[from + 2] as number;
      rgba[to + 3] = 255;
    }
  return { widthPx, heightPx, rgba, pxPerMm, leftMm, topMm };
}

/** Paths through places in order, broken where the edge was not seen. */
function piecesOf(places: readonly (readonly [number, number])[]): readonly string[] {
  const pieces: string[][] = [];
  let last: readonly [number, number] | null = null;
  for (const at of places) {
    const isNear = last !== null && Math.hypot(at[0] - last[0], at[1] - last[1]) < APART_MM;
    if (!isNear) pieces.push([]);
    pieces.at(-1)?.push(`${at[0].toFixed(2)} ${at[1].toFixed(2)}`);
    last = at;
  }
  return pieces.filter((piece) => piece.length > 1).map((piece) => `M${piece.join('L')}`);
}
