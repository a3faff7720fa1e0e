import { accept, type Checked, type Fault, type Finding, refuse } from '../../base/index.ts';
import { type Design, highStringSide, VALUES, type ValueName } from '../../design/index.ts';
import type { Quantity } from '../../quantity/index.ts';
import { boardThickness } from '../neck/boardSection.ts';
import type { SetNeck } from '../neck/neckOfDesign.ts';
import type { SetUp } from '../setup/setUp.ts';
import { leastOnHead, pegboxFindings, stringFindings } from './headFindings.ts';
import { type HeadProfile, headProfile } from './headProfile.ts';
import { type HeadWidths, headWidths, type WidthSizes } from './headWidths.ts';
import { type Pegbox, type PegboxSizes, pegbox } from './pegbox.ts';
import type { Peg, PegSizes } from './pegs.ts';
import type { ProfileSizes } from './profileSizes.ts';
import { type NutString, type RoomWishes, type StringPath, stringPaths } from './stringPaths.ts';

/** The head of an instrument. */
export interface Head {
  readonly profile: HeadProfile;
  readonly widths: HeadWidths;
  readonly pegbox: Pegbox;
  readonly pegSizes: PegSizes;
  /** From the nut to the throat. */
  readonly pegs: readonly Peg[];
  /** In the order of their pegs. */
  readonly strings: readonly StringPath[];
  readonly findings: readonly Finding[];
}

const QUARTERS_A_TURN = 4;
/** No unit. Turns this near to a whole number of quarters are meant so. */
const MEANT_QUARTERS = 0.001;

/** What a head is drafted from; each a number above 0 but those of {@link MAY_BE_LESS}. */
const HEAD_NAMES = [
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
  'chinWidth',
  'headNarrowest',
  'scrollEars',
  'outerTurnAngle',
  'middleTurnAngle',
  'innerTurnAngle',
  'pegboxWidthNut',
  'pegboxWidthThroat',
  'pegboxWallNut',
  'pegboxWallThroat',
  'pegboxWallLean',
  'pegboxFloor',
  'pegboxEndSlope',
  'pegboxWeb',
  'peg1',
  'peg2',
  'peg3',
  'peg4',
  'pegDiameter',
  'pegTaper',
  'nutDepth',
] as const satisfies readonly ValueName[];

const MAY_BE_LESS: ReadonlySet<ValueName> = new Set([
  'scrollFront',
  'scrollQuickening',
  'chinSpare',
  'pegboxWallLean',
  'pegboxEndSlope',
]);

/**
 * The head of a design, on a neck whose back it runs into, with the strings of its set-up.
 *
 * Faults: `head.value` (a value that is missing or no number above 0), `head.peg-outside`, `head.peg-wide`, those of {@link headProfile},
 * {@link headWidths} and {@link pegbox}. Findings: `head.quarter-turns`, `head.ears`, `head.wall-thin`, `head.floor-thin`,
 * `head.peg-cover`, `head.peg-end`, `head.peg-pitch`, `head.string-on-peg`, `head.string-on-wall`.
 */
export function headOfDesign(design: Design, neck: SetNeck, setUp: SetUp): Checked<Head> {
  const unsound = HEAD_NAMES.filter((name) => !isNumber(name, design.values[name]));
  if (unsound.length > 0) return refuse(...unsound.map((name) => noNumber(name, design.values[name])));
  const profile = headProfile(profileSizes(design, boardThickness(neck.sizes.board, 0)));
  if (!profile.ok) return profile;
  const widths = headWidths(profile.value, widthSizes(design));
  if (!widths.ok) return widths;
  const box = pegbox(profile.value, widths.value, pegboxSizes(design));
  if (!box.ok) return box;
  const { lengthMm } = profile.value.sizes;
  const { pegs: pegSizes, wishes } = pegSizesOf(design, lengthMm);
  const strung = stringPaths(box.value, pegSizes, nutStrings(design, setUp), wishes);
  if (strung === null) return refuse(noSeat(design, box.value));
  const open = strung.pegs.filter(
    ({ frontCoverMm, floorCoverMm }) => !(Math.min(frontCoverMm, floorCoverMm) > 0),
  );
  if (open.length > 0) return refuse(noWood(design, open));
  return accept({
    profile: profile.value,
    widths: widths.value,
    pegbox: box.value,
    pegSizes,
    pegs: strung.pegs,
    strings: strung.paths,
    findings: [
      ...quarterFindings(design),
      ...widths.value.findings,
      ...pegboxFindings(box.value, strung.pegs, lengthMm),
      ...stringFindings(strung.paths, lengthMm),
    ],
  });
}

/**
 * What a design's side view is drafted from, on a fingerboard as the design has it. Fault: `head.value`.
 */
