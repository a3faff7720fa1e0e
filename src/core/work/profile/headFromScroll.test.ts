import { expect, test } from 'vitest';
import { cutOutPicture, profileFinder } from '../../../../test/fixtures/profilePictures.ts';
import { rad, workedSizes } from '../../../../test/fixtures/workedHead.ts';
import { lengthOf, pointAlong } from '../../curve/index.ts';
import { headProfile, type ProfileSizes } from '../../instrument/index.ts';
import { derive } from '../derive.ts';
import { draft } from '../draft.ts';
import { traceScroll } from './traceScroll.ts';

/** A head unlike the usual one, known to the test alone. */
const TRUE: ProfileSizes = {
  ...workedSizes(),
  lengthMm: 104.2,
  topMm: 97.4,
  depthMm: 51.6,
  scrollHeightMm: 38.4,
  leanRad: rad(33.5),
  chinBehindMm: 30.5,
  neckBehindMm: 13,
};

/** Its edge with a stub of neck, x along the head toward the turn, y toward the front. */
function edgeOf(sizes: ProfileSizes): (readonly [number, number])[] {
  const head = headProfile(sizes);
  if (!head.ok) throw new Error('no head');
  const { outline } = head.value;
  const count = Math.floor(lengthOf(outline) / 0.3);
  const round = Array.from({ length: count + 1 }, (_, i) =>
    pointAlong(outline, (i / count) * lengthOf(outline)),
  );
  const stub = [
    { x: 0, y: -34 },
    { x: sizes.neckBehindMm, y: -34 },
  ];
  return [...round, ...stub].map(({ x, y }) => [y + 34, sizes.neckBehindMm - x] as const);
}

const traced = traceScroll(
  { name: 'head.jpg', picture: cutOutPicture(edgeOf(TRUE)), sheetBarMm: { xMm: 150, yMm: 150 }, heightMm: 1 },
  profileFinder,
);
if (!traced.ok) throw new Error(JSON.stringify(traced.faults));
const profile: unknown = JSON.parse(JSON.stringify(traced.value.document));
const table = { family: 'violin', values: { bodyLength: 355 } };

function drafted(json: object = table) {
  const result = draft([
    { name: 'table.json', json },
    { name: 'head.json', json: profile },
  ]);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

test('a head photographed from its side comes back as values of the design, each measured, within its ±', () => {
  const { design, findings } = drafted();
  const meant = {
    headLength: TRUE.lengthMm,
    headDepth: TRUE.depthMm,
    scrollHeight: TRUE.scrollHeightMm,
    backLeanAngle: 33.5,
    chinBehind: TRUE.chinBehindMm,
  } as const;
  for (const [name, value] of Object.entries(meant)) {
    const quantity = design.values[name as keyof typeof meant];
    expect(quantity?.origin).toEqual({ kind: 'measured', from: 'side of the head in head.jpg' });
    expect(Math.abs((quantity?.value ?? 0) - value), name).toBeLessThan(quantity?.plusMinus ?? 0);
    expect(quantity?.plusMinus, name).toBeLessThan(3);
  }
  expect(Math.abs((design.values.headLength?.value ?? 0) - TRUE.lengthMm)).toBeLessThan(0.5);
  expect(Math.abs((design.values.scrollHeight?.value ?? 0) - TRUE.scrollHeightMm)).toBeLessThan(0.3);
  expect(design.headFit?.rms).toBeLessThan(0.2);
  expect(design.headFit?.stretches.length).toBe(8);
  expect(findings.map(({ code }) => code)).toContain('head.fitted');
  expect(findings.map(({ code }) => code)).not.toContain('head.far');
});

test('what is not seen follows the length of the head, and the head is derived from it', () => {
  const { design } = drafted();
  const length = design.values.headLength?.value ?? Number.NaN;
  expect(design.values.peg4?.value).toBeCloseTo((65.6 * length) / 107, 6);
  expect(design.values.peg4?.origin).toMatchObject({ kind: 'derived', from: ['headLength'] });
  expect(design.values.scrollTurns?.origin.kind).toBe('common-practice');
  const instrument = derive(design);
  if (!instrument.ok) throw new Error(JSON.stringify(instrument.faults));
  expect(instrument.value.head.profile.sizes.lengthMm).toBe(length);
});

test('a length that the table gives itself stands, and a second head is refused', () => {
  const { design } = drafted({ ...table, values: { bodyLength: 355, headLength: 105 } });
  expect(design.values.headLength?.value).toBe(105);
  const two = draft([
    { name: 'table.json', json: table },
    { name: 'a.json', json: profile },
    { name: 'b.json', json: profile },
  ]);
  expect(two.ok ? '' : two.faults[0]?.found).toBe('a second head');
});
