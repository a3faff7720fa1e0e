import { accept, type Checked, type Fault, refuse } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import {
  type ArchStation,
  type EdgeState,
  longArcs,
  type PlateArch,
  stationArcs,
} from '../instrument/index.ts';
import { gaugeBody, gaugeHoles } from './archGaugeBody.ts';
import { gaugeLettering, stationText } from './archGaugeLettering.ts';
import { crossMarks, longMarks } from './archGaugeMarks.ts';
import type { Drawing } from './drawing.ts';

export interface ArchGaugeOptions {
  /** As it is lettered on every gauge. */
  readonly instrumentName: string;
  /** Of the stuff they are cut from, for the notes, mm. */
  readonly gaugeThicknessMm: number;
  /**
   * `arched` gauges, the usual ones, rest on the flat edge before the channel is cut; `finished` ones on the crest of
   * the finished edge, and reach into the channel.
   */
  readonly state?: EdgeState;
  /** Body stop, mm, to mark the bridge on the long gauge of a top. */
  readonly stopMm?: number;
}

/**
 * The arching gauges of a plate: one across at each station and one along the centre line. They stand over the plate
 * and show light where wood is still to go.
 *
 * Drawing frame: x across (or y along, for the long one), y the height above the plate's gluing face, seen on the
 * lettered face. Faults are those of fitting arcs.
 */
export function archGaugeDrawings(arch: PlateArch, options: ArchGaugeOptions): Checked<readonly Drawing[]> {
  const made = [
    ...arch.stations.map((station) => crossGauge(arch, station, options)),
    longGauge(arch, options),
  ];
  const faults: Fault[] = made.flatMap((gauge) => (gauge.ok ? [] : gauge.faults));
  if (faults.length > 0) return refuse(...faults);
  return accept(made.flatMap((gauge) => (gauge.ok ? [gauge.value] : [])));
}

function crossGauge(arch: PlateArch, station: ArchStation, options: ArchGaugeOptions): Checked<Drawing> {
  const state = options.state ?? 'arched';
  const edge = stationArcs(arch, station, state);
  if (!edge.ok) return edge;
  const crestMm = arch.channelZMm + station.riseMm;
  const x = station.edgeHalfWidthMm;
  const body = gaugeBody(edge.value, [-x, x], arch.numbers.edgeHeightMm, crestMm);
  const holes = gaugeHoles(0, body);
  return accept({
    ...frame(arch, `${hyphened(station.name)}`, stationText(station.name), state, body),
    lines: [
      { meaning: 'cut', chain: body },
      ...holes.map((chain) => ({ meaning: 'cut-inside' as const, chain })),
      ...crossMarks(arch, station, body, holes),
    ],
    lettering: gaugeLettering(arch, station, state, options.instrumentName, body),
    notes: notes(arch, station, state, options),
  });
}

function longGauge(arch: PlateArch, options: ArchGaugeOptions): Checked<Drawing> {
  const state = options.state ?? 'arched';
  const edge = longArcs(arch, state);
  if (!edge.ok) return edge;
  const body = gaugeBody(edge.value, [0, arch.bodyLengthMm], arch.numbers.edgeHeightMm, arch.archHeightMm);
  const middle = (arch.longArch.startMm + arch.longArch.endMm) / 2;
  const holes = gaugeHoles(middle, body);
  return accept({
    ...frame(arch, 'long', 'along the centre line', state, body),
    lines: [
      { meaning: 'cut', chain: body },
      ...holes.map((chain) => ({ meaning: 'cut-inside' as const, chain })),
      ...longMarks(arch, body, holes, options.stopMm),
    ],
    lettering: gaugeLettering(arch, null, state, options.instrumentName, body, options.stopMm),
    notes: notes(arch, null, state, options),
  });
}

type Frame = Pick<Drawing, 'name' | 'title' | 'part' | 'count' | 'routes' | 'checks'>;

function frame(
  arch: PlateArch,
  name: string,
  where: string,
  state: EdgeState,
  body: Chain<'drawing'>,
): Frame {
  const box = boundsOf(body);
  const finished = state === 'finished';
  return {
    name: `arching-gauge-${arch.plate}-${name}${finished ? '-finished' : ''}`,
    title: `Arching gauge, ${arch.plate}, ${where}${finished ? ', finished edge' : ''}`,
    part: 'arching',
    count: 1,
    routes: ['print', 'laser'],
    checks: [
      { name: 'width', valueMm: box.max.x - box.min.x },
      { name: 'height', valueMm: box.max.y - box.min.y },
    ],
  };
}

function hyphened(name: string): string {
  return name.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);
}

const CAUTION =
  'Gouges, planes, scrapers, knives, routers and lasers can hurt: clamp the plate, keep both hands behind the edge, wear eye protection, draw off dust and fumes, and follow the manual of the machine.';

function notes(
  arch: PlateArch,
  station: ArchStation | null,
  state: EdgeState,
  options: ArchGaugeOptions,
): readonly string[] {
  const { edgeHeightMm, edgeLandMm, crestInsetMm } = arch.numbers;
  const rest =
    state === 'arched'
      ? `Rests on the flat edge, ${mm(edgeHeightMm)} thick, before the channel is cut: the arch is right when it comes down to the flat all along the gauge. At least ${mm(edgeLandMm)} stays flat until the purfling is in.`
      : `Rests on the crest of the finished edge, ${mm(crestInsetMm)} in from the edge and ${mm(edgeHeightMm)} thick, and reaches down into the finished channel.`;
  const stuff = `Made for stuff ${mm(options.gaugeThicknessMm)} thick.`;
  const where = station
    ? `The lettered face stands on the station line, ${mm(station.yMm)} above the lower end; the plate falls away behind it. Thick stuff is bevelled off behind the working edge.`
    : 'Stands on the centre line. Thick stuff is bevelled off to one face, and that face is held on the line.';
  const wing =
    station && station.heldShare < 1
      ? [
          `Near a corner the arch keeps to its formula over the inner ${Math.round(100 * station.heldShare)} % of its half width; outside, the gauge follows the surface of the plate.`,
        ]
      : [];
  return [
    rest,
    `${stuff} ${where}`,
    ...wing,
    'Light under the gauge shows where the wood is already low; where it rides, wood is still to go. Common practice.',
    CAUTION,
  ];
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