export function headSizesOf(design: Design): Checked<ProfileSizes> {
  const unsound = HEAD_NAMES.filter((name) => !isNumber(name, design.values[name]));
  if (unsound.length > 0) return refuse(...unsound.map((name) => noNumber(name, design.values[name])));
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const board = {
    lengthMm: value('boardLength'),
    widthAtNutMm: value('boardWidthNut'),
    widthAtEndMm: value('boardWidthEnd'),
    radiusMm: value('boardRadius'),
    sideMm: value('boardSide'),
  };
  return accept(profileSizes(design, boardThickness(board, 0)));
}

function profileSizes(design: Design, boardAtNutMm: number): ProfileSizes {
  const value = valuesOf(design);
  const angle = (name: HeadName): number => (value(name) * Math.PI) / 180;
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

function widthSizes(design: Design): WidthSizes {
  const value = valuesOf(design);
  const angle = (name: HeadName): number => (value(name) * Math.PI) / 180;
  return {
    chinMm: value('chinWidth'),
    narrowestMm: value('headNarrowest'),
    earsMm: value('scrollEars'),
    turnRad: [angle('outerTurnAngle'), angle('middleTurnAngle'), angle('innerTurnAngle')],
  };
}

function pegboxSizes(design: Design): PegboxSizes {
  const value = valuesOf(design);
  return {
    widthNutMm: value('pegboxWidthNut'),
    neckWidthMm: design.values.boardWidthNut?.value ?? Number.NaN,
    shoulderMm: Math.max(0, design.values.pegboxShoulder?.value ?? 0),
    widthThroatMm: value('pegboxWidthThroat'),
    wallNutMm: value('pegboxWallNut'),
    wallThroatMm: value('pegboxWallThroat'),
    leanMm: value('pegboxWallLean'),
    floorMm: value('pegboxFloor'),
    endSlopeMm: value('pegboxEndSlope'),
    webMm: value('pegboxWeb'),
  };
}

/** No unit. Pegs are moved for the strings only while they keep this much more than the least wood round them. */
const KEPT_COVER = 1.2;
/** No unit. Wished between string and peg, over the least. */
const WISHED_ROOM = 2;

function pegSizesOf(design: Design, headLengthMm: number): { pegs: PegSizes; wishes: RoomWishes } {
  const value = valuesOf(design);
  return {
    pegs: {
      fromNutMm: [value('peg1'), value('peg2'), value('peg3'), value('peg4')],
      diameterMm: value('pegDiameter'),
      taper: value('pegTaper'),
    },
    wishes: {
      stringToPegMm: WISHED_ROOM * leastOnHead('room', headLengthMm),
      coverMm: KEPT_COVER * leastOnHead('cover', headLengthMm),
      nutDepthMm: value('nutDepth'),
    },
  };
}

function nutStrings(design: Design, { strings, places }: SetUp): readonly NutString[] {
  return strings.strings.flatMap(({ number, letter, diameterMm }, index) => {
    const place = places[index];
    if (!place) return [];
    return [
      { number, letter, diameterMm, acrossMm: highStringSide(design) * place.atNutMm, upMm: place.nutUpMm },
    ];
  });
}

type HeadName = (typeof HEAD_NAMES)[number];

function valuesOf({ values }: Design): (name: HeadName) => number {
  return (name) => values[name]?.value ?? Number.NaN;
}

function noSeat({ values }: Design, { opensFromMm, opensToMm }: Pegbox): Fault {
  const names = ['peg1', 'peg2', 'peg3', 'peg4'] as const;
  const inside = (name: HeadName): boolean => {
    const fromNutMm = values[name]?.value ?? Number.NaN;
    return fromNutMm > opensFromMm && fromNutMm < opensToMm;
  };
  const name = names.find((one) => !inside(one)) ?? 'peg4';
  return {
    code: 'head.peg-outside',
    at: name,
    found: `a peg hole ${values[name]?.value} mm from the nut`,
    need: `a place inside the pegbox, ${opensFromMm.toFixed(1)} to ${opensToMm.toFixed(1)} mm from the nut`,
    remedy: 'correct it, or lengthen the head',
  };
}

/** Peg holes that run out of the pegbox, in front or through its floor. */
function noWood({ values }: Design, pegs: readonly Peg[]): Fault {
  const numbers = pegs.map(({ number }) => number).join(', ');
  return {
    code: 'head.peg-wide',
    at: 'pegDiameter',
    found: `pegs ${values.pegDiameter?.value} mm thick: number ${numbers} from the nut would run out at the front or through the floor of the pegbox`,
    need: 'pegs that fit between its front and its floor',
    remedy: 'correct their diameter, or the places of the pegs',
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
