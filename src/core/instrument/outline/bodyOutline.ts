import {
  accept,
  Bug,
  type Checked,
  distanceBetween,
  type Fault,
  type Point,
  refuse,
  sin,
  WELD_MM,
} from '../../base/index.ts';
import {
  areaOf,
  type Chain,
  type HalfOutline,
  headingOn,
  lengthOf,
  outlineChain,
  segments,
  selfCrossings,
} from '../../curve/index.ts';
import { levelPlaces } from './levelPlaces.ts';

/** A true widest or narrowest place of the outline. */
export interface WidthPlace {
  /** Over both sides. */
  readonly widthMm: number;
  /** Height above the lower end. */
  readonly stationMm: number;
}

/** One of the treble corners; its mirror image is the bass one. */
export interface PlateCorner {
  /** Tip on the side of the bout. */
  readonly boutTip: Point<'body'>;
  /** Tip on the side of the waist. */
  readonly waistTip: Point<'body'>;
  /** Width of the corner end, tip to tip. */
  readonly endWidthMm: number;
  /** Over both corners of the body, outermost points. */
  readonly overCornersMm: number;
  /** Height of the outermost tip above the lower end. */
  readonly stationMm: number;
}

/** The edge of the plates, both halves, and what a maker reads off it. Body frame, mm. */
export interface BodyOutline {
  readonly half: HalfOutline;
  /** Closed, anticlockwise, symmetric. */
  readonly chain: Chain<'body'>;
  readonly bodyLengthMm: number;
  readonly upperBout: WidthPlace;
  readonly waist: WidthPlace;
  readonly lowerBout: WidthPlace;
  readonly upperCorner: PlateCorner;
  readonly lowerCorner: PlateCorner;
  readonly areaMm2: number;
  readonly perimeterMm: number;
}

/** rad. Steeper than this on the centre line, the mirrored half would make a kink that shows on a template. */
const LEVEL_RAD = 0.000_001;

/**
 * The outline of the body and its measures.
 *
 * Widths are the true extreme places, found exactly on the arcs, not on samples.
 * Faults: `outline.not-a-half` (ends off the centre line, or a number that is none), `outline.crosses-itself`,
 * `outline.no-widest` / `outline.no-narrowest` (a bout that is widest, or a waist narrowest, at its corner).
 */
export function bodyOutline(half: HalfOutline): Checked<BodyOutline> {
  const broken = halfFaults(half);
  if (broken.length > 0) return refuse(...broken);
  const chain = outlineChain(half);
  if (selfCrossings(chain).length > 0) return refuse(crossesItself());
  const lowerBout = extremePlace(half.lowerBout, 'widest');
  const waist = extremePlace(half.cBout, 'narrowest');
  const upperBout = extremePlace(half.upperBout, 'widest');
  const faults: Fault[] = [];
  if (lowerBout === undefined) faults.push(noExtreme('lower bout', 'widest'));
  if (waist === undefined) faults.push(noExtreme('waist', 'narrowest'));
  if (upperBout === undefined) faults.push(noExtreme('upper bout', 'widest'));
  if (lowerBout === undefined || waist === undefined || upperBout === undefined) return refuse(...faults);
  return accept({
    half,
    chain,
    bodyLengthMm: endOf(half.upperBout).y - startOf(half.lowerBout).y,
    upperBout,
    waist,
    lowerBout,
    upperCorner: plateCorner(startOf(half.upperBout), endOf(half.cBout)),
    lowerCorner: plateCorner(endOf(half.lowerBout), startOf(half.cBout)),
    areaMm2: areaOf(chain),
    perimeterMm: lengthOf(chain),
  });
}

function halfFaults(half: HalfOutline): Fault[] {
  const faults: Fault[] = [];
  for (const [name, chain] of Object.entries(half) as [string, Chain<'body'>][]) {
    const sound =
      !chain.closed &&
      chain.vertices.length >= 2 &&
      chain.vertices.every((vertex) => [vertex.x, vertex.y, vertex.bulge].every(Number.isFinite));
    if (!sound)
      faults.push(notAHalf(name, 'a line that is closed, empty or holds something that is no number'));
  }
  if (faults.length > 0) return faults;
  const start = startOf(half.lowerBout);
  const end = endOf(half.upperBout);
  if (Math.abs(start.x) > WELD_MM || Math.abs(start.y) > WELD_MM)
    faults.push(notAHalf('lowerBout', `a start at (${start.x}, ${start.y})`));
  if (Math.abs(end.x) > WELD_MM || end.y <= start.y)
    faults.push(notAHalf('upperBout', `an end at (${end.x}, ${end.y})`));
  for (const [name, tiltRad] of [
    ['lowerBout', tiltAt(half.lowerBout, 'start')],
    ['upperBout', tiltAt(half.upperBout, 'end')],
  ] as const)
    if (tiltRad > LEVEL_RAD)
      faults.push(notAHalf(name, `a line ${tiltRad} rad off level on the centre line`));
  return faults;
}

/** How far a section is from level where it meets the centre line. */
function tiltAt(chain: Chain<'body'>, end: 'start' | 'end'): number {
  const all = segments(chain);
  const segment = all.at(end === 'start' ? 0 : -1);
  if (segment === undefined) throw new Bug('a section has no segment');
  return Math.abs(sin(headingOn(segment, end === 'start' ? 0 : 1)));
}

function extremePlace(chain: Chain<'body'>, which: 'widest' | 'narrowest'): WidthPlace | undefined {
  const sign = which === 'widest' ? 1 : -1;
  const ends = Math.max(sign * startOf(chain).x, sign * endOf(chain).x);
  let best: Point<'body'> | undefined;
  for (const place of levelPlaces(chain)) if (!best || sign * place.x > sign * best.x) best = place;
  if (best === undefined || sign * best.x < ends) return undefined;
  return { widthMm: 2 * best.x, stationMm: best.y };
}

function plateCorner(boutTip: Point<'body'>, waistTip: Point<'body'>): PlateCorner {
  const outermost = boutTip.x >= waistTip.x ? boutTip : waistTip;
  return {
    boutTip,
    waistTip,
    endWidthMm: distanceBetween(waistTip, boutTip),
    overCornersMm: 2 * outermost.x,
    stationMm: outermost.y,
  };
}

function startOf(chain: Chain<'body'>): Point<'body'> {
  return pointAt(chain, 0);
}

function endOf(chain: Chain<'body'>): Point<'body'> {
  return pointAt(chain, -1);
}

function pointAt(chain: Chain<'body'>, index: number): Point<'body'> {
  const vertex = chain.vertices.at(index);
  if (vertex === undefined) throw new Bug('a section has no vertex');
  return { x: vertex.x, y: vertex.y };
}

function notAHalf(section: string, found: string): Fault {
  return {
    code: 'outline.not-a-half',
    at: `outline.${section}`,
    found,
    need: 'three open sections from (0, 0) up to the centre line at the upper end',
    remedy: 'draft or trace the outline again',
  };
}

function crossesItself(): Fault {
  return {
    code: 'outline.crosses-itself',
    at: 'outline',
    found: 'an outline that crosses itself',
    need: 'one simple line round the body',
    remedy: 'look at the corners and the waist: two of the given sizes contradict each other',
  };
}

function noExtreme(at: string, which: string): Fault {
  return {
    code: `outline.no-${which}`,
    at,
    found: `no ${which} place between its ends`,
    need: `a ${which} place clear of the corners`,
    remedy: 'check the width here against the width over the corners',
  };
}
