import { accept, Bug, type Checked, type Fault, refuse } from '../../base/index.ts';
import type { HalfOutline } from '../../curve/index.ts';
import type { Design, MeasuredHeights } from '../../design/index.ts';
import {
  bodyHalfWidth,
  curtateCycloid,
  type FairNet,
  type FairSpline,
  FULLNESS_LIMIT,
  fairSpline,
  type Loft,
  type LongArch,
  type LongArchForm,
  loftAt,
  longArch,
  longArchHeight,
  loopRatio,
  netAt,
} from '../../surface/index.ts';
import type { ArchStation, PlateArch } from './archedPlate.ts';
import { archFindings } from './archFindings.ts';
import {
  type ArchNumbers,
  archNumbers,
  type Plate,
  plateValueNames,
  type StationName,
} from './archNumbers.ts';
import { channelMiss } from './channelMiss.ts';
import type { EdgeMembers } from './edgeShape.ts';
import { edgeHalfWidth } from './edgeWidth.ts';
import { fairCorrection } from './fairCorrection.ts';
import { heightPull } from './heightPull.ts';
import { longArchWords } from './longArchWords.ts';
import { isGroundOf, type PlateGround, plateGround } from './plateGround.ts';
import { heldShare, type StationPlace } from './stations.ts';

/** What a maker may choose beside the values of the design. */
export interface ArchChoices {
  /** A circle with the design's end fillets unless chosen otherwise. */
  readonly longArch?: LongArchForm;
  /** Where the long arch is highest, mm above the lower end; the middle between the channel's ends unless chosen. */
  readonly crestMm?: number;
  /** Heights measured on an original that the surface is drawn to. */
  readonly heights?: MeasuredHeights;
  /** Stations moved by the maker, mm above the lower end. */
  readonly stationsMm?: Readonly<Partial<Record<StationName, number>>>;
}

/**
 * The arching of one plate from a design's values and its outline.
 *
 * Faults: those of the values (`arch.missing`, `arch.below-edge`, `arch.scoop`, `arch.edge-order`), of the channel
 * (`channel.…`), of the long arch and the stations (`arch.loop`, `arch.fillet`, `arch.stations`, `arch.fullness`,
 * `arch.sunk`, …).
 * Method: docs/methods/arching.md.
 */
export function plateArch(
  values: Design['values'],
  half: HalfOutline,
  plate: Plate,
  choices: ArchChoices = {},
): Checked<PlateArch> {
  const read = archNumbers(values, plate);
  if (!read.ok) return read;
  const ground = plateGround(values, half, choices.stationsMm);
  return ground.ok ? archOn(ground.value, values, plate, choices) : ground;
}

/**
 * The arching of one plate over a ground that is already laid out; quick, for a changed height, fullness or long arch.
 * Promises a ground of these values. Faults: those of {@link plateArch} but for the channel's.
 */
export function archOn(
  ground: PlateGround,
  values: Design['values'],
  plate: Plate,
  choices: Omit<ArchChoices, 'stationsMm'> = {},
): Checked<PlateArch> {
  const read = archNumbers(values, plate);
  if (!read.ok) return read;
  const numbers = read.value;
  if (!isGroundOf(ground, values)) throw new Bug('a plate on the ground of another channel');
  const { channel, edge, places, bodyLengthMm } = ground;
  const channelZMm = numbers.edgeHeightMm - numbers.scoopDepthMm;
  const riseMm = numbers.archHeightMm - channelZMm;
  const startMm = channel.line.points[0]?.y ?? 0;
  const endMm = channel.line.points.at(-1)?.y ?? 0;
  const form = choices.longArch ?? { kind: 'circle', filletMm: numbers.longArchFilletMm };
  const along = longArch(startMm, endMm, riseMm, form, plateValueNames(plate).arch, choices.crestMm);
  if (!along.ok)
    return refuse(...along.faults.map((fault) => longArchWords(fault, plate, choices.crestMm !== undefined)));
  const loft = strungLoft(along.value, ground, numbers, plate);
  if (!loft.ok) return loft;
  const fair = fairCorrection(ground.correction, loft.value);
  const numbersAlone = { loft: loft.value, correction: fair };
  const drawn =
    choices.heights && heightPull(ground.correction, { plate, channelZMm, ...numbersAlone }, choices.heights);
  if (drawn && !drawn.ok) return drawn;
  const { loft: drawnLoft, correction } = drawn?.value ?? numbersAlone;
  const drawnTo = drawn?.value.pull ?? null;
  const crest = (yMm: number): number =>
    drawnTo
      ? loftAt(drawnLoft, 0, yMm).zMm + netAt(correction, 0, yMm).zMm
      : longArchHeight(along.value, yMm);
  const stations = archStations(places, crest, numbers, edge, plate);
  if (!stations.ok) return stations;
  const arch = {
    plate,
    bodyLengthMm,
    numbers,
    channelZMm,
    archHeightMm: drawnTo ? channelZMm + highestMm(along.value, drawnLoft, correction) : numbers.archHeightMm,
    riseMm,
    longArch: along.value,
    channel,
    edge,
    loft: drawnLoft,
    correction,
    miss: channelMiss(channel.line, drawnLoft, correction),
    pull: drawnTo,
    stations: stations.value,
  };
  return accept({
    ...arch,
    findings: [...ground.findings, ...archFindings(arch), ...(drawnTo?.findings ?? [])],
  });
}

