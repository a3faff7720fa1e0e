import { cos, type Point, sin } from '../../base/index.ts';
import {
  arcOf,
  bulgeOfSweep,
  type Chain,
  headingOn,
  nearestOn,
  type Segment,
  segmentLength,
  segments,
  type Vertex,
} from '../../curve/index.ts';

/** Where a place of bent wood comes to lie when the wood is laid flat. */
export interface FlatPlace {
  /** Along the middle of the thickness, from where the outer face begins; below 0 before it, above its length beyond it. */
  readonly alongMm: number;
  /** From the outer face inward. */
  readonly insideMm: number;
}

/** mm. Wood that runs on beyond both ends of its face, in the bend that it has there; more than any end is trimmed by. */
const BEYOND_MM = 8;

/** rad. It runs on no further round than this. */
const MOST_BEYOND_RAD = 0.5;

/** Where a place in the wood behind an outer face lies when the wood is laid flat; beyond its ends the last bends go on. */
export function flatPlace(outerFace: Chain<'body'>, thicknessMm: number, at: Point<'body'>): FlatPlace {
  const face = prolonged(outerFace);
  const foot = nearestOn(face, at);
  const all = segments(face).map((segment) => middleLength(segment, thicknessMm));
  const before = all.slice(0, foot.segment).reduce((sum, mm) => sum + mm, 0);
  return {
    alongMm: before + foot.fraction * (all[foot.segment] ?? 0) - (all[0] ?? 0),
    insideMm: foot.distanceMm,
  };
}

/** Length in the middle of the thickness behind a segment of the outer face. */
function middleLength(segment: Segment<'body'>, thicknessMm: number): number {
  const arc = arcOf(segment);
  return segmentLength(segment) - ((arc?.sweepRad ?? 0) * thicknessMm) / 2;
}

/** The line with its first and last bend going on before its start and beyond its end. */
function prolonged(line: Chain<'body'>): Chain<'body'> {
  const all = segments(line);
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last) return line;
  return {
    closed: false,
    vertices: [
      beyond(first, -1),
      ...line.vertices.slice(0, -1),
      { ...last.end, bulge: beyond(last, 1).bulge },
      { ...beyond(last, 1), bulge: 0 },
    ],
  };
}

/** The far end of what goes on beyond a segment, with the bulge of that piece. */
function beyond(segment: Segment<'body'>, outward: 1 | -1): Vertex<'body'> {
  const arc = arcOf(segment);
  const from = outward === 1 ? segment.end : segment.start;
  const headingRad = headingOn(segment, outward === 1 ? 1 : 0);
  const sweepRad = arc ? Math.sign(arc.sweepRad) * Math.min(MOST_BEYOND_RAD, BEYOND_MM / arc.radiusMm) : 0;
  const chordMm = arc ? 2 * arc.radiusMm * sin(Math.abs(sweepRad) / 2) : BEYOND_MM;
  const chordRad = headingRad + (outward * sweepRad) / 2;
  return {
    x: from.x + outward * chordMm * cos(chordRad),
    y: from.y + outward * chordMm * sin(chordRad),
    bulge: bulgeOfSweep(sweepRad),
  };
}
