import {
  accept,
  type Checked,
  cos,
  type Frame,
  type Point,
  point,
  power,
  refuse,
  sin,
} from '../../base/index.ts';
import { isCornerEnd } from '../body/templateStations.ts';
import { type EdgeLine, edgeLine } from '../edge/edgeLine.ts';
import type { EdgeSpot, FoundEdge } from '../edge/foundEdge.ts';
import { type AxisPull, type AxisSpread, axisSpread, axisStep, bendsOf } from './axisStep.ts';
import { type Heading, uprightSpots } from './uprightSpots.ts';

/** The line that the two halves mirror each other about, heading from the lower to the upper end. */
export interface MirrorAxis<F extends Frame> {
  readonly through: Point<F>;
  /** Anticlockwise from x. */
  readonly headingRad: number;
  /**
   * Half intervals (k = 2) of its place across, at `through`, and of its heading; `correlation` says how place (to the
   * right) and heading go together. {@link axisPlusMinusAt} gives the interval elsewhere.
   */
  readonly plusMinus: {
    readonly acrossMm: number;
    readonly headingRad: number;
    readonly correlation: number;
  };
  /** Robust spread (1.48 MAD) of how far the mirrored halves lie apart. */
  readonly spreadMm: number;
  readonly rounds: number;
}

const ROUNDS = 26;
/** Round from which the body may be bent: worn places have to be known by then, or they would pass for a bend. */
const BENT_FROM = 16;
const FIRST_CUT = 10;
const LAST_CUT = 3;
const LEAST_SPOTS = 40;
/** mm. Below this spread spots are taken as equally good. */
const LEAST_SPREAD_MM = 0.005;
/** Spread of a normal distribution over the median of its sizes. */
const NORMAL_TO_MEDIAN = 1.4826;

/**
 * The mirror axis of a found edge, from a start that is near it. Faults: `axis.too-little`.
 *
 * The left half is mirrored onto the right half and the axis moved until the halves lie on each other, spots that
 * disagree counting less and less (Tukey's weight with a cut that narrows from 10 to 3 spreads), so that local wear
 * does not pull. Corner ends take no part. The interval holds what a slow difference of the halves leaves open.
 */
export function mirrorAxis<F extends Frame>(edge: FoundEdge<F>, start: Heading<F>): Checked<MirrorAxis<F>> {
  const right = edgeLine(uprightSpots(edge.right, start), 1);
  const usable = edge.left.filter((spot) => spot.seen && !isCornerEnd(spot.section));
  const left = uprightSpots(usable, start);
  let [acrossMm, turnRad, spreadMm] = [0, 0, 0];
  let links: readonly AxisLink[] = [];
  let bentMm: readonly number[] = [];
  let bends: ReturnType<typeof bendsOf> = [];
  for (let round = 0; round < ROUNDS; round++) {
    if (round < SOUGHT_FIRST || round % SOUGHT_EVERY === 0) {
      links = linksOf(left, right, acrossMm, turnRad);
      if (links.length !== bentMm.length) bentMm = links.map(() => 0);
    }
    if (links.length < LEAST_SPOTS) return refuse(tooLittle(links.length));
    const pulls = links.map((link) => pullOf(link, acrossMm, turnRad));
    if (round >= BENT_FROM && round % SOUGHT_EVERY === 0) bends = bendsOf(pulls);
    spreadMm = spreadOf(pulls.map(({ gapMm }, i) => gapMm - bentMm[i]));
    const narrowing = FIRST_CUT * power(LAST_CUT / FIRST_CUT, round / (ROUNDS / 2));
    const step = axisStep(pulls, bends, bentMm, spreadMm * Math.max(LAST_CUT, narrowing));
    bentMm = step.bentMm;
    acrossMm += step.acrossMm;
    turnRad += step.turnRad;
  }
  const pulls = linksOf(left, right, acrossMm, turnRad).map((link) => pullOf(link, acrossMm, turnRad));
  const spread = axisSpread(pulls, LAST_CUT * spreadOf(pulls.map(({ gapMm }) => gapMm)));
  return accept(settled(start, acrossMm, turnRad, spreadMm, spread));
}

