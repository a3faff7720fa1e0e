import {
  accept,
  atan2,
  Bug,
  type Checked,
  cos,
  distanceBetween,
  type Point,
  refuse,
  sin,
  WELD_MM,
} from '../../base/index.ts';
import {
  type Chain,
  chainThrough,
  type HalfOutline,
  headingOn,
  intersections,
  joinChains,
  parallelChain,
  type Segment,
  segments,
  subChain,
  type Vertex,
} from '../../curve/index.ts';
import { closeAcrossCentre } from './halfLine.ts';

/** How two parallels end at a corner: in a point where they meet, or both on one straight end. */
export interface CornerTip {
  readonly kind: 'pointed' | 'flat';
  /** End of the line that arrives, and of the line that leaves, going anticlockwise; one point when pointed. */
  readonly from: Point<'body'>;
  readonly to: Point<'body'>;
  /** Distance between them; 0 when pointed. */
  readonly widthMm: number;
  /** How far the tip lies inside the plate's own corner end, square to it. */
  readonly depthMm: number;
}

/** A line parallel to the three sections of a half outline, trimmed at both corners. */
export interface SectionLines {
  readonly insetMm: number;
  readonly sections: HalfOutline;
  readonly lowerCorner: CornerTip;
  readonly upperCorner: CornerTip;
  /** Open, from the centre line at the lower end to the centre line at the upper end, treble side. */
  readonly half: Chain<'body'>;
  /** Closed, anticlockwise, symmetric. */
  readonly chain: Chain<'body'>;
}

/** The sides of a corner that open by 20° or more meet within 2.9 end widths beyond the end: four is enough. */
const PROLONG = 4;

/**
 * The parallels of the sections of an outline at `insetMm` inside it, each prolonged along its last tangent and trimmed
 * at the corners: where two meet deeper than `endDepthMm` below the plate's corner end they stop in that point, else both
 * stop on the straight line at that depth.
 *
 * Exact: arcs keep their centres. A parallel of the closed outline would cut the points off instead. `plate` is the outline
 * whose corner ends are meant, where `half` is not that outline itself; a negative inset lies outside `half`.
 * Faults: `curve.*` of {@link parallelChain}; `outline.corner-lost` when a parallel never reaches its corner.
 */
export function sectionLines(
  half: HalfOutline,
  insetMm: number,
  endDepthMm: number,
  plate: HalfOutline = half,
): Checked<SectionLines> {
  const lowerEnd = cornerEnd(plate.lowerBout, plate.cBout);
  const upperEnd = cornerEnd(plate.cBout, plate.upperBout);
  const lowerBout = parallelChain(half.lowerBout, insetMm);
  const cBout = parallelChain(half.cBout, insetMm);
  const upperBout = parallelChain(half.upperBout, insetMm);
  if (!lowerBout.ok || !cBout.ok || !upperBout.ok)
    return refuse(...[lowerBout, cBout, upperBout].flatMap((each) => (each.ok ? [] : each.faults)));

  const reach = (end: CornerEnd): number => PROLONG * (end.widthMm + Math.abs(insetMm) + endDepthMm);
  const bout = prolonged(lowerBout.value, 0, reach(lowerEnd));
  const waist = prolonged(cBout.value, reach(lowerEnd), reach(upperEnd));
  const upper = prolonged(upperBout.value, reach(upperEnd), 0);
  const lower = meetAtCorner(
    bout,
    waist,
    lowerEnd,
    endLine(lowerEnd, endDepthMm, reach(lowerEnd)),
    endDepthMm,
  );
  const upperMeet = meetAtCorner(
    waist,
    upper,
    upperEnd,
    endLine(upperEnd, endDepthMm, reach(upperEnd)),
    endDepthMm,
  );
  if (lower === undefined) return cornerLost('lower corner', insetMm);
  if (upperMeet === undefined) return cornerLost('upper corner', insetMm);

  const sections: HalfOutline = {
    lowerBout: subChain(bout, { segment: 0, fraction: 0 }, lower.arriving),
    cBout: subChain(waist, lower.leaving, upperMeet.arriving),
    upperBout: subChain(upper, upperMeet.leaving, { segment: segments(upper).length - 1, fraction: 1 }),
  };
  const line = joined(sections, lower.tip, upperMeet.tip);
  return accept({
    insetMm,
    sections,
    lowerCorner: lower.tip,
    upperCorner: upperMeet.tip,
    half: line,
    chain: closeAcrossCentre(line),
  });
}

interface CornerEnd {
  readonly from: Point<'body'>;
  readonly to: Point<'body'>;
  readonly widthMm: number;
  /** Heading along the end, going anticlockwise: the material is on its left. */
  readonly headingRad: number;
}

/** The plate's corner end between two sections; where they meet in a point, square to the middle of their sides. */
function cornerEnd(arriving: Chain<'body'>, leaving: Chain<'body'>): CornerEnd {
  const from = endOf(arriving);
  const to = startOf(leaving);
  const widthMm = distanceBetween(from, to);
  if (widthMm > WELD_MM) return { from, to, widthMm, headingRad: atan2(to.y - from.y, to.x - from.x) };
  const inRad = headingOn(firstAndLast(arriving).last, 1);
  const outRad = headingOn(firstAndLast(leaving).first, 0);
  const inwardRad = atan2(sin(outRad) - sin(inRad), cos(outRad) - cos(inRad));
  return { from, to, widthMm: 0, headingRad: inwardRad - Math.PI / 2 };
}