/** mm between places that are asked for the highest: an arch is level there, so that it is found to a hundredth. */
const HIGHEST_STEP_MM = 1;

/** The highest place of loft and correction over the channel. */
function highestMm({ startMm, endMm }: LongArch, loft: Loft, correction: FairNet): number {
  let most = 0;
  for (let yMm = startMm; yMm <= endMm; yMm += HIGHEST_STEP_MM)
    for (let xMm = 0; xMm < HIGHEST_SHARE * bodyHalfWidth(loft, yMm); xMm += HIGHEST_STEP_MM)
      most = Math.max(most, loftAt(loft, xMm, yMm).zMm + netAt(correction, xMm, yMm).zMm);
  return most;
}

/** Share of the half width within which an arch is highest. */
const HIGHEST_SHARE = 0.5;

function archStations(
  places: readonly StationPlace[],
  crestOverChannel: (yMm: number) => number,
  numbers: ArchNumbers,
  edge: EdgeMembers,
  plate: Plate,
): Checked<readonly ArchStation[]> {
  const faults: Fault[] = [];
  const stations: ArchStation[] = [];
  for (const { name, yMm, halfWidthMm } of places) {
    const fullness = numbers.fullness[name];
    const riseMm = crestOverChannel(yMm);
    const cycloid = curtateCycloid(2 * halfWidthMm, riseMm, plateValueNames(plate).arch);
    if (!cycloid.ok) faults.push(...cycloid.faults);
    if (!(Math.abs(fullness) < FULLNESS_LIMIT)) faults.push(fullnessFault(name, numbers));
    if (!(riseMm > numbers.scoopDepthMm)) faults.push(sunkFault(name, riseMm, numbers, plate));
    if (!cycloid.ok) continue;
    stations.push({
      name,
      yMm,
      halfWidthMm,
      edgeHalfWidthMm: edgeHalfWidth(edge, yMm),
      riseMm,
      fullness,
      cycloid: cycloid.value,
      heldShare: heldShare(name),
    });
  }
  return faults.length > 0 ? refuse(...faults) : accept(stations);
}

function sunkFault(name: StationName, riseMm: number, numbers: ArchNumbers, plate: Plate): Fault {
  return {
    code: 'arch.sunk',
    at: plateValueNames(plate).arch,
    found: `${name}: an arch ${riseMm.toFixed(2)} mm above a channel ${numbers.scoopDepthMm.toFixed(2)} mm deep`,
    need: 'an arch that rises above the edge at every station',
    remedy: 'raise the arch, make the channel shallower, or move the station toward the middle',
  };
}

function fullnessFault(name: StationName, { fullness, fullnessFrom }: ArchNumbers): Fault {
  return {
    code: 'arch.fullness',
    at: fullnessFrom[name],
    found: `a fullness of ${fullness[name]}`,
    need: `a fullness between −${FULLNESS_LIMIT} and ${FULLNESS_LIMIT}, outside which the arch turns back on its way up`,
    remedy: 'bring it nearer to 0',
  };
}

function strungLoft(
  along: LongArch,
  { places, squaredHalfWidth }: PlateGround,
  numbers: ArchNumbers,
  plate: Plate,
): Checked<Loft> {
  const fullness = fullnessAlong(along, places, numbers);
  if (!fullness.ok) return fullness;
  const loft = { longArch: along, squaredHalfWidth, fullness: fullness.value };
  for (let yMm = along.startMm + 1; yMm < along.endMm; yMm++)
    if (!(loopRatio(loft, yMm) < 1))
      return refuse({
        code: 'arch.loop',
        at: plateValueNames(plate).arch,
        found: `an arch so high for the width at ${yMm.toFixed(0)} mm above the lower end that a cycloid loops there`,
        need: 'a rise below the width divided by π everywhere',
        remedy: 'lower the arch, or bring the channel nearer to the edge',
      });
  return accept(loft);
}

/** Spans of the curve that carries the fullness along the body. */
const FULLNESS_SPANS = 24;

function fullnessAlong(
  along: LongArch,
  places: readonly StationPlace[],
  numbers: ArchNumbers,
): Checked<FairSpline> {
  const { startMm: from, endMm: to } = along;
  return fairSpline(
    {
      from,
      to,
      spans: FULLNESS_SPANS,
      values: [
        { at: from, value: 0 },
        ...places.map(({ name, yMm }) => ({ at: yMm, value: numbers.fullness[name] })),
        { at: to, value: 0 },
      ],
      slopes: [
        { at: from, slope: 0 },
        { at: to, slope: 0 },
      ],
      stiffness: 1,
    },
    'stations',
  );
}
