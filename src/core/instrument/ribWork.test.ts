import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { contourFaults } from '../../../test/laws/parts.ts';
import { randomDesign } from '../../../test/laws/randomDesigns.ts';
import { type Point, WELD_MM } from '../base/index.ts';
import { areaOf, type Chain, nearestOn } from '../curve/index.ts';
import type { PlanParts } from './plan.ts';
import { planParts } from './planParts.ts';

const SOUND = 1000;

/** mm². A millionth of the smallest garland in plan. */
const AREA_MM2 = 0.001;

let bodies: readonly PlanParts[] = [];
let refusedInWords: readonly string[] = [];

beforeAll(() => {
  const sound: PlanParts[] = [];
  const refused: string[] = [];
  for (const drawn of fc.sample(randomDesign, { numRuns: SOUND + 100, seed: 5 })) {
    if (drawn === null || sound.length === SOUND) continue;
    const parts = planParts(drawn.design, drawn.half);
    if (parts.ok) sound.push(parts.value);
    else refused.push(...parts.faults.map(({ code }) => code));
  }
  bodies = sound;
  refusedInWords = refused;
});

test('a thousand designs within the usual ranges are sound', () => {
  expect(bodies).toHaveLength(SOUND);
  expect(refusedInWords).toEqual([]);
});

test('ribs close round the garland: they fill all between its faces, and meet on the tip of the block', () => {
  let meeting = 0;
  for (const { ribs, blocks } of bodies) {
    const filled = [ribs.lowerBout, ribs.cBout, ribs.upperBout].reduce(
      (sum, { piece }) => sum + 2 * areaOf(piece.plan),
      0,
    );
    expect(Math.abs(filled - (areaOf(ribs.outer.chain) - areaOf(ribs.inner.chain)))).toBeLessThan(AREA_MM2);
    for (const which of ['lower', 'upper'] as const) {
      const joint = ribs.joints[which];
      const block = which === 'lower' ? blocks.lowerCorner : blocks.upperCorner;
      const inner = [joint.arrivingEnd.vertices.at(-1), joint.leavingEnd.vertices.at(-1)];
      for (const at of inner) expect(onLine(block.outline, at)).toBe(true);
      if (joint.seam) {
        meeting++;
        expect(inner[0]).toMatchObject({ x: inner[1]?.x, y: inner[1]?.y });
        expect(onLine(ribs.outer.chain, joint.seam.vertices.at(-1))).toBe(true);
      } else expect(joint.blockShowsMm).toBeGreaterThan(0);
    }
  }
  expect(meeting).toBeGreaterThan(SOUND / 20);
});

test('every piece in plan is one simple closed line', () => {
  for (const { ribs, linings, cauls } of bodies) {
    const pieces = [
      ...[ribs.lowerBout, ribs.cBout, ribs.upperBout].map(({ piece }) => piece.plan),
      ...[linings.lower, linings.waist, linings.upper].map(({ plan }) => plan),
      ...linings.mortises.map(({ plan }) => plan),
    ];
    for (const piece of pieces) expect(contourFaults(piece, 'anticlockwise')).toEqual([]);
    for (const { piece } of cauls.cauls) expect(contourFaults(piece.outline, 'anticlockwise')).toEqual([]);
  }
});

test('linings lie on the ribs and end on blocks: at their faces, or in mortises that stay inside the block', () => {
  for (const { ribs, linings, blocks } of bodies) {
    const { lower, lowerCorner, upperCorner, upper } = blocks;
    const ends = [
      [linings.lower, lower, lowerCorner],
      [linings.waist, lowerCorner, upperCorner],
      [linings.upper, upperCorner, upper],
    ] as const;
    for (const [lining, from, to] of ends) {
      const { vertices } = lining.glueFace;
      for (const at of vertices) expect(nearestOn(ribs.inner.half, at).distanceMm).toBeLessThan(WELD_MM);
      expect(inOrOn(from.outline, vertices[0])).toBe(true);
      expect(inOrOn(to.outline, vertices.at(-1))).toBe(true);
    }
    const letIn = linings.choice.liningsLetIn === 'all' ? 4 : 2;
    expect(linings.mortises).toHaveLength(letIn);
    for (const { plan, block, reachMm } of linings.mortises) {
      const { outline } = block === 'lower' ? lowerCorner : upperCorner;
      for (const at of plan.vertices) expect(inOrOn(outline, at)).toBe(true);
      expect(reachMm).toBeGreaterThan(linings.thicknessMm);
    }
  }
});

test('cauls are as thick as asked at their thinnest, and their faces lie a facing outside the ribs', () => {
  for (const { ribs, cauls } of bodies) {
    expect(cauls.cauls).toHaveLength(7);
    for (const { piece } of cauls.cauls) {
      const { face, backMm, backAt, pressRad } = piece;
      const middle = ((face.vertices[0]?.x ?? 0) + (face.vertices.at(-1)?.x ?? 0)) / 2;
      for (const { x, y } of face.vertices) {
        expect(backMm - y).toBeGreaterThan(8);
        const [across, down] = [x - middle, backMm - y];
        const at = {
          x: backAt.x + down * Math.cos(pressRad) - across * Math.sin(pressRad),
          y: backAt.y + down * Math.sin(pressRad) + across * Math.cos(pressRad),
        };
        expect(nearestOn(ribs.outer.chain, at).distanceMm).toBeCloseTo(cauls.facingMm, 6);
      }
    }
  }
});

function onLine(chain: Chain<'body'>, at: Point<'body'> | undefined): boolean {
  return at !== undefined && nearestOn(chain, at).distanceMm < WELD_MM;
}

function inOrOn(chain: Chain<'body'>, at: Point<'body'> | undefined): boolean {
  // On the left of an anticlockwise line lies its inside.
  return at !== undefined && (onLine(chain, at) || nearestOn(chain, at).side === 1);
}
