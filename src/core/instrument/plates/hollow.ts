import { accept, type Checked, hypot, type Point, point, refuse, WELD_MM } from '../../base/index.ts';
import {
  type Chain,
  distanceToSpans,
  offsetChain,
  type Span,
  spansContain,
  spansOf,
} from '../../curve/index.ts';
import { type SurfacePoint, upwardNormal } from '../../surface/index.ts';
import {
  continuedArchSlopes,
  isBeyondChannel,
  nearPlateSlopes,
  type PlateArch,
  plateSlopes,
} from '../arching/index.ts';
import { type ThicknessMap, thicknessAt } from './thicknessMap.ts';

/** A plate hollowed out: its outside, how thick it is left, and where its gluing face ends. Heights above that face. */
export interface HollowPlate {
  readonly arch: PlateArch;
  readonly thickness: ThicknessMap;
  /** The line inside which the plate is hollowed: inside linings and blocks, its corners rounded. Closed, body frame. */
  readonly line: Chain<'body'>;
  /** That line made ready to be asked many times. */
  readonly lineSpans: readonly Span<'body'>[];
  /** How far inside that line the hollow has its full depth. */
  readonly rampMm: number;
}

/** Share of the body length, 3 mm on a violin, over which the hollow goes down to its depth: a thumb plane's radius. */
const RAMP_SHARE = 3 / 355;

/**
 * Shares of the body length to which the hollow is rounded: 4 mm on a violin where lining meets block, so that its foot, a ramp
 * farther in, is still round; 1 mm over the tips of blocks. No gouge leaves sharper ones.
 */
const POCKET_SHARE = 4 / 355;
const TIP_SHARE = 1 / 355;

/**
 * A plate with the map of its thickness and the edge of the form, whose recesses are the blocks; linings stand inside it.
 *
 * Fault: `hollow.linings` when the linings have no thickness or leave nothing to hollow.
 */
export function hollowPlate(
  arch: PlateArch,
  thickness: ThicknessMap,
  formEdge: Chain<'body'>,
  liningMm: number,
): Checked<HollowPlate> {
  const isThick = liningMm > 0 && Number.isFinite(liningMm);
  const [sharp] = isThick ? offsetChain(formEdge, -liningMm, { join: 'mitre' }) : [];
  const line = sharp && rounded(sharp, POCKET_SHARE * arch.bodyLengthMm, TIP_SHARE * arch.bodyLengthMm);
  if (!line)
    return refuse({
      code: 'hollow.linings',
      at: 'liningThickness',
      found: `linings ${liningMm} mm thick`,
      need: 'a thickness above 0 mm that leaves room inside them',
      remedy: 'correct it',
    });
  return accept({ arch, thickness, line, lineSpans: spansOf(line), rampMm: RAMP_SHARE * arch.bodyLengthMm });
}

/** A closed line with its corners rounded, those that go in and those that stand in; as it is where that would part it. */
function rounded(line: Chain<'body'>, pocketMm: number, tipMm: number): Chain<'body'> {
  let loops: readonly Chain<'body'>[] = [line];
  for (const mm of [-pocketMm, pocketMm + tipMm, -tipMm])
    loops = loops.flatMap((loop) => offsetChain(loop, mm, { join: 'round' }));
  return loops.length === 1 ? (loops[0] ?? line) : line;
}

/** A place of the inside surface and the place of the outside that it is measured from. */
export interface InsidePlace {
  /** Height over the gluing face; below 0 where the arch is too low for its thickness. */
  readonly zMm: number;
  readonly outside: Point<'body'>;
}

/** Rounds after which the foot on the outside is found: each leaves at most a third of what was off. */
const MOST_ROUNDS = 40;

/**
 * The inside of a plate at its full depth, as if there were no gluing face: the outside less its thickness, measured
 * square to the outside. NaN where the thickness is more than the outside is rounded, so that no such place is found.
 */
