import { accept, Bug, type Checked, type Point, refuse } from '../../base/index.ts';
import {
  type Chain,
  type HalfOutline,
  headingOn,
  intersections,
  joinChains,
  parallelChain,
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
const PROLONG_IN_END_WIDTHS = 4;

/**
 * The parallels of the sections of an outline at `insetMm` inside it, each prolonged along its last tangent and trimmed
 * at the corners: where two meet deeper than `endDepthMm` below the plate's corner end they stop in that point, else both
 * stop on the straight line at that depth.
 *
 * Exact: arcs keep their centres. A parallel of the closed outline would cut the points off instead.
 * Faults: `curve.*` of {@link parallelChain}; `outline.corner-lost` when a parallel never reaches its corner.
 */
export function sectionLines(half: HalfOutline, insetMm: number, endDepthMm: number): Checked<SectionLines> {
  const lowerEnd = { from: endOf(half.lowerBout), to: startOf(half.cBout) };
  const upperEnd = { from: endOf(half.cBout), to: startOf(half.upperBout) };
  const lowerBout = parallelChain(half.lowerBout, insetMm);
  const cBout = parallelChain(half.cBout, insetMm);
  const upperBout = parallelChain(half.upperBout, insetMm);
  if (!lowerBout.ok || !cBout.ok || !upperBout.ok)
    return refuse(...[lowerBout, cBout, upperBout].flatMap((each) => (each.ok ? [] : each.faults)));

  const bout = prolonged(lowerBout.value, 0, reachMm(lowerEnd));
  const waist = prolonged(cBout.value, reachMm(lowerEnd), reachMm(upperEnd));
  const upper = prolonged(upperBout.value, reachMm(upperEnd), 0);
  const lower = meetAtCorner(bout, waist, lowerEnd, endDepthMm);
  const upperMeet = meetAtCorner(waist, upper, upperEnd, endDepthMm);
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
  const line = endLine(end, endDepthMm);
  const first = nearestHit(intersections(arriving, line), middle);
  const second = nearestHit(intersections(leaving, line), middle);
  if (first === undefined || second === undefined) return undefined;
  const widthMm = Math.hypot(second.point.x - first.point.x, second.point.y - first.point.y);
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
    const away = Math.hypot(hit.point.x - to.x, hit.point.y - to.y);
    if (away < bestMm) {
      best = hit;
      bestMm = away;
    }
  }
  return best;
}

/** Depth inside the plate, square to its corner end; material is on the left going anticlockwise. */
export function depthBelow(end: CornerEnd, at: Point<'body'>): number {
  const width = Math.hypot(end.to.x - end.from.x, end.to.y - end.from.y);
  const [ux, uy] = [(end.to.x - end.from.x) / width, (end.to.y - end.from.y) / width];
  return (at.x - end.from.x) * -uy + (at.y - end.from.y) * ux;
}

function endLine(end: CornerEnd, depthMm: number): Chain<'body'> {
  const width = Math.hypot(end.to.x - end.from.x, end.to.y - end.from.y);
  const [ux, uy] = [(end.to.x - end.from.x) / width, (end.to.y - end.from.y) / width];
  const at = (alongMm: number): Vertex<'body'> => ({
    x: end.from.x + alongMm * ux - depthMm * uy,
    y: end.from.y + alongMm * uy + depthMm * ux,
    bulge: 0,
  });
  const reach = reachMm(end);
  return { closed: false, vertices: [at(-reach), at(width + reach)] };
}

function reachMm(end: CornerEnd): number {
  return PROLONG_IN_END_WIDTHS * Math.hypot(end.to.x - end.from.x, end.to.y - end.from.y);
}

/** The chain with a straight piece along its tangent put before its start and after its end. */
function prolonged(chain: Chain<'body'>, beforeMm: number, afterMm: number): Chain<'body'> {
  const all = segments(chain);
  const first = all[0];
  const last = all.at(-1);
  if (first === undefined || last === undefined) throw new Bug('a section has no segment');
  const vertices: Vertex<'body'>[] = [...chain.vertices];
  if (beforeMm > 0) {
    const heading = headingOn(first, 0);
    vertices.unshift({
      x: first.start.x - beforeMm * Math.cos(heading),
      y: first.start.y - beforeMm * Math.sin(heading),
      bulge: 0,
    });
  }
  if (afterMm > 0) {
    const heading = headingOn(last, 1);
    vertices.push({
      x: last.end.x + afterMm * Math.cos(heading),
      y: last.end.y + afterMm * Math.sin(heading),
      bulge: 0,
    });
  }
  return { closed: false, vertices };
}

function joined(sections: HalfOutline, lower: CornerTip, upper: CornerTip): Chain<'body'> {
  const across = (tip: CornerTip): readonly Chain<'body'>[] =>
    tip.kind === 'pointed'
      ? []
      : [
          {
            closed: false,
            vertices: [
              { ...tip.from, bulge: 0 },
              { ...tip.to, bulge: 0 },
            ],
          },
        ];
  return joinChains(
    sections.lowerBout,
    ...across(lower),
    sections.cBout,
    ...across(upper),
    sections.upperBout,
  );
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
