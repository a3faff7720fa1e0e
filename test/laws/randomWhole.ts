/** Whole designs of every family and size with nearly every number drawn off its habit, each on its own. */
import { seededRandom } from '../../src/core/base/index.ts';
import {
  type Design,
  draftDesign,
  NEEDED_VALUES,
  VALUES,
  type ValueName,
} from '../../src/core/design/index.ts';
import { type Family, nearestSize, valueAtLength } from '../../src/core/knowledge/index.ts';
import { chosen } from '../../src/core/quantity/index.ts';

/** Family, least and most body length, and how many of ten designs are of it: violins from the smallest, cellos from half size. */
const BODIES = [
  ['violin', 230, 350, 2],
  ['violin', 350, 362, 3],
  ['viola', 380, 440, 3],
  ['cello', 640, 770, 2],
] as const satisfies readonly (readonly [Family, number, number, number])[];

/** How far a number is drawn off the habit, as a share of it; those left out by {@link SPREAD}. */
const SPREADS: Partial<Record<ValueName, number>> = {
  archHeightBack: 0.08,
  archHeightTop: 0.08,
  overhang: 0.1,
  holeLength: 0.05,
  upperEyesApart: 0.06,
  upperEyeDiameter: 0.06,
  lowerEyeDiameter: 0.08,
  holeStemWidth: 0.1,
  holeTipGap: 0.2,
  lowerEyeToEdge: 0.1,
};
const SPREAD = 0.03;

/** Numbers that stay: tools and sheet stuff, and those that only mean something together with others of the same table. */
const KEPT: ReadonlySet<ValueName> = new Set([
  'bodyLength',
  'tuningA',
  'formThickness',
  'gaugeThickness',
  'pinDiameter',
  'drillDiameter',
]);

/** As many designs as asked for, the same ones every time. None that is refused before it is derived. */
export function randomWholes(count: number, seed: number): readonly Design[] {
  const random = seededRandom(seed);
  const share = (): number => 2 * random() - 1;
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const bodies = BODIES.flatMap((body) => Array.from({ length: body[3] }, () => body));
  return Array.from({ length: count }, (_, index): Design => {
    const [family, low, high] = pick(bodies);
    const lengthMm = Math.round(low + random() * (high - low));
    const size = nearestSize(family, lengthMm);
    const values = Object.fromEntries(
      NEEDED_VALUES.filter((name) => !KEPT.has(name)).map((name) => {
        const habit = valueAtLength(size, name, lengthMm)?.value ?? 0;
        const value = habit * (1 + (SPREADS[name] ?? SPREAD) * share());
        return [name, { value, unit: VALUES[name].unit, origin: chosen('drawn at random') }];
      }),
    );
    const drafted = draftDesign({
      family,
      name: `Drawn ${index}`,
      values: {
        ...values,
        bodyLength: { value: lengthMm, unit: 'mm', origin: chosen('drawn at random') },
      },
      leftHanded: random() < 0.2,
      ribs: {
        joint: pick(['bouts-over', 'waist-over', 'mitred']),
        lowerRib: pick(['two-pieces', 'one-piece']),
        linings: pick(['plain', 'kerfed']),
        liningsLetIn: pick(['waist', 'all']),
      },
    });
    if (!drafted.ok) throw new Error(JSON.stringify(drafted.faults));
    return drafted.value.design;
  });
}
