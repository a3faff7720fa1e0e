import { type Finding, hypot } from '../../base/index.ts';
import type { ArchReading, ValueName } from '../../design/index.ts';
import { FULLNESS_VALUES, type Plate, type StationName } from '../../instrument/index.ts';
import type { Quantity } from '../../quantity/index.ts';
import { type Estimate, FULLNESS_LIMIT, type MeasuredLongArch } from '../../surface/index.ts';
import { STATION_WORDS } from './archNames.ts';

/** mm. Readings that leave a fit by more say that the form is another, or that the reading slipped (chosen by us). */
const COARSE_MM = 0.3;

/** How well a fit comes out: numbers with ±, count of readings, residuals. */
export function fittedFinding(
  at: string,
  numbers: string,
  fit: {
    readonly rmsMm: number;
    readonly maxMm: number;
    readonly residuals: readonly { readonly used: boolean }[];
  },
): Finding {
  const used = fit.residuals.filter((one) => one.used).length;
  const coarse = fit.rmsMm > COARSE_MM;
  return {
    weight: coarse ? 'caution' : 'remark',
    code: 'arch.fitted',
    at,
    found: `${numbers}; ${used} of ${fit.residuals.length} readings, ${fit.rmsMm.toFixed(2)} mm rms, at most ${fit.maxMm.toFixed(2)} mm off`,
    need: coarse
      ? `readings within ${COARSE_MM} mm rms of an arch of this form`
      : 'no action: this is what the readings give',
    remedy: coarse
      ? 'look at the residuals: read the worst places again, or draw the arch from your own numbers'
      : 'compare it with the instrument before wood is cut',
  };
}

/** A reading at no station: it was fitted and told, and gives the design nothing. */
export function stationUnknown(at: string, { station }: ArchReading): Finding {
  const where = typeof station === 'string' ? station : `${station.yMm} mm above the lower end`;
  return {
    weight: 'caution',
    code: 'arch.station-unknown',
    at,
    found: `a reading at ${where}, near none of the five stations; it was fitted, and not used`,
    need: `a reading at ${Object.values(STATION_WORDS).join(', ')}`,
    remedy: 'name the station if it is one of them, or read the arch there',
  };
}

/** Where both plates clearly differ in fullness each has its own, and the maker should know. */
export function platesDiffer(
  name: StationName,
  read: readonly { readonly plate: Plate; readonly source: string; readonly fullness: Estimate }[],
): readonly Finding[] {
  const sorted = read.toSorted((a, b) => a.fullness.value - b.fullness.value);
  const [least, most] = [sorted[0], sorted[sorted.length - 1]];
  if (!least || !most) return [];
  const apart = most.fullness.value - least.fullness.value;
  const spread = hypot(least.fullness.plusMinus, most.fullness.plusMinus);
  if (apart <= Math.max(EQUALLY_FULL, spread)) return [];
  const told = ({ plate, fullness }: (typeof read)[number]) => `${fullness.value.toFixed(3)} on the ${plate}`;
  return [
    {
      weight: 'remark',
      code: 'arch.plates-differ',
      at: FULLNESS_VALUES[name],
      found: `fullness ${told(least)} and ${told(most)}`,
      need: `both within ${EQUALLY_FULL} to be drawn alike; each plate is drawn with its own`,
      remedy: 'compare both with the instrument, or give the fullness that you want',
    },
  ];
}

/** Ratio. Arches no farther apart are equally full for every purpose of the wood: 0.24 mm at half height of a violin. */
const EQUALLY_FULL = 0.02;

/** A value that the table gives beside readings that say otherwise. */
export function givenDiffers(
  given: Readonly<Partial<Record<ValueName, Quantity>>>,
  fitted: Readonly<Partial<Record<ValueName, Quantity>>>,
): readonly Finding[] {
  return (Object.keys(fitted) as ValueName[]).flatMap((name): Finding[] => {
    const [one, other] = [given[name], fitted[name]];
    if (!one || !other) return [];
    const equal = other.unit === 'mm' ? AGREE_MM : EQUALLY_FULL;
    const allowed = Math.max(equal, (one.plusMinus ?? 0) + (other.plusMinus ?? 0));
    if (Math.abs(one.value - other.value) <= allowed) return [];
    return [
      {
        weight: 'caution',
        code: 'arch.given-differs',
        at: name,
        found: `${one.value.toFixed(2)} given, ${other.value.toFixed(2)} by the readings of the arch; the given one is used`,
        need: `the two within ${allowed.toFixed(2)}`,
        remedy: 'measure it again, or leave the value out and the readings give it',
      },
    ];
  });
}

/** mm. Two ways to measure one height that differ by less agree (chosen by us). */
const AGREE_MM = 0.3;

