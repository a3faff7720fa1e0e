import { expect, test } from 'vitest';
import { type Chain, sampleChain } from '../../curve/index.ts';
import { type Design, draftDesign } from '../../design/index.ts';
import type { Drawing } from '../../drawing/index.ts';
import { deriveInstrument } from '../../instrument/index.ts';
import { chosen } from '../../quantity/index.ts';
import { drawInstrument } from './drawInstrument.ts';

const bodyLength = { value: 355, unit: 'mm', origin: chosen('test') } as const;
const drafted = draftDesign({ family: 'violin', name: 'sample', values: { bodyLength } });
if (!drafted.ok) throw new Error('refused');
const { design } = drafted.value;

/** The gauges across the inside of the top, one a station. */
function gauges(thickness: Design['thickness']): readonly Drawing[] {
  const instrument = deriveInstrument({ ...design, thickness });
  const drawn = instrument.ok ? drawInstrument(instrument.value) : instrument;
  if (!drawn.ok) throw new Error('refused');
  return drawn.value.filter(({ name }) => /inside/.test(name) && /top/.test(name) && !/long/.test(name));
}

/** How deep a gauge reaches at a place across: the lowest crossing of its cut lines. */
function depthAt({ lines }: Drawing, x: number): number {
  const crossings = (chain: Chain<'drawing'>): readonly number[] => {
    const points = sampleChain(chain, 0.001);
    return points.flatMap((from, index) => {
      const to = points[index + 1] ?? from;
      if ((from.x - x) * (to.x - x) > 0 || from.x === to.x) return [];
      return [from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x)];
    });
  };
  return -Math.min(
    ...lines.filter(({ meaning }) => meaning === 'cut').flatMap(({ chain }) => crossings(chain)),
  );
}

test('gauges for the inside serve both halves: they spare the wood of the bar on either side', () => {
  const [even, spared] = [gauges({}), gauges({ top: { bar: { extra: 0.5 } } })];
  expect(even).toHaveLength(5);
  // Between the bouts the middle of the bar lies 15 to 18 mm from the centre line.
  for (const x of [16, -16])
    even.forEach((gauge, station) => {
      const less = depthAt(gauge, x) - depthAt(spared[station] as Drawing, x);
      // Upright it is a little more than square to a slope.
      expect(less).toBeGreaterThan(0.48);
      expect(less).toBeLessThan(0.54);
    });
});
