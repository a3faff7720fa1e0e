import { accept, type Checked, type Fault, type Finding, hypot, refuse } from '../../base/index.ts';
import type { Measurements, PlateReadings, ValueName } from '../../design/index.ts';
import {
  FULLNESS_VALUES,
  type Plate,
  STATION_NAMES,
  type StationName,
  TOP_FULLNESS_VALUES,
} from '../../instrument/index.ts';
import { measured, printSpread, type Quantity } from '../../quantity/index.ts';
import {
  type Estimate,
  FULLNESS_LIMIT,
  fitCrossArch,
  fitLongArch,
  type MeasuredCrossArch,
  type MeasuredLongArch,
} from '../../surface/index.ts';
import { STATION_WORDS, stationOf } from './archNames.ts';
import {
  fittedFinding,
  givenDiffers,
  longArchFindings,
  overCrest,
  platesDiffer,
  readTwice,
  stationUnknown,
  tooFull,
} from './archWords.ts';
import type { KeptReading, KeptReadings } from './keptHeights.ts';
import type { ReadingsOfPlate } from './readProfile.ts';

type Values = Partial<Record<ValueName, Quantity>>;

/** What measured arches give a design: arch heights, fullness by station, scoop where the edge is known. */
export interface ArchValues {
  readonly values: Readonly<Values>;
  readonly findings: readonly Finding[];
}

/** The same, with the readings that the surfaces themselves are to be drawn to. */
export interface MeasuredArches extends ArchValues {
  readonly kept: readonly KeptReadings[];
}

/** One plate's readings after fitting. */
interface FittedPlate {
  readonly plate: Plate;
  readonly readings: PlateReadings;
  readonly stations: ReadonlyMap<StationName, MeasuredCrossArch>;
  readonly longArch: MeasuredLongArch | null;
  readonly kept: readonly KeptReading[];
  readonly findings: readonly Finding[];
}

/**
 * The values that a table's measured arches give, each measured and with ±, and what a maker should know of every fit:
 * how well it comes out, and where post, bar or load moved the wood. A value that the table gives itself stands; where
 * both plates are equally full at a station they share the mean.
 * Faults: those of the fits. Findings: `arch.fitted`, `arch.station-unknown`, `arch.plates-differ`, `arch.too-full`, `arch.read-twice`,
 * `arch.over-crest`, `arch.height-open`, `arch.long-form`, `arch.crest-place`, and those of the fits.
 */
export function measuredArches(
  measurements: Measurements,
  profiles: readonly ReadingsOfPlate[] = [],
): Checked<MeasuredArches> {
  const faults: Fault[] = [];
  const plates: FittedPlate[] = [];
  const table = (['back', 'top'] as const).flatMap((plate) => {
    const readings = measurements.arches?.[plate];
    return readings ? [{ plate, readings }] : [];
  });
  for (const { plate, readings } of [...table, ...profiles]) {
    const place = readings.sidesKnown ? `arches.${plate}` : readings.source;
    const fitted = fitPlate(plate, readings, measurements, place);
    if (fitted.ok) plates.push(fitted.value);
    else faults.push(...fitted.faults);
  }
  if (faults.length > 0) return refuse(...faults);
  const full = fullnessValues(plates, measurements.values);
  const heights = plates.map((one) => heightValues(one, measurements.values));
  const values: Values = Object.assign({}, ...heights.map((one) => one.values), full.values);
  return accept({
    kept: plates.flatMap(keptOf),
    values: { ...values, ...ownOf(measurements.values, values) },
    findings: [
      ...plates.flatMap(({ findings }) => findings),
      ...heights.flatMap(({ findings }) => findings),
      ...full.findings,
      ...givenDiffers(measurements.values, values),
    ],
  });
}

/** Of the values that were fitted, those that the table gives itself: they stand. */
function ownOf(given: Measurements['values'], fitted: Values): Values {
  return Object.fromEntries(Object.entries(given).filter(([name]) => name in fitted));
}

