import { accept, Bug, type Checked, type Fault, type Point, point, refuse } from '../../base/index.ts';
import { type Chain, fitArcs } from '../../curve/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { plateHeight } from './plateHeight.ts';
import type { RoughNumbers } from './roughNumbers.ts';
import { footOn } from './smoothLine.ts';

/** A step of the roughed-out arch: outside its line the wood comes down to its level. */
export interface Terrace {
  /** Above the gluing face. */
  readonly levelMm: number;
  /** From the upper face of the board. */
  readonly depthMm: number;
  /** Treble half, from the centre line at the lower end up to the centre line; the other half is its mirror image. */
  readonly half: Chain<'body'>;
}

/** mm. A last step lower than this under the crest is left to the gouge. */
const LEAST_CROWN_MM = 0.4;

/** mm. Lines are drawn so much lower on the arch that arcs fitted to them still enclose it. */
const OUTSIDE_MM = 0.03;

/** mm. Arcs leave the line by no more than this: on a slope of 45° still within what it is drawn outside. */
const ARC_FIT_MM = 0.02;

/**
 * The terraces of a plate, lowest first: the first level with the flat edge and its allowance, each next a step higher.
 * Nowhere does one reach below the arched outside and the allowance.
 *
 * Faults: those of fitting arcs.
 */
export function terraces(arch: PlateArch, rough: RoughNumbers): Checked<readonly Terrace[]> {
  const crownMm = arch.archHeightMm + rough.allowanceMm;
  const faults: Fault[] = [];
  const found: Terrace[] = [];
  const first = arch.numbers.edgeHeightMm + rough.allowanceMm;
  for (let step = 0; first + step * rough.stepMm < crownMm - LEAST_CROWN_MM; step++) {
    const levelMm = first + step * rough.stepMm;
    const half = levelLine(arch, levelMm - rough.allowanceMm - OUTSIDE_MM);
    if (half.ok) found.push({ levelMm, depthMm: rough.boardMm - levelMm, half: half.value });
    else faults.push(...half.faults);
  }
  return faults.length > 0 ? refuse(...faults) : accept(found);
}

/** Places on one half of a line: the same share of a half turn apart, dense where the line runs across the body. */
const PLACES = 160;

/** The line on which the outside inside the channel has a height, treble half, as tangent arcs. */
function levelLine(arch: PlateArch, zMm: number): Checked<Chain<'body'>> {
  const [fromMm, toMm] = endsOnCentre(arch, zMm);
  const middle = (fromMm + toMm) / 2;
  const points: Point<'body'>[] = [point(0, fromMm)];
  let x = 0;
  for (let place = 1; place < PLACES; place++) {
    const yMm = middle - ((toMm - fromMm) / 2) * Math.cos((Math.PI * place) / PLACES);
    x = crossingNear(arch, yMm, zMm, x);
    points.push(point(x, yMm));
  }
  points.push(point(0, toMm));
  const fitted = fitArcs(points, {
    toleranceMm: ARC_FIT_MM,
    startHeadingRad: 0,
    endHeadingRad: Math.PI,
  });
  return fitted.ok ? accept(fitted.value.chain) : fitted;
}

/** Where the outside comes down to a height on the centre line, at both ends. */
function endsOnCentre(arch: PlateArch, zMm: number): readonly [number, number] {
  const { startMm, endMm } = arch.longArch;
  const crest = (startMm + endMm) / 2;
  const above = (yMm: number): number => plateHeight(arch, 0, yMm, 'finished') - zMm;
  return [root(above, crest, startMm), root(above, crest, endMm)];
}

/** mm. First reach to both sides of where the line ran before; doubled until the line lies between. */
const REACH_MM = 1;

/** Where the outside across a place comes down to a height, near where it did so a little before. */
function crossingNear(arch: PlateArch, yMm: number, zMm: number, nearMm: number): number {
  const above = (x: number): number => heightInside(arch, x, yMm) - zMm;
  let reach = REACH_MM;
  let inner = Math.max(0, nearMm - reach);
  while (inner > 0 && above(inner) <= 0) {
    reach *= 2;
    inner = Math.max(0, nearMm - reach);
  }
  if (above(inner) <= 0) return 0;
  let outer = nearMm + REACH_MM;
  for (reach = REACH_MM; above(outer) > 0; reach *= 2) {
    if (reach > arch.bodyLengthMm) throw new Bug(`no end of the arch across ${yMm} mm`);
    inner = outer;
    outer += reach;
  }
  return root(above, inner, outer);
}

/** The finished outside; beyond the channel as low as the channel, so that the edge's crest is not taken for the arch. */
function heightInside(arch: PlateArch, xMm: number, yMm: number): number {
  return footOn(arch.channel.line, xMm, yMm).distanceMm > 0
    ? plateHeight(arch, xMm, yMm, 'finished')
    : arch.channelZMm;
}

/** mm of height. A crossing met this nearly is found. */
const FOUND_MM = 0.0005;

/** A place between one where a line is above and one where it is not: false position, the older end's weight halved. */
function root(above: (at: number) => number, high: number, low: number): number {
  let [a, fa, b, fb] = [high, above(high), low, above(low)];
  let stayed: 'a' | 'b' | undefined;
  for (;;) {
    const middle = (a * fb - b * fa) / (fb - fa);
    const value = above(middle);
    if (Math.abs(value) <= FOUND_MM) return middle;
    if (value > 0) {
      [a, fa] = [middle, value];
      if (stayed === 'b') fb /= 2;
      stayed = 'b';
    } else {
      [b, fb] = [middle, value];
      if (stayed === 'a') fa /= 2;
      stayed = 'a';
    }
  }
}
