import { DRAFT_MM, hypot, type Point, point, TANGENT_RAD } from '../../base/index.ts';
import { type EdgeSection, insetPoint } from './edgeInset.ts';

/** Where the insets of two neighbouring sections meet, and their headings there. */
export interface CornerMeeting {
  readonly at: Point<'body'>;
  readonly onFirstMm: number;
  readonly onSecondMm: number;
  readonly firstHeadingRad: number;
  readonly secondHeadingRad: number;
}

/**
 * Where two neighbouring sections of the edge, each set in by its own distance and `extraMm` more, first meet inside
 * their corner; null when they do not, or touch without crossing.
 */
export function meetingInCorner(
  first: EdgeSection,
  second: EdgeSection,
  extraMm: number,
): CornerMeeting | null {
  const start = roughMeeting(first, second, extraMm);
  if (!start) return null;
  let { onFirst, onSecond } = start;
  // Newton on both arc lengths; the insets have known tangents, their speeds come from a short step.
  for (let step = 0; step < 40; step++) {
    const a = insetPoint(first, onFirst, extraMm);
    const b = insetPoint(second, onSecond, extraMm);
    const missX = b.x - a.x;
    const missY = b.y - a.y;
    if (hypot(missX, missY) < DRAFT_MM)
      return {
        at: point(a.x, a.y),
        onFirstMm: onFirst,
        onSecondMm: onSecond,
        firstHeadingRad: a.headingRad,
        secondHeadingRad: b.headingRad,
      };
    const va = speed(first, onFirst, extraMm);
    const vb = speed(second, onSecond, extraMm);
    const cross = va.x * vb.y - va.y * vb.x;
    if (!(Math.abs(cross) > TANGENT_RAD)) return null;
    onFirst += (missX * vb.y - missY * vb.x) / cross;
    onSecond += (missX * va.y - missY * va.x) / cross;
    if (!(onFirst >= 0 && onFirst <= first.lengthMm && onSecond >= 0 && onSecond <= second.lengthMm))
      return null;
  }
  return null;
}

function speed(section: EdgeSection, atMm: number, extraMm: number): { x: number; y: number } {
  const step = 0.001;
  const from = Math.max(0, atMm - step);
  const to = Math.min(section.lengthMm, atMm + step);
  const a = insetPoint(section, from, extraMm);
  const b = insetPoint(section, to, extraMm);
  return { x: (b.x - a.x) / (to - from), y: (b.y - a.y) / (to - from) };
}

/** mm along the edge; corners are far wider than this. */
const SEARCH_STEP_MM = 1;

/** The crossing of both insets as chords, the nearest to the corner seen from the second section. */
function roughMeeting(
  first: EdgeSection,
  second: EdgeSection,
  extraMm: number,
): { onFirst: number; onSecond: number } | null {
  const a = chords(first, extraMm);
  const b = chords(second, extraMm);
  for (let j = 1; j < b.length; j++)
    for (let i = a.length - 1; i > 0; i--) {
      const hit = chordCrossing(a[i - 1], a[i], b[j - 1], b[j]);
      if (hit) return hit;
    }
  return null;
}

interface Station extends Point<'body'> {
  readonly atMm: number;
}

function chords(section: EdgeSection, extraMm: number): readonly Station[] {
  const count = Math.ceil(section.lengthMm / SEARCH_STEP_MM);
  return Array.from({ length: count + 1 }, (_, index) => {
    const atMm = (section.lengthMm * index) / count;
    const { x, y } = insetPoint(section, atMm, extraMm);
    return { x, y, atMm };
  });
}

function chordCrossing(
  a?: Station,
  b?: Station,
  c?: Station,
  d?: Station,
): { onFirst: number; onSecond: number } | null {
  if (!a || !b || !c || !d) return null;
  const cross = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
  const s = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / cross;
  const t = ((c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x)) / cross;
  if (!(s >= 0 && s <= 1 && t >= 0 && t <= 1)) return null;
  return { onFirst: a.atMm + s * (b.atMm - a.atMm), onSecond: c.atMm + t * (d.atMm - c.atMm) };
}
