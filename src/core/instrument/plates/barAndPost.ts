import { accept, type Checked, type Fault, point, power, refuse, sin } from '../../base/index.ts';
import { type Chain, containsPoint } from '../../curve/index.ts';
import { type Design, highStringSide, type ValueName } from '../../design/index.ts';
import type { PlateArch } from '../arching/index.ts';
import { wrongLength } from '../wrongLength.ts';
import type { PlateArea } from './plateArea.ts';

/**
 * Where bar and post stand, and the sizes of the bar. Body frame, which is that of the top: the post right, the bar left, and
 * the other way round where it is built left-handed; mm.
 */
export interface BarAndPost {
  readonly post: PlateArea;
  readonly bar: PlateArea;
  readonly barLengthMm: number;
  readonly barHeightMm: number;
  readonly barEndHeightMm: number;
  /** Of both widest bouts, from the centre line to the inner face of the bar over the half width. */
  readonly barShare: number;
  /** From the centre line to the inner face of the bar where the bouts are widest. */
  readonly barAtUpperBoutMm: number;
  readonly barAtLowerBoutMm: number;
}

const NAMES = [
  'bridgeFeet',
  'bridgeFootThickness',
  'footBeyondBar',
  'postDiameter',
  'barLength',
  'barThickness',
  'barHeight',
  'barEndHeight',
] as const satisfies readonly ValueName[];

/** Of a foot's thickness, between the back of the treble foot and the post (the source of `footBeyondBar` prints it). */
const POST_GAP = 0.5;

/**
 * Where the trade sets bar and post. Under the bass foot the bar's outer face lies inside the foot's outer end by
 * `footBeyondBar`; the post mirrors that under the treble foot, half a foot's thickness behind it. Up and down the body the
 * bar keeps the same share of the half width of both bouts (common practice), and stands as far from both ends. The middle of
 * the feet stands on the bridge line.
 *
 * Faults: `bar.size` (a value that is no length above 0), `bar.place`, `post.place` (not on the plate, or not on its own side).
 */
export function barAndPost(design: Design, arch: PlateArch, outline: Chain<'body'>): Checked<BarAndPost> {
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const unsound = NAMES.filter((name) => !(value(name) > 0 && Number.isFinite(value(name))));
  if (unsound.length > 0) return refuse(...unsound.map((name) => wrongLength('bar.size', name, value(name))));
  const bridgeMm = arch.bodyLengthMm - value('stop');
  const underFootMm = value('bridgeFeet') / 2 - value('footBeyondBar');
  const postMm = value('postDiameter') / 2;
  const side = highStringSide(design);
  const post = point<'body'>(
    side * (underFootMm - postMm),
    bridgeMm - (1 / 2 + POST_GAP) * value('bridgeFootThickness') - postMm,
  );
  const lower = { yMm: stationY(arch, 'lowerBout'), halfMm: value('lowerBout') / 2 };
  const upper = { yMm: stationY(arch, 'upperBout'), halfMm: value('upperBout') / 2 };
  const halfAt = (yMm: number): number =>
    lower.halfMm + ((upper.halfMm - lower.halfMm) * (yMm - lower.yMm)) / (upper.yMm - lower.yMm);
  const barShare = (underFootMm - value('barThickness')) / halfAt(bridgeMm);
  const half = value('barThickness') / 2;
  const fromEndMm = (arch.bodyLengthMm - value('barLength')) / 2 + half;
  const [from, to] = [fromEndMm, arch.bodyLengthMm - fromEndMm].map((yMm) =>
    point<'body'>(-side * (barShare * halfAt(yMm) + half), yMm),
  ) as [PlateArea['from'], PlateArea['to']];
  const faults: Fault[] = [];
  if (!(barShare > 0)) faults.push(acrossCentre('bar', 'barThickness', value));
  else if (!(to.y > from.y && [from, to].every((at) => containsPoint(outline, at))))
    faults.push(offPlate('bar', 'barLength'));
  if (!(side * post.x > 0)) faults.push(acrossCentre('post', 'postDiameter', value));
  else if (!containsPoint(outline, post)) faults.push(offPlate('post', 'postDiameter'));
  if (faults.length > 0) return refuse(...faults);
  return accept({
    post: { name: 'post', from: post, to: post, halfWidthMm: postMm },
    bar: { name: 'bar', from, to, halfWidthMm: half },
    barLengthMm: value('barLength'),
    barHeightMm: value('barHeight'),
    barEndHeightMm: value('barEndHeight'),
    barShare,
    barAtUpperBoutMm: barShare * upper.halfMm,
    barAtLowerBoutMm: barShare * lower.halfMm,
  });
}

function stationY(arch: PlateArch, name: 'lowerBout' | 'upperBout'): number {
  return arch.stations.find((station) => station.name === name)?.yMm ?? Number.NaN;
}

function acrossCentre(
  what: 'bar' | 'post',
  wide: 'barThickness' | 'postDiameter',
  value: (name: ValueName) => number,
): Fault {
  return {
    code: `${what}.place`,
    at: `bridgeFeet, footBeyondBar, ${wide}`,
    found: `under half of ${value('bridgeFeet')} mm, less ${value('footBeyondBar')} mm, a ${what} of ${value(wide)} mm would stand across the centre line`,
    need: `a ${what} on its own half of the top, under a foot of the bridge`,
    remedy: 'check these three numbers',
  };
}

function offPlate(what: 'bar' | 'post', at: ValueName): Fault {
  return {
    code: `${what}.place`,
    at,
    found: `a ${what} that would stand off the plate`,
    need: `a ${what} on its own half of the top, under a foot of the bridge`,
    remedy: 'check the body stop, the width of the bridge feet, and the sizes of bar and post',
  };
}

/**
 * No unit. The trimmed bar falls from the bridge to both ends as a quarter sine to this power: a rounded hill whose sides run
 * out nearly straight. Chosen by us after shapes that makers describe; the mean of that power is Γ(1.15) / (√π Γ(1.65)).
 */
const BAR_FALL = { power: 1.3, mean: 0.5848262856684767 };

/** Height of the trimmed bar at a share of the way from an end (0) to the bridge (1), mm. */
export function barHeightAt(
  { barHeightMm, barEndHeightMm }: Pick<BarAndPost, 'barHeightMm' | 'barEndHeightMm'>,
  shareToBridge: number,
): number {
  const rise = power(sin((Math.PI / 2) * Math.min(1, Math.max(0, shareToBridge))), BAR_FALL.power);
  return barEndHeightMm + (barHeightMm - barEndHeightMm) * rise;
}

/** Volume of the bar, mm³: its thickness times its height, which falls from the bridge to both ends. */
export function barVolumeMm3({ bar, barLengthMm, barHeightMm, barEndHeightMm }: BarAndPost): number {
  const meanHeightMm = barEndHeightMm + BAR_FALL.mean * (barHeightMm - barEndHeightMm);
  return 2 * bar.halfWidthMm * barLengthMm * meanHeightMm;
}
