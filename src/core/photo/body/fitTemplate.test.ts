import { expect, test } from 'vitest';
import { paint, WHITE } from '../../../../test/fixtures/paintedBody.ts';
import { traceBody } from './traceBody.ts';

test('a fit whose equations have no finite solution is told, not passed on as a trace', () => {
  const painted = paint({ widthPx: 360, heightPx: 450, pxPerMm: 1.05, middle: [182, 230], ground: WHITE });
  const traced = traceBody(painted.picture, { lengthPx: { value: 370, sigma: Number.MIN_VALUE } });
  expect(traced.ok ? [] : traced.faults.map((fault) => fault.code)).toEqual(['trace.unsolved']);
});
