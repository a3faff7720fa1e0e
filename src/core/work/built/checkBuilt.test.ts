import { beforeAll, describe, expect, test } from 'vitest';
import {
  fiddle,
  type Made,
  PLAIN_EYE,
  photographMade,
  SHEET,
  thingLens,
} from '../../../../test/render/madePart.ts';
import { thingMarkers } from '../../../../test/render/madeThing.ts';
import { faultSentence } from '../../base/index.ts';
import { nearestOn, outlineChain, sampleChain } from '../../curve/index.ts';
import { halfOf } from '../../design/index.ts';
import { builtOutcome } from './builtOutcome.ts';
import type { BuiltRequest } from './builtRequest.ts';
import { type CheckedBuilt, checkBuilt } from './checkBuilt.ts';
import { outlineFromGarland } from './outlineFromGarland.ts';

const { design, plan } = fiddle();
const L = plan.outline.bodyLengthMm;

function look(made: Made, request: Partial<BuiltRequest>, seed = 5) {
  return checkBuilt(
    design,
    {
      name: 'made.jpg',
      picture: photographMade(made, L),
      part: 'outline',
      face: 'top',
      sheetBarMm: { xMm: 150, yMm: 150 },
      thicknessMm: [2, 2],
      toleranceMm: 0.3,
      ...request,
    },
    thingMarkers(SHEET, thingLens(made.eye ?? PLAIN_EYE), seed),
  );
}

function seen(made: Made, request: Partial<BuiltRequest>, seed?: number): CheckedBuilt {
  const built = look(made, request, seed);
  if (!built.ok) throw new Error(built.faults.map(faultSentence).join(' '));
  return built.value;
}

const codes = (built: CheckedBuilt) => built.findings.map(({ code }) => code);
const template: Made = { chain: plan.outline.chain, heightMm: () => 2 };

/** A swelling (or hollow) square to the body's length, round one height on one side. */
const swollen =
  (side: 1 | -1, y0: number, byMm: number, wideMm = 10) =>
  ({ x, y }: { x: number; y: number }) => ({
    x: x + (Math.sign(x) === side ? side * byMm * Math.exp(-(((y - y0) / wideMm) ** 2)) : 0),
    y,
  });

describe('an outline template', () => {
  test('cut true lies within 0.15 mm everywhere, whichever way it lies', () => {
    const built = seen({ ...template, turnRad: Math.PI - 0.05, light: { seed: 9 } }, {}, 8);
    expect(built.report.maxMm).toBeLessThan(0.15);
    expect(built.report.verdict).toBe('within');
    expect(built.report.hiddenShare).toBeLessThan(0.02);
    expect(built.findings.filter(({ code }) => code.startsWith('built.') && code !== 'built.unsure')).toEqual(
      [],
    );
  });

  test('0.4 mm short at one place is told to 0.1 mm, with side and place', () => {
    const built = seen({ ...template, bent: swollen(-1, 62, -0.4) }, {});
    expect(Math.abs(built.report.worst.missMm + 0.4)).toBeLessThan(0.1);
    expect(Math.abs(built.report.worst.at.y - 62)).toBeLessThan(8);
    expect(built.report.worst.name).toBe('bass side, lower bout');
    const told = built.findings.find(({ code }) => code === 'built.deviates');
    expect(told?.found).toMatch(/^0\.\d\d mm short over \d+ mm, worst \d\d mm from the lower end$/);
    expect(codes(built)).toContain('built.uneven');
  });

  test('0.3 % small is told as the size of the whole, and not fitted away', () => {
    const built = seen(
      { ...template, bent: ({ x, y }) => ({ x: 0.997 * x, y: L / 2 + 0.997 * (y - L / 2) }) },
      {},
    );
    const size = built.findings.find(({ code }) => code === 'built.size');
    expect(size?.found).toMatch(/^the whole outline template is 0\.\d\d % small/);
    expect(size?.remedy).toMatch(/fit the page/);
    expect(Math.abs(built.measure.along + 0.003)).toBeLessThan(0.0006);
    expect(built.report.maxMm).toBeGreaterThan(0.4);
  });

  test('half of it lying face down is measured mirrored, and that is said', () => {
    const half: Made = { ...template, chain: plan.outlineTemplate.half, faceDown: true };
    const built = seen({ ...half, bent: swollen(1, 270, 0.4) }, {});
    expect(built.traced.shape).toMatchObject({ name: 'outline template, half', mirrored: true });
    expect(codes(built)).toContain('built.face-down');
    expect(built.report.sides).toBeUndefined();
    expect(Math.abs(built.report.worst.missMm - 0.4)).toBeLessThan(0.1);
    expect(built.report.worst.name).toBe('treble side, upper bout');
  });
});

