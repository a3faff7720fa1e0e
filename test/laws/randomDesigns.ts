/** Sound designs of every family and size, drafted from tables whose sizes are drawn within the usual ranges. */
import fc from 'fast-check';
import type { HalfOutline } from '../../src/core/curve/index.ts';
import { type Design, draftDesign, halfOf, type ValueName } from '../../src/core/design/index.ts';
import { nearestSize, valueAtLength } from '../../src/core/knowledge/index.ts';
import { chosen } from '../../src/core/quantity/index.ts';

/** Body lengths: violins from the smallest, violas 380 to 440, cellos from half size. */
const LENGTHS = [
  ['violin', 200, 365],
  ['violin', 345, 365],
  ['viola', 380, 440],
  ['cello', 640, 770],
] as const;

/** How far a size is drawn from the habit of its family, as a share of it. */
const SPREAD: Partial<Record<ValueName, number>> = {
  upperBout: 0.02,
  waist: 0.02,
  lowerBout: 0.02,
  overhang: 0.25,
  cornerOverhang: 0.15,
  ribThickness: 0.15,
  ribHeightTail: 0.06,
  liningThickness: 0.15,
  liningWidth: 0.15,
  liningLetIn: 0.25,
  upperBlockWidth: 0.1,
  lowerBlockWidth: 0.1,
  upperBlockDepth: 0.1,
  lowerBlockDepth: 0.1,
  lowerCornerBlockAlongWaist: 0.08,
  upperCornerBlockAlongWaist: 0.08,
  lowerCornerBlockAlongBout: 0.08,
  upperCornerBlockAlongBout: 0.08,
  caulDepth: 0.2,
};
/** Overhangs are drawn rather wide, so that ribs meet on the tip of the block about as often as not. */
const MIDDLE: Partial<Record<ValueName, number>> = { overhang: 1.2 };
const NAMES = Object.keys(SPREAD) as ValueName[];

export interface RandomDesign {
  readonly design: Design;
  readonly half: HalfOutline;
}

const share = fc.double({ min: -1, max: 1, noNaN: true });

/** A design with its half outline; null where the drawn sizes contradict each other and are refused in words. */
export const randomDesign: fc.Arbitrary<RandomDesign | null> = fc
  .record({
    range: fc.constantFrom(...LENGTHS),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    shares: fc.array(share, { minLength: NAMES.length, maxLength: NAMES.length }),
    joint: fc.constantFrom('bouts-over', 'waist-over', 'mitred'),
    corners: fc.constantFrom('drawn-together', 'parallel'),
    lowerRib: fc.constantFrom('two-pieces', 'one-piece'),
    upperRib: fc.constantFrom('two-pieces', 'one-piece'),
    linings: fc.constantFrom('plain', 'kerfed'),
    liningsLetIn: fc.constantFrom('waist', 'all'),
  })
  .map(({ range: [family, low, high], at, shares, ...ribs }) => {
    const lengthMm = Math.round(low + at * (high - low));
    const size = nearestSize(family, lengthMm);
    const mm = (value: number) => ({ value, unit: 'mm' as const, origin: chosen('drawn at random') });
    const values = Object.fromEntries(
      NAMES.map((name, index) => {
        const habit = valueAtLength(size, name, lengthMm)?.value ?? 1;
        return [name, mm(habit * ((MIDDLE[name] ?? 1) + (SPREAD[name] ?? 0) * (shares[index] ?? 0)))];
      }),
    );
    const drafted = draftDesign({
      family,
      name: 'drawn at random',
      values: { bodyLength: mm(lengthMm), ...values },
      ribs,
    });
    if (!drafted.ok) return null;
    const outline = halfOf(drafted.value.design);
    return outline.ok ? { design: drafted.value.design, half: outline.value.half } : null;
  });