/** Rounds at the beginning that look for the nearest links anew, and then every how many. */
const SOUGHT_FIRST = 4;
const SOUGHT_EVERY = 4;

function spreadOf(gapsMm: readonly number[]): number {
  const sizes = Float64Array.from(gapsMm, Math.abs).sort();
  return Math.max(LEAST_SPREAD_MM, NORMAL_TO_MEDIAN * (sizes[sizes.length >> 1] ?? 0));
}

/** Half interval (k = 2) of the axis's place across at a place along it, counted from its `through`, mm. */
export function axisPlusMinusAt<F extends Frame>({ plusMinus }: MirrorAxis<F>, alongMm: number): number {
  const { acrossMm, headingRad, correlation } = plusMinus;
  const lean = headingRad * alongMm;
  // A heading turned anticlockwise carries places farther up to the left, so against `across`.
  return Math.sqrt(Math.max(0, acrossMm ** 2 + lean ** 2 - 2 * correlation * acrossMm * lean));
}

/** A left spot and the link of the right half that its mirror image lies nearest to. */
interface AxisLink {
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
  readonly offsetMm: number;
  readonly share: number;
  readonly high: number;
}

function linksOf(
  left: readonly EdgeSpot<'body'>[],
  right: EdgeLine,
  acrossMm: number,
  turnRad: number,
): readonly AxisLink[] {
  const first = left[0]?.alongMm ?? 0;
  const lengthMm = Math.max(1, (left.at(-1)?.alongMm ?? 1) - first);
  const low = Math.min(left[0]?.y ?? 0, left.at(-1)?.y ?? 0);
  const tallMm = Math.max(1, Math.abs((left.at(-1)?.y ?? 1) - (left[0]?.y ?? 0)));
  const c = cos(turnRad);
  const s = sin(turnRad);
  const links: AxisLink[] = [];
  for (const { x, y, alongMm } of left) {
    const off = (x - acrossMm) * c - y * s;
    const link = right.nearest(x - 2 * off * c, y + 2 * off * s, alongMm);
    if (link === null) continue;
    const { normalX, normalY, offsetMm } = link;
    links.push({
      x,
      y,
      normalX,
      normalY,
      offsetMm,
      share: (alongMm - first) / lengthMm,
      high: (y - low) / tallMm,
    });
  }
  return links;
}

function pullOf(link: AxisLink, acrossMm: number, turnRad: number): AxisPull {
  const { x, y, normalX, normalY, offsetMm, share, high } = link;
  const c = cos(turnRad);
  const s = sin(turnRad);
  // Mirrored about the line through (across, 0) that leans to the right of y.
  const off = (x - acrossMm) * c - y * s;
  const mirroredX = x - 2 * off * c;
  const mirroredY = y + 2 * off * s;
  return {
    gapMm: mirroredX * normalX + mirroredY * normalY - offsetMm,
    perAcross: 2 * c * (normalX * c - normalY * s),
    perTurn: 2 * (normalX * mirroredY - normalY * (mirroredX - acrossMm)),
    share,
    high,
  };
}

function settled<F extends Frame>(
  start: Heading<F>,
  acrossMm: number,
  turnRad: number,
  spreadMm: number,
  spread: AxisSpread,
): MirrorAxis<F> {
  const c = cos(start.headingRad);
  const s = sin(start.headingRad);
  return {
    through: point(start.through.x + s * acrossMm, start.through.y - c * acrossMm),
    headingRad: start.headingRad - turnRad,
    plusMinus: {
      acrossMm: 2 * Math.sqrt(spread.across),
      headingRad: 2 * Math.sqrt(spread.turn),
      correlation: -spread.together / Math.sqrt(spread.across * spread.turn),
    },
    spreadMm,
    rounds: ROUNDS,
  };
}

function tooLittle(count: number) {
  return {
    code: 'axis.too-little',
    at: 'photograph',
    found: `only ${count} places of the edge are seen on both halves`,
    need: `at least ${LEAST_SPOTS}`,
    remedy: 'photograph the instrument with less over its edge, or mark the edge by hand',
  };
}
