import { Bug, type Point, point, WELD_MM } from '../../base/index.ts';
import {
  bulgeOfSweep,
  type Chain,
  type HalfOutline,
  headingOn,
  joinChains,
  lengthOf,
  placeAlong,
  pointOn,
  reverseChain,
  segments,
  subChain,
} from '../../curve/index.ts';
import { closeAcrossCentre } from './halfLine.ts';
import type { CornerTip, SectionLines } from './sectionLines.ts';

/** How lines that would meet beyond a corner end are brought to meet inside it, mm. */
export interface CornerBend {
  /** How deep inside the corner end they meet. */
  readonly depthMm: number;
  /** How far before their ends they leave their parallels. */
  readonly overMm: number;
}

/**
 * The lines with every flat corner brought to a point: the last stretch of both sides becomes an arc, tangent to the
 * line it leaves, that ends half way between them.
 *
 * The rest of the lines stays as it was.
 */
export function bentToPoints(half: HalfOutline, lines: SectionLines, bend: CornerBend): SectionLines {
  const { lowerCorner, upperCorner, sections } = lines;
  const lower = lowerCorner.kind === 'flat' ? meeting(half.lowerBout, half.cBout, lowerCorner, bend) : null;
  const upper = upperCorner.kind === 'flat' ? meeting(half.cBout, half.upperBout, upperCorner, bend) : null;
  const lowerBout = lower ? endingAt(sections.lowerBout, lower, bend.overMm) : sections.lowerBout;
  const fromLower = lower ? startingAt(sections.cBout, lower, bend.overMm) : sections.cBout;
  const cBout = upper ? endingAt(fromLower, upper, bend.overMm) : fromLower;
  const upperBout = upper ? startingAt(sections.upperBout, upper, bend.overMm) : sections.upperBout;
  const line = joinChains(lowerBout, cBout, upperBout);
  return {
    insetMm: lines.insetMm,
    sections: { lowerBout, cBout, upperBout },
    lowerCorner: lower ? pointed(lower, bend) : lowerCorner,
    upperCorner: upper ? pointed(upper, bend) : upperCorner,
    half: line,
    chain: closeAcrossCentre(line),
  };
}

/** How deep a point lies inside the plate's corner end between two sections, square to it, mm. */
export function depthInCorner(arriving: Chain<'body'>, leaving: Chain<'body'>, at: Point<'body'>): number {
  const { from, inward } = cornerFrame(arriving, leaving, at);
  return (at.x - from.x) * inward.x + (at.y - from.y) * inward.y;
}

function pointed(at: Point<'body'>, { depthMm }: CornerBend): CornerTip {
  return { kind: 'pointed', from: at, to: at, widthMm: 0, depthMm };
}

/** Half way between both lines, at the depth that is wished. */
function meeting(
  arriving: Chain<'body'>,
  leaving: Chain<'body'>,
  tip: CornerTip,
  { depthMm }: CornerBend,
): Point<'body'> {
  const { inward } = cornerFrame(arriving, leaving, tip.from);
  const further = depthMm - tip.depthMm;
  return point(
    (tip.from.x + tip.to.x) / 2 + further * inward.x,
    (tip.from.y + tip.to.y) / 2 + further * inward.y,
  );
}

/** A corner end's first point and the way in from it; a corner that is a point has its way in toward `at`. */
function cornerFrame(
  arriving: Chain<'body'>,
  leaving: Chain<'body'>,
  at: Point<'body'>,
): { readonly from: Point<'body'>; readonly inward: Point<'body'> } {
  const from = arriving.vertices.at(-1);
  const to = leaving.vertices[0];
  if (!from || !to) throw new Bug('a section has no vertex');
  const widthMm = Math.hypot(to.x - from.x, to.y - from.y);
  if (widthMm > WELD_MM) return { from, inward: point((from.y - to.y) / widthMm, (to.x - from.x) / widthMm) };
  const deepMm = Math.max(WELD_MM, Math.hypot(at.x - from.x, at.y - from.y));
  return { from, inward: point((at.x - from.x) / deepMm, (at.y - from.y) / deepMm) };
}

/** A line whose last stretch is replaced by an arc that leaves it tangentially and ends in a point. */
function endingAt(line: Chain<'body'>, end: Point<'body'>, overMm: number): Chain<'body'> {
  const place = placeAlong(line, Math.max(0, lengthOf(line) - overMm));
  const segment = segments(line)[place.segment];
  if (!segment) throw new Bug('a line without a segment');
  const at = pointOn(segment, place.fraction);
  const chord = Math.atan2(end.y - at.y, end.x - at.x);
  const turn = chord - headingOn(segment, place.fraction);
  const arc: Chain<'body'> = {
    closed: false,
    vertices: [
      { x: at.x, y: at.y, bulge: bulgeOfSweep(2 * Math.atan2(Math.sin(turn), Math.cos(turn))) },
      { x: end.x, y: end.y, bulge: 0 },
    ],
  };
  return joinChains(subChain(line, { segment: 0, fraction: 0 }, place), arc);
}

function startingAt(line: Chain<'body'>, start: Point<'body'>, overMm: number): Chain<'body'> {
  return reverseChain(endingAt(reverseChain(line), start, overMm));
}
