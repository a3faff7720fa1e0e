import { point } from '../base/index.ts';
import { type Chain, chainThrough, containsPoint } from '../curve/index.ts';
import type { PlateArch } from '../instrument/index.ts';
import type { HeightField } from '../surface/index.ts';

/** Points of the channel line, half a millimetre apart, of which one is taken: enough to look at. */
const EVERY = 3;

/** The arch without channel and edge: inside the channel's lowest line, closed, anticlockwise. */
export function channelArea({ channel }: PlateArch): Chain<'body'> {
  const { points } = channel.line;
  const treble = points.filter((_, index) => index % EVERY === 0 || index === points.length - 1);
  const bass = treble.filter(({ x }) => x > 0).toReversed();
  return chainThrough(
    [...treble.map(({ x, y }) => point<'body'>(x, y)), ...bass.map(({ x, y }) => point<'body'>(-x, y))],
    true,
  );
}

/** A field without its places outside an area. */
export function insideArea(field: HeightField, area: Chain<'body'>): HeightField {
  const { columns, fromXMm, fromYMm, stepMm } = field;
  const zMm = field.zMm.map((z, index) => {
    if (Number.isNaN(z)) return z;
    const at = point<'body'>(
      fromXMm + (index % columns) * stepMm,
      fromYMm + Math.floor(index / columns) * stepMm,
    );
    return containsPoint(area, at) ? z : Number.NaN;
  });
  return { ...field, zMm };
}
