import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { type CornerArm, type CornerKnown, meantCorner } from './meantCorner.ts';

const RAD = Math.PI / 180;
/** The usual direction of a lower corner's end, and the one that this maker gave it. */
const [USUAL_RAD, OWN_RAD] = [114 * RAD, 120 * RAD];
const WIDTH_MM = 6.6;
const MIDDLE = point<'body'>(90, 140);
/** Along the end from the bout's tip to the waist's, and outwards. */
const [ALONG, OUT] = [
  { x: Math.cos(OWN_RAD), y: Math.sin(OWN_RAD) },
  { x: Math.sin(OWN_RAD), y: -Math.cos(OWN_RAD) },
];
/** mm that the arms draw together for every millimetre outwards, each. */
const CLOSES = 0.45;
const TIPS = { bout: at(-WIDTH_MM / 2, 0), waist: at(WIDTH_MM / 2, 0) };

function at(along: number, out: number) {
  return point<'body'>(MIDDLE.x + along * ALONG.x + out * OUT.x, MIDDLE.y + along * ALONG.y + out * OUT.y);
}

/** A straight arm from 20 mm inside its tip to 8 mm past it. */
function arm(which: 'bout' | 'waist'): CornerArm {
  const side = which === 'bout' ? -1 : 1;
  const lengthMm = 20;
  const nodes = Array.from({ length: 29 }, (_, i) => {
    const outMm = i - lengthMm;
    const { x, y } = at(side * (WIDTH_MM / 2 - CLOSES * outMm), outMm);
    return { x, y, alongMm: i, normalX: side * ALONG.x, normalY: side * ALONG.y, gapMm: 0, sigmaMm: 0.03 };
  });
  const run = { chain: { closed: false, vertices: [] }, lengthMm, nodes };
  return { run, at: 'end', line: 'arcs' };
}

/** The corner as its end stands today, so far inside where it was meant; none is seen where that is null. */
function corner(wornMm: number | null, more: Partial<CornerKnown> = {}) {
  const wide = WIDTH_MM + 2 * CLOSES * (wornMm ?? 0);
  return meantCorner(arm('bout'), arm('waist'), {
    headingRad: USUAL_RAD,
    headingSpreadRad: 4 * RAD,
    usualWidthMm: WIDTH_MM,
    usualSpreadMm: 0.6,
    endSigmaMm: 0.05,
    end: wornMm === null ? [] : Array.from({ length: 13 }, (_, i) => at(wide * (i / 12 - 0.5), -wornMm)),
    ...more,
  })!;
}

const off = ({ boutTip, waistTip }: ReturnType<typeof corner>) =>
  [
    [boutTip, TIPS.bout],
    [waistTip, TIPS.waist],
  ].map(([found, tip]) => Math.hypot(found.x - tip.x, found.y - tip.y));

test('a worn end is carried out to a given width along the direction in which it stands, not the usual one', () => {
  const found = corner(1.2, { givenWidthMm: WIDTH_MM });
  expect(found.from).toBe('given');
  expect(found.widthMm).toBeCloseTo(WIDTH_MM, 3);
  // Along the usual direction the tips would be 0.35 mm off, one outwards and one inwards.
  expect(Math.max(...off(found))).toBeLessThan(0.2);
});

test('one that wore away to where nothing of it is seen is carried out along the usual direction', () => {
  const found = corner(null, { givenWidthMm: WIDTH_MM });
  expect(found.from).toBe('given');
  expect(Math.max(...off(found))).toBeGreaterThan(0.3);
  expect(Math.max(...off(found))).toBeLessThan(0.45);
});

test('a whole end stands where it is seen, and none ends further in than it still stands', () => {
  const whole = corner(0);
  expect(whole.from).toBe('seen');
  expect(Math.max(...off(whole))).toBeLessThan(0.15);
  const wider = corner(0, { givenWidthMm: WIDTH_MM + 1.5 });
  expect(wider.from).toBe('seen');
  expect(Math.max(...off(wider))).toBeLessThan(0.15);
});

test('an end that is seen much wider than usual was worn, and goes out to about the usual width', () => {
  const found = corner(1.6);
  expect(found.from).toBe('usual');
  expect(found.widthMm).toBeCloseTo(WIDTH_MM + 0.3, 2);
});
