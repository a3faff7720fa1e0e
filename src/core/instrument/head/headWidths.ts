import {
  accept,
  type Checked,
  type Fault,
  type Finding,
  type Point,
  point,
  power,
  refuse,
  tan,
} from '../../base/index.ts';
import { pointOn, segmentLength, segments } from '../../curve/index.ts';
import { levelCurve } from '../../numeric/index.ts';
import type { HeadProfile } from './headProfile.ts';
import { arcStart, QUARTERS_TO_THROAT } from './volute.ts';

/** What the widths of a head are laid out from, mm and radians. */
export interface WidthSizes {
  readonly chinMm: number;
  readonly narrowestMm: number;
  readonly earsMm: number;
  /** Both edges of a turn to each other, seen from the front: the outer turn, the second, the third. */
  readonly turnRad: readonly [number, number, number];
}

/** A place along the head where its width is held. */
export interface WidthStation {
  /** From 0 at the tip of the chin on, as on templates. */
  readonly number: number;
  readonly place: 'chin' | 'back' | 'top' | 'front' | 'bottom' | 'eye';
  /** Along the back and the spiral from the tip of the chin. */
  readonly alongMm: number;
  readonly at: Point<'head'>;
  readonly widthMm: number;
}

/** How wide a head is, from the tip of the chin up the back, over the top and along the spiral to the eye. */
export interface HeadWidths {
  readonly stations: readonly WidthStation[];
  /** Where the top is, and where the throat, along the same line. */
  readonly topMm: number;
  readonly bottomMm: number;
  /** How much faster than its neighbours' mean each turn widens where it is hidden from the front; 1 is even. */
  readonly hiddenShare: number;
  readonly findings: readonly Finding[];
}

/** Along the back from chin to top as a share, and the share of what is lost on the way that is still there. From memory. */
const BACK_SHAPE = [
  [0.11, 0.935],
  [0.236, 0.71],
  [0.363, 0.484],
  [0.489, 0.258],
  [0.683, 0.065],
] as const;

/** No unit. How much faster the third turn widens than the second, where a further one has to be guessed. */
const NEXT_TURN = 1.9;
/** Radians. No turn opens wider, however many there are. */
const WIDEST_TURN_RAD = Math.PI / 3;
/** No unit. Outside these the edges seen from the front and the width over the ears do not belong together. */
const EVEN_SHARES = [0.5, 2] as const;

const PLACES = ['back', 'top', 'front', 'bottom'] as const;

/**
 * Widths at stepped places. Seen from the front the edges of each turn are straight and open by its angle; behind, where no
 * angle is seen, each turn widens at the geometric mean of its neighbours' rates, all in one proportion such that the eyes
 * come out at the width over the ears. Between the places the width follows the line monotonely.
 *
 * Faults: `head.widths` (the angles alone reach the width over the ears). Findings: `head.ears`.
 */
export function headWidths(profile: HeadProfile, sizes: WidthSizes): Checked<HeadWidths> {
  const { arcs } = profile.volute;
  const ends = segmentEnds(profile);
  const alongOf = (k: number): number => ends[profile.segmentsToTop + k - 2] ?? Number.NaN;
  const steps = stepsBetween(profile, sizes, alongOf);
  const seenMm = steps.reduce((sum, { isSeen, gainMm }) => sum + (isSeen ? gainMm : 0), 0);
  const hiddenMm = steps.reduce((sum, { isSeen, gainMm }) => sum + (isSeen ? 0 : gainMm), 0);
  const hiddenShare = (sizes.earsMm - sizes.narrowestMm - seenMm) / hiddenMm;
  if (!(hiddenShare > 0)) return refuse(widthsFault(sizes, seenMm));
  const topMm = alongOf(1);
  const lost = sizes.chinMm - sizes.narrowestMm;
  const rows: Omit<WidthStation, 'number' | 'at'>[] = [
    { place: 'chin', alongMm: 0, widthMm: sizes.chinMm },
    ...BACK_SHAPE.map(([share, left]) => ({
      place: 'back' as const,
      alongMm: share * topMm,
      widthMm: sizes.narrowestMm + left * lost,
    })),
  ];
  let widthMm = sizes.narrowestMm;
  for (let k = 1; k < arcs.length; k++) {
    const place = k === arcs.length - 1 ? 'eye' : (PLACES[k % PLACES.length] ?? 'back');
    rows.push({ place, alongMm: alongOf(k), widthMm });
    const step = steps[k - 1];
    if (step) widthMm += step.isSeen ? step.gainMm : hiddenShare * step.gainMm;
  }
  return accept({
    stations: rows.map((row, number) => ({ ...row, number, at: spinePlace(profile, row.alongMm) })),
    topMm,
    bottomMm: alongOf(QUARTERS_TO_THROAT),
    hiddenShare,
    findings: earsFindings(sizes, hiddenShare),
  });
}

