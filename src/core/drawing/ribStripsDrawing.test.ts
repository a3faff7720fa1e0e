import { expect, test } from 'vitest';
import { drawnInstrument } from '../../../test/gallery/drawnInstruments.ts';
import { drawingFaults } from '../../../test/laws/parts.ts';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../test/laws/partsSamples.ts';
import { boundsOf } from '../curve/index.ts';
import { planParts } from '../instrument/index.ts';
import { ribStripsDrawing } from './ribStripsDrawing.ts';

function stripsOf(family: (typeof FAMILIES)[number], change: Parameters<typeof sampleDesign>[1] = {}) {
  const plan = planParts(sampleDesign(family, change), sampleHalf(family));
  if (!plan.ok) throw new Error(JSON.stringify(plan.faults));
  return { plan: plan.value, drawing: ribStripsDrawing(plan.value) };
}

test.each(FAMILIES)(
  'the strips of a %s are as long as their ribs laid flat, with what is trimmed',
  (family) => {
    const { plan, drawing } = stripsOf(family);
    const strips = drawing.lines.filter(({ chain }) => chain.closed).map(({ chain }) => boundsOf(chain));
    const { lowerBout, cBout, upperBout } = plan.ribs;
    expect(strips.map(({ min, max }) => max.x - min.x)).toEqual(
      [lowerBout, cBout, upperBout].map(({ developed }) => expect.closeTo(developed.lengthMm + 20, 9)),
    );
    expect(drawing.lines.filter(({ meaning }) => meaning === 'score')).toHaveLength(6);
    expect(drawingFaults(drawing)).toEqual([]);
    const [width] = drawing.checks;
    expect(width?.valueMm).toBeCloseTo(lowerBout.developed.lengthMm + 20, 9);
  },
);

test('strips do not lie over each other, nor does their lettering', () => {
  for (const shown of ['violin', 'quarter', 'cello'] as const) {
    const drawing = drawnInstrument(shown).find(({ name }) => name === 'rib-strips');
    const strips =
      drawing?.lines.filter(({ chain }) => chain.closed).map(({ chain }) => boundsOf(chain)) ?? [];
    const names = drawing?.lettering.filter(({ text }) => / RIB · /.test(text)) ?? [];
    expect(names).toHaveLength(3);
    strips.slice(1).forEach((strip, i) => {
      const name = names[i + 1];
      expect(strip.min.y).toBeGreaterThan(strips[i]?.max.y ?? 0);
      expect((name?.at.y ?? 0) - (name?.heightMm ?? 0)).toBeGreaterThan(strips[i]?.max.y ?? 0);
    });
  }
});

test('each stretch tells the radius inside its bend, hollow ones as such', () => {
  const { plan, drawing } = stripsOf('violin');
  const { stretches } = plan.ribs.cBout.developed;
  const texts = drawing.lettering.map(({ text }) => text);
  for (const { bends, insideRadiusMm } of stretches) {
    expect(bends).toBe('hollow');
    expect(texts).toContain(`) R ${insideRadiusMm?.toFixed(1)} (`);
  }
});

test('a tapered garland has its taper drawn and told, and cautions stand on the sheet', () => {
  const { drawing } = stripsOf('violin', { ribHeightNeck: 29, ribHeightTail: 31 });
  const [lower] = drawing.lines;
  const top = lower?.chain.vertices.filter(({ y }) => y > 1).map(({ x, y }) => ({ x, y })) ?? [];
  const [right, left] = [top[0]?.y ?? 0, top.at(-1)?.y ?? 0];
  expect(left).toBeCloseTo(31, 9);
  expect(right).toBeLessThan(30.5);
  expect(drawing.lettering.map(({ text }) => text).join()).toMatch(/31 to 30\.\d mm high/);
  expect(drawing.notes.join(' ')).toMatch(/bending iron burns.*plane and knife/);
});
