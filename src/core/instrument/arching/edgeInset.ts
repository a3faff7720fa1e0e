import { asin, atan, atan2, Bug, cos, sin } from '../../base/index.ts';
import { type Chain, headingOn, pointOn, type Segment, segmentLength, segments } from '../../curve/index.ts';
import type { LinePoint } from './smoothLine.ts';

/** A distance from the edge that changes smoothly from the section's start over its widest or narrowest place to its end, mm. */
export interface Widening {
  readonly fromMm: number;
  readonly atMiddleMm: number;
  readonly toMm: number;
}

/** One section of the edge, ready to be set in by a distance that changes along it. */
export interface EdgeSection {
  readonly pieces: readonly {
    readonly segment: Segment<'body'>;
    readonly startMm: number;
    readonly lengthMm: number;
  }[];
  readonly lengthMm: number;
  /** Length along the section to its widest or narrowest place. */
  readonly middleMm: number;
  readonly widening: Widening;
}

/** A section with its widening, or null when it has no widest (or narrowest) place inside. */
export function edgeSection(
  chain: Chain<'body'>,
  middle: 'widest' | 'narrowest',
  widening: Widening,
): EdgeSection | null {
  let lengthMm = 0;
  const pieces = segments(chain).map((segment) => {
    const piece = { segment, startMm: lengthMm, lengthMm: segmentLength(segment) };
    lengthMm += piece.lengthMm;
    return piece;
  });
  let found: { x: number; atMm: number } | null = null;
  for (const piece of pieces) {
    const fraction = uprightFraction(piece.segment, middle);
    if (fraction === null) continue;
    const { x } = pointOn(piece.segment, fraction);
    if (!found || (middle === 'widest' ? x > found.x : x < found.x))
      found = { x, atMm: piece.startMm + fraction * piece.lengthMm };
  }
  return found ? { pieces, lengthMm, middleMm: found.atMm, widening } : null;
}

/**
 * The point of the inset at a length along the edge, with the heading of the inset there; `extraMm` is added to the
 * distance everywhere. It lies on the edge of all discs of that distance about the edge, so insets of different
 * `extraMm` are true parallels of each other.
 */
export function insetPoint(section: EdgeSection, atMm: number, extraMm: number): LinePoint {
  const piece = pieceAt(section, atMm);
  const fraction = Math.max(0, Math.min(1, (atMm - piece.startMm) / piece.lengthMm));
  const { x, y } = pointOn(piece.segment, fraction);
  const edgeHeading = headingOn(piece.segment, fraction);
  const { distanceMm, growth } = distanceAt(section, atMm);
  // The disc's edge that the inset touches leans back by the growth of the distance.
  const headingRad = edgeHeading + asin(growth);
  const reach = distanceMm + extraMm;
  return { x: x - reach * sin(headingRad), y: y + reach * cos(headingRad), headingRad };
}

function distanceAt(section: EdgeSection, atMm: number): { distanceMm: number; growth: number } {
  const { widening, middleMm, lengthMm } = section;
  return atMm <= middleMm
    ? glide(widening.fromMm, widening.atMiddleMm, atMm, middleMm)
    : glide(widening.atMiddleMm, widening.toMm, atMm - middleMm, lengthMm - middleMm);
}

/** From one value to another, level at both ends. */
function glide(
  from: number,
  to: number,
  atMm: number,
  overMm: number,
): { distanceMm: number; growth: number } {
  const t = atMm / overMm;
  return {
    distanceMm: from + (to - from) * t * t * (3 - 2 * t),
    growth: ((to - from) * 6 * t * (1 - t)) / overMm,
  };
}

function pieceAt(section: EdgeSection, atMm: number): EdgeSection['pieces'][number] {
  const piece =
    section.pieces.find(({ startMm, lengthMm }) => atMm <= startMm + lengthMm) ?? section.pieces.at(-1);
  if (!piece) throw new Bug('a section of the edge without arcs');
  return piece;
}

/** Where travel on an arc points straight up, and the arc is full (widest) or hollow (narrowest); null when nowhere. */
function uprightFraction(segment: Segment<'body'>, middle: 'widest' | 'narrowest'): number | null {
  const sweep = 4 * atan(segment.bulge);
  if (middle === 'widest' ? !(sweep > 0) : !(sweep < 0)) return null;
  const missing = Math.PI / 2 - headingOn(segment, 0);
  const turn = atan2(sin(missing), cos(missing));
  const fraction = turn / sweep;
  return fraction >= 0 && fraction <= 1 ? fraction : null;
}
