import {
  type Chain,
  chainThrough,
  type HalfOutline,
  joinChains,
  lengthOf,
  mirrorChain,
  placeAlong,
  segments,
  subChain,
} from '../curve/index.ts';
import type { PlanParts } from '../instrument/index.ts';
import type { DrawnLine } from './drawing.ts';
import { type Covers, drawnLine, onDrawing } from './outlineDrawingsMarks.ts';

/** How far, as a share of the body length, the edge of the plate is shown to both sides of a corner. */
const SHOWN_SHARE = 0.055;

/** For reference at every corner: the shaped block, the outer face of the ribs and the edge of the plate beyond them. */
export function cornerReference(parts: PlanParts, covers: Covers): readonly DrawnLine[] {
  const { lowerCorner, upperCorner } = parts.blocks;
  const reach = SHOWN_SHARE * parts.outline.bodyLengthMm;
  const treble = [
    lowerCorner.shaped,
    upperCorner.shaped,
    ...[parts.ribs.outer.sections, parts.outline.half].flatMap((sections) => [
      aroundCorner(sections.lowerBout, sections.cBout, reach),
      aroundCorner(sections.cBout, sections.upperBout, reach),
    ]),
  ].map(onDrawing);
  const bass = treble.map((line) => mirrorChain(line));
  const shown = { whole: [...treble, ...bass], 'treble half': treble, 'bass half': bass }[covers];
  return shown.map((chain) => drawnLine('draw', chain));
}

/** The last stretch of one section, the corner end if there is one, and the first stretch of the next. */
function aroundCorner(
  arriving: HalfOutline['cBout'],
  leaving: HalfOutline['cBout'],
  reachMm: number,
): Chain<'body'> {
  const end = { segment: segments(arriving).length - 1, fraction: 1 };
  const before = subChain(arriving, placeAlong(arriving, Math.max(0, lengthOf(arriving) - reachMm)), end);
  const after = subChain(leaving, { segment: 0, fraction: 0 }, placeAlong(leaving, reachMm));
  const across = chainThrough([...before.vertices.slice(-1), ...after.vertices.slice(0, 1)], false);
  return across.vertices.length === 2 ? joinChains(before, across, after) : joinChains(before, after);
}
