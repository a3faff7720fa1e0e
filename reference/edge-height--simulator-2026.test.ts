/**
 * The height of the edge above the sheet from two photographs alone, against simulated photographs whose truth the code under test
 * never sees (reference/simulator: own camera, own shapes, ray-traced). Claimed: the height lies inside its stated interval and
 * within 1 mm; the restored body is as long as it is.
 */
import { expect, test } from 'vitest';
import { markerFinder, sheet, trace } from '../src/core/index.ts';
import { chanceFrom } from './simulator/chance.ts';
import { photograph } from './simulator/photograph.ts';
import { drawSheetScene } from './simulator/sheetScene.ts';
import { sheetTexture } from './simulator/sheetTexture.ts';

test('two photographs tell how high the edge stands', () => heightIsTold(12), 400_000);

test('two photographs by two lenses of which nothing is noted tell it too', () => heightIsTold(11), 400_000);

async function heightIsTold(seed: number): Promise<void> {
  const page = await sheet('A3');
  if (!page.ok) throw new Error();
  const drawn = drawSheetScene(seed, sheetTexture(page.value), {
    megapixels: 5,
    tiltDegrees: [8, 14],
    views: 2,
  });
  const photographs = [];
  for (const [i, camera] of drawn.cameras.entries()) {
    const made = await photograph(drawn.scene, camera, drawn.how, chanceFrom(seed + 1000 * (i + 1)));
    photographs.push({ name: `view ${i + 1}`, picture: made.picture });
  }
  const traced = trace(
    {
      photographs: photographs as never,
      face: drawn.body.face,
      sheetBarMm: drawn.told.sheetBarMm,
      known: [],
    },
    markerFinder(),
  );
  if (!traced.ok) throw new Error(JSON.stringify(traced.faults));
  const { view, restored, lengthPlusMinusMm } = traced.value;
  if (view.kind !== 'camera') throw new Error('no sheet was seen');
  const off = view.planeHeightMm - drawn.body.edgeHeightMm;
  const longer = restored.bodyLengthMm - drawn.body.meant.lengthMm;
  expect(Math.abs(off)).toBeLessThan(1);
  expect(Math.abs(off)).toBeLessThan(view.planeHeightPlusMinusMm);
  expect(Math.abs(longer)).toBeLessThan(lengthPlusMinusMm);
}
