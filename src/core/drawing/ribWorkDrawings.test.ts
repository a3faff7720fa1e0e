import fc from 'fast-check';
import { expect, test } from 'vitest';
import { letteringFaults } from '../../../test/laws/lettering.ts';
import { drawingFaults, sliverFaults } from '../../../test/laws/parts.ts';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../test/laws/partsSamples.ts';
import { randomDesign } from '../../../test/laws/randomDesigns.ts';
import { boundsOf, type Chain, nearestOn, sampleChain } from '../curve/index.ts';
import type { Design } from '../design/index.ts';
import { planParts } from '../instrument/index.ts';
import { blockDrawings } from './blockDrawings.ts';
import { blockGaugeDrawings } from './blockGaugeDrawings.ts';
import { caulDrawings } from './caulDrawings.ts';
import { cornerJointDrawing } from './cornerJointDrawing.ts';
import { cornerTemplateDrawings } from './cornerTemplateDrawings.ts';
import type { Drawing } from './drawing.ts';
import { liningDrawings } from './liningDrawings.ts';
import { overhangGaugeDrawings } from './overhangGaugeDrawings.ts';
import { ribHeightGaugeDrawing } from './ribHeightGaugeDrawing.ts';
import { ribScheduleDrawing } from './ribScheduleDrawing.ts';
import { ribStripDrawings } from './ribStripDrawings.ts';

/** mm. What laser, print and hand can hold together; the wood of a template is nowhere thinner. */
const LEAST_WOOD_MM = 1.5;

type Change = Parameters<typeof sampleDesign>[1];

function partsOf(family: (typeof FAMILIES)[number], change: Change = {}, ribs: Design['ribs'] = {}) {
  const plan = planParts({ ...sampleDesign(family, change), ribs }, sampleHalf(family));
  if (!plan.ok) throw new Error(JSON.stringify(plan.faults));
  return plan.value;
}

function cutPieces(plan: ReturnType<typeof partsOf>): readonly Drawing[] {
  return [
    ...blockGaugeDrawings(plan),
    ...caulDrawings(plan),
    ...liningDrawings(plan),
    ribHeightGaugeDrawing(plan),
    ...overhangGaugeDrawings(plan, { boutsMm: 2.4, cornersMm: 2.2 }),
  ];
}

function cutOf(drawing: Drawing | undefined): Chain<'drawing'> {
  const line = drawing?.lines.find(({ meaning }) => meaning === 'cut');
  if (!line) throw new Error('nothing to cut');
  return line.chain;
}

test.each(FAMILIES)('everything drawn for the garland of a %s can be cut, read and lettered', (family) => {
  for (const ribs of [
    {},
    { joint: 'mitred', lowerRib: 'one-piece', linings: 'kerfed', liningsLetIn: 'all' },
  ] as const) {
    const plan = partsOf(family, { overhang: 3, ribHeightNeck: 29 }, ribs);
    const drawings = [
      ...cutPieces(plan),
      ribScheduleDrawing(plan),
      cornerJointDrawing(plan),
      ...ribStripDrawings(plan),
      ...blockDrawings(plan),
      ...cornerTemplateDrawings(plan),
    ];
    expect(drawings.flatMap(drawingFaults)).toEqual([]);
    expect(drawings.flatMap(letteringFaults)).toEqual([]);
    expect(new Set(drawings.map(({ name }) => name)).size).toBe(drawings.length);
  }
});

test('no piece that is cut has a sliver, in three hundred designs of all sizes', () => {
  let looked = 0;
  for (const drawn of fc.sample(randomDesign, { numRuns: 300, seed: 11 })) {
    const plan = drawn && planParts(drawn.design, drawn.half);
    if (!plan?.ok) continue;
    for (const drawing of cutPieces(plan.value)) {
      if (!drawing.lines.some(({ meaning }) => meaning === 'cut')) continue;
      looked++;
      expect(sliverFaults(cutOf(drawing), LEAST_WOOD_MM), drawing.name).toEqual([]);
      for (const { chain } of drawing.lines.filter(({ meaning }) => meaning === 'cut-inside'))
        for (const at of sampleChain(chain, 0.05))
          expect(nearestOn(cutOf(drawing), at).distanceMm, drawing.name).toBeGreaterThan(LEAST_WOOD_MM);
    }
  }
  expect(looked).toBeGreaterThan(3000);
});