function fitPlate(
  plate: Plate,
  readings: PlateReadings,
  measurements: Measurements,
  place: string,
): Checked<FittedPlate> {
  const faults: Fault[] = [];
  const findings: Finding[] = [];
  const stations = new Map<StationName, MeasuredCrossArch>();
  const kept: KeptReading[] = [];
  const { base, leaveOut, sidesKnown } = readings;
  readings.stations.forEach((reading, index) => {
    const at = `${place}.stations[${index}]`;
    const name = stationOf(reading, measurements);
    const { centreXMm, halfWidthMm } = reading;
    const fit = fitCrossArch(
      reading.points,
      {
        base,
        leaveOut,
        sidesKnown,
        face: plate,
        ...(name !== null && { station: name }),
        ...(centreXMm !== undefined && { centreXMm }),
        ...(halfWidthMm !== undefined && { halfWidthMm }),
      },
      at,
    );
    if (!fit.ok) {
      faults.push(...fit.faults);
      return;
    }
    kept.push({
      station: reading.station,
      points: reading.points,
      originMm: fit.value.centreXMm.value,
      fit: fit.value,
    });
    findings.push(...fit.value.findings, fittedFinding(at, crossWords(fit.value, name), fit.value));
    if (name === null) findings.push(stationUnknown(at, reading));
    else {
      const before = stations.get(name);
      if (before) findings.push(...readTwice(at, name, before.crestMm, fit.value.crestMm));
      stations.set(name, fit.value);
    }
  });
  const at = `${place}.longArch`;
  const long =
    readings.longArch && fitLongArch(readings.longArch, { base, leaveOut, sidesKnown, face: plate }, at);
  if (long && !long.ok) faults.push(...long.faults);
  if (faults.length > 0) return refuse(...faults);
  const longArch = long?.ok ? long.value : null;
  if (longArch && readings.longArch)
    kept.push({
      station: null,
      points: readings.longArch,
      originMm: longArch.crestAtMm.value,
      fit: longArch,
    });
  if (longArch)
    findings.push(
      ...longArch.findings,
      fittedFinding(at, `rise ${told(longArch.riseMm)} mm`, longArch),
      ...longArchFindings(at, longArch),
    );
  findings.push(...overCrest(place, stations, longArch, base));
  return accept({ plate, readings, stations, longArch, kept, findings });
}

function keptOf({ plate, readings, kept }: FittedPlate): readonly KeptReadings[] {
  const { keepHeights, base, leaveOut, plusMinusMm, source } = readings;
  if (keepHeights !== true) return [];
  return [
    { plate, readings: kept, base, leaveOut, source, ...(plusMinusMm !== undefined && { plusMinusMm }) },
  ];
}

function crossWords(arch: MeasuredCrossArch, name: StationName | null): string {
  const where = name === null ? '' : `${STATION_WORDS[name]}: `;
  return `${where}rise ${told(arch.riseMm)} mm, half width ${told(arch.halfWidthMm)} mm, fullness ${told(arch.fullness)}`;
}

function told({ value, plusMinus }: Estimate): string {
  return printSpread(value, plusMinus);
}

/** Arch height and scoop, where heights count from the gluing face. */
function heightValues(fitted: FittedPlate, given: Measurements['values']): ArchValues {
  const { plate, readings, stations, longArch } = fitted;
  const waist = stations.get('waist');
  const crest = longArch?.crestMm ?? waist?.crestMm;
  const names =
    plate === 'back'
      ? ({ arch: 'archHeightBack', edge: 'edgeHeightBack', scoop: 'scoopDepthBack' } as const)
      : ({ arch: 'archHeightTop', edge: 'edgeHeightTop', scoop: 'scoopDepthTop' } as const);
  if (readings.base === 'free') return { values: {}, findings: [heightOpen(plate, crest !== undefined)] };
  if (!crest) return { values: {}, findings: [] };
  const from = longArch ? 'long arch' : 'cross arch at the waist';
  const values: Values = {
    [names.arch]: quantity(crest, 'mm', `${from} fitted to ${readings.source}`),
  };
  const bases = [longArch?.baseMm, ...[...stations.values()].map(({ baseMm }) => baseMm)].filter(
    (one) => one !== undefined,
  );
  const base = bases.toSorted((a, b) => a.plusMinus - b.plusMinus)[0];
  const edge = given[names.edge];
  const scoop = edge && base && edge.value - base.value;
  if (scoop !== undefined && scoop > 0 && base)
    values[names.scoop] = quantity(
      { value: scoop, plusMinus: hypot(base.plusMinus, edge?.plusMinus ?? 0) },
      'mm',
      `edge less the channel of the arches fitted to ${readings.source}`,
    );
  return { values, findings: [] };
}

