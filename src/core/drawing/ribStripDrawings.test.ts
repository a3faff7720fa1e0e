import { expect, test } from 'vitest';
import { letteringFaults } from '../../../test/laws/lettering.ts';
import { drawingFaults } from '../../../test/laws/parts.ts';
import { FAMILIES, sampleDesign, sampleHalf } from '../../../test/laws/partsSamples.ts';
import { boundsOf } from '../curve/index.ts';
import { planParts } from '../instrument/index.ts';
import { ribStripDrawings } from './ribStripDrawings.ts';

function stripsOf(family: (typeof FAMILIES)[number], change: Parameters<typeof sampleDesign>[1] = {}) {
  const plan = planParts(sampleDesign(family, change), sampleHalf(family));
  if (!plan.ok) throw new Error(JSON.stringify(plan.faults));
  return { plan: plan.value, drawings: ribStripDrawings(plan.value) };
}

test.each(FAMILIES)(
  'the strips of a %s are as long as their ribs laid flat, with what is trimmed',
  (family) => {
    const { plan, drawings } = stripsOf(family);
    const { lowerBout, cBout, upperBout } = plan.ribs;
    [lowerBout, cBout, upperBout].forEach(({ developed, cutMm }, i) => {
      const drawing = drawings[i];
      const strip = drawing?.lines[0]?.chain;
      if (!drawing || !strip) throw new Error('no strip');
      const { min, max } = boundsOf(strip);
      expect(max.x - min.x).toBeCloseTo(developed.lengthMm + 20, 9);
      expect(max.x - min.x).toBeCloseTo(cutMm, 9);
      expect(-min.x).toBeCloseTo(max.x - developed.lengthMm, 9);
      const scored = drawing.lines.filter(({ meaning }) => meaning === 'score');
      const [from, to] = scored.map(({ chain }) => chain.vertices[0]?.x);
      expect(from).toBeCloseTo(0, 9);
      expect(to).toBeCloseTo(developed.lengthMm, 9);
      expect(drawingFaults(drawing)).toEqual([]);
      expect(letteringFaults(drawing)).toEqual([]);
    });
  },
);

test('each stretch tells the radius inside its bend, hollow ones as such', () => {
  const { plan, drawings } = stripsOf('violin');
  const texts = drawings[1]?.lettering.map(({ text }) => text);
  for (const { bends, insideRadiusMm } of plan.ribs.cBout.developed.stretches) {
    expect(bends).toBe('hollow');
    expect(texts).toContain(`) R ${insideRadiusMm?.toFixed(1)} (`);
  }
});

test('a tapered garland has its taper drawn and told, and cautions stand on the sheet', () => {
  const { drawings } = stripsOf('violin', { ribHeightNeck: 29, ribHeightTail: 31 });
  const [lower, , upper] = drawings;
  const top = lower?.lines[0]?.chain.vertices.filter(({ y }) => y > 1) ?? [];
  expect(top.at(-1)?.y).toBeCloseTo(31, 9);
  expect(top[0]?.y).toBeLessThan(30.5);
  expect(lower?.lettering.map(({ text }) => text).join(' ')).toMatch(/31 to 30\.\d mm high/);
  expect(upper?.lettering.map(({ text }) => text).join(' ')).toMatch(/to 29 mm high/);
  for (const { notes } of drawings) expect(notes.join(' ')).toMatch(/bending iron burns.*plane and knife/);
});

test('thick ribs ask for a strap where they bend most', () => {
  const thick = stripsOf('violin', { ribThickness: 1.5 }).drawings[1]?.notes.join(' ');
  expect(thick).toMatch(/Tightest bend 1\d(\.\d)? mm, \d\.\d % stretch outside it: hold a metal strap/);
});