/** The width at any place along the head; beyond the eye it stays. */
export function widthAlong({ stations }: HeadWidths, alongMm: number): number {
  return levelCurve(
    stations.map((one) => one.alongMm),
    stations.map((one) => one.widthMm),
    alongMm,
  );
}

/** Where each segment of the spine ends, along it. */
function segmentEnds({ spine }: HeadProfile): readonly number[] {
  let alongMm = 0;
  return segments(spine).map((segment) => {
    alongMm += segmentLength(segment);
    return alongMm;
  });
}

function spinePlace(profile: HeadProfile, alongMm: number): Point<'head'> {
  let leftMm = alongMm;
  for (const segment of segments(profile.spine)) {
    const lengthMm = segmentLength(segment);
    if (leftMm <= lengthMm) return pointOn(segment, leftMm / lengthMm);
    leftMm -= lengthMm;
  }
  const end = profile.spine.vertices.at(-1);
  return point(end?.x ?? Number.NaN, end?.y ?? Number.NaN);
}

interface Step {
  /** Whether it lies at the front of its turn. */
  readonly isSeen: boolean;
  readonly gainMm: number;
}

/** What the width gains from each quarter's place to the next, from the top inward; hidden ones in proportion only. */
function stepsBetween(
  { volute: { arcs } }: HeadProfile,
  { turnRad }: WidthSizes,
  alongOf: (k: number) => number,
): readonly Step[] {
  const placeAt = (k: number) => arcs[k] && arcStart(arcs[k]);
  const angleOf = (turn: number): number => {
    const [, second, third] = turnRad;
    const given = turnRad[turn];
    return Math.min(WIDEST_TURN_RAD, given ?? third * power(third / second, turn - 2));
  };
  const frontGain = (k: number): number => {
    const [from, to] = [placeAt(k), placeAt(k + 1)];
    if (!from || !to) return 0;
    return 2 * (from.y - to.y) * tan(angleOf(Math.floor((k - 1) / 4)) / 2);
  };
  /** Gain per mm over the front of a turn; one that is not there widens faster than the last. */
  const rateOf = (turn: number): number => {
    const top = 1 + 4 * turn;
    const lengthMm = alongOf(top + 2) - alongOf(top);
    const gain = frontGain(top) + frontGain(top + 1);
    return placeAt(top + 2) ? gain / lengthMm : turn > 0 ? NEXT_TURN * rateOf(turn - 1) : Number.NaN;
  };
  return Array.from({ length: arcs.length - 2 }, (_, index): Step => {
    const k = index + 1;
    if (k % 4 === 1 || k % 4 === 2) return { isSeen: true, gainMm: frontGain(k) };
    const turn = Math.floor((k - 1) / 4);
    const rate = Math.sqrt(rateOf(turn) * rateOf(turn + 1));
    return { isSeen: false, gainMm: rate * (alongOf(k + 1) - alongOf(k)) };
  });
}

function widthsFault({ earsMm, narrowestMm }: WidthSizes, seenMm: number): Fault {
  return {
    code: 'head.widths',
    at: 'scrollEars',
    found: `a head ${mm(narrowestMm)} wide at its top and ${mm(earsMm)} over the ears, whose turns widen by ${mm(seenMm)} on the front alone`,
    need: 'ears wider than top and turns together',
    remedy: 'widen scrollEars, or make outerTurnAngle, middleTurnAngle or innerTurnAngle smaller',
  };
}

function earsFindings({ earsMm }: WidthSizes, share: number): readonly Finding[] {
  const [least, most] = EVEN_SHARES;
  if (share >= least && share <= most) return [];
  return [
    {
      code: 'head.ears',
      weight: 'caution',
      at: 'scrollEars',
      found: `ears ${mm(earsMm)} apart, for which the turns widen ${share < 1 ? 'far slower' : 'far faster'} behind than on the front`,
      need: 'turns that widen about evenly all the way round',
      remedy:
        share < 1
          ? 'widen scrollEars, or make the angles of the turns smaller'
          : 'narrow scrollEars, or make the angles of the turns larger',
    },
  ];
}

const mm = (value: number): string => `${value.toFixed(1)} mm`;