export function fullDepthAt({ arch, thickness }: HollowPlate, xMm: number, yMm: number): InsidePlace {
  return depthUnder((x, y) => plateSlopes(arch, x, y), thickness, xMm, yMm);
}

/**
 * {@link fullDepthAt} under the arch alone, carried on beyond its channel: the same well inside the channel, and smooth
 * outside it, so that a surface can be fitted through it.
 */
export function continuedDepthAt({ arch, thickness }: HollowPlate, xMm: number, yMm: number): number {
  const { zMm } = depthUnder((x, y) => continuedArchSlopes(arch, x, y), thickness, xMm, yMm);
  // Where what is carried on gets level, with a step, it may have no inside; nothing is cut there.
  return Number.isNaN(zMm) && isBeyondChannel(arch, xMm, yMm)
    ? arch.channelZMm - thicknessAt(thickness, xMm, yMm)
    : zMm;
}

function depthUnder(
  slopesAt: (xMm: number, yMm: number) => SurfacePoint,
  thickness: ThicknessMap,
  xMm: number,
  yMm: number,
): InsidePlace {
  let [x, y] = [xMm, yMm];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const shape = slopesAt(x, y);
    const [normalX, normalY, normalZ] = upwardNormal(shape);
    const t = thicknessAt(thickness, x, y);
    const [missX, missY] = [xMm - (x - t * normalX), yMm - (y - t * normalY)];
    if (hypot(missX, missY) < WELD_MM || round === MOST_ROUNDS - 1) {
      const found = hypot(missX, missY) < FOOT_MM;
      return { zMm: found ? shape.zMm - t * normalZ : Number.NaN, outside: point(x, y) };
    }
    x += missX;
    y += missY;
  }
  return { zMm: Number.NaN, outside: point(x, y) };
}

/** mm to which a foot counts as found: a hundredth of what a calliper tells. */
const FOOT_MM = 0.001;

/**
 * Height of a plate's inside over its gluing face, mm: 0 on the gluing face, from its edge down a short ramp to the full
 * depth, never below the gluing face. NaN where the thickness has no inside.
 */
export function insideHeight(plate: HollowPlate, xMm: number, yMm: number): number {
  const at = point<'body'>(xMm, yMm);
  if (!spansContain(plate.lineSpans, at)) return 0;
  return rampShare(plate, at) * Math.max(0, fullDepthAt(plate, xMm, yMm).zMm);
}

/** How much of its full depth the hollow has at a place inside its line. */
function rampShare({ lineSpans, rampMm }: HollowPlate, at: Point<'body'>): number {
  const t = distanceToSpans(lineSpans, at.x, at.y, rampMm) / rampMm;
  return t >= 1 ? 1 : t * t * (3 - 2 * t);
}

/** mm. A foot as near as this is near enough where the rest of the way is taken along the slope. */
const NEAR_FOOT_MM = 0.03;

/**
 * {@link insideHeight} at a place known to lie inside the line, to about a thousandth of a millimetre: for sums over the
 * whole plate. The inside is as steep as the outside where it is measured from, but for the little that its thickness changes.
 */
export function nearInsideHeight(plate: HollowPlate, xMm: number, yMm: number): number {
  const { arch, thickness } = plate;
  let [x, y] = [xMm, yMm];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { zMm, slopeX, slopeY } = nearPlateSlopes(arch, x, y);
    const square = thicknessAt(thickness, x, y) / Math.sqrt(1 + slopeX * slopeX + slopeY * slopeY);
    const [missX, missY] = [xMm - x - square * slopeX, yMm - y - square * slopeY];
    if (missX * missX + missY * missY < NEAR_FOOT_MM * NEAR_FOOT_MM) {
      const full = zMm - square + slopeX * missX + slopeY * missY;
      return full > 0 ? full * rampShare(plate, point(xMm, yMm)) : 0;
    }
    x += missX;
    y += missY;
  }
  return insideHeight(plate, xMm, yMm);
}
