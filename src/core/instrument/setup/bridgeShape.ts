import { asin, distanceBetween, type Point, point, tan } from '../../base/index.ts';
import {
  biarc,
  type Chain,
  chainThrough,
  fitArcs,
  heightOn,
  joinChains,
  mirrorChain,
  reverseChain,
  segments,
} from '../../curve/index.ts';
import type { Family } from '../../knowledge/index.ts';
import { type PlateArch, plateHeight } from '../arching/index.ts';
import type { SetUp } from './setUp.ts';

/** Lines of a bridge, across (toward the highest string positive) and over the top's crest at the bridge. */
export interface BridgeShape {
  /** The blank, cut-outs not taken away: closed, anticlockwise. */
  readonly outline: Chain<'section'>;
  /** The outside of the top under both feet and beyond them, from the lowest string's side over. */
  readonly underFeet: Chain<'section'>;
}

/** Shares of the half width over the feet (across) and of the bridge's height (up). */
interface Figure {
  readonly waist: readonly [number, number];
  readonly shoulder: readonly [number, number];
  /** Where the arch between the feet is highest. */
  readonly archUp: number;
  /** Height of the ends of the feet. */
  readonly footUp: number;
  /** Headings of the side where it leaves the foot, and of the arch where it leaves the foot's inner end; degrees. */
  readonly leavesDeg: number;
  readonly archLeavesDeg: number;
}

/** Plain figures chosen by us, near common blanks: a bridge is carved to taste within them. */
const USUAL: Figure = {
  waist: [0.733, 0.333],
  shoulder: [0.973, 0.59],
  archUp: 0.258,
  footUp: 0.06,
  leavesDeg: 165,
  archLeavesDeg: 150,
};
const FIGURES: Readonly<Record<Family, Figure>> = {
  violin: USUAL,
  viola: USUAL,
  cello: {
    waist: [0.68, 0.46],
    shoulder: [0.86, 0.62],
    archUp: 0.4,
    footUp: 0.045,
    leavesDeg: 150,
    archLeavesDeg: 115,
  },
};

/** mm between two places of the top under the feet, and how far arcs may leave them. */
const STEP_MM = 0.5;
const ARC_FIT_MM = 0.005;

/** mm, of the half width over the feet, that the line under the feet is carried on beyond them. */
const BEYOND_SHARE = 0.12;

/** The bridge of a set-up over the arch of the top at the stop. */
export function bridgeShape(setUp: SetUp, family: Family, top: PlateArch, bridgeMm: number): BridgeShape {
  const halfMm = setUp.feetMm / 2;
  const half = underTop(top, bridgeMm, halfMm * (1 + BEYOND_SHARE));
  const underFeet = joinChains(reverseChain(mirrorChain(half)), half);
  const heightAt = (x: number): number => heightOn(half, Math.abs(x));
  const figure = FIGURES[family];
  const upMm = setUp.crownHeightMm;
  const footUpMm = figure.footUp * upMm;
  const innerMm = halfMm - setUp.footLengthMm;
  const tip = point<'section'>(halfMm, heightAt(halfMm) + footUpMm);
  const waist = point<'section'>(figure.waist[0] * halfMm, figure.waist[1] * upMm);
  const shoulder = point<'section'>(figure.shoulder[0] * halfMm, figure.shoulder[1] * upMm);
  const innerTop = point<'section'>(innerMm, heightAt(innerMm) + footUpMm);
  const archTop = point<'section'>(0, figure.archUp * upMm);
  const [low, high] = [setUp.crown.vertices[0], setUp.crown.vertices.at(-1)] as [
    Point<'section'>,
    Point<'section'>,
  ];
  /** From the tip of a foot up to an end of the crown, on the side of the highest string. */
  const flank = (end: Point<'section'>): Chain<'section'> =>
    joinChains(
      biarc(tip, radians(figure.leavesDeg), waist, radians(90)),
      biarc(waist, radians(90), shoulder, radians(85)),
      biarc(shoulder, radians(85), end, radians(104)),
    );
  const arch = biarc(innerTop, radians(figure.archLeavesDeg), archTop, Math.PI);
  const foot = partBetween(half, innerMm, halfMm);
  const rightFoot = joinChains(
    line(innerTop, at(innerMm, heightAt(innerMm))),
    foot,
    line(at(halfMm, heightAt(halfMm)), tip),
  );
  const left = (chain: Chain<'section'>): Chain<'section'> => reverseChain(mirrorChain(chain));
  const whole = joinChains(
    mirrorChain(arch),
    reverseChain(arch),
    rightFoot,
    flank(high),
    reverseChain(setUp.crown),
    left(flank(point(-low.x, low.y))),
    left(rightFoot),
  );
  return { outline: { closed: true, vertices: whole.vertices.slice(0, -1) }, underFeet };
}

/** Outside of the top from the centre line outward, over its crest. */
function underTop(top: PlateArch, bridgeMm: number, reachMm: number): Chain<'section'> {
  const crestMm = plateHeight(top, 0, bridgeMm, 'finished');
  const count = Math.ceil(reachMm / STEP_MM);
  const points = Array.from({ length: count + 1 }, (_, index) => {
    const x = (reachMm * index) / count;
    return at(x, plateHeight(top, x, bridgeMm, 'finished') - crestMm);
  });
  const fitted = fitArcs(points, { toleranceMm: ARC_FIT_MM, startHeadingRad: 0 });
  return fitted.ok ? fitted.value.chain : chainThrough(points, false);
}

/** The part of a line that runs rightward between two places across. */
function partBetween(chain: Chain<'section'>, fromX: number, toX: number): Chain<'section'> {
  const inner = chain.vertices.filter(({ x }) => x > fromX && x < toX);
  const places = [at(fromX, heightOn(chain, fromX)), ...inner, at(toX, heightOn(chain, toX))];
  const all = segments(chain);
  return {
    closed: false,
    vertices: places.map((from, index) => {
      const to = places[index + 1];
      if (!to) return { x: from.x, y: from.y, bulge: 0 };
      const middleX = (from.x + to.x) / 2;
      const whole = all.find(({ start, end }) => start.x <= middleX && middleX <= end.x);
      // The same circle over a shorter chord.
      const chord = distanceBetween(from, to);
      const wholeChord = whole ? distanceBetween(whole.start, whole.end) : chord;
      const bulge = whole?.bulge ?? 0;
      const halfSine = ((2 * bulge) / (1 + bulge * bulge)) * (chord / wholeChord);
      return { x: from.x, y: from.y, bulge: tan(asin(halfSine) / 2) };
    }),
  };
}

function line(from: Point<'section'>, to: Point<'section'>): Chain<'section'> {
  return { closed: false, vertices: [from, to].map(({ x, y }) => ({ x, y, bulge: 0 })) };
}

function at(x: number, y: number): Point<'section'> {
  return point(x, y);
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
