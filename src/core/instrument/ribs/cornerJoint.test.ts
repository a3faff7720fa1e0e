import { expect, test } from 'vitest';
import { contourFaults } from '../../../../test/laws/parts.ts';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../../test/laws/partsSamples.ts';
import { areaOf, containsPoint, nearestOn } from '../../curve/index.ts';
import type { RibChoice, ValueName } from '../../design/index.ts';
import { bodyOutline } from '../outline/bodyOutline.ts';
import { planValues } from '../planValues.ts';
import type { RibJoint } from './cornerJoint.ts';
import { flatPlace } from './flatPlace.ts';
import { ribLines } from './ribLines.ts';

const JOINTS: readonly RibJoint[] = ['bouts-over', 'waist-over', 'mitred'];

/** An overhang at which the ribs of the sample violin meet on the tip of the block. */
const MEETING = { overhang: 3 } as const;

function ribsOf(
  family: (typeof FAMILIES)[number],
  joint: RibJoint,
  change: Partial<Record<ValueName, number>> = {},
  corners: RibChoice['corners'] = 'parallel',
) {
  const outline = bodyOutline(sampleHalf(family));
  const values = planValues(sampleDesign(family, change));
  if (!outline.ok || !values.ok) throw new Error('refused');
  const ribs = ribLines(outline.value, values.value, { joint, corners });
  if (!ribs.ok) throw new Error(JSON.stringify(ribs.faults));
  return ribs.value;
}

test.each(FAMILIES.flatMap((family) => JOINTS.map((joint) => [family, joint] as const)))(
  'the ribs of a %s, %s, fill the garland: no gap, nothing twice',
  (family, joint) => {
    for (const [change, corners] of [
      [{}, 'parallel'],
      [{}, 'drawn-together'],
      [MEETING, 'parallel'],
      [{ overhang: 3.6 }, 'drawn-together'],
    ] as const) {
      const ribs = ribsOf(family, joint, change, corners);
      const pieces = [ribs.lowerBout, ribs.cBout, ribs.upperBout].map(({ piece }) => piece);
      for (const { plan } of pieces) expect(contourFaults(plan, 'anticlockwise')).toEqual([]);
      const filled = 2 * pieces.reduce((sum, { plan }) => sum + areaOf(plan), 0);
      expect(filled).toBeCloseTo(areaOf(ribs.outer.chain) - areaOf(ribs.inner.chain), 6);
    }
  },
);

test('ribs that meet do so from the tip of the block to the end of the corner', () => {
  for (const joint of JOINTS) {
    const { joints, inner, outer } = ribsOf('violin', joint, MEETING);
    for (const [which, corner] of [
      ['lower', joints.lower],
      ['upper', joints.upper],
    ] as const) {
      const seam = corner.seam?.vertices;
      if (!seam) throw new Error('no seam');
      expect(corner.blockShowsMm).toBe(0);
      expect(seam[0]).toMatchObject({ x: inner[`${which}Corner`].from.x, y: inner[`${which}Corner`].from.y });
      expect(nearestOn(outer.chain, seam.at(-1) ?? { x: 0, y: 0 }).distanceMm).toBeLessThan(1e-6);
    }
  }
});

test('the rib that goes over is the one that keeps its full thickness to the end', () => {
  const over = (joint: RibJoint) => {
    const { lowerBout, cBout, joints, outer } = ribsOf('violin', joint, MEETING);
    const middle = joints.lower.seam?.vertices.at(-1) ?? { x: 0, y: 0 };
    const { from, to } = outer.lowerCorner;
    return {
      bout: lowerBout.piece.to,
      waist: cBout.piece.from,
      boutShare: Math.hypot(middle.x - from.x, middle.y - from.y) / Math.hypot(to.x - from.x, to.y - from.y),
    };
  };
  expect(over('mitred').boutShare).toBeCloseTo(0.5, 9);
  expect(over('bouts-over').boutShare).toBeGreaterThan(0.52);
  expect(over('waist-over').boutShare).toBeLessThan(0.48);
  const { joints, outer } = ribsOf('violin', 'bouts-over', MEETING);
  const end = joints.lower.arrivingEnd.vertices[1] ?? { x: 0, y: 0 };
  expect(flatPlace(outer.sections.lowerBout, 1.1, end).insideMm).toBeCloseTo(1.1, 1);
});

test('a rib that covers the whole end leaves the other short of it', () => {
  const { joints, outer, cBout } = ribsOf('violin', 'bouts-over', { overhang: 3.6, cornerOverhang: 1.6 });
  expect(outer.lowerCorner.widthMm).toBeLessThan(1.2);
  expect(joints.lower.leavingFrom.fraction).toBeGreaterThan(0);
  expect(cBout.piece.from.outerMm).toBeGreaterThan(0);
  const covered = outer.lowerCorner.to;
  expect(containsPoint(cBout.piece.plan, { x: covered.x - 0.01, y: covered.y - 0.01 })).toBe(false);
});

test('ends that are cut off square reach as far out as the end of the corner on either face', () => {
  const { joints, lowerBout, cBout, inner } = ribsOf('violin', 'mitred', { overhang: 2.2 });
  expect(joints.lower.seam).toBeUndefined();
  expect(joints.lower.blockShowsMm).toBeCloseTo(inner.lowerCorner.widthMm, 12);
  expect(lowerBout.piece.to.outerMm).toBeCloseTo(lowerBout.developed.lengthMm, 9);
  // The bout rib comes up at a slant, so its inner face is the longer one.
  expect(lowerBout.piece.to.innerMm).toBeGreaterThan(lowerBout.piece.to.outerMm + 0.3);
  expect(cBout.piece.from.outerMm).toBeCloseTo(0, 9);
});

test('a corner where much of the block would show is named with the overhang that closes it', () => {
  const at = (overhang: number) => ribsOf('violin', 'mitred', { overhang });
  const finding = at(1).findings.find(({ code }) => code === 'ribs.block-shows');
  const more = Number(/by (\d+\.\d) mm/.exec(finding?.remedy ?? '')?.[1]);
  expect(more).toBeGreaterThan(1);
  expect(at(1 + more + 0.25).joints.lower.blockShowsMm).toBe(0);
});

test('the rib below is bevelled to the whole opening of the corner, mitred ones to half of it', () => {
  const at = (joint: RibJoint) => ribsOf('violin', joint, MEETING).joints.lower;
  const { openingRad } = at('mitred');
  expect(openingRad).toBeCloseTo(0.72, 2);
  expect(at('mitred').bevelRad).toEqual({ bout: openingRad / 2, waist: openingRad / 2 });
  expect(at('bouts-over').bevelRad).toEqual({ bout: 0, waist: openingRad });
  expect(at('waist-over').bevelRad).toEqual({ bout: openingRad, waist: 0 });
});
