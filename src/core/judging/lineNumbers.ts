import { atan2, cos, hypot, type Point, point, sin } from '../base/index.ts';
import { type Lettering, letteringWidthMm } from '../drawing/index.ts';
import { type ContourLine, placesOf } from '../surface/index.ts';
import { inBox, type NumberBox, outsideBoxes, type Place } from './numberBox.ts';

/** Lines with gaps for their numbers, and the numbers. */
export interface NumberedLines {
  readonly lines: readonly ContourLine[];
  readonly numbers: readonly NumberOnLine[];
}

export interface NumberOnLine {
  readonly levelMm: number;
  readonly lettering: Lettering;
}

/** A straight way across the lines beside which their numbers stand, one under the other as on a ladder. */
export type Ladder = readonly [Point<'body'>, Point<'body'>];

interface Stretch {
  readonly line: ContourLine;
  readonly places: readonly Place[];
  /** Way along the line up to each place; a closed line has its first place once more at the end. */
  readonly alongMm: readonly number[];
}

/** The room of a number, and how far along its line it stands. */
interface Label extends NumberBox {
  readonly alongMm: number;
}

/** Letter heights: free room on both sides of a number, above and below it, and how far a line may bend under it. */
const SIDE_ROOM = 0.45;
const OVER_ROOM = 0.12;
const MOST_BEND = 0.28;
/** Letter heights between two places at which a number is tried. */
const TRY_EVERY = 1.5;
/** A line shorter than so many widths of its number carries none. */
const SHORTEST = 4;
/** Share of the line's own length that a number may stand away from a ladder. */
const FARTHEST_SHARE = 0.3;

/**
 * Numbers on contour lines: in a gap of the line, along it and upright, near a ladder, clear of all other lines and
 * numbers and of what else they are kept off. A line that has no such place near a ladder carries no number there; one that
 * has none near any tries the spare ladders. Lines that are not to be numbered are broken where a number stands on them.
 */
export function numberedLines(
  lines: readonly ContourLine[],
  textOf: (levelMm: number) => string,
  heightMm: number,
  ladders: readonly Ladder[],
  keptOff: readonly ContourLine[] = [],
  isNumbered: (levelMm: number) => boolean = () => true,
  spare: readonly Ladder[] = [],
): NumberedLines {
  const stretches = lines.filter(({ levelMm }) => isNumbered(levelMm)).map(stretchOf);
  const inTheWay = [...stretches, ...keptOff.map(stretchOf)];
  const placed: Label[] = [];
  const numbers: NumberOnLine[] = [];
  const cut = stretches.map((stretch, index) => {
    const text = textOf(stretch.line.levelMm);
    const widthMm = letteringWidthMm({ text, heightMm });
    const own: Label[] = [];
    for (const [tried, ladder] of [...ladders, ...spare].entries()) {
      if (tried >= ladders.length && own.length > 0) break;
      const label = bestLabel(stretch, ladder, widthMm, heightMm, (one) =>
        isClear(one, index, inTheWay, placed),
      );
      if (label === null) continue;
      placed.push(label);
      own.push(label);
      numbers.push({ levelMm: stretch.line.levelMm, lettering: letteringOf(label, text, heightMm) });
    }
    return withGaps(stretch, own);
  });
  const others = lines.filter(({ levelMm }) => !isNumbered(levelMm));
  return { lines: [...others.flatMap((line) => outsideBoxes(line, placed)), ...cut.flat()], numbers };
}

function stretchOf(line: ContourLine): Stretch {
  const own = placesOf(line);
  const places = line.closed && own[0] !== undefined ? [...own, own[0]] : own;
  const alongMm = [0];
  for (const [index, [x, y]] of places.entries()) {
    const before = places[index - 1];
    if (before) alongMm.push((alongMm[index - 1] as number) + hypot(x - before[0], y - before[1]));
  }
  return { line, places, alongMm };
}

