import type { Keeper } from '../../base/index.ts';
import { type EdgePoint, expectedEdge, type Rectified, sceneToRectified } from '../../photo/index.ts';
import { outlineInPicture } from './outlineInPicture.ts';
import { restoreRoughly, restoreSeen } from './restoreSeen.ts';
import type { SeenBody } from './seenBody.ts';
import type { TraceRequest } from './traceRequest.ts';

/** Looks after the first, and mm by which the expected outline must move for another. */
const MOST_LOOKS = 2;
const MOVED_MM = 0.25;

/**
 * The body as it is seen once it is known where its outline should lie. A trace may follow the far plate round a
 * corner, ten millimetres beside the near one: along its own normals the near edge is then never met. The outline that
 * is restored from what was told tells where to look, and along which normals; that is done again while it still moves.
 *
 * @param look looks at the picture from where the outline is expected, station by station; the first time from the trace
 */
export function lookedAgain(
  look: (expected?: readonly EdgePoint[]) => SeenBody,
  traced: readonly EdgePoint[],
  { face, meant }: Pick<TraceRequest, 'face' | 'meant'>,
  rectified: Rectified,
  keeper: Keeper,
): SeenBody {
  const pxPerMm = 1 / rectified.mmPerPixel;
  const expectedOf = (seen: SeenBody, isFirst = false): readonly EdgePoint[] | null => {
    const whole = restoreSeen([seen], null, face, meant, keeper);
    // A trace that went round the far plate's corner may not be restored at all: from a rough outline the corner is found.
    const restored = whole.ok || !isFirst ? whole : restoreRoughly(seen, face, meant);
    if (!restored.ok) return null;
    const placeOf = outlineInPicture(restored.value.outline, face, (at) => sceneToRectified(rectified, at));
    return expectedEdge(traced, placeOf, pxPerMm);
  };
  const first = look();
  let seen = first;
  let expected = expectedOf(seen, true);
  for (let looks = 0; looks < MOST_LOOKS && expected !== null; looks++) {
    const again = look(expected);
    const next = expectedOf(again);
    // What cannot be restored is no better than what could.
    if (next === null) break;
    const isAtRest = farthestPx(expected, next) < MOVED_MM * pxPerMm;
    seen = again;
    expected = isAtRest ? null : next;
  }
  return seen === first ? first : { ...seen, firstTrace: first.trace };
}

/** The most by which one line lies beside the other. */
function farthestPx(before: readonly EdgePoint[], after: readonly EdgePoint[]): number {
  return before.reduce((most, { point, normal }, i) => {
    const to = after[i].point;
    return Math.max(most, Math.abs((to.x - point.x) * normal.x + (to.y - point.y) * normal.y));
  }, 0);
}
