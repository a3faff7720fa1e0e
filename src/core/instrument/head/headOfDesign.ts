import { accept, type Checked, type Fault, type Finding, refuse } from '../../base/index.ts';
import { type Design, VALUES, type ValueName } from '../../design/index.ts';
import type { Quantity } from '../../quantity/index.ts';
import { boardThickness } from '../neck/boardSection.ts';
import type { SetNeck } from '../neck/neckOfDesign.ts';
import { type HeadProfile, headProfile } from './headProfile.ts';
import type { ProfileSizes } from './profileSizes.ts';

/** The head of an instrument. */
export interface Head {
  readonly profile: HeadProfile;
  readonly findings: readonly Finding[];
}

const QUARTERS_A_TURN = 4;
/** No unit. Turns this near to a whole number of quarters are meant so. */
const MEANT_QUARTERS = 0.001;

/** What the side view is drafted from; each a number above 0 but those of {@link MAY_BE_LESS}. */
const PROFILE_NAMES = [
  'headLength',
  'headTop',
  'headDepth',
  'scrollHeight',
  'scrollFront',
  'scrollEye',
  'scrollTurns',
  'scrollQuickening',
  'backLeaveAngle',
  'backLeanAngle',
  'backHollow',
  'chinBehind',
  'chinAngle',
  'chinReach',
  'chinSpare',
  'pegboxFrontAngle',
  'throatGap',
  'throatRadius',
  'neckThicknessNut',
] as const satisfies readonly ValueName[];

const MAY_BE_LESS: ReadonlySet<ValueName> = new Set(['scrollFront', 'scrollQuickening', 'chinSpare']);

/**
 * The head of a design, on a neck whose back it runs into. Faults: `head.value` (a value that is missing or no number above
 * 0), those of {@link headProfile}. Findings: `head.quarter-turns`.
 */
export function headOfDesign(design: Design, neck: SetNeck): Checked<Head> {
  const unsound = PROFILE_NAMES.filter((name) => !isNumber(name, design.values[name]));
  if (unsound.length > 0) return refuse(...unsound.map((name) => noNumber(name, design.values[name])));
  const profile = headProfile(profileSizes(design, boardThickness(neck.sizes.board, 0)));
  if (!profile.ok) return profile;
  return accept({ profile: profile.value, findings: quarterFindings(design) });
}

function profileSizes({ values }: Design, boardAtNutMm: number): ProfileSizes {
  const value = (name: (typeof PROFILE_NAMES)[number]): number => values[name]?.value ?? Number.NaN;
  const angle = (name: (typeof PROFILE_NAMES)[number]): number => (value(name) * Math.PI) / 180;
  return {
    lengthMm: value('headLength'),
    topMm: value('headTop'),
    depthMm: value('headDepth'),
    scrollHeightMm: value('scrollHeight'),
    scrollFrontMm: value('scrollFront'),
    eyeRadiusMm: value('scrollEye') / 2,
    quarterTurns: Math.round(QUARTERS_A_TURN * value('scrollTurns')),
    quickening: value('scrollQuickening'),
    leaveRad: angle('backLeaveAngle'),
    leanRad: angle('backLeanAngle'),
    hollowRadiusMm: value('backHollow'),
    chinBehindMm: value('chinBehind'),
    chinRad: angle('chinAngle'),
    chinReachMm: value('chinReach'),
    neckBehindMm: value('neckThicknessNut') - boardAtNutMm + value('chinSpare'),
    frontRad: angle('pegboxFrontAngle'),
    throatGapMm: value('throatGap'),
    throatRadiusMm: value('throatRadius'),
  };
}

function quarterFindings({ values }: Design): readonly Finding[] {
  const turns = values.scrollTurns?.value ?? Number.NaN;
  const quarters = Math.round(QUARTERS_A_TURN * turns);
  if (Math.abs(QUARTERS_A_TURN * turns - quarters) < MEANT_QUARTERS) return [];
  return [
    {
      code: 'head.quarter-turns',
      weight: 'remark',
      at: 'scrollTurns',
      found: `${turns} turns; ${quarters / QUARTERS_A_TURN} are drawn`,
      need: 'whole quarters, as the spiral is made of quarter circles',
      remedy: 'give the nearest quarter',
    },
  ];
}

function isNumber(name: ValueName, quantity: Quantity | undefined): boolean {
  const value = quantity?.value ?? Number.NaN;
  return MAY_BE_LESS.has(name) ? Number.isFinite(value) : value > 0 && Number.isFinite(value);
}

function noNumber(name: ValueName, quantity: Quantity | undefined): Fault {
  return {
    code: 'head.value',
    at: name,
    found: quantity === undefined ? 'no value' : `${quantity.value}`,
    need: MAY_BE_LESS.has(name) ? 'a number' : 'a number above 0',
    remedy: `correct it: the ${VALUES[name].says}`,
  };
}
