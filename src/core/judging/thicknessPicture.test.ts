import { expect, test } from 'vitest';
import { areaOf, momentsOf } from '../curve/index.ts';
import { draftDesign } from '../design/index.ts';
import { deriveInstrument, thicknessAt } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { thicknessPicture } from './thicknessPicture.ts';

const bodyLength = { value: 355, unit: 'mm', origin: chosen('test') } as const;
const thickness = { top: { post: { extra: 0.4 } } };
const drafted = draftDesign({ family: 'violin', name: 'sample', values: { bodyLength }, thickness });
const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
if (!derived.ok) throw new Error('refused');
const instrument = derived.value;

test('a picture of thickness shows post and bar where they stand, each plate seen from outside, and the wood under them', () => {
  const dashed = (plate: 'back' | 'top') =>
    thicknessPicture(instrument, plate)
      .lines.filter(({ dashMm }) => dashMm)
      .map(({ chain }) => chain);
  const [postOnTop, bar, ...more] = dashed('top');
  const [postOnBack, ...others] = dashed('back');
  if (!postOnTop || !bar || !postOnBack) throw new Error('not drawn');
  expect([...more, ...others]).toEqual([]);
  expect(areaOf(postOnTop)).toBeCloseTo(Math.PI * 9, 9);
  const { post } = instrument.hollows.barAndPost;
  expect(momentsOf(postOnTop).centroid.x).toBeCloseTo(post.from.x, 9);
  expect(momentsOf(postOnBack).centroid.x).toBeCloseTo(-post.from.x, 9);
  expect(momentsOf(bar).centroid.x).toBeLessThan(0);
  const says = thicknessPicture(instrument, 'top').lettering.map(({ lettering }) => lettering.text);
  const underMm = thicknessAt(instrument.hollows.top.thickness, post.from.x, post.from.y);
  expect(says.join('\n')).toContain(`${Number(underMm.toFixed(2))} mm under the middle of the post`);
});
