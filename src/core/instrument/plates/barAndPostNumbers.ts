import { type Finding, type Point, point } from '../../base/index.ts';
import { containsPoint } from '../../curve/index.ts';
import type { Design } from '../../design/index.ts';
import { chosen, type RegisterEntry, type Unit } from '../../quantity/index.ts';
import { type BarAndPost, barVolumeMm3 } from './barAndPost.ts';
import { type HollowPlate, insideHeight } from './hollow.ts';
import { thicknessAt } from './thicknessMap.ts';
import { thicknessNames } from './thicknessNames.ts';

/** What bar and post are measured in. */
export interface BarAndPostBox {
  readonly back: HollowPlate;
  readonly top: HollowPlate;
  readonly topMassG: number;
  readonly ribHeightTailMm: number;
  readonly ribHeightNeckMm: number;
}

const POST_FROM = ['bridgeFeet', 'footBeyondBar', 'postDiameter', 'bridgeFootThickness', 'stop'] as const;
const BAR_FROM = [
  'bridgeFeet',
  'footBeyondBar',
  'barThickness',
  'barLength',
  'upperBout',
  'lowerBout',
  'stop',
] as const;

/**
 * Where bar and post stand, the wood of the plates there, and what both weigh, as numbers for the register. Bar and post are
 * taken to be of the top's wood.
 */
export function barAndPostEntries(
  design: Design,
  places: BarAndPost,
  box: BarAndPostBox,
): readonly RegisterEntry[] {
  const { post, bar } = places;
  const bridgeMm = box.top.arch.bodyLengthMm - (design.values.stop?.value ?? Number.NaN);
  const underBridge = barAt(places, bridgeMm);
  const densityG = (design.values.densityTop?.value ?? Number.NaN) / 1_000_000;
  const volumeMm3 = barVolumeMm3(places);
  const postMm = postLength(box, post.from);
  const postMm3 = Math.PI * post.halfWidthMm ** 2 * postMm;
  const thickness = (plate: HollowPlate): readonly string[] =>
    Object.values(thicknessNames(plate.arch.plate));
  const inner = 'from the centre line to the inner face, the same share of the half width at both bouts';
  return [
    entry(
      'post.fromCentre',
      Math.abs(post.from.x),
      'mm',
      POST_FROM,
      'middle of the post, under the highest string’s side',
    ),
    entry('post.fromLowerEnd', post.from.y, 'mm', POST_FROM, 'half a foot behind the treble foot'),
    entry('bar.atUpperBout', places.barAtUpperBoutMm, 'mm', BAR_FROM, inner),
    entry(
      'bar.atBridge',
      Math.abs(underBridge.x) - bar.halfWidthMm,
      'mm',
      BAR_FROM,
      'to the inner face, under the lowest string’s side',
    ),
    entry('bar.atLowerBout', places.barAtLowerBoutMm, 'mm', BAR_FROM, inner),
    entry('bar.lowerEnd', bar.from.y - bar.halfWidthMm, 'mm', BAR_FROM, 'above the lower end of the body'),
    entry('bar.upperEnd', bar.to.y + bar.halfWidthMm, 'mm', BAR_FROM, 'above the lower end of the body'),
    ...[box.back, box.top].flatMap(wishEntries),
    ...[box.back, box.top].map((plate) =>
      entry(
        `${plate.arch.plate}.thicknessAtPost`,
        thicknessAt(plate.thickness, acrossOn(plate, post.from.x), post.from.y),
        'mm',
        [...thickness(plate), 'post.fromCentre', 'post.fromLowerEnd'],
        'wood under the middle of the post, square to the outside',
      ),
    ),
    entry(
      'top.thicknessAtBar',
      thicknessAt(box.top.thickness, underBridge.x, underBridge.y),
      'mm',
      [...thickness(box.top), 'bar.atBridge'],
      'wood under the middle of the bar at the bridge, the bar not counted',
    ),
    entry(
      'bar.volume',
      volumeMm3 / 1000,
      'cm³',
      ['barLength', 'barThickness', 'barHeight', 'barEndHeight'],
      'highest at the bridge, falling to both ends as it is trimmed',
    ),
    entry('bar.mass', densityG * volumeMm3, 'g', ['bar.volume', 'densityTop'], 'of the top’s wood'),
    entry(
      'top.massWithBar',
      box.topMassG + densityG * volumeMm3,
      'g',
      ['top.mass', 'bar.mass'],
      'sound holes not counted',
    ),
    entry(
      'post.length',
      postMm,
      'mm',
      ['ribHeightTail', 'ribHeightNeck', 'back.volume', 'top.volume', 'post.fromCentre'],
      'from inside to inside along its middle, before its ends are cut to the slopes',
    ),
    entry(
      'post.mass',
      densityG * postMm3,
      'g',
      ['post.length', 'postDiameter', 'densityTop'],
      'of the top’s wood',
    ),
  ];
}

/** What the design asks for beside the map, where it asks for something. */
function wishEntries({ arch, thickness }: HollowPlate): readonly RegisterEntry[] {
  return thickness.areas
    .filter(({ extraMm }) => extraMm !== 0)
    .flatMap(({ name, extraMm, reachMm }): readonly RegisterEntry[] => [
      {
        name: `thickness.${arch.plate}.${name}.extra`,
        value: extraMm,
        unit: 'mm',
        origin: chosen('in the design: thicker there than the map'),
      },
      {
        name: `thickness.${arch.plate}.${name}.reach`,
        value: reachMm,
        unit: 'mm',
        origin: chosen('beyond it that fades into the map; 15 mm on a violin unless said'),
      },
    ]);
}

/** Where the bar does not lie in the hollow with its whole length: `bar.too-long`. */
export function barFindings({ bar }: BarAndPost, top: HollowPlate): readonly Finding[] {
  const ends = [
    point<'body'>(bar.from.x, bar.from.y - bar.halfWidthMm),
    point<'body'>(bar.to.x, bar.to.y + bar.halfWidthMm),
  ];
  const astray = ends.filter((end) => !containsPoint(top.line, end));
  if (astray.length === 0) return [];
  return [
    {
      code: 'bar.too-long',
      weight: 'contradiction',
      at: 'barLength',
      found: `a bar that runs over block or lining at its ${astray.map(({ y }) => (y < (bar.from.y + bar.to.y) / 2 ? 'lower' : 'upper')).join(' and ')} end`,
      need: 'a bar that ends inside the hollow of the top',
      remedy: 'shorten it',
    },
  ];
}

/** The middle of the bar at a height above the lower end. */
function barAt({ bar: { from, to } }: BarAndPost, yMm: number): Point<'body'> {
  return point(from.x + ((to.x - from.x) * (yMm - from.y)) / (to.y - from.y), yMm);
}

/** A place of the body across a plate as one looks at its outside. */
function acrossOn({ arch }: HollowPlate, xMm: number): number {
  return arch.plate === 'back' ? -xMm : xMm;
}

/** From the inside of the back to that of the top at a place: both hollows and the ribs between the gluing faces. */
function postLength(box: BarAndPostBox, { x, y }: Point<'body'>): number {
  const { ribHeightTailMm: tail, ribHeightNeckMm: neck } = box;
  const ribsMm = tail + ((neck - tail) * y) / box.top.arch.bodyLengthMm;
  const hollowsMm = [box.back, box.top].map((plate) => insideHeight(plate, acrossOn(plate, x), y));
  return hollowsMm.reduce((sum, mm) => sum + mm, ribsMm);
}

function entry(name: string, value: number, unit: Unit, from: readonly string[], how: string): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from, how } };
}
