import { type Point, WELD_MM } from '../base/index.ts';
import { type Chain, containsPoint } from '../curve/index.ts';
import { insideLine, type Station } from '../instrument/index.ts';
import type { Lettering } from './drawing.ts';
import { letteringStrokes, letteringWidthMm } from './lettering.ts';
import type { Covers } from './outlineDrawingsMarks.ts';

/** The piece that is lettered: its edge and holes keep lettering off them. */
export interface LetteredPiece {
  readonly edge: Chain<'drawing'>;
  readonly holes: readonly Chain<'drawing'>[];
  readonly covers: Covers;
  /** Size of the instrument against the one that lettering is laid out for. */
  readonly scale: number;
}

/** One line of lettering in a block. */
export interface LetteredLine {
  readonly text: string;
  readonly heightMm: number;
}

/** Where a block of lettering may stand: from its top down to its floor, mm along the body, and how wide at most. */
export interface LetteredRoom {
  readonly topMm: number;
  readonly floorMm: number;
  readonly mostMm: number;
}

/** mm. Smaller lettering can neither be cut nor read: it is left out. */
const LEAST_LETTER_MM = 1.2;

/** mm at scale 1: from the centre line to the lettering, and left free beyond it (never less, so that cutters keep clear). */
const FROM_CENTRE_MM = 5;
/** mm at scale 1: where a name starts that a hole leaves too little room for. */
const NEAR_CENTRE_MM = 2;
const MARGIN_MM = 1;

/** From base line to base line, in letter heights. */
const LINE_SPACING = 1.7;

/** Sizes at which a block is tried, against the wished one. */
const BLOCK_SHARES = [1, 0.9, 0.8, 0.7, 0.6, 0.5] as const;

/** How far small letters such as g reach below their base line, as a share of the height of capitals. */
const TAIL = 0.3;

/** mm at scale 1: from a station line up to where lettering above its name may begin. */
const ABOVE_NAME_MM = 5.5;

/** A line that needs to shrink below this share of its wished height is broken instead. */
const LEAST_SHRINK = 0.75;

/** The lowest that lettering may reach above a station line and the names that stand on it. */
export function aboveStation(stationMm: number, scale: number): number {
  return stationMm + ABOVE_NAME_MM * scale;
}

/** Small names above the station lines, beside the centre line. */
export function stationNames(stations: readonly Station[], piece: LetteredPiece): Lettering[] {
  const wishedMm = 2.5 * piece.scale;
  return stations.flatMap(({ name, stationMm }) => {
    const y = stationMm + 1.2 * piece.scale;
    const [far, near] = [FROM_CENTRE_MM, NEAR_CENTRE_MM].map((fromMm) =>
      fitted(name, y, wishedMm, Number.POSITIVE_INFINITY, piece, fromMm),
    ) as [Lettering[], Lettering[]];
    return (far[0]?.heightMm ?? 0) >= wishedMm * LEAST_SHRINK || near.length === 0 ? far : near;
  });
}

/**
 * Lines of lettering one under the other beside the centre line: on the treble side, or the bass side of a bass half.
 * A line too long for the room between centre line and holes is broken between words, then written smaller; so is the
 * whole block where it would reach below its floor.
 */
export function letterBlock(
  lines: readonly LetteredLine[],
  { topMm, floorMm, mostMm }: LetteredRoom,
  piece: LetteredPiece,
): Lettering[] {
  const tries = BLOCK_SHARES.map((share) => blockAt(lines, share, topMm, mostMm, piece));
  const fits = tries.find((block) => block.every(({ at, heightMm }) => at.y - TAIL * heightMm >= floorMm));
  return fits ?? tries.at(-1) ?? [];
}

function blockAt(
  lines: readonly LetteredLine[],
  share: number,
  topMm: number,
  mostMm: number,
  piece: LetteredPiece,
): Lettering[] {
  let y = topMm;
  return lines.flatMap(({ text, heightMm }) => {
    const wishedMm = share * heightMm * piece.scale;
    const parts = broken(text, wishedMm, mostMm).flatMap((part) => {
      y -= wishedMm;
      const line = fitted(part, y, wishedMm, mostMm, piece);
      y -= (LINE_SPACING - 1) * wishedMm;
      return line;
    });
    const evenMm = Math.min(...parts.map((part) => part.heightMm));
    const of = { kind: 'lines', text } as const;
    return parts.map((part) => ({ ...part, heightMm: evenMm, of }));
  });
}

/** Whether every stroke of a lettering lies on the piece and off its holes. */
export function liesOnPiece(lettering: Lettering, piece: LetteredPiece): boolean {
  return letteringStrokes(lettering)
    .flatMap((stroke) => stroke.vertices)
    .every((at) => containsPoint(piece.edge, at) && !piece.holes.some((hole) => containsPoint(hole, at)));
}

function fitted(
  text: string,
  y: number,
  wishedMm: number,
  mostMm: number,
  piece: LetteredPiece,
  fromCentreMm: number = FROM_CENTRE_MM,
): Lettering[] {
  const sign = piece.covers === 'bass half' ? -1 : 1;
  const at: Point<'drawing'> = { x: sign * fromCentreMm * piece.scale, y };
  const roomMm = Math.min(mostMm, roomBeside(at, sign, wishedMm, piece));
  const widthMm = letteringWidthMm({ text, heightMm: wishedMm });
  const heightMm = widthMm > roomMm ? (wishedMm * roomMm) / widthMm : wishedMm;
  if (!(heightMm >= LEAST_LETTER_MM)) return [];
  return [{ text, at, heightMm, turnRad: 0, anchor: sign < 0 ? 'end' : 'start' }];
}

/** Levels at which room is looked for: close enough that no round of a hole comes between. */
const LEVELS = 12;

/** mm. Lettering stays so far under and over holes and edges. */
const CLEAR_MM = 0.5;

/** How far lettering of this height can run from a place before it meets a hole or the edge. */
function roomBeside(at: Point<'drawing'>, sign: number, heightMm: number, piece: LetteredPiece): number {
  const reach = 2 * Math.max(...piece.edge.vertices.map((vertex) => Math.abs(vertex.x)));
  const [low, high] = [at.y - TAIL * heightMm - CLEAR_MM, at.y + heightMm + CLEAR_MM];
  const levels = Array.from({ length: LEVELS }, (_, step) => low + ((high - low) * step) / (LEVELS - 1));
  const rooms = levels.map((y) => {
    const [first] = insideLine({ x: at.x, y }, { x: at.x + sign * reach, y }, piece.edge, piece.holes);
    const [start, end] = first?.vertices ?? [];
    if (start === undefined || end === undefined || Math.abs(start.x - at.x) > WELD_MM) return 0;
    return Math.abs(end.x - start.x) - MARGIN_MM * Math.max(1, piece.scale);
  });
  return Math.max(0, Math.min(...rooms));
}

/** The text in as few lines as hold it, broken between words. */
function broken(text: string, heightMm: number, roomMm: number): readonly string[] {
  const fits = (part: string): boolean => LEAST_SHRINK * letteringWidthMm({ text: part, heightMm }) <= roomMm;
  const lines: string[] = [];
  for (const word of text.split(' ').filter((part) => part.length > 0)) {
    const last = lines.at(-1);
    if (last !== undefined && fits(`${last} ${word}`)) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
