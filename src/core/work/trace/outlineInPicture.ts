import { cos, type Point, point, sin } from '../../base/index.ts';
import { type Chain, lengthOf, pointAlong } from '../../curve/index.ts';
import type { ExpectedPlace, RestoredOutline } from '../../photo/index.ts';

/**
 * Where a restored outline lies in a picture of which `toPicture` says where the scene's places lie: by side, section
 * and the share of the way up along the section.
 */
export function outlineInPicture(
  { half, axis, lowerEndMm }: RestoredOutline,
  face: 'top' | 'back',
  toPicture: (at: Point<'scene'>) => Point<'photo'>,
): ExpectedPlace {
  const [c, s] = [cos(axis.headingRad), sin(axis.headingRad)];
  const along = (chain: Chain<'body'>) => {
    const lengthMm = lengthOf(chain);
    return (share: number) => pointAlong(chain, share * lengthMm);
  };
  const [lower, waist, upper] = [along(half.lowerBout), along(half.cBout), along(half.upperBout)];
  const between = (from: Point<'body'>, to: Point<'body'>) => (share: number) =>
    point<'body'>(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
  const sections = {
    lowerBout: lower,
    lowerCorner: between(lower(1), waist(0)),
    cBout: waist,
    upperCorner: between(waist(1), upper(0)),
    upperBout: upper,
  };
  return (side, section, share) => {
    const at = sections[section](share);
    // On the top the treble half is right of the axis as seen, on the back left.
    const x = (side === 'treble') === (face === 'top') ? at.x : -at.x;
    const y = at.y + lowerEndMm;
    return toPicture(point(axis.through.x + s * x + c * y, axis.through.y - c * x + s * y));
  };
}