function heightOpen(plate: Plate, hasCrest: boolean): Finding {
  return {
    weight: 'remark',
    code: 'arch.height-open',
    at: `arches.${plate}`,
    found: hasCrest
      ? 'heights that do not count from the gluing face; the rise is known, the arch height is not'
      : 'heights that do not count from the gluing face',
    need: 'the arch height over the gluing face',
    remedy: `give ${plate === 'back' ? 'archHeightBack' : 'archHeightTop'}, or read the heights from the gluing face`,
  };
}

/** The fullness of each station: one for both plates where these are equally full, else each its own. */
function fullnessValues(plates: readonly FittedPlate[], given: Measurements['values']): ArchValues {
  const values: Values = {};
  const findings: Finding[] = [];
  for (const name of STATION_NAMES) {
    const read = plates.flatMap(({ plate, readings, stations }) => {
      const arch = stations.get(name);
      return arch ? [{ plate, source: readings.source, fullness: arch.fullness }] : [];
    });
    const usable = read.filter(({ fullness }) => Math.abs(fullness.value) < FULLNESS_LIMIT);
    for (const { plate, fullness } of read.filter((one) => !usable.includes(one)))
      findings.push(tooFull(plate, name, fullness));
    const differ = platesDiffer(name, usable);
    findings.push(...differ);
    const of = (plate: Plate): readonly FullnessRead[] => usable.filter((one) => one.plate === plate);
    const isFree = given[FULLNESS_VALUES[name]] === undefined;
    const isOwn = isFree && differ.length > 0 && of('back').length > 0 && of('top').length > 0;
    const shared = fullnessOf(isOwn ? of('back') : usable);
    const own = isOwn ? fullnessOf(of('top')) : null;
    if (shared) values[FULLNESS_VALUES[name]] = shared;
    if (own) values[TOP_FULLNESS_VALUES[name]] = own;
  }
  return { values, findings };
}

/** The fullness that one plate was read to have at a station. */
interface FullnessRead {
  readonly plate: Plate;
  readonly source: string;
  readonly fullness: Estimate;
}

function fullnessOf(read: readonly FullnessRead[]): Quantity | null {
  if (read.length === 0) return null;
  const of = [...new Set(read.map(({ plate }) => plate))].join(' and ');
  const from = [...new Set(read.map(({ source }) => source))].join(' and ');
  return quantity(
    meanOf(read.map(({ fullness }) => fullness)),
    'ratio',
    `cross arch of the ${of} fitted to ${from}`,
  );
}

/** The mean by their ±; half their range, where that is more, is its own ±. */
function meanOf(all: readonly Estimate[]): Estimate {
  const [only, ...others] = all;
  if (only && others.length === 0) return only;
  const weights = all.map(({ plusMinus }) => 1 / Math.max(plusMinus, LEAST_PLUS_MINUS) ** 2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const values = all.map(({ value }) => value);
  return {
    value: values.reduce((sum, value, i) => sum + weights[i] * value, 0) / total,
    plusMinus: Math.max(1 / Math.sqrt(total), (Math.max(...values) - Math.min(...values)) / 2),
  };
}

/** Ratio. No fullness is known better (chosen by us), so that a reading without noise does not count for everything. */
const LEAST_PLUS_MINUS = 0.002;

function quantity({ value, plusMinus }: Estimate, unit: 'mm' | 'ratio', from: string): Quantity {
  return { value, unit, plusMinus, origin: measured(from) };
}
