import { accept, type Checked, type Fault, refuse } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import {
  type GaugePlace,
  gaugePlace,
  gaugeStuff,
  longArcs,
  type PlateArch,
  stationArcs,
} from '../instrument/index.ts';
import { gaugeBody, gaugeHoles } from './archGaugeBody.ts';
import { gaugeLettering, placeText } from './archGaugeLettering.ts';
import { crossMarks, longMarks } from './archGaugeMarks.ts';
import { gaugeNotes } from './archGaugeNotes.ts';
import type { ArchGaugeOptions } from './archGaugeOptions.ts';
import { placeName } from './archGaugePlaceName.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing } from './drawing.ts';

/**
 * The arching gauges of a plate: one across at each station and at each further place, and one along the centre line.
 * They stand over the plate and show light where wood is still to go.
 *
 * Drawing frame: x across (or y along, for the long one), y the height above the plate's gluing face, seen on the
 * lettered face. Faults are those of fitting arcs, and `gauge.place`.
 */
export function archGaugeDrawings(arch: PlateArch, options: ArchGaugeOptions): Checked<readonly Drawing[]> {
  const further = (options.atMm ?? []).map((yMm) => gaugePlace(arch, yMm));
  const places = [...arch.stations.map((station) => accept<GaugePlace>(station)), ...further];
  const made = [
    ...places.map((place) => (place.ok ? crossGauge(arch, place.value, options) : place)),
    longGauge(arch, options),
  ];
  const faults: Fault[] = made.flatMap((gauge) => (gauge.ok ? [] : gauge.faults));
  if (faults.length > 0) return refuse(...faults);
  return accept(made.flatMap((gauge) => (gauge.ok ? [gauge.value] : [])));
}

function crossGauge(arch: PlateArch, place: GaugePlace, options: ArchGaugeOptions): Checked<Drawing> {
  const state = options.state ?? 'arched';
  const stuff = gaugeStuff(arch, place, state, options.gaugeThicknessMm);
  const edge = stationArcs(arch, place, state, options.workingEdge === 'square' ? stuff.behindMm : 0);
  if (!edge.ok) return edge;
  const x = place.edgeHalfWidthMm;
  const body = gaugeBody(edge.value, {
    edges: [-x, x],
    edgeHeightMm: arch.numbers.edgeHeightMm,
    crestMm: arch.channelZMm + place.riseMm,
    feet: options.feet ?? 'edge',
  });
  const holes = gaugeHoles(0, body);
  return accept({
    ...frame(arch, placeName(place), placeText(place), options, body),
    lines: [
      { meaning: 'cut', chain: body },
      ...holes.map((chain) => ({ meaning: 'cut-inside' as const, chain })),
      ...crossMarks(arch, place, body, holes),
    ],
    lettering: gaugeLettering(arch, { place, stuff }, options, body),
    notes: gaugeNotes(arch, { place, stuff }, state, options),
  });
}

/** A violin's button and a little more, as a share of the body length: from memory. */
const BUTTON_SHARE = 18 / 355;

function longGauge(arch: PlateArch, options: ArchGaugeOptions): Checked<Drawing> {
  const state = options.state ?? 'arched';
  const edge = longArcs(arch, state);
  if (!edge.ok) return edge;
  const body = gaugeBody(edge.value, {
    edges: [0, arch.bodyLengthMm],
    edgeHeightMm: arch.numbers.edgeHeightMm,
    crestMm: arch.archHeightMm,
    feet: options.feet ?? 'edge',
    ...(arch.plate === 'back' && { buttonMm: options.buttonMm ?? BUTTON_SHARE * arch.bodyLengthMm }),
  });
  const middle = (arch.longArch.startMm + arch.longArch.endMm) / 2;
  const holes = gaugeHoles(middle, body);
  return accept({
    ...frame(arch, 'long', 'along the centre line', options, body),
    lines: [
      { meaning: 'cut', chain: body },
      ...holes.map((chain) => ({ meaning: 'cut-inside' as const, chain })),
      ...longMarks(arch, body, holes, options.stopMm),
    ],
    lettering: gaugeLettering(arch, null, options, body),
    notes: gaugeNotes(arch, null, state, options),
  });
}

type Frame = Pick<Drawing, 'name' | 'title' | 'part' | 'count' | 'routes' | 'checks'>;

function frame(
  arch: PlateArch,
  name: string,
  where: string,
  { state, feet }: ArchGaugeOptions,
  body: Chain<'drawing'>,
): Frame {
  const box = boundsOf(body);
  const finished = state === 'finished';
  const bench = feet === 'bench';
  return {
    name: `arching-gauge-${arch.plate}-${name}${finished ? '-finished' : ''}${bench ? '-from-bench' : ''}`,
    title: `Arching gauge, ${arch.plate}, ${where}${finished ? ', finished edge' : ''}${bench ? ', from the bench' : ''}`,
    part: 'arching',
    count: 1,
    routes: ['print', 'laser'],
    checks: sizeChecks(box),
  };
}