/** The place on a line after so much way; closed lines go round. */
function placeAt({ line, places, alongMm }: Stretch, way: number): Place {
  const length = alongMm.at(-1) as number;
  const at = line.closed ? ((way % length) + length) % length : Math.max(0, Math.min(length, way));
  let [low, high] = [0, alongMm.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((alongMm[middle] as number) <= at) low = middle;
    else high = middle;
  }
  const [from, to] = [places[low] as Place, places[high] as Place];
  const share = (at - (alongMm[low] as number)) / ((alongMm[high] as number) - (alongMm[low] as number));
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

function bestLabel(
  stretch: Stretch,
  ladder: Ladder,
  widthMm: number,
  heightMm: number,
  clear: (label: Label) => boolean,
): Label | null {
  const length = stretch.alongMm.at(-1) as number;
  if (length < SHORTEST * widthMm) return null;
  const halfMm = widthMm / 2 + SIDE_ROOM * heightMm;
  const from = stretch.line.closed ? 0 : halfMm;
  const to = stretch.line.closed ? length : length - halfMm;
  const tries: { readonly way: number; readonly off: number }[] = [];
  for (let way = from; way < to; way += TRY_EVERY * heightMm)
    tries.push({ way, off: distanceTo(ladder, placeAt(stretch, way)) });
  tries.sort((a, b) => a.off - b.off || a.way - b.way);
  for (const { way, off } of tries) {
    if (off > FARTHEST_SHARE * length) break;
    const [start, at, end] = [way - halfMm, way, way + halfMm].map((one) => placeAt(stretch, one)) as [
      Place,
      Place,
      Place,
    ];
    const chord = hypot(end[0] - start[0], end[1] - start[1]);
    const bend = hypot(at[0] - (start[0] + end[0]) / 2, at[1] - (start[1] + end[1]) / 2);
    if (bend > MOST_BEND * heightMm || chord < 1.8 * halfMm) continue;
    const along = atan2(end[1] - start[1], end[0] - start[0]);
    const label = {
      at,
      turnRad: cos(along) >= 0 ? along : along > 0 ? along - Math.PI : along + Math.PI,
      halfWidthMm: halfMm,
      halfHeightMm: (0.5 + OVER_ROOM) * heightMm,
      alongMm: way,
    };
    if (clear(label)) return label;
  }
  return null;
}

function distanceTo([from, to]: Ladder, [x, y]: Place): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = Math.max(0, Math.min(1, ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy)));
  return hypot(x - from.x - share * dx, y - from.y - share * dy);
}

/** Whether the box of a number meets no other line and no other number. */
function isClear(
  label: Label,
  own: number,
  stretches: readonly Stretch[],
  placed: readonly Label[],
): boolean {
  const near = hypot(label.halfWidthMm, label.halfHeightMm);
  for (const other of placed) {
    const far = hypot(other.at[0] - label.at[0], other.at[1] - label.at[1]);
    if (far < near + Math.min(other.halfWidthMm, near)) return false;
  }
  return stretches.every(({ places }, index) => {
    if (index === own) return true;
    for (let at = 1; at < places.length; at++)
      if (inBox(label, places[at - 1] as Place, places[at] as Place) !== null) return false;
    return true;
  });
}

function letteringOf({ at, turnRad }: Label, text: string, heightMm: number): Lettering {
  // The base line lies half a letter below the line.
  const [x, y] = [at[0] + (sin(turnRad) * heightMm) / 2, at[1] - (cos(turnRad) * heightMm) / 2];
  return { text, at: point(x, y), heightMm, turnRad, anchor: 'middle' };
}

/** The pieces of a line between the gaps of its numbers. */
function withGaps(stretch: Stretch, labels: readonly Label[]): readonly ContourLine[] {
  if (labels.length === 0) return [stretch.line];
  const length = stretch.alongMm.at(-1) as number;
  const gaps = labels
    .map(({ alongMm, halfWidthMm }) => [alongMm - halfWidthMm, alongMm + halfWidthMm] as const)
    .toSorted((a, b) => a[0] - b[0]);
  const pieces: [number, number][] = gaps.map((gap, index) => [
    gap[1],
    gaps[index + 1]?.[0] ??
      (stretch.line.closed ? (gaps[0] as readonly [number, number])[0] + length : length),
  ]);
  if (!stretch.line.closed) pieces.unshift([0, (gaps[0] as readonly [number, number])[0]]);
  return pieces.filter(([from, to]) => to > from).map(([from, to]) => pieceOf(stretch, from, to));
}

function pieceOf(stretch: Stretch, from: number, to: number): ContourLine {
  const length = stretch.alongMm.at(-1) as number;
  const rounds = stretch.line.closed ? [-1, 0, 1, 2] : [0];
  const between = rounds.flatMap((round) =>
    stretch.alongMm.flatMap((along, index) => {
      const isDouble = stretch.line.closed && index === stretch.alongMm.length - 1;
      const way = along + round * length;
      return !isDouble && way > from && way < to ? [stretch.places[index] as Place] : [];
    }),
  );
  const places = [placeAt(stretch, from), ...between, placeAt(stretch, to)];
  return { levelMm: stretch.line.levelMm, closed: false, xyMm: Float64Array.from(places.flat()) };
}
