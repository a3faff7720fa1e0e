import { describe, expect, test } from 'vitest';
import { ARCH, cardPicture, linePicture, profileFinder } from '../../../../test/fixtures/profilePictures.ts';
import { traceArchProfile } from './traceArchProfile.ts';

const bars = { sheetBarMm: { xMm: 150, yMm: 150 } };

describe('a card cut to a cross arch, photographed on the sheet', () => {
  const outcome = traceArchProfile(
    {
      name: 'card.jpg',
      picture: cardPicture(true),
      ...bars,
      heightMm: 1,
      of: 'crossArch',
      kind: 'edge',
      base: 'face',
      face: 'back',
      station: 'waist',
    },
    profileFinder,
  );
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  const { document, findings } = outcome.value;

  test('gives the arch in millimetres over its straight edge, hole and shadow ignored', () => {
    expect(document).toMatchObject({ format: 'garland-profile', version: 1, units: 'mm', of: 'crossArch' });
    expect(document.station).toBe('waist');
    expect(Math.abs((document.fit?.rise.value ?? 0) - ARCH.rise)).toBeLessThan(0.05);
    expect(Math.abs((document.fit?.fullness?.value ?? 0) - ARCH.fullness)).toBeLessThan(0.005);
    expect(Math.abs((document.fit?.halfWidth?.value ?? 0) - ARCH.half)).toBeLessThan(0.2);
    expect(Math.abs((document.fit?.base.value ?? 0) - ARCH.face)).toBeLessThan(0.12);
    expect(document.fit?.rms).toBeLessThan(0.06);
    expect(document.points.length).toBeGreaterThan(180);
  });

  test('says how far points and lengths may be trusted, and finds nothing moved', () => {
    expect(document.plusMinus.point).toBeGreaterThan(0.001);
    expect(document.plusMinus.point).toBeLessThan(0.1);
    expect(document.plusMinus.scale).toBeLessThan(0.01);
    expect(document.fit?.deviations).toEqual([]);
    expect(findings.filter(({ code }) => code.startsWith('profile.') || code.startsWith('arch.'))).toEqual(
      [],
    );
  });
});

describe('a pencil line drawn along an arch, photographed on the sheet', () => {
  const request = {
    name: 'line.jpg',
    picture: linePicture(),
    ...bars,
    of: 'crossArch',
    kind: 'line',
    base: 'ends',
  } as const;

  test('gives rise and fullness, tilt and height of the line open', () => {
    const outcome = traceArchProfile(request, profileFinder);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
    const { fit } = outcome.value.document;
    expect(Math.abs((fit?.rise.value ?? 0) - ARCH.rise)).toBeLessThan(0.05);
    expect(Math.abs((fit?.fullness?.value ?? 0) - ARCH.fullness)).toBeLessThan(0.005);
    expect(fit?.rms).toBeLessThan(0.05);
  });

  test('is refused as a card: it encloses no bowed edge of its own that could be mistaken for one', () => {
    const outcome = traceArchProfile({ ...request, kind: 'edge', base: 'face' }, profileFinder);
    expect(outcome.ok).toBe(false);
  });
});

test('a photograph without a sheet is refused by the sheet', () => {
  const picture = { widthPx: 64, heightPx: 48, rgb: new Uint8Array(64 * 48 * 3).fill(200) };
  const outcome = traceArchProfile(
    { name: 'bare.jpg', picture, of: 'crossArch', kind: 'edge', base: 'ends' },
    () => [],
  );
  expect(outcome.ok ? [] : outcome.faults.map(({ code }) => code)).toEqual(['sheet.notFound']);
});
