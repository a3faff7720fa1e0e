import { atan2, Bug, cos, type Point, sin } from '../../base/index.ts';
import { boundsOf, type Chain, placeChain, reverseChain } from '../../curve/index.ts';

/** A flat piece whose one edge fits against a line and whose back is straight, in its own frame: face below, back level above. */
export interface FormedPiece {
  /** Closed, anticlockwise. */
  readonly outline: Chain<'section'>;
  /** The fitting edge, left to right. */
  readonly face: Chain<'section'>;
  readonly widthMm: number;
  /** Height of the back over the ends of the face, which lie level unless the line says otherwise. */
  readonly backMm: number;
  /** Middle of the back, in the frame of the line. */
  readonly backAt: Point<'body'>;
  /** The heading from the back square into the piece, in the frame of the line. */
  readonly pressRad: number;
}

/**
 * A piece on the right of a line, at least `depthMm` thick, its back parallel to the line's chord. The chord lies level, the
 * line runs from right to left.
 */
export function formedPiece(line: Chain<'body'>, depthMm: number): FormedPiece {
  const [start, end] = [line.vertices[0], line.vertices.at(-1)];
  if (!start || !end) throw new Bug('a line without vertices has no piece against it');
  const chordRad = atan2(end.y - start.y, end.x - start.x);
  const turnRad = Math.PI - chordRad;
  const [cosine, sine] = [cos(turnRad), sin(turnRad)];
  const shift = [-(cosine * end.x - sine * end.y), -(sine * end.x + cosine * end.y)] as const;
  const face = reverseChain(placeChain<'section', 'body'>(line, { turnRad, shift }));
  const box = boundsOf(face);
  const backMm = box.max.y + depthMm;
  const [left, right] = [face.vertices[0], face.vertices.at(-1)];
  if (!left || !right) throw new Bug('a face has no ends');
  const middle = { x: (left.x + right.x) / 2, y: backMm };
  const back: Point<'body'> = {
    x: cosine * (middle.x - shift[0]) + sine * (middle.y - shift[1]),
    y: -sine * (middle.x - shift[0]) + cosine * (middle.y - shift[1]),
  };
  return {
    outline: {
      closed: true,
      vertices: [...face.vertices, { x: right.x, y: backMm, bulge: 0 }, { x: left.x, y: backMm, bulge: 0 }],
    },
    face,
    widthMm: right.x - left.x,
    backMm,
    backAt: back,
    pressRad: chordRad + Math.PI / 2,
  };
}
