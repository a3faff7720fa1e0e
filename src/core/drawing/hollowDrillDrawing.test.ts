import { expect, test } from 'vitest';
import { letteringFaults } from '../../../test/laws/lettering.ts';
import { drawingFaults } from '../../../test/laws/parts.ts';
import { nearestOn } from '../curve/index.ts';
import { draftDesign } from '../design/index.ts';
import { deriveInstrument, hollowHoles } from '../instrument/index.ts';
import { chosen } from '../quantity/index.ts';
import { hollowDrillDrawing } from './hollowDrillDrawing.ts';

const bodyLength = { value: 355, unit: 'mm', origin: chosen('test') } as const;
const drafted = draftDesign({ family: 'violin', name: 'violin', values: { bodyLength } });
const made = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
if (!made.ok) throw new Error('refused');
const { hollows, roughing } = made.value;
const holes = hollowHoles(hollows.back, roughing.back);
const chart = hollowDrillDrawing(hollows.back, roughing.back, holes, 'Test violin');

test('the chart keeps what every drawing keeps, and is printed only', () => {
  expect(drawingFaults(chart)).toEqual([]);
  expect(letteringFaults(chart)).toEqual([]);
  expect(chart.routes).toEqual(['print']);
  expect(chart.lines.every(({ meaning }) => meaning === 'draw')).toBe(true);
});

test('every hole carries its depth from the gluing face and, in brackets, the wood left under it', () => {
  const written = chart.lettering.map(({ text }) => text);
  expect(holes.length).toBeGreaterThan(100);
  holes.forEach(({ depthMm, leftMm }, index) => {
    expect(written[2 * index]).toBe(depthMm.toFixed(1));
    expect(written[2 * index + 1]).toBe(`(${leftMm.toFixed(1)})`);
  });
});

test('a line shows where the gluing face ends, from the centre line to the centre line, outside all holes', () => {
  const [, face] = chart.lines;
  const ends = [face?.chain.vertices[0], face?.chain.vertices.at(-1)];
  for (const end of ends) expect(end?.x).toBeCloseTo(0, 6);
  expect((ends[1]?.y ?? 0) - (ends[0]?.y ?? 0)).toBeGreaterThan(300);
  if (!face) throw new Error('no line');
  for (const { at } of holes)
    expect(nearestOn(face.chain, { x: at.x, y: at.y }).distanceMm).toBeGreaterThan(6);
});

test('the notes say what the plate lies on, when to drill, and what can hurt', () => {
  const notes = chart.notes.join(' ');
  expect(notes).toMatch(/only after the outside is finished and its arch has been checked/);
  expect(notes).toMatch(/in a cradle.*clamped/);
  expect(notes).toMatch(/nearer than 0\.5 mm to the finished inside/);
  expect(notes).toMatch(/eye and ear protection.*manual of the machine/);
});
