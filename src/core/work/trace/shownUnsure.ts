import { type SeenBody, sceneWay } from './seenBody.ts';
import type { ShownWays } from './shownWays.ts';

/** A stretch of the edge that was seen badly (`doubtful`) or carried on without being seen (`bridged`). */
export interface ShownUnsure {
  readonly side: 'bass' | 'treble';
  readonly section: string;
  readonly state: 'doubtful' | 'bridged';
  /** What is wrong there, in words. */
  readonly says: string;
  readonly path: string;
}

/** The stretches of one photograph's edge that are to be taken with doubt. */
export function shownUnsure(seen: SeenBody, { fromPhoto }: ShownWays): readonly ShownUnsure[] {
  const place = sceneWay(seen, fromPhoto);
  return seen.trace.unseen.flatMap(({ name, side, section, fromAlong, toAlong, state }) => {
    const places = seen.trace.edge
      .filter((one) => one.side === side && one.along >= fromAlong && one.along <= toAlong)
      .map((one) => place(one.point));
    if (places.length < 2) return [];
    const path = `M${places.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`;
    return [{ side, section, state, says: name, path }];
  });
}
