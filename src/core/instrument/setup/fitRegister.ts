import { atan } from '../../base/index.ts';
import type { RegisterEntry } from '../../quantity/index.ts';
import { type BarShape, bevelRad } from './barShape.ts';
import type { PostEnd, PostShape } from './postShape.ts';

const TOP = ['thicknessTopMiddle', 'thicknessTopBouts', 'thicknessTopFlanks', 'thicknessTopChannel'];
const BACK = ['thicknessBackMiddle', 'thicknessBackBouts', 'thicknessBackFlanks', 'thicknessBackChannel'];
const POST = ['post.fromCentre', 'post.fromLowerEnd', 'postDiameter'];

/** How bar and post are cut to the insides of the plates, as numbers for the register. */
export function fitEntries(bar: BarShape, post: PostShape): readonly RegisterEntry[] {
  const faces = bar.places.map(({ faceMm }) => faceMm);
  const ends = (plate: 'top' | 'back', { outward, toNeck }: PostEnd, from: readonly string[]) => [
    entry(
      `post.${plate}EndOutward`,
      degrees(atan(outward)),
      'deg',
      [...POST, ...from],
      `end ${plate === 'top' ? 'under the top' : 'on the back'}: how it rises outward from the centre line`,
    ),
    entry(
      `post.${plate}EndToNeck`,
      degrees(atan(toNeck)),
      'deg',
      [...POST, ...from, ...(plate === 'top' ? ['ribHeightTail', 'ribHeightNeck'] : [])],
      `end ${plate === 'top' ? 'under the top' : 'on the back'}: how it rises toward the neck`,
    ),
  ];
  return [
    entry(
      'bar.faceRise',
      Math.max(...faces) - Math.min(...faces),
      'mm',
      ['bar.atBridge', 'bar.lowerEnd', 'bar.upperEnd', 'top.rise', 'barSpring', ...TOP],
      'glue face, from its lowest to its highest place',
    ),
    entry(
      'bar.bevelAtBridge',
      degrees(bevelRad(bar, bar.bridgeMm)),
      'deg',
      ['bar.atBridge', 'barThickness', 'top.rise', ...TOP],
      'glue face across the bar, falling away outward',
    ),
    ...ends('top', post.top, ['top.rise', ...TOP]),
    ...ends('back', post.back, ['back.rise', ...BACK]),
  ];
}

function degrees(rad: number): number {
  return (rad * 180) / Math.PI;
}

function entry(
  name: string,
  value: number,
  unit: RegisterEntry['unit'],
  from: readonly string[],
  how: string,
): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from, how } };
}
