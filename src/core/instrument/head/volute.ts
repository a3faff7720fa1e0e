import {
  accept,
  type Checked,
  exp,
  type Fault,
  type Point,
  point,
  refuse,
  SETTLED,
} from '../../base/index.ts';
import type { ProfileSizes } from './profileSizes.ts';

/** A quarter circle of the spiral, anticlockwise from its place. */
export interface VoluteArc {
  readonly centre: Point<'head'>;
  readonly radiusMm: number;
  /** Polar angle of its start: a whole number of quarter turns. */
  readonly fromRad: number;
}

/**
 * The spiral of a scroll: quarter circles that touch, from outside in. The first starts at the back (it is drawn there for
 * construction only), the second at the top, the third at the front, the fourth at the bottom, by the throat; the last is the eye's.
 */
export interface Volute {
  readonly arcs: readonly VoluteArc[];
  /** How fast the radii fall, per quarter turn, at the outside. */
  readonly closing: number;
}

type VoluteSizes = Pick<
  ProfileSizes,
  'topMm' | 'scrollHeightMm' | 'scrollFrontMm' | 'eyeRadiusMm' | 'quarterTurns' | 'quickening'
>;

/** Quarter turns from the back to the bottom of the outer turn, where the throat is. */
export const QUARTERS_TO_THROAT = 3;

/** No unit. Least and most that the logarithm of the radius may fall in a quarter turn; the spiral is no scroll beyond. */
const CLOSING_LIMITS = [0.001, 1] as const;

/** Halvings after which nothing is left of the span of those limits. */
const HALVINGS = 60;

/** Most quarter turns from the throat to the eye that are drawn. */
const MOST_QUARTERS = 20;

/**
 * The spiral with a given height, eye and number of turns: radii ρ(k) = ρ(0)·exp(−(αk + βk²)), the last the eye's, β the
 * quickening; its height is ρ(1) + ρ(2) exactly. Placed with its top and its front where they are asked for.
 *
 * Faults: `head.turns`, `head.spiral` (no radii that fall from the height to the eye).
 */
export function volute(sizes: VoluteSizes): Checked<Volute> {
  const { scrollHeightMm, eyeRadiusMm, quarterTurns, quickening } = sizes;
  if (!(Number.isInteger(quarterTurns) && quarterTurns >= 2 && quarterTurns <= MOST_QUARTERS))
    return refuse(turnsFault(quarterTurns));
  const last = QUARTERS_TO_THROAT + quarterTurns - 1;
  const radius = (k: number, closing: number): number =>
    eyeRadiusMm * exp(closing * (last - k) + quickening * (last * last - k * k));
  const tooHigh = (closing: number): boolean => radius(1, closing) + radius(2, closing) > scrollHeightMm;
  let [low, high]: [number, number] = [...CLOSING_LIMITS];
  if (!(eyeRadiusMm > 0) || tooHigh(low) || !tooHigh(high)) return refuse(spiralFault(sizes));
  for (let round = 0; round < HALVINGS && high - low > SETTLED * high; round++) {
    const middle = (low + high) / 2;
    if (tooHigh(middle)) high = middle;
    else low = middle;
  }
  const closing = (low + high) / 2;
  const radii = Array.from({ length: last + 1 }, (_, k) => radius(k, closing));
  if (radii.some((mm, k) => k > 0 && mm >= (radii[k - 1] ?? 0))) return refuse(spiralFault(sizes));
  return accept({ arcs: placed(radii, sizes), closing });
}

/** The quarter circles of these radii, each touching the next, with top and front in their places. */
function placed(radii: readonly number[], { topMm, scrollFrontMm }: VoluteSizes): readonly VoluteArc[] {
  const [first = 0, second = 0] = radii;
  let centre = point<'head'>(scrollFrontMm + second, topMm - first);
  return radii.map((radiusMm, k) => {
    const arc = { centre, radiusMm, fromRad: (k * Math.PI) / 2 };
    const stepMm = radiusMm - (radii[k + 1] ?? radiusMm);
    const [right, up] = QUARTER_WAYS[(k + 1) % QUARTER_WAYS.length] as readonly [number, number];
    centre = point(centre.x + stepMm * right, centre.y + stepMm * up);
    return arc;
  });
}

/** The directions of whole quarter turns, exact. */
const QUARTER_WAYS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** Where an arc starts. */
export function arcStart({ centre, radiusMm, fromRad }: VoluteArc): Point<'head'> {
  const quarter = Math.round(fromRad / (Math.PI / 2));
  const [right, up] = QUARTER_WAYS[quarter % QUARTER_WAYS.length] as readonly [number, number];
  return point(centre.x + radiusMm * right, centre.y + radiusMm * up);
}

function turnsFault(quarterTurns: number): Fault {
  return {
    code: 'head.turns',
    at: 'scrollTurns',
    found: `${quarterTurns / 4} turns from the throat to the eye`,
    need: `half a turn to ${MOST_QUARTERS / 4}`,
    remedy: 'count them from the throat inward; most scrolls have two and a half',
  };
}

function spiralFault({ scrollHeightMm, eyeRadiusMm, quarterTurns }: VoluteSizes): Fault {
  return {
    code: 'head.spiral',
    at: 'scrollHeight',
    found: `a scroll ${scrollHeightMm} mm high with an eye of ${2 * eyeRadiusMm} mm and ${quarterTurns / 4} turns`,
    need: 'a spiral whose turns grow smaller from the outside to the eye',
    remedy: 'check scrollHeight, scrollEye, scrollTurns and scrollQuickening',
  };
}