describe('a form', () => {
  const form: Made = { chain: plan.form.outline, heightMm: () => 13 };

  test('with a rag over a stretch is measured on the rest, and what is hidden is said', () => {
    const over = [
      [60, 40],
      [140, 40],
      [140, 100],
      [60, 100],
    ].map(([x, y]) => ({ x: x as number, y: y as number }));
    const built = seen(
      { ...form, over, bent: swollen(-1, 290, 0.5) },
      { part: 'form', thicknessMm: [13, 13] },
    );
    expect(Math.abs(built.report.worst.missMm - 0.5)).toBeLessThan(0.1);
    expect(built.report.worst.name).toBe('bass side, upper bout');
    expect(built.report.hiddenShare).toBeGreaterThan(0.03);
    expect(codes(built)).toContain('built.hidden');
  });

  test.each([
    ['half an outline template where a form was said to lie', { part: 'form' }, plan.outlineTemplate.half],
  ] as const)('%s is refused in a sentence', (_what, request, chain) => {
    const built = look({ ...form, chain }, request);
    expect(built.ok).toBe(false);
    if (!built.ok)
      expect(built.faults.map(faultSentence).join()).toMatch(
        /looks like the outline template, half of this design/,
      );
  });
});

describe('a garland', () => {
  const { ribHeightTail, ribHeightNeck } = design.values;
  const slope = (y: number) => ribHeightTail!.value + ((ribHeightNeck!.value - ribHeightTail!.value) * y) / L;
  let built: CheckedBuilt;

  beforeAll(() => {
    built = seen(
      {
        chain: plan.ribs.outer.chain,
        inside: plan.ribs.inner.chain,
        heightMm: slope,
        bent: ({ x, y }) => swollen(1, 285, 0.6, 25)(swollen(-1, 285, 0.6, 25)({ x, y })),
      },
      { part: 'garland', thicknessMm: [ribHeightTail!.value, ribHeightNeck!.value] },
    );
  });

  test('is measured at its upper edge, though walls and foot show beside it', () => {
    expect(Math.abs(built.report.worst.missMm - 0.6)).toBeLessThan(0.15);
    expect(built.report.worst.name).toMatch(/upper bout$/);
    const far = built.traced.places.filter(
      ({ state, expected }) => state === 'seen' && Math.abs(expected.y - 285) > 60,
    );
    expect(far.length).toBeGreaterThan(800);
    expect(Math.max(...far.map(({ missMm }) => Math.abs(missMm)))).toBeLessThan(0.3);
  });

  test('gives the design an outline that follows it, overhang kept', () => {
    const taken = outlineFromGarland(design, built);
    if (!taken.ok) throw new Error(taken.faults.map(faultSentence).join(' '));
    const half = halfOf(taken.value.design);
    if (!half.ok) throw new Error('no half');
    const wide = sampleChain(outlineChain(half.value.half), 0.02).filter(({ y }) => Math.abs(y - 285) < 3);
    for (const place of wide) {
      const near = nearestOn(plan.outline.chain, place);
      expect(Math.abs((near.side < 0 ? near.distanceMm : -near.distanceMm) - 0.6)).toBeLessThan(0.2);
    }
    expect(taken.value.design.values.upperBout?.origin.kind).toBe('measured');
    expect(taken.value.movedMostMm).toBeGreaterThan(0.4);
  });

  test('is the only part that an outline is taken from', () => {
    const other = outlineFromGarland(design, { ...built, request: { ...built.request, part: 'form' } });
    expect(other.ok ? '' : faultSentence(other.faults[0]!)).toMatch(
      /check of the form; needs --part garland/,
    );
  });

  test('has a document and a map that say the same as its report', () => {
    const { text, summary, map } = builtOutcome(built);
    const document = JSON.parse(text);
    expect(document).toMatchObject({ format: 'garland-built', part: 'garland', verdict: 'beyond' });
    expect(document.max).toBeCloseTo(built.report.maxMm, 3);
    expect(summary[1]).toContain(built.report.worst.name);
    expect(
      map.lettering.some(({ text: words }) => words === `+${built.report.worst.missMm.toFixed(2)}`),
    ).toBe(true);
  });
});

test('a bare sheet, and one with a coin on it, are refused in a sentence', () => {
  const coin = {
    ...template,
    bent: ({ x, y }: { x: number; y: number }) => ({ x: x / 20, y: L / 2 + (y - L / 2) / 20 }),
  };
  const built = look(coin, {});
  expect(built.ok ? '' : faultSentence(built.faults[0]!)).toMatch(/nothing on the calm middle of the sheet/);
});