/** Two readings of one station whose crests stand at different heights. */
export function readTwice(
  at: string,
  name: StationName,
  before: Estimate,
  now: Estimate,
): readonly Finding[] {
  const allowed = Math.max(AGREE_MM, before.plusMinus + now.plusMinus);
  if (Math.abs(now.value - before.value) <= allowed) return [];
  return [
    {
      weight: 'caution',
      code: 'arch.read-twice',
      at,
      found: `the ${STATION_WORDS[name]} read a second time, with a crest of ${now.value.toFixed(2)} mm where the first reading has ${before.value.toFixed(2)} mm; the second one is used`,
      need: `both within ${allowed.toFixed(2)} mm`,
      remedy: 'leave one of the readings out, or read the arch there again',
    },
  ];
}

/**
 * Cross arches that stand higher than the crest of the long arch, or than the waist where that was not read: both cannot
 * belong to one plate. Where heights do not count from the gluing face, rises are compared.
 */
export function overCrest(
  place: string,
  stations: ReadonlyMap<StationName, Pick<MeasuredLongArch, 'riseMm' | 'crestMm'>>,
  longArch: Pick<MeasuredLongArch, 'riseMm' | 'crestMm'> | null,
  base: 'given' | 'free',
): readonly Finding[] {
  const most = longArch ?? stations.get('waist');
  if (!most) return [];
  const heightOf = ({ riseMm, crestMm }: Pick<MeasuredLongArch, 'riseMm' | 'crestMm'>): Estimate =>
    base === 'given' ? crestMm : riseMm;
  const [what, highest] = [longArch ? 'the long arch' : 'the waist', heightOf(most)];
  return [...stations].flatMap(([name, arch]): Finding[] => {
    const here = heightOf(arch);
    const allowed = Math.max(AGREE_MM, here.plusMinus + highest.plusMinus);
    if (here.value - highest.value <= allowed) return [];
    return [
      {
        weight: 'caution',
        code: 'arch.over-crest',
        at: place,
        found: `the ${STATION_WORDS[name]} read ${here.value.toFixed(2)} mm high, ${what} ${highest.value.toFixed(2)} mm at its crest`,
        need: `no cross arch higher than the crest, to ${allowed.toFixed(2)} mm`,
        remedy: 'read both again from the same level, or leave the wrong one out',
      },
    ];
  });
}

/** A fullness that would turn the arch back is no design. */
export function tooFull(plate: Plate, name: StationName, { value }: Estimate): Finding {
  return {
    weight: 'caution',
    code: 'arch.too-full',
    at: FULLNESS_VALUES[name],
    found: `the ${plate} at the ${STATION_WORDS[name]} reads as a fullness of ${value.toFixed(2)}; not used`,
    need: `a fullness between −${FULLNESS_LIMIT} and ${FULLNESS_LIMIT}`,
    remedy: 'check where the channel lies in these readings, or give halfWidth',
  };
}

/** mm. A crest nearer to the middle than this is in the middle for every purpose of the wood (chosen by us). */
const CENTRED_MM = 4;

/** What a measured long arch has that the design's does not: another form, a crest out of the middle. */
export function longArchFindings(at: string, arch: MeasuredLongArch): readonly Finding[] {
  const findings: Finding[] = [];
  const circle = arch.forms.find(({ kind }) => kind === 'circle');
  if (arch.form.kind !== 'circle')
    findings.push({
      weight: 'remark',
      code: 'arch.long-form',
      at,
      found:
        `the long arch is nearest to ${FORM_WORDS[arch.form.kind]} (${arch.rmsMm.toFixed(2)} mm rms); the design draws a circle` +
        (circle
          ? `, which comes within ${circle.rmsMm.toFixed(2)} mm rms`
          : ', which these readings do not fit'),
      need: 'no action: arch height and rise are met either way',
      remedy: 'compare the long arch gauge with the instrument',
    });
  const offMm = (arch.belowMm.value - arch.aboveMm.value) / 2;
  if (Math.abs(offMm) > Math.max(CENTRED_MM, arch.crestAtMm.plusMinus))
    findings.push({
      weight: 'remark',
      code: 'arch.crest-place',
      at,
      found: `the crest lies ${Math.abs(offMm).toFixed(1)} mm ${offMm > 0 ? 'above' : 'below'} the middle of the long arch, ${arch.crestAtMm.value.toFixed(1)} ± ${arch.crestAtMm.plusMinus.toFixed(1)} mm from where the readings begin to count`,
      need: 'a crest in the middle, where the design has it',
      remedy: 'no action, unless you want the asymmetry: it is not drawn',
    });
  return findings;
}

const FORM_WORDS = {
  circle: 'a circle with end fillets',
  'two-circles': 'a flat top between falling circles',
  cycloid: 'a cycloid',
} as const;
