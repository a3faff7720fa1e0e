import { expect, test } from 'vitest';
import { CLOTH, paint, type Scene, WHITE } from '../../../../test/fixtures/paintedBody.ts';
import { type Checked, point } from '../../base/index.ts';
import type { BodyTrace, TraceHints } from './bodyTrace.ts';
import { traceBody } from './traceBody.ts';

const PX_PER_MM = 1.05;
const MIDDLE = [182, 230] as const;
const small: Scene = { widthPx: 360, heightPx: 450, pxPerMm: PX_PER_MM, middle: MIDDLE, ground: WHITE };

function valueOf<T>(checked: Checked<T>): T {
  if (!checked.ok) throw new Error(checked.faults.map((fault) => `${fault.code} ${fault.found}`).join());
  return checked.value;
}

function nearest(edge: readonly (readonly [number, number])[], x: number, y: number): number {
  return Math.min(...edge.map(([a, b]) => Math.hypot(x - a, y - b))) / PX_PER_MM;
}

test('a line drawn outside the body keeps the trace from a chalk band beside a faint edge', () => {
  const { edge } = paint(small);
  const bandFromMm = 5.5;
  const bodyPlace = (x: number, y: number) => [
    (x - MIDDLE[0]) / PX_PER_MM,
    177.5 - (y - MIDDLE[1]) / PX_PER_MM,
  ];
  const ground = (x: number, y: number): readonly [number, number, number] => {
    const [across, up] = bodyPlace(x, y) as [number, number];
    const away = across > 40 && up > 5 && up < 145 ? nearest(edge, x, y) : 99;
    if (away > bandFromMm + 8) return [0.05, 0.035, 0.025];
    return away > bandFromMm ? [0.75, 0.72, 0.6] : [0.27, 0.12, 0.045];
  };
  const { picture } = paint({ ...small, ground });
  const lowerRight = edge.slice(0, edge.length / 2).filter(([x, y]) => {
    const [across, up] = bodyPlace(x, y) as [number, number];
    return across > 45 && up > 8 && up < 140;
  });
  const stroke = lowerRight.map(([x, y], i) => {
    const [ax, ay] = lowerRight[Math.max(0, i - 1)]!;
    const [bx, by] = lowerRight[Math.min(lowerRight.length - 1, i + 1)]!;
    const long = Math.hypot(bx - ax, by - ay);
    const out = (bandFromMm - 1.5) * PX_PER_MM;
    return point<'photo'>(x - (out * (by - ay)) / long, y + (out * (bx - ax)) / long);
  });
  const missMm = (hints: TraceHints): number => {
    const missed = valueOf(traceBody(picture, { hints }))
      .edge.filter((one) => one.state === 'seen' && one.side === 'treble' && one.section === 'lowerBout')
      .map((one) => nearest(edge, one.point.x, one.point.y))
      .filter((_, i) => i % 4 === 0);
    return Math.sqrt(missed.reduce((sum, value) => sum + value * value, 0) / missed.length);
  };
  const [without, withStroke] = [missMm({}), missMm({ outsideStrokes: [stroke] })];
  expect(without).toBeGreaterThan(3);
  expect(withStroke).toBeLessThan(1);
});

const dressed: Scene = {
  ...small,
  heightPx: 550,
  middle: [180, 345],
  ground: CLOTH,
  dressed: true,
  angleDeg: 3,
  body: { corners: -4 },
  shadow: { shift: [4, 3], softPx: 3, strength: 0.4 },
};

test('two places set on the edge under a chin rest take the doubt from that stretch', () => {
  const { picture, edge, toBody } = paint(dressed);
  const untold: BodyTrace = valueOf(traceBody(picture));
  expect(untold.worstZone.name).toBe('lower bout, bass side');
  expect(untold.worstZone.share).toBeLessThan(0.8);
  const hidden = edge.filter(([x, y]) => {
    const [across, up] = toBody(x, y);
    return across < -30 && up < 45;
  });
  const onEdge = [0.25, 0.75].map((share) => {
    const [x, y] = hidden[Math.floor(share * hidden.length)]!;
    return point<'photo'>(x, y);
  });
  const told = valueOf(traceBody(picture, { hints: { onEdge } }));
  expect(told.findings).toEqual([]);
  expect(told.worstZone.share).toBeGreaterThan(0.8);
  for (const { x, y } of onEdge)
    expect(Math.min(...told.edge.map((one) => Math.hypot(one.point.x - x, one.point.y - y)))).toBeLessThan(1);
});
