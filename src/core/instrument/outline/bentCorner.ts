import { atan2, Bug, cos, distanceBetween, type Point, point, sin, WELD_MM } from '../../base/index.ts';
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
import { type CornerTip, type SectionLines, tipLine } from './sectionLines.ts';

/** How lines that would meet beyond a corner end are brought together inside it, mm. */
export interface CornerBend {
  /** How deep inside the corner end they stop. */
  readonly depthMm: number;
  /** How far before their ends they leave their parallels. */
  readonly overMm: number;
  /** How far apart they stop, along the corner end; left out: they meet in a point. */
  readonly apartMm?: number;
  /** Corners that are left as they are. */
  readonly except?: readonly ('lower' | 'upper')[];
}

/**
 * The lines with their flat corners brought together: the last stretch of both sides becomes an arc, tangent to the
 * line it leaves, that ends half way between them, or on its side of that place.
 *
 * The rest of the lines stays as it was.
 */
export function broughtTogether(half: HalfOutline, lines: SectionLines, bend: CornerBend): SectionLines {
  const { sections } = lines;
  const bends = (which: 'lower' | 'upper'): boolean =>
    lines[`${which}Corner`].kind === 'flat' && !bend.except?.includes(which);
  const lower = bends('lower') ? meeting(half.lowerBout, half.cBout, lines.lowerCorner, bend) : null;
  const upper = bends('upper') ? meeting(half.cBout, half.upperBout, lines.upperCorner, bend) : null;
  const lowerBout = lower ? endingAt(sections.lowerBout, lower.from, bend.overMm) : sections.lowerBout;
  const fromLower = lower ? startingAt(sections.cBout, lower.to, bend.overMm) : sections.cBout;
  const cBout = upper ? endingAt(fromLower, upper.from, bend.overMm) : fromLower;
  const upperBout = upper ? startingAt(sections.upperBout, upper.to, bend.overMm) : sections.upperBout;
  const lowerCorner = lower ?? lines.lowerCorner;
  const upperCorner = upper ?? lines.upperCorner;
  const line = joinChains(lowerBout, ...tipLine(lowerCorner), cBout, ...tipLine(upperCorner), upperBout);
  return {
    insetMm: lines.insetMm,
    sections: { lowerBout, cBout, upperBout },
    lowerCorner,
    upperCorner,
    half: line,
    chain: closeAcrossCentre(line),
  };
}

/** How deep a point lies inside the plate's corner end between two sections, square to it, mm. */
export function depthInCorner(arriving: Chain<'body'>, leaving: Chain<'body'>, at: Point<'body'>): number {
  const { from, inward } = cornerFrame(arriving, leaving, at);
  return (at.x - from.x) * inward.x + (at.y - from.y) * inward.y;
}

/** Half way between both lines, at the depth that is wished, or as far to both sides of that place as they stop apart. */
function meeting(
  arriving: Chain<'body'>,
  leaving: Chain<'body'>,
  tip: CornerTip,
  { depthMm, apartMm = 0 }: CornerBend,
): CornerTip {
  const { inward } = cornerFrame(arriving, leaving, tip.from);
  const further = depthMm - tip.depthMm;
  const at = (alongMm: number): Point<'body'> =>
    point(
      (tip.from.x + tip.to.x) / 2 + further * inward.x + alongMm * inward.y,
      (tip.from.y + tip.to.y) / 2 + further * inward.y - alongMm * inward.x,
    );
  // Seen with the way in to the left, the line that arrives stops first.
  const [from, to] = [at(-apartMm / 2), at(apartMm / 2)];
  return apartMm > 0
    ? { kind: 'flat', from, to, widthMm: apartMm, depthMm }
    : { kind: 'pointed', from, to: from, widthMm: 0, depthMm };
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
  const widthMm = distanceBetween(from, to);
  if (widthMm > WELD_MM) return { from, inward: point((from.y - to.y) / widthMm, (to.x - from.x) / widthMm) };
  const deepMm = Math.max(WELD_MM, distanceBetween(at, from));
  return { from, inward: point((at.x - from.x) / deepMm, (at.y - from.y) / deepMm) };
}

/** A line whose last stretch is replaced by an arc that leaves it tangentially and ends in a point. */
function endingAt(line: Chain<'body'>, end: Point<'body'>, overMm: number): Chain<'body'> {
  const place = placeAlong(line, Math.max(0, lengthOf(line) - overMm));
  const segment = segments(line)[place.segment];
  if (!segment) throw new Bug('a line without a segment');
  const at = pointOn(segment, place.fraction);
  const chord = atan2(end.y - at.y, end.x - at.x);
  const turn = chord - headingOn(segment, place.fraction);
  const arc: Chain<'body'> = {
    closed: false,
    vertices: [
      { x: at.x, y: at.y, bulge: bulgeOfSweep(2 * atan2(sin(turn), cos(turn))) },
      { x: end.x, y: end.y, bulge: 0 },
    ],
  };
  return joinChains(subChain(line, { segment: 0, fraction: 0 }, place), arc);
}

function startingAt(line: Chain<'body'>, start: Point<'body'>, overMm: number): Chain<'body'> {
  return reverseChain(endingAt(reverseChain(line), start, overMm));
}