test('a sliver is found', () => {
  const comb: Chain<'drawing'> = {
    closed: true,
    vertices: [
      [0, 0],
      [20, 0],
      [20, 10],
      [11, 10],
      [11, 20],
      [9.8, 20],
      [9.8, 10],
      [0, 10],
    ].map(([x = 0, y = 0]) => ({ x, y, bulge: 0 })),
  };
  expect(sliverFaults(comb, LEAST_WOOD_MM).length).toBeGreaterThan(0);
  expect(sliverFaults(comb, 1)).toEqual([]);
});

test('a rib in one piece is drawn whole, its middle bend over the centre line', () => {
  const plan = partsOf('violin', {}, { lowerRib: 'one-piece' });
  const [lower] = ribStripDrawings(plan);
  const strip = lower?.lines[0]?.chain;
  if (!strip) throw new Error('no strip');
  const { min, max } = boundsOf(strip);
  expect(max.x - min.x).toBeCloseTo(plan.ribs.lowerBout.cutAcrossMm ?? 0, 9);
  expect(min.x).toBeCloseTo(-max.x, 9);
  expect(plan.ribs.count).toBe(5);
  const texts = ribScheduleDrawing(plan).lettering.map(({ text }) => text);
  expect(texts).toContain('lower rib, in one');
  expect(texts).toContain((plan.ribs.lowerBout.cutAcrossMm ?? 0).toFixed(0));
});

test('the schedule tells every bend of every rib, the tightest and what it asks for', () => {
  const texts = (change: Change) =>
    ribScheduleDrawing(partsOf('violin', change)).lettering.map(({ text }) => text);
  const { ribs } = partsOf('violin');
  for (const { developed } of [ribs.lowerBout, ribs.cBout, ribs.upperBout])
    for (const { insideRadiusMm } of developed.stretches)
      expect(texts({})).toContain(insideRadiusMm?.toFixed(1));
  expect(
    texts({ ribThickness: 0.4, liningThickness: 0.4 }).filter((text) => /strap|thin/.test(text)),
  ).toEqual([]);
  expect(texts({ ribThickness: 1.2 })).toContain('tightest, strap');
  expect(texts({ ribThickness: 3 }).some((text) => /tightest, thin to \d\.\d/.test(text))).toBe(true);
});

test('a tapered garland has a fork with a step for each height, a level one a single step', () => {
  const steps = (change: Change) => cutOf(ribHeightGaugeDrawing(partsOf('violin', change))).vertices.length;
  expect(steps({ ribHeightNeck: 30, ribHeightTail: 30 })).toBe(8);
  expect(steps({ ribHeightNeck: 29, ribHeightTail: 31 })).toBe(14);
});

test('the mortises stand on the sheets of the corner blocks, with their size', () => {
  const sheets = blockDrawings(partsOf('violin'));
  const lower = sheets.find(({ name }) => name === 'block-lower-corner-treble');
  expect(lower?.lines.filter(({ meaning }) => meaning === 'score')).toHaveLength(2);
  expect(lower?.notes.join(' ')).toMatch(/1\.8 mm wide along the rib, 7\.0 mm deep.*waist side 6\.0 mm/);
  const all = blockDrawings(partsOf('violin', {}, { liningsLetIn: 'all' }));
  expect(all.find(({ name }) => name === 'block-upper-corner-bass')?.notes.join(' ')).toMatch(
    /bout side 6\.0 mm/,
  );
});

test('the hot iron, the glue and the chisel have their cautions', () => {
  const notes = (drawings: readonly Drawing[]) => drawings.map((drawing) => drawing.notes.join(' '));
  const plan = partsOf('cello');
  for (const text of notes([
    ...ribStripDrawings(plan),
    ribScheduleDrawing(plan),
    liningDrawings(plan)[0] as Drawing,
  ]))
    expect(text).toMatch(/bending iron burns/);
  for (const text of notes(caulDrawings(plan))) expect(text).toMatch(/glue.*scald/);
  expect(notes(liningDrawings(plan))[1]).toMatch(/Chisels slip/);
});
