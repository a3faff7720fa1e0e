import { expect, test } from 'vitest';
import type { RestoredOutline } from '../../photo/index.ts';
import { meantFindings } from './meantFindings.ts';

const arcs = { kind: 'thirteen', count: 26, misfits: [] } as const;
const told = (found: Pick<RestoredOutline, 'arcs' | 'farPlate'>) => meantFindings(found as RestoredOutline);

test('a half that was set aside is told with its place and how to overrule it', () => {
  const farPlate = [{ side: 'treble', fromMm: 210.4, toMm: 228.7, mm: 6.04 }] as const;
  const [finding] = told({ arcs, farPlate });
  expect(finding).toMatchObject({
    code: 'trace.far-plate',
    at: 'treble side, 210 to 229 mm above the lower end',
    found: expect.stringContaining('stands 6.0 mm outside the other half'),
    remedy: expect.stringContaining('--stretch "treble 210-229 as-found"'),
  });
});

test('both halves inside the curve of the rest are told, a little inside are not', () => {
  const misfit = { section: 'cBout', fromMm: 160, toMm: 180 } as const;
  const misfits = [
    { ...misfit, mm: -0.7 },
    { ...misfit, mm: -0.3 },
    { ...misfit, mm: 0.9 },
  ];
  expect(told({ arcs: { ...arcs, misfits }, farPlate: [] }).map(({ code, found }) => [code, found])).toEqual([
    ['trace.both-worn', expect.stringContaining('0.7 mm inside')],
  ]);
});
