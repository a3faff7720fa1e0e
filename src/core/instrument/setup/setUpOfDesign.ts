import { accept, type Checked, type Fault, hypot, point, refuse } from '../../base/index.ts';
import { type Design, type ValueName } from '../../design/index.ts';
import { STRING_HEIGHT_SHARES } from '../../knowledge/index.ts';
import { fitCircle } from '../../numeric/index.ts';
import type { PlateArch } from '../arching/index.ts';
import type { SetNeck } from '../neck/neckOfDesign.ts';
import { type SaddlePlace, type StringBreak, stringBreak } from '../neck/stringBreak.ts';
import { bridgeLoad } from '../strings/bridgeLoad.ts';
import { type StringSet, stringSet } from '../strings/stringSet.ts';
import { wrongLength } from '../wrongLength.ts';
import { crownArcs } from './crownArcs.ts';
import { endpinHole } from './endpinHole.ts';
import type { SetUp, SetupLoad } from './setUp.ts';
import { setupFindings } from './setupFindings.ts';
import { SLOT_SHARE, type StringPlace, stringPlaces } from './stringPlaces.ts';

const NAMES = [
  'stop',
  'bridgeFeet',
  'bridgeFootLength',
  'stringSpacingNut',
  'stringSpacingBridge',
  'stringNutBass',
  'stringNutTreble',
  'stringEndBass',
  'stringEndTreble',
  'saddleHeight',
  'saddleCrest',
  'tailGutGap',
] as const satisfies readonly ValueName[];

/** Of the string's length, from the bridge to the tailpiece: common practice, printed by two sources. */
const AFTER_LENGTH_SHARE = 1 / 6;

/** mm on a violin that the bridge reaches out beyond the outer strings, over the spacing there. */
const BESIDE_STRINGS_SHARE = 2.2 / 33.5;

/**
 * The set-up of a design over its set neck.
 *
 * Faults: `setup.value` (a value that is no length above 0), `setup.crown` (strings that no bridge can have under them),
 * those of `stringSet` and `stringBreak`. Findings: those of `stringSet` and {@link setupFindings}.
 */
export function setUpOfDesign(design: Design, neck: SetNeck, top: PlateArch): Checked<SetUp> {
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const given = (name: ValueName): number | undefined => design.values[name]?.value;
  const unsound = NAMES.filter((name) => !(value(name) > 0));
  if (unsound.length > 0)
    return refuse(...unsound.map((name) => wrongLength('setup.value', name, value(name))));
  const strings = stringSet(design, neck.set.stringLengthMm);
  if (!strings.ok) return strings;
  const between = (bass: ValueName, treble: ValueName, index: number): number =>
    value(treble) +
    (value(bass) - value(treble)) * (STRING_HEIGHT_SHARES[design.family][index] ?? Number.NaN);
  const places = stringPlaces(
    neck.sizes,
    neck.set.neckAngleRad,
    strings.value.strings.map(({ diameterMm }, index) => ({
      diameterMm,
      overNutMm: between('stringNutBass', 'stringNutTreble', index),
      overEndMm: between('stringEndBass', 'stringEndTreble', index),
    })),
    {
      nutMm: value('stringSpacingNut'),
      bridgeMm: value('stringSpacingBridge'),
      spread: design.stringSpread ?? 'centres',
    },
  );
  const tops = places.map(({ atBridgeMm, bridgeUpMm, diameterMm }) =>
    point<'section'>(atBridgeMm, bridgeUpMm + SLOT_SHARE * diameterMm),
  );
  const circle = fitCircle(tops);
  if (!(circle && circle.y < Math.min(...tops.map(({ y }) => y)))) return refuse(noCrown());
  const reachMm = value('stringSpacingBridge') * (1 / 2 + BESIDE_STRINGS_SHARE);
  const crown = crownArcs(tops, -reachMm, reachMm);
  const saddle: SaddlePlace = {
    fromBridgeMm: top.bodyLengthMm - value('stop') - value('saddleCrest'),
    overEdgeMm: value('saddleHeight'),
  };
  const angles = stringBreak(neck.set, saddle);
  if (!angles.ok) return angles;
  const afterLengthMm = given('afterLength') ?? AFTER_LENGTH_SHARE * neck.set.stringLengthMm;
  const bridgeToSaddleMm = hypot(saddle.fromBridgeMm, neck.set.bridgeOverEdgeMm - saddle.overEdgeMm);
  const parts = {
    strings: strings.value,
    places,
    crown,
    crownCircle: circle,
    crownHeightMm: circle.y + Math.sqrt(circle.radius ** 2 - circle.x ** 2),
    feetMm: value('bridgeFeet'),
    footLengthMm: value('bridgeFootLength'),
    saddle,
    angles: angles.value,
    load: loadOn(strings.value, places, neck.set.frontAngleRad, angles.value, {
      feetMm: value('bridgeFeet'),
      footLengthMm: value('bridgeFootLength'),
    }),
    afterLengthMm,
    bridgeToSaddleMm,
    tailpieceMostMm: bridgeToSaddleMm - afterLengthMm - value('tailGutGap'),
    endpin: endpinHole(design),
  };
  return accept({
    ...parts,
    findings: [...strings.value.findings, ...setupFindings(design, neck, parts, top.numbers.edgeHeightMm)],
  });
}

function loadOn(
  { strings, totalN }: StringSet,
  places: readonly StringPlace[],
  frontRad: number,
  { rearAngleRad, breakAngleRad }: StringBreak,
  { feetMm, footLengthMm }: { readonly feetMm: number; readonly footLengthMm: number },
): SetupLoad {
  // The bridge stands square to the plane of the edge, so its angles to the strings are what their slopes leave of a right one.
  const load = bridgeLoad(totalN, Math.PI / 2 - frontRad, Math.PI / 2 - rearAngleRad);
  const moment = strings.reduce((sum, { tensionN }, i) => sum + tensionN * (places[i]?.atBridgeMm ?? 0), 0);
  const asideMm = moment / totalN;
  const footAtMm = (feetMm - footLengthMm) / 2;
  const highShare = 1 / 2 + asideMm / (2 * footAtMm);
  return {
    ...load,
    halvedDownN: bridgeLoad(totalN, breakAngleRad / 2, breakAngleRad / 2).downN,
    lowFootN: load.downN * (1 - highShare),
    highFootN: load.downN * highShare,
  };
}

function noCrown(): Fault {
  return {
    code: 'setup.crown',
    at: 'boardRadius',
    found: 'strings that lie in a hollow over the bridge, so that none can be bowed alone',
    need: 'strings that lie on a round',
    remedy: 'check the round of the board and the heights of the strings over its end',
  };
}
