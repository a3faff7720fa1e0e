import { type Chain, placeChain } from '../curve/index.ts';
import { insideLine, type Station } from '../instrument/index.ts';
import type { DrawnLine, Meaning } from './drawing.ts';

/** Which part of the body a piece covers. */
export type Covers = 'whole' | 'treble half' | 'bass half';

/** mm. Body length that lettering and marks are laid out for; others are scaled. */
export const LETTERED_FOR_MM = 355;

/** A chain of the body on a drawing: the drawing looks at the outside of the top, so nothing moves. */
export function onDrawing(chain: Chain<'body'>): Chain<'drawing'> {
  return placeChain<'drawing', 'body'>(chain, { turnRad: 0, shift: [0, 0] });
}

/** One line of a drawing. */
export function drawnLine(meaning: Meaning, chain: Chain<'drawing'>): DrawnLine {
  return { meaning, chain };
}

/** mm that a station mark reaches in from the edge, and to both sides of the centre line. */
const MARK_MM = 8;

/** mm. Shorter inside lines are scored through. */
const SHORT_LINE_MM = 5 * MARK_MM;

/** The centre line as far as it runs through the piece. */
export function centreLineMarks(
  edge: Chain<'drawing'>,
  holes: readonly Chain<'drawing'>[],
  reachMm: number,
): DrawnLine[] {
  return insideLine({ x: 0, y: -reachMm }, { x: 0, y: reachMm }, edge, holes).map((chain) => ({
    meaning: 'score',
    chain,
    centreLine: true,
  }));
}

/** The station lines as far as they run through the piece, whole or as marks at their ends and at the centre line. */
export function stationMarks(
  stations: readonly Station[],
  edge: Chain<'drawing'>,
  holes: readonly Chain<'drawing'>[],
  reachMm: number,
  how: 'lines' | 'marks',
): DrawnLine[] {
  return stations.flatMap(({ stationMm }) =>
    insideLine({ x: -reachMm, y: stationMm }, { x: reachMm, y: stationMm }, edge, holes)
      .flatMap((line) => (how === 'lines' ? [line] : ends(line)))
      .map((chain) => drawnLine('score', chain)),
  );
}

function ends(line: Chain<'drawing'>): Chain<'drawing'>[] {
  const [from, to] = line.vertices;
  if (from === undefined || to === undefined) return [];
  if (to.x - from.x < SHORT_LINE_MM) return [line];
  const level = (startX: number, endX: number): Chain<'drawing'> => ({
    closed: false,
    vertices: [
      { x: startX, y: from.y, bulge: 0 },
      { x: endX, y: from.y, bulge: 0 },
    ],
  });
  const marks = [level(from.x, from.x + MARK_MM), level(to.x - MARK_MM, to.x)];
  const crossesCentre = from.x < -MARK_MM && to.x > MARK_MM;
  return crossesCentre ? [...marks, level(-MARK_MM / 2, MARK_MM / 2)] : marks;
}

/** Size of an instrument against the one that lettering is laid out for; the smallest are lettered a little larger. */
export function letteringScale(bodyLengthMm: number): number {
  return Math.max(LEAST_SCALE, bodyLengthMm / LETTERED_FOR_MM);
}

const LEAST_SCALE = 0.75;
