import { expm1, type Fault, type Finding, hypot } from '../../base/index.ts';
import { LENGTH_LIMITS } from '../../knowledge/index.ts';
import {
  type KnownMeasure,
  type KnownRatio,
  LENGTHS_ACROSS,
  LENGTHS_ALONG,
  type SceneMeasure,
  type SceneTrust,
} from './knownRatio.ts';

/** Lengths that lie outside what the family of violins, from the smallest violin to the largest cello, can have. */
export function absurdFaults(known: readonly KnownMeasure[]): readonly Fault[] {
  return known.flatMap(({ name, mm }) => {
    const { low, high } = limitsOf(name);
    if (mm >= low && mm <= high) return [];
    return [
      {
        code: 'known.absurd',
        at: name,
        found: `${mm} mm`,
        need: `between ${low.toFixed(0)} and ${high.toFixed(0)} mm`,
        remedy: otherUnit(mm, low, high),
      },
    ];
  });
}

/** Share of the body length: no part of the outline is narrower or wider. */
const NARROWEST = 0.2;
const WIDEST = 0.7;

function limitsOf(name: string): { low: number; high: number } {
  const [least, most] = [LENGTH_LIMITS.violin.least, LENGTH_LIMITS.cello.most];
  if (LENGTHS_ACROSS.includes(name)) return { low: NARROWEST * least, high: WIDEST * most };
  return { low: LENGTHS_ALONG.includes(name) ? least : 0, high: most };
}

function otherUnit(mm: number, low: number, high: number): string {
  const units = [
    ['inches', 25.4],
    ['centimetres', 10],
    ['metres', 1000],
  ] as const;
  const meant = units.find(([, times]) => mm * times >= low && mm * times <= high);
  return meant
    ? `say the unit: ${mm} looks like ${meant[0]}, which would be ${(mm * meant[1]).toFixed(1)} mm`
    : 'measure again and give the length in millimetres, or with its unit';
}

/** Beyond this many times the combined interval two lengths cannot both be true. */
const REFUSED_INTERVALS = 3;
/** Share. Nor when they are this far apart, however wide the intervals that were given for them. */
const REFUSED_SHARE = 0.05;

/** The two measurements, the scene's own scale among them, that contradict each other most; null when none do. */
export function contradictionFault(ratios: readonly KnownRatio[], trust: SceneTrust): Fault | null {
  const pairs = ratios.flatMap((one, place) => [
    ...ratios.slice(place + 1).map((other) => versusOther(one, other, trust)),
    ...versusScene(one, trust),
  ]);
  const refused = pairs.filter(
    ({ intervals, apart, mostShare }) => intervals > REFUSED_INTERVALS || Math.abs(apart) > mostShare,
  );
  if (refused.length === 0) return null;
  const worst = refused.reduce((most, pair) => (pair.intervals > most.intervals ? pair : most));
  return {
    code: 'known.contradict',
    at: worst.at,
    found: `${worst.words}, ${(100 * Math.abs(expm1(worst.apart))).toFixed(1)} % apart`,
    need: `lengths that agree to ${(100 * REFUSED_INTERVALS * worst.allowed).toFixed(1)} % and fit the same photograph`,
    remedy: worst.remedy,
  };
}

interface Pair {
  readonly at: string;
  readonly apart: number;
  readonly allowed: number;
  readonly intervals: number;
  /** Share beyond which the two are refused, whatever was given. */
  readonly mostShare: number;
  readonly words: string;
  readonly remedy: string;
}

function versusOther(one: KnownRatio, other: KnownRatio, trust: SceneTrust): Pair {
  const isCrossed = one.isAlong !== other.isAlong;
  const apart = one.logRatio - other.logRatio;
  const allowed = hypot(one.plusMinus, other.plusMinus, isCrossed ? trust.unevenPlusMinus : 0);
  const expected = (one.knownMm * other.measuredMm) / one.measuredMm;
  return {
    at: `${one.name}, ${other.name}`,
    apart,
    allowed,
    intervals: Math.abs(apart) / allowed,
    mostShare: REFUSED_SHARE,
    words: `with ${one.name} ${one.knownMm} mm the photograph shows ${other.name} ${expected.toFixed(1)} mm, but ${other.knownMm} mm is given`,
    remedy:
      'measure both again, straight and at the edge, and look whether the photograph was taken square on',
  };
}

