import type { Finding } from '../../base/index.ts';
import type { Chain } from '../../curve/index.ts';
import type { Design, ValueName } from '../../design/index.ts';
import type { RegisterEntry, Unit } from '../../quantity/index.ts';
import type { BarAndPost } from './barAndPost.ts';
import { barAndPostEntries, barFindings } from './barAndPostNumbers.ts';
import { woodOfBothHalves } from './bothHalves.ts';
import { type BoxWalls, boxAir } from './boxAir.ts';
import type { HollowPlate } from './hollow.ts';
import { hollowFindings } from './hollowOfDesign.ts';
import { type PlateWood, plateWood } from './plateWood.ts';
import { thicknessNames } from './thicknessNames.ts';
import { surveyThickness, type ThicknessSurvey } from './thicknessZones.ts';

/** What one plate comes out as. */
export interface PlateNumbers {
  readonly wood: PlateWood;
  readonly survey: ThicknessSurvey;
}

/** What the plates and the closed body come out as, as numbers for the register, and what is to be minded. */
export interface BoxNumbers {
  readonly back: PlateNumbers;
  readonly top: PlateNumbers;
  readonly airMm3: number;
  readonly registerEntries: readonly RegisterEntry[];
  readonly findings: readonly Finding[];
}

/** Measures both plates of a design and the air between them: the dear part of deriving, so that it is asked for apart. */
export function boxNumbers(
  design: Design,
  plates: { readonly back: HollowPlate; readonly top: HollowPlate; readonly barAndPost: BarAndPost },
  outline: Chain<'body'>,
  walls: BoxWalls,
): BoxNumbers {
  const numbers = (plate: HollowPlate, density: ValueName): PlateNumbers => ({
    wood: woodOfBothHalves(plate, (even) =>
      plateWood(even, outline, design.values[density]?.value ?? Number.NaN),
    ),
    survey: surveyThickness(plate),
  });
  const back = numbers(plates.back, 'densityBack');
  const top = numbers(plates.top, 'densityTop');
  const hollowsMm3 = back.wood.hollowMm3 + top.wood.hollowMm3;
  const airMm3 = boxAir(hollowsMm3, plates.back.arch.bodyLengthMm, walls);
  return {
    back,
    top,
    airMm3,
    registerEntries: [
      ...plateEntries(plates.back, back, 'densityBack'),
      ...plateEntries(plates.top, top, 'densityTop'),
      ...barAndPostEntries(design, plates.barAndPost, {
        ...plates,
        topMassG: top.wood.massG,
        ribHeightTailMm: walls.ribHeightTailMm,
        ribHeightNeckMm: walls.ribHeightNeckMm,
      }),
      entry(
        'airVolume',
        airMm3 / 1_000_000,
        'l',
        AIR_FROM,
        'closed body less blocks and linings; bar, post and neck not counted',
      ),
    ],
    findings: [
      ...hollowFindings(plates.back, back.survey),
      ...hollowFindings(plates.top, top.survey),
      ...barFindings(plates.barAndPost, plates.top),
    ],
  };
}

const AIR_FROM = [
  'outline',
  'ribHeightTail',
  'ribHeightNeck',
  'liningThickness',
  'liningWidth',
  'back.volume',
  'top.volume',
];

function plateEntries(
  { arch }: HollowPlate,
  { wood, survey }: PlateNumbers,
  density: ValueName,
): readonly RegisterEntry[] {
  const of = (what: string): string => `${arch.plate}.${what}`;
  const shape = ['outline', of('rise'), ...Object.values(thicknessNames(arch.plate))];
  const weight = [of('volume'), density];
  return [
    entry(
      of('volume'),
      wood.volumeMm3 / 1000,
      'cm³',
      shape,
      'wood of the finished plate, sound holes and bar not counted',
    ),
    entry(of('mass'), wood.massG, 'g', weight, 'volume times density'),
    entry(of('balanceFromLowerEnd'), wood.centreYMm, 'mm', [of('volume')], 'centre of mass'),
    entry(of('balanceOverGluingFace'), wood.centreZMm, 'mm', [of('volume')], 'centre of mass'),
    ...survey.zones.map(({ zone, leastMm, x, y }) =>
      entry(
        of(`leastThickness.${zone}`),
        leastMm,
        'mm',
        Object.values(thicknessNames(arch.plate)),
        `thinnest place, ${y.toFixed(0)} mm above the lower end, ${Math.abs(x).toFixed(0)} mm from the centre line`,
      ),
    ),
  ];
}

function entry(name: string, value: number, unit: Unit, from: readonly string[], how: string): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from, how } };
}
