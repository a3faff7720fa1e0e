import { point } from '../base/index.ts';
import { type Chain, containsPoint } from '../curve/index.ts';
import type { ContourLine } from './contourLine.ts';
import { placesOf } from './contourOnSurface.ts';

type Place = readonly [number, number];

/** A double has this many halvings between two neighbouring places. */
const HALVINGS = 52;

/** The pieces of a contour inside a closed outline, cut where it passes through it; each runs as the line did. */
export function trimContour(line: ContourLine, outline: Chain<'body'>): readonly ContourLine[] {
  const inside = (place: Place): boolean => containsPoint(outline, point<'body'>(place[0], place[1]));
  const places = placesOf(line);
  const within = places.map(inside);
  if (within.every(Boolean)) return [line];
  if (!within.some(Boolean)) return [];
  // A closed line is read from a place outside, so that no piece is cut at its beginning.
  const first = line.closed ? within.indexOf(false) : 0;
  const count = places.length;
  const pieces: Place[][] = [];
  for (let step = 0; step < count + (line.closed ? 1 : 0); step++) {
    const at = (first + step) % count;
    const place = places[at] as Place;
    const before = step > 0 ? (first + step - 1) % count : -1;
    if (before >= 0 && within[before] !== within[at]) {
      const cut = crossing(places[before] as Place, place, within[before] === true, inside);
      if (within[at]) pieces.push([cut]);
      else pieces.at(-1)?.push(cut);
    }
    if (!within[at]) continue;
    if (step === 0) pieces.push([]);
    pieces.at(-1)?.push(place);
  }
  return pieces
    .filter((piece) => piece.length > 1)
    .map((piece) => ({ levelMm: line.levelMm, closed: false, xyMm: Float64Array.from(piece.flat()) }));
}

function crossing(from: Place, to: Place, startsInside: boolean, inside: (place: Place) => boolean): Place {
  const at = (share: number): Place => [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ];
  let [low, high] = [0, 1];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (inside(at(middle)) === startsInside) low = middle;
    else high = middle;
  }
  return at((low + high) / 2);
}
