import { beforeAll, describe, expect, test } from 'vitest';
import {
  BOARDS,
  CLOTH,
  DARK,
  GRADIENT,
  type Painted,
  paint,
  type Scene,
  WHITE,
} from '../../../../test/fixtures/paintedBody.ts';
import type { Checked } from '../../base/index.ts';
import type { BodyTrace } from './bodyTrace.ts';
import { traceBody } from './traceBody.ts';

const shadow = { shift: [9, 7], softPx: 6, strength: 0.45 } as const;
const upright: Scene = { widthPx: 720, heightPx: 900, pxPerMm: 2.1, middle: [365, 460], ground: WHITE };
const bare: Scene = { ...upright, shadow, body: { uneven: 0.3 } };
const dressed: Scene = {
  ...upright,
  heightPx: 1100,
  middle: [350, 690],
  ground: CLOTH,
  dressed: true,
  angleDeg: 3,
  body: { corners: -4 },
  shadow,
};

/** Signed distance of every seen point from the true edge along its normal, mm. */
function seenErrors(trace: BodyTrace, painted: Painted, pxPerMm: number): number[] {
  return trace.edge
    .filter((place) => place.state === 'seen')
    .map(({ point }) => {
      let least = Number.POSITIVE_INFINITY;
      painted.edge.forEach(([ax, ay], i) => {
        const [bx, by] = painted.edge[(i + 1) % painted.edge.length]!;
        const length = (bx - ax) ** 2 + (by - ay) ** 2 || 1;
        const share = Math.min(
          1,
          Math.max(0, ((point.x - ax) * (bx - ax) + (point.y - ay) * (by - ay)) / length),
        );
        least = Math.min(
          least,
          Math.hypot(point.x - ax - share * (bx - ax), point.y - ay - share * (by - ay)),
        );
      });
      return least / pxPerMm;
    });
}

function rms(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}

function valueOf<T>(checked: Checked<T>): T {
  if (!checked.ok) throw new Error(checked.faults.map((fault) => `${fault.code} ${fault.found}`).join());
  return checked.value;
}

describe('a bare body on white with a shadow on one side', () => {
  const painted = paint(bare);
  let trace: BodyTrace;
  beforeAll(() => {
    trace = valueOf(traceBody(painted.picture));
  });

  test('is accepted without a question', () => {
    expect(trace.verdict).toBe('accept');
    expect(trace.findings).toEqual([]);
  });

  test('has its seen edge within 0.15 mm rms of the truth', () => {
    const errors = seenErrors(trace, painted, bare.pxPerMm);
    expect(errors.length).toBeGreaterThan(1000);
    expect(rms(errors)).toBeLessThan(0.15);
  });

  test('has the widths of the painted body within half a percent', () => {
    expect(Math.abs((trace.ratios.lowerBout * 355) / 204.3 - 1)).toBeLessThan(0.005);
    expect(Math.abs((trace.ratios.upperBout * 355) / 163.6 - 1)).toBeLessThan(0.005);
    expect(Math.abs((trace.ratios.waist * 355) / 108.7 - 1)).toBeLessThan(0.005);
  });

  test('names the treble side right and the ends as bridged', () => {
    const widest = (side: string): number => trace.edge.find((place) => place.side === side)?.point.x ?? 0;
    expect(widest('treble')).toBeGreaterThan(widest('bass'));
    expect(trace.unseen.map((stretch) => stretch.name)).toContain(
      'upper edge under the neck and fingerboard',
    );
  });

  test('gives the same trace twice', () => {
    expect(traceBody(painted.picture)).toEqual({ ok: true, value: trace });
  });
});

test('a body with a board over it is asked about where the back was asked for, not where the top was', () => {
  const { picture } = paint(dressed);
  expect(valueOf(traceBody(picture, { face: 'top' }))).toMatchObject({ verdict: 'accept', findings: [] });
  expect(valueOf(traceBody(picture, { face: 'back' }))).toMatchObject({
    verdict: 'ask',
    findings: [
      {
        code: 'trace.other-face',
        found: expect.stringContaining('shows sound holes or a fingerboard'),
        remedy: expect.stringContaining('--face top'),
      },
    ],
  });
});

test('a dressed body on cloth is followed within 0.4 mm where it is seen, and the chin rest is named without a question', () => {
  const painted = paint(dressed);
  const trace = valueOf(traceBody(painted.picture));
  expect(rms(seenErrors(trace, painted, dressed.pxPerMm))).toBeLessThan(0.4);
  expect(trace.unseen.map((one) => one.name)).toContain(
    'lower bout, bass side: something lies over the edge',
  );
  expect(trace.verdict).toBe('accept');
});

test.each([
  ['upside down on a dark ground', { ...dressed, ground: DARK, angleDeg: 183, middle: [350, 410] as const }],
  [
    'tilted by 20 degrees',
    { ...dressed, ground: GRADIENT, angleDeg: 20, widthPx: 1000, middle: [430, 690] as const },
  ],
])('a dressed body %s is found the right way up', (_what, scene) => {
  const painted = paint(scene);
  const trace = valueOf(traceBody(painted.picture));
  const turn = trace.pose.axisAngleRad - (scene.angleDeg * Math.PI) / 180;
  expect(Math.abs(Math.sin(turn / 2))).toBeLessThan(0.01);
  expect(rms(seenErrors(trace, painted, scene.pxPerMm))).toBeLessThan(0.4);
});

test.each([
  ['a floor without a body', { ...upright, ground: BOARDS, body: 'none' as const }, 'trace.no-body'],
  ['a long blob like a side view', { ...upright, body: 'blob' as const }, 'trace.no-body'],
  ['a body cut off below', { ...upright, heightPx: 760, middle: [365, 540] as const }, 'trace.cut-off'],
])('%s is refused in words', (_what, scene, code) => {
  const found = traceBody(paint(scene).picture);
  expect(found.ok ? found.value.verdict : found.faults.map((fault) => fault.code)).toEqual([code]);
});

test('a preview image is refused as too small', () => {
  const found = traceBody({ widthPx: 60, heightPx: 90, rgb: new Uint8Array(60 * 90 * 3) });
  expect(found.ok ? [] : found.faults.map((fault) => fault.code)).toEqual(['trace.too-small']);
});