interface Location {
  readonly segment: number;
  readonly fraction: number;
}

interface Meeting {
  readonly arriving: Location;
  readonly leaving: Location;
  readonly tip: CornerTip;
}

function meetAtCorner(
  arriving: Chain<'body'>,
  leaving: Chain<'body'>,
  end: CornerEnd,
  line: Chain<'body'>,
  endDepthMm: number,
): Meeting | undefined {
  const middle = { x: (end.from.x + end.to.x) / 2, y: (end.from.y + end.to.y) / 2 };
  const apex = nearestHit(intersections(arriving, leaving), middle);
  if (apex !== undefined) {
    const depthMm = depthBelow(end, apex.point);
    if (depthMm > endDepthMm)
      return {
        arriving: apex.a,
        leaving: apex.b,
        tip: { kind: 'pointed', from: apex.point, to: apex.point, widthMm: 0, depthMm },
      };
  }
  const first = nearestHit(intersections(arriving, line), middle);
  const second = nearestHit(intersections(leaving, line), middle);
  if (first === undefined || second === undefined) return undefined;
  const widthMm = distanceBetween(first.point, second.point);
  return {
    arriving: first.a,
    leaving: second.a,
    tip: { kind: 'flat', from: first.point, to: second.point, widthMm, depthMm: endDepthMm },
  };
}

function nearestHit<H extends { readonly point: Point<'body'> }>(
  hits: readonly H[],
  to: Point<'body'>,
): H | undefined {
  let best: H | undefined;
  let bestMm = Number.POSITIVE_INFINITY;
  for (const hit of hits) {
    const away = distanceBetween(hit.point, to);
    if (away < bestMm) {
      best = hit;
      bestMm = away;
    }
  }
  return best;
}

/** Depth inside the plate, square to its corner end. */
function depthBelow(end: CornerEnd, at: Point<'body'>): number {
  return cos(end.headingRad) * (at.y - end.from.y) - sin(end.headingRad) * (at.x - end.from.x);
}

/** The straight line at a depth below the corner end, prolonged both ways. */
function endLine(end: CornerEnd, depthMm: number, reachMm: number): Chain<'body'> {
  const [ux, uy] = [cos(end.headingRad), sin(end.headingRad)];
  const at = (alongMm: number): Vertex<'body'> => ({
    x: end.from.x + alongMm * ux - depthMm * uy,
    y: end.from.y + alongMm * uy + depthMm * ux,
    bulge: 0,
  });
  return { closed: false, vertices: [at(-reachMm), at(end.widthMm + reachMm)] };
}

/** The chain with a straight piece along its tangent put before its start and after its end. */
function prolonged(chain: Chain<'body'>, beforeMm: number, afterMm: number): Chain<'body'> {
  const { first, last } = firstAndLast(chain);
  const vertices: Vertex<'body'>[] = [...chain.vertices];
  if (beforeMm > 0) {
    const heading = headingOn(first, 0);
    vertices.unshift({
      x: first.start.x - beforeMm * cos(heading),
      y: first.start.y - beforeMm * sin(heading),
      bulge: 0,
    });
  }
  if (afterMm > 0) {
    const heading = headingOn(last, 1);
    vertices.push({
      x: last.end.x + afterMm * cos(heading),
      y: last.end.y + afterMm * sin(heading),
      bulge: 0,
    });
  }
  return { closed: false, vertices };
}

function joined(sections: HalfOutline, lower: CornerTip, upper: CornerTip): Chain<'body'> {
  return joinChains(
    sections.lowerBout,
    ...tipLine(lower),
    sections.cBout,
    ...tipLine(upper),
    sections.upperBout,
  );
}

/** The straight end between two lines of a corner; none where they meet in a point. */
export function tipLine(tip: CornerTip): readonly Chain<'body'>[] {
  return tip.kind === 'pointed' ? [] : [chainThrough([tip.from, tip.to], false)];
}

function firstAndLast(chain: Chain<'body'>): {
  readonly first: Segment<'body'>;
  readonly last: Segment<'body'>;
} {
  const all = segments(chain);
  const first = all[0];
  const last = all.at(-1);
  if (first === undefined || last === undefined) throw new Bug('a section has no segment');
  return { first, last };
}

function startOf(chain: Chain<'body'>): Point<'body'> {
  const vertex = chain.vertices[0];
  if (vertex === undefined) throw new Bug('a section has no vertex');
  return { x: vertex.x, y: vertex.y };
}

function endOf(chain: Chain<'body'>): Point<'body'> {
  const vertex = chain.vertices.at(-1);
  if (vertex === undefined) throw new Bug('a section has no vertex');
  return { x: vertex.x, y: vertex.y };
}

function cornerLost(which: string, insetMm: number): Checked<never> {
  return refuse({
    code: 'outline.corner-lost',
    at: which,
    found: `the lines ${insetMm} mm inside the outline do not reach this corner`,
    need: 'two sides that run to the corner and open by at least 20°',
    remedy: 'look at the outline at this corner, or take a smaller distance from the edge',
  });
}
