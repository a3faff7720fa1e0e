import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import type { Design, ValueName } from '../../design/index.ts';

/** Which of the two plates. */
export type Plate = 'back' | 'top';

/** Names of the five stations, from the lower end up. */
export const STATION_NAMES = ['lowerBout', 'lowerCorner', 'waist', 'upperCorner', 'upperBout'] as const;

/** The five places across a plate where arches are laid down, from the lower end up. */
export type StationName = (typeof STATION_NAMES)[number];

/** What a design says of one plate's arching, mm. */
export interface ArchNumbers {
  readonly edgeHeightMm: number;
  readonly archHeightMm: number;
  readonly scoopDepthMm: number;
  readonly crestInsetMm: number;
  readonly edgeLandMm: number;
  readonly channelAtBoutsMm: number;
  readonly channelAtWaistMm: number;
  readonly channelAtCornersMm: number;
  readonly channelCornerRoundingMm: number;
  readonly longArchFilletMm: number;
  readonly fullness: Readonly<Record<StationName, number>>;
  /** The value of a design that each of them comes from. */
  readonly fullnessFrom: Readonly<Record<StationName, ValueName>>;
}

/** Names of the values that belong to one plate only. */
export function plateValueNames(plate: Plate) {
  return plate === 'back'
    ? ({ edge: 'edgeHeightBack', arch: 'archHeightBack', scoop: 'scoopDepthBack' } as const)
    : ({ edge: 'edgeHeightTop', arch: 'archHeightTop', scoop: 'scoopDepthTop' } as const);
}

/** The value of the fullness at each station, of both plates but where the top has its own. */
export const FULLNESS_VALUES = {
  lowerBout: 'fullnessLowerBout',
  lowerCorner: 'fullnessLowerCorner',
  waist: 'fullnessWaist',
  upperCorner: 'fullnessUpperCorner',
  upperBout: 'fullnessUpperBout',
} as const satisfies Record<StationName, ValueName>;

/** The value that holds it for the top alone. */
export const TOP_FULLNESS_VALUES = {
  lowerBout: 'fullnessTopLowerBout',
  lowerCorner: 'fullnessTopLowerCorner',
  waist: 'fullnessTopWaist',
  upperCorner: 'fullnessTopUpperCorner',
  upperBout: 'fullnessTopUpperBout',
} as const satisfies Record<StationName, ValueName>;

/** The value that tells the fullness of a plate at each station. */
function fullnessNames(values: Design['values'], plate: Plate): ArchNumbers['fullnessFrom'] {
  const at = (name: StationName): ValueName =>
    plate === 'top' && values[TOP_FULLNESS_VALUES[name]] ? TOP_FULLNESS_VALUES[name] : FULLNESS_VALUES[name];
  return {
    lowerBout: at('lowerBout'),
    lowerCorner: at('lowerCorner'),
    waist: at('waist'),
    upperCorner: at('upperCorner'),
    upperBout: at('upperBout'),
  };
}

/**
 * The numbers of one plate's arching out of a design's values, all that are missing or contradict each other refused
 * at once.
 *
 * Faults: `arch.missing`, `arch.below-edge`, `arch.scoop`, `arch.edge-order` (crest, land, channel from the edge inwards).
 */
export function archNumbers(values: Design['values'], plate: Plate): Checked<ArchNumbers> {
  const faults: Fault[] = [];
  const read = (name: ValueName): number => {
    const value = values[name]?.value;
    if (value !== undefined && Number.isFinite(value)) return value;
    faults.push({
      code: 'arch.missing',
      at: name,
      found: 'no value',
      need: 'a number, to draw the arching',
      remedy: 'give it, or draft the design again so that it is filled from the habits of the trade',
    });
    return Number.NaN;
  };
  const names = plateValueNames(plate);
  const fullnessFrom = fullnessNames(values, plate);
  const numbers: ArchNumbers = {
    edgeHeightMm: read(names.edge),
    archHeightMm: read(names.arch),
    scoopDepthMm: read(names.scoop),
    crestInsetMm: read('edgeCrestInset'),
    edgeLandMm: read('edgeLand'),
    channelAtBoutsMm: read('channelAtBouts'),
    channelAtWaistMm: read('channelAtWaist'),
    channelAtCornersMm: read('channelAtCorners'),
    channelCornerRoundingMm: read('channelCornerRounding'),
    longArchFilletMm: read('longArchFillet'),
    fullness: {
      lowerBout: read(fullnessFrom.lowerBout),
      lowerCorner: read(fullnessFrom.lowerCorner),
      waist: read(fullnessFrom.waist),
      upperCorner: read(fullnessFrom.upperCorner),
      upperBout: read(fullnessFrom.upperBout),
    },
    fullnessFrom,
  };
  if (faults.length === 0) faults.push(...contradictions(numbers, plate));
  return faults.length > 0 ? refuse(...faults) : accept(numbers);
}

function contradictions(numbers: ArchNumbers, plate: Plate): readonly Fault[] {
  const names = plateValueNames(plate);
  const faults: Fault[] = [];
  const { edgeHeightMm: edge, archHeightMm: arch, scoopDepthMm: scoop } = numbers;
  if (!(arch > edge))
    faults.push({
      code: 'arch.below-edge',
      at: names.arch,
      found: `an arch of ${mm(arch)} over an edge of ${mm(edge)}`,
      need: 'an arch higher than the edge; both are counted from the gluing face',
      remedy: 'raise the arch, or check whether it was measured without the edge',
    });
  if (!(scoop >= 0 && scoop < edge))
    faults.push({
      code: 'arch.scoop',
      at: names.scoop,
      found: `a channel ${mm(scoop)} deep in an edge of ${mm(edge)}`,
      need: 'a depth from 0 mm to less than the edge',
      remedy: 'make the channel shallower',
    });
  const narrowest = Math.min(numbers.channelAtBoutsMm, numbers.channelAtWaistMm, numbers.channelAtCornersMm);
  const { crestInsetMm: crest, edgeLandMm: land } = numbers;
  if (!(crest > 0 && crest < edge && crest <= land && land < narrowest))
    faults.push({
      code: 'arch.edge-order',
      at: 'edgeLand',
      found: `from the edge inwards: crest ${mm(crest)}, flat land ${mm(land)}, channel ${mm(narrowest)}`,
      need: 'the crest inside the edge and no farther in than its height, then the end of the land, then the channel',
      remedy: 'make the land narrower, or move the channel farther in',
    });
  return faults;
}

function mm(value: number): string {
  return `${value.toFixed(2)} mm`;
}
