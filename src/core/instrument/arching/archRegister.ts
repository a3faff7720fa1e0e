import { atan } from '../../base/index.ts';
import type { RegisterEntry, Unit } from '../../quantity/index.ts';
import { chordCircleRadius, longArchRadii } from '../../surface/index.ts';
import type { ArchStation, PlateArch } from './archedPlate.ts';
import { plateValueNames } from './archNumbers.ts';

/** Every number that the arching of a plate derives, each with what it comes from, as lines of the register. */
export function archRegister(arch: PlateArch): readonly RegisterEntry[] {
  const { plate } = arch;
  const names = plateValueNames(plate);
  const of = (what: string): string => `${plate}.${what}`;
  const channel = [
    'channelAtBouts',
    'channelAtWaist',
    'channelAtCorners',
    'channelCornerRounding',
    'outline',
  ];
  const chord = arch.longArch.endMm - arch.longArch.startMm;
  const [crestRadius] = longArchRadii(arch.longArch);
  return [
    entry(of('channelZ'), arch.channelZMm, 'mm', [names.edge, names.scoop], 'edge height less scoop depth'),
    entry(of('rise'), arch.riseMm, 'mm', [names.arch, of('channelZ')], 'arch height less channel height'),
    entry(of('longArch.chord'), chord, 'mm', ['outline', 'channelAtBouts'], 'channel end to channel end'),
    entry(
      of('longArch.plainCircleRadius'),
      chordCircleRadius(chord, arch.riseMm),
      'mm',
      [of('longArch.chord'), of('rise')],
      'circle through both channel ends and the crest',
    ),
    ...(crestRadius === undefined
      ? []
      : [
          entry(
            of('longArch.crestRadius'),
            crestRadius,
            'mm',
            [of('longArch.chord'), of('rise'), 'longArchFillet'],
            'circle over the crest, tangent to what brings it level into the channel',
          ),
        ]),
    ...pullEntries(arch),
    ...arch.stations.flatMap((station) => stationEntries(arch, station, channel)),
  ];
}

/** What measured heights make of a surface: how well one is known, how far they stand off it, how far it was moved. */
function pullEntries({ plate, pull }: PlateArch): readonly RegisterEntry[] {
  if (!pull) return [];
  const name = `${plate}.measuredHeights`;
  const shape = [name, `${plate}.rise`, `${plate}.longArch.chord`];
  return [
    {
      name,
      value: pull.plusMinusMm,
      unit: 'mm',
      origin: { kind: 'measured', from: pull.source ?? `${pull.left.length} heights in the design` },
    },
    entry(
      `${name}.left`,
      pull.rmsMm,
      'mm',
      shape,
      'root mean square of the heights over the surface drawn to them',
    ),
    entry(
      `${name}.moved`,
      pull.moved.mm,
      'mm',
      shape,
      'what the heights move the surface of the numbers by, at most',
    ),
  ];
}

function stationEntries(
  arch: PlateArch,
  station: ArchStation,
  channel: readonly string[],
): readonly RegisterEntry[] {
  const of = (what: string): string => `${arch.plate}.${station.name}.${what}`;
  const { cycloid } = station;
  const shape = [of('width'), of('rise')];
  return [
    entry(of('station'), station.yMm, 'mm', channel, 'found on the channel line, from the lower end'),
    entry(of('width'), 2 * station.halfWidthMm, 'mm', channel, 'channel to channel'),
    entry(of('edgeWidth'), 2 * station.edgeHalfWidthMm, 'mm', [of('station'), 'outline'], 'edge to edge'),
    entry(
      of('rise'),
      station.riseMm,
      'mm',
      [
        `${arch.plate}.rise`,
        `${arch.plate}.longArch.chord`,
        of('station'),
        'longArchFillet',
        ...(arch.pull ? [`${arch.plate}.measuredHeights.moved`] : []),
      ],
      arch.pull
        ? 'height of the centre line above the channel, as the measured heights draw it'
        : 'height of the long arch above the channel',
    ),
    entry(
      of('steepest'),
      (atan(-cycloid.steepest.slope) * 180) / Math.PI,
      'deg',
      shape,
      'steepest slope of the cycloid before fullness',
    ),
    entry(
      of('crestRadius'),
      cycloid.crestRadiusMm / (1 - 4 * station.fullness),
      'mm',
      [...shape, arch.numbers.fullnessFrom[station.name]],
      'radius across the crest',
    ),
    entry(
      of('channelRadius'),
      cycloid.channelRadiusMm / (1 + 4 * station.fullness),
      'mm',
      [...shape, arch.numbers.fullnessFrom[station.name]],
      'radius with which the arch leaves the channel',
    ),
  ];
}

function entry(name: string, value: number, unit: Unit, from: readonly string[], how: string): RegisterEntry {
  return { name, value, unit, origin: { kind: 'derived', from, how } };
}
