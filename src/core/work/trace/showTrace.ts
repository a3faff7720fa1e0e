import { hypot, point } from '../../base/index.ts';
import { mirrorChain, outlineChain } from '../../curve/index.ts';
import type { TraceHints } from '../../photo/index.ts';
import { type ShownLine, shownLine } from '../../showing/index.ts';
import { movedHints } from './movedHints.ts';
import { type ShownUnsure, shownUnsure } from './shownUnsure.ts';
import { type ShownWays, shownWays } from './shownWays.ts';
import { type SquareOn, squareOn } from './squareOn.ts';
import { tenfold } from './tenfold.ts';
import type { Traced } from './trace.ts';
import { wornRegion } from './wornRegion.ts';

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
  /** The wood itself: between the edge as found and the restored one. */
  readonly path: string;
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
  /** Stretches of the edge that were seen badly, or not at all. */
  readonly unsure: readonly ShownUnsure[];
  /** The edge as found, ten times as far from the restored one as it is. */
  readonly tenfold: readonly string[];
  /** Height of the edge above the sheet with its half interval, mm; null where no sheet gave the scale. */
  readonly edgeHeight: { readonly mm: number; readonly plusMinusMm: number } | null;
  /** Which of the photographs this is, and how far they lie apart; null for one. */
  readonly shot: number;
  readonly apart: { readonly rmsMm: number; readonly maxMm: number } | null;
  /** Places marked by hand in this photograph, in these millimetres. */
  readonly hints: TraceHints;
}

/** mm round the body that its picture shows, for the usual length; its pixels to a millimetre there. */
const ROUND_MM = { side: 110, end: 50 } as const;
const PX_PER_MM = 2.6;
const USUAL_LENGTH_MM = 355;
/** mm between two places of an edge that belong to one piece, at most. */
const APART_MM = 4;

/** What a trace found, over one of its photographs: the first when left out. */
export function showTrace(traced: Traced, shot = 0): ShownTrace {
  const { restored, request, lengthPlusMinusMm } = traced;
  const seen = [traced.seen, ...traced.others][shot] ?? traced.seen;
  const ways = shownWays(traced, shot);
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
    picture: wholeBody(traced, ways, widthMm),
    restored: restoredLine(restored, sign),
    asFound: [...piecesOf(asFound.bass.map(place)), ...piecesOf(asFound.treble.map(place))],
    unsure: shownUnsure(seen, ways),
    tenfold: (['bass', 'treble'] as const).flatMap((side) =>
      piecesOf(
        tenfold(asFound[side], restored.halves ? outlineChain(restored.halves[side]) : outline).map(place),
        10 * APART_MM,
      ),
    ),
    edgeHeight:
      seen.view.kind === 'camera'
        ? { mm: seen.view.planeHeightMm, plusMinusMm: seen.view.planeHeightPlusMinusMm }
        : null,
    shot,
    apart: traced.apart,
    hints: movedHints(seen.photograph.hints ?? {}, (at) => point(...ways.fromPhoto(at))),
    wear: wear.map((worn) => {
      const { side, section, at, depthMm, extentMm, from } = worn;
      const region = wornRegion(worn, restored.wearMap, outline).map(place);
      return {
        side,
        section,
        at: place(at),
        stationMm: at.y,
        depthMm,
        extentMm,
        from,
        path:
          region.length === 0
            ? ''
            : `M${region.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}Z`,
      };
    }),
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

/** The outline as meant; where both halves stay as they are, each side has its own. */
function restoredLine(
  { half, halves, bodyLengthMm }: Traced['restored'],
  sign: 1 | -1,
): ShownLine<'restored'> {
  const line = shownLine('restored', outlineChain(half), bodyLengthMm);
  if (!halves) return line;
  const sides = [
    [halves.treble, sign],
    [halves.bass, -sign],
  ] as const;
  // The short line at a corner's end joins one bout to the next.
  const path = sides
    .map(([side, way]) =>
      [side.lowerBout, side.cBout, side.upperBout]
        .map((chain) => shownLine('restored', way === 1 ? chain : mirrorChain(chain), bodyLengthMm).path)
        .map((piece, place) => (place === 0 ? piece : piece.replace(/^M/, 'L')))
        .join(''),
    )
    .join('');
  return { ...line, path };
}

function wholeBody({ restored }: Traced, ways: ShownWays, widthMm: number): SquareOn {
  const size = restored.bodyLengthMm / USUAL_LENGTH_MM;
  const [leftMm, topMm] = [-(widthMm / 2 + ROUND_MM.side * size), -ROUND_MM.end * size];
  return squareOn(ways, {
    leftMm,
    topMm,
    pxPerMm: PX_PER_MM / size,
    widthMm: -2 * leftMm,
    heightMm: restored.bodyLengthMm - 2 * topMm,
  });
}

/** Paths through places in order, broken where the edge was not seen. */
function piecesOf(
  places: readonly (readonly [number, number])[],
  apartMm: number = APART_MM,
): readonly string[] {
  const pieces: string[][] = [];
  let last: readonly [number, number] | null = null;
  for (const at of places) {
    const isNear = last !== null && hypot(at[0] - last[0], at[1] - last[1]) < apartMm;
    if (!isNear) pieces.push([]);
    pieces.at(-1)?.push(`${at[0].toFixed(2)} ${at[1].toFixed(2)}`);
    last = at;
  }
  return pieces.filter((piece) => piece.length > 1).map((piece) => `M${piece.join('L')}`);
}
