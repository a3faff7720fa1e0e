import { distanceBetween, type Point, point } from '../base/index.ts';
import { areaOf, type Chain, nearestOnSpans, reverseChain, spansOf } from '../curve/index.ts';
import { along, type Ring } from './plateRings.ts';

/** Rounds in which sides are halved: a side is then a sixteenth of what it was. */
const MOST_ROUNDS = 4;

/**
 * Places along openings, anticlockwise, their vertices among them. Where lines run close beside each other places stand closer, so
 * that no place stands in the circle over another's side: triangles then keep every side.
 */
export function openingRings(
  openings: readonly Chain<'body'>[],
  chordMm: number,
  stepMm: number,
): readonly Ring[] {
  const lines = openings.map((line) => (areaOf(line) < 0 ? reverseChain(line) : line));
  let rings: readonly Ring[] = lines.map((line) => along(line, chordMm, stepMm));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const halved = rings.map((ring, index) => {
      const spans = spansOf(lines[index] as Chain<'body'>);
      return ring.flatMap((from, at) => {
        const to = ring[(at + 1) % ring.length] as Point<'body'>;
        const middle = point<'body'>((from.x + to.x) / 2, (from.y + to.y) / 2);
        const radiusMm = distanceBetween(from, to) / 2;
        const isHidden = rings.some((other) =>
          other.some((place) => place !== from && place !== to && distanceBetween(place, middle) < radiusMm),
        );
        return isHidden ? [from, nearestOnSpans(spans, middle).point] : [from];
      });
    });
    const isSettled = halved.every((ring, index) => ring.length === rings[index]?.length);
    rings = halved;
    if (isSettled) break;
  }
  return rings;
}
