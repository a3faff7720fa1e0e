import { accept, type Checked, cos, type Point, point, sin, WELD_MM } from '../../base/index.ts';
import {
  boundsOf,
  nearestOnSpans,
  type Placement,
  placeChain,
  type Span,
  spansContain,
} from '../../curve/index.ts';
import type { HoleShapeHabit } from '../../knowledge/index.ts';
import { type DraftedHole, draftHole, type HoleSizes } from './draftHole.ts';

/** A treble hole and the way it lies on the top. */
export interface LaidHole {
  readonly hole: DraftedHole;
  /** From the hole's own frame to the body. */
  readonly way: Placement;
  /** Places of the hole on the body. */
  readonly onBody: (at: Point<'section'>) => Point<'body'>;
}

/** Where a hole is wanted. */
export interface HoleWishes {
  readonly sizes: HoleSizes;
  readonly shape: HoleShapeHabit;
  /** Height of the inner nick over the lower end of the body, mm. */
  readonly nickLineMm: number;
  /** Rim of the lower eye to the nearest place of the edge, mm. */
  readonly lowerEyeToEdgeMm: number;
}

/** rad. A hole turned by more no longer stands as it was drawn. Chosen by us; stems lean by 2.5° to 5.5° on twelve old holes. */
export const MOST_TURN_RAD = (7 * Math.PI) / 180;

/** Halvings of that until a lower eye is settled to less than a hundredth of a micrometre. */
const HALVINGS = 40;
/** Rounds in which turn and length settle on each other; each leaves about a hundredth of what was missed. */
const ROUNDS = 8;

/**
 * The hole laid on the top as a template is: upper eye at its half of the distance between both, then turned about the inner nick
 * until the lower eye lies as far from the edge as is asked for, or as near to that as {@link MOST_TURN_RAD} leads; drawn longer or
 * shorter so that it is as long along the body as asked for once it is turned. A positive turn takes the lower eye to the edge.
 *
 * Faults: those of {@link draftHole}.
 */
export function layHole(wishes: HoleWishes, edge: readonly Span<'body'>[]): Checked<LaidHole> {
  const { sizes, shape } = wishes;
  let hole = draftHole(sizes, shape);
  if (!hole.ok) return hole;
  let laid = lay(hole.value, wishes, 0);
  let lengthMm = sizes.lengthMm;
  for (let round = 0; round < ROUNDS && hole.ok; round++) {
    laid = lay(hole.value, wishes, turnFor(hole.value, wishes, edge));
    const { min, max } = boundsOf(placeChain<'body', 'section'>(hole.value.plain, laid.way));
    if (Math.abs(sizes.lengthMm - (max.y - min.y)) < WELD_MM) break;
    lengthMm *= sizes.lengthMm / (max.y - min.y);
    hole = draftHole({ ...sizes, lengthMm }, shape);
  }
  return hole.ok ? accept(laid) : hole;
}

function lay(hole: DraftedHole, { sizes, nickLineMm }: HoleWishes, turnRad: number): LaidHole {
  const [cosine, sine] = [cos(turnRad), sin(turnRad)];
  const turned = ({ x, y }: Point<'section'>): Point<'section'> =>
    point(x * cosine - y * sine, x * sine + y * cosine);
  const acrossMm = (sizes.upperEyesApartMm + sizes.upperEyeMm) / 2 - turned(hole.upper.eye.centre).x;
  const upMm = nickLineMm - turned(hole.innerNick.foot).y;
  return {
    hole,
    way: { turnRad, shift: [acrossMm, upMm] },
    onBody: (at) => {
      const { x, y } = turned(at);
      return point(x + acrossMm, y + upMm);
    },
  };
}

function turnFor(hole: DraftedHole, wishes: HoleWishes, edge: readonly Span<'body'>[]): number {
  const { centre, radiusMm } = hole.lower.eye;
  const insetMm = wishes.lowerEyeToEdgeMm + radiusMm;
  let [low, high] = [-MOST_TURN_RAD, MOST_TURN_RAD];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    const eye = lay(hole, wishes, middle).onBody(centre);
    if (spansContain(edge, eye) && nearestOnSpans(edge, eye).distanceMm > insetMm) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
