import type { Point } from '../../base/index.ts';
import { type Chain, joinChains, subChain } from '../../curve/index.ts';
import type { BlockParts } from '../blocks/blockParts.ts';
import type { SectionLines } from '../outline/sectionLines.ts';

/**
 * The treble half of the form's edge: the inner face of the ribs with the recesses of the blocks.
 *
 * Open, body frame, from the centre line on the face of the lower block up to the face of the upper block. Each recess
 * is its block exactly, without clearance.
 */
export function formHalf(inner: SectionLines, blocks: BlockParts): Chain<'body'> {
  const { lowerBout, cBout, upperBout } = inner.sections;
  const { lower, lowerCorner, upperCorner, upper } = blocks;
  const lowerLine = subChain(lowerBout, lower.onBout, lowerCorner.onBout);
  const waistLine = subChain(cBout, lowerCorner.onWaist, upperCorner.onWaist);
  const upperLine = subChain(upperBout, upperCorner.onBout, upper.onBout);
  return joinChains(
    faceTo(lower.halfWidthMm, lower.faceStationMm, lowerLine, 0),
    lowerLine,
    throughRecess(lowerLine, lowerCorner.recessCorner, waistLine),
    waistLine,
    throughRecess(waistLine, upperCorner.recessCorner, upperLine),
    upperLine,
    reversed(faceTo(upper.halfWidthMm, upper.faceStationMm, upperLine, -1)),
  );
}

/** From the centre line along the face of an end block, then along its side to the bout. */
function faceTo(halfWidthMm: number, stationMm: number, line: Chain<'body'>, end: 0 | -1): Chain<'body'> {
  const meets = line.vertices.at(end) as Point<'body'>;
  return straight([{ x: 0, y: stationMm }, { x: halfWidthMm, y: stationMm }, meets]);
}

function throughRecess(before: Chain<'body'>, corner: Point<'body'>, after: Chain<'body'>): Chain<'body'> {
  return straight([before.vertices.at(-1) as Point<'body'>, corner, after.vertices[0] as Point<'body'>]);
}

function straight(points: readonly Point<'body'>[]): Chain<'body'> {
  return { closed: false, vertices: points.map(({ x, y }) => ({ x, y, bulge: 0 })) };
}

function reversed(line: Chain<'body'>): Chain<'body'> {
  return { closed: false, vertices: line.vertices.toReversed() };
}