/** A scene that itself says it may be off by more, as one seen square on, contradicts nothing inside that. */
function versusScene(one: KnownRatio, trust: SceneTrust): readonly Pair[] {
  if (trust.scalePlusMinus === null) return [];
  const allowed = hypot(one.plusMinus, trust.scalePlusMinus);
  return [
    {
      at: one.name,
      apart: one.logRatio,
      allowed,
      intervals: Math.abs(one.logRatio) / allowed,
      mostShare: Math.max(REFUSED_SHARE, trust.scalePlusMinus),
      words: `the sheet shows ${one.name} ${one.measuredMm.toFixed(1)} mm, but ${one.knownMm} mm is given`,
      remedy:
        'measure it again, straight with callipers, and look at the height of the edge and the bars of the sheet',
    },
  ];
}

export interface KnownSigns {
  readonly measured: readonly SceneMeasure[];
  readonly known: readonly KnownMeasure[];
  readonly ratios: readonly KnownRatio[];
  readonly strains: readonly number[];
  readonly trust: SceneTrust;
  /** Logarithm of the correction along over the one across. */
  readonly uneven: number;
}

/** Share. A stretch of the picture one way that shows in a template. */
const UNEVEN_SHARE = 0.005;

export function knownFindings({
  measured,
  known,
  ratios,
  strains,
  trust,
  uneven,
}: KnownSigns): readonly Finding[] {
  const findings: Finding[] = [];
  const used = new Set(ratios.map((ratio) => ratio.name));
  for (const { name } of known) if (!used.has(name)) findings.push(unusedFinding(name, measured));
  if (trust.scalePlusMinus === null && ratios.length === 1) findings.push(uncheckedFinding(ratios[0].name));
  ratios.forEach((ratio, place) => {
    if (Math.abs(strains[place]) > ratio.plusMinus) findings.push(strainedFinding(ratio, strains[place]));
    const allowed = hypot(ratio.plusMinus, trust.scalePlusMinus ?? Number.POSITIVE_INFINITY);
    if (Math.abs(ratio.logRatio) > allowed) findings.push(offSheetFinding(ratio, allowed));
  });
  if (Math.abs(uneven) > UNEVEN_SHARE) findings.push(unevenFinding(uneven));
  return findings;
}

function unusedFinding(name: string, measured: readonly SceneMeasure[]): Finding {
  const helpful = [...LENGTHS_ALONG, ...LENGTHS_ACROSS].filter((one) =>
    measured.some((seen) => seen.name === one),
  );
  return {
    weight: 'remark',
    code: 'known.unused',
    at: name,
    found: 'this length cannot be seen in the outline, so it does not help the scale',
    need: `one of ${helpful.join(', ')}`,
    remedy: 'give it again with the measurements when the design is drafted',
  };
}

function uncheckedFinding(name: string): Finding {
  return {
    weight: 'caution',
    code: 'known.unchecked',
    at: name,
    found: `the scale rests on ${name} alone and nothing checks it`,
    need: 'a second length, square to the first',
    remedy: 'give one width too, such as lowerBout, or photograph with the calibration sheet',
  };
}

function strainedFinding(ratio: KnownRatio, strain: number): Finding {
  const restMm = Math.abs(expm1(strain)) * ratio.measuredMm;
  return {
    weight: 'caution',
    code: 'known.strained',
    at: ratio.name,
    found: `${ratio.knownMm} mm is given, and after the best correction it still reads ${restMm.toFixed(2)} mm otherwise`,
    need: `agreement to ${(ratio.plusMinus * ratio.knownMm).toFixed(2)} mm`,
    remedy: 'measure it again, or give its ± as wide as it is',
  };
}

function offSheetFinding(ratio: KnownRatio, allowed: number): Finding {
  return {
    weight: 'caution',
    code: 'known.offSheet',
    at: ratio.name,
    found: `the sheet shows ${ratio.measuredMm.toFixed(1)} mm, ${ratio.knownMm} mm is given; the length given was believed`,
    need: `agreement to ${(allowed * ratio.knownMm).toFixed(1)} mm`,
    remedy: 'look at the height of the edge, the bars of the sheet and the callipers',
  };
}

function unevenFinding(uneven: number): Finding {
  return {
    weight: 'caution',
    code: 'known.uneven',
    at: 'photograph',
    found: `lengths along the body and across it differ by ${(100 * Math.abs(expm1(uneven))).toFixed(1)} % in scale; this was corrected`,
    need: 'a photograph taken square on',
    remedy: 'hold the camera straight above the instrument, or lay the calibration sheet under it',
  };
}
