import { cos, type Point, point, sin } from '../../base/index.ts';
import { type View, viewMap } from '../../photo/index.ts';
import type { SeenBody } from './seenBody.ts';
import type { Traced } from './trace.ts';

/** A place as it is shown over a photograph: mm right of the centre line as photographed, mm down from the upper end. */
export type ShownPlace = readonly [number, number];

/** The ways between what is shown of a trace and one of its photographs. */
export interface ShownWays {
  readonly shot: SeenBody;
  readonly toPhoto: (at: ShownPlace) => Point<'photo'>;
  readonly fromPhoto: (at: Point<'photo'>) => ShownPlace;
  readonly fromScene: (at: Point<'scene'>) => ShownPlace;
}

/** The ways between what is shown of a trace and its photograph number `shot`, counted from 0. */
export function shownWays({ seen, others, view, restored }: Traced, shot: number): ShownWays {
  const body = [seen, ...others][shot] ?? seen;
  const own: View = body === seen ? view : withStretch(body.view, view);
  const map = viewMap(own);
  const { axis, bodyLengthMm, lowerEndMm } = restored;
  const [c, s] = [cos(axis.headingRad), sin(axis.headingRad)];
  const { x: ox, y: oy } = axis.through;
  const fromScene = ({ x, y }: Point<'scene'>): ShownPlace => {
    const along = (x - ox) * c + (y - oy) * s;
    const right = (x - ox) * s - (y - oy) * c;
    return [right, bodyLengthMm + lowerEndMm - along];
  };
  return {
    shot: body,
    fromScene,
    fromPhoto: (at) => fromScene(map.toScene(at)),
    toPhoto: ([right, down]) => {
      const along = bodyLengthMm + lowerEndMm - down;
      return map.toPhoto(point(ox + c * along + s * right, oy + s * along - c * right));
    },
  };
}

/** Every photograph is corrected by the known lengths as the first is. */
function withStretch(view: View, { stretch }: View): View {
  return stretch === undefined ? view : { ...view, stretch };
}
