import { expect, test } from 'vitest';
import { fairNet, type NetCondition } from './fairNet.ts';
import { type FairNet, netAt } from './netValue.ts';

const grid = { stepMm: 5, fromMm: -10, columns: 8, rows: 12 };

function made(conditions: readonly NetCondition[]): FairNet {
  const net = fairNet(grid, () => 1, conditions);
  if (!net) throw new Error('undetermined');
  return net;
}

test('it is 0 on the axis, even across, and as high as it is told to be', () => {
  const net = made([
    { x: 20, y: 10, value: 3, weight: 1e6 },
    { x: 33, y: 41, value: -1, weight: 1e6 },
  ]);
  expect(netAt(net, 20, 10).zMm).toBeCloseTo(3, 4);
  expect(netAt(net, 33, 41).zMm).toBeCloseTo(-1, 4);
  for (let y = -9; y < 50; y += 3.7) {
    expect(netAt(net, 0, y).zMm).toBeCloseTo(0, 12);
    expect(netAt(net, 0, y).slopeX).toBeCloseTo(0, 12);
    expect(netAt(net, -17.3, y).zMm).toBe(netAt(net, 17.3, y).zMm);
    expect(netAt(net, -17.3, y).slopeX).toBe(-netAt(net, 17.3, y).slopeX);
  }
});

test('slopes agree with differences of the height, and a slope can be asked for', () => {
  const net = made([
    { x: 20, y: 10, value: 1, weight: 1e6 },
    { x: 20, y: 10, along: { x: 0.6, y: 0.8 }, value: 0.2, weight: 1e6 },
  ]);
  const at = netAt(net, 20, 10);
  expect(0.6 * at.slopeX + 0.8 * at.slopeY).toBeCloseTo(0.2, 4);
  const step = 1e-4;
  for (const [x, y] of [
    [3.1, 7.2],
    [20, 10],
    [37, 44.4],
  ] as const) {
    const slopeX = (netAt(net, x + step, y).zMm - netAt(net, x - step, y).zMm) / (2 * step);
    const slopeY = (netAt(net, x, y + step).zMm - netAt(net, x, y - step).zMm) / (2 * step);
    expect(netAt(net, x, y).slopeX).toBeCloseTo(slopeX, 6);
    expect(netAt(net, x, y).slopeY).toBeCloseTo(slopeY, 6);
  }
});

test('told the heights of an even bowl that is 0 on the axis, it takes the bowl', () => {
  const bowl = (x: number): number => 0.01 * x * x;
  const conditions: NetCondition[] = [];
  for (let x = 1; x <= 40; x += 1)
    for (let y = -10; y <= 50; y += 2) conditions.push({ x, y, value: bowl(x), weight: 1e6 });
  const net = made(conditions);
  for (let x = 0.5; x < 40; x += 1.7) expect(netAt(net, x, 21.3).zMm).toBeCloseTo(bowl(x), 5);
});
