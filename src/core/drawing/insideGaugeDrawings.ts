import { accept, type Checked, type Fault, refuse } from '../base/index.ts';
import { boundsOf, type Chain, type Vertex } from '../curve/index.ts';
import {
  type GaugePlace,
  type GaugeStuff,
  gaugePlace,
  type InsideEdge,
  type InsideHeight,
  insideLongEdge,
  insideStationEdge,
  insideStuff,
  type PlateArch,
} from '../instrument/index.ts';
import { gaugeHoles, insideGaugeBody } from './archGaugeBody.ts';
import { placeText } from './archGaugeLettering.ts';
import { centreMark } from './archGaugeMarks.ts';
import { EDGE_TOOLS_CAUTION, squareEdgeText } from './archGaugeNotes.ts';
import type { ArchGaugeOptions } from './archGaugeOptions.ts';
import { placeName } from './archGaugePlaceName.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing } from './drawing.ts';
import { insideGaugeLettering } from './insideGaugeLettering.ts';

/**
 * The gauges for the inside of a plate: one across at each station and each further place, one along the centre line. The
 * plate lies on its outside; they rest on its gluing face and hang into the hollow.
 *
 * Drawing frame: x across (or y along), upward out of the hollow, 0 the gluing face, seen on the lettered face.
 * Faults: `gauge.inside`, `gauge.thickness`, `gauge.place`.
 */
export function insideGaugeDrawings(
  arch: PlateArch,
  inside: InsideHeight,
  options: ArchGaugeOptions,
): Checked<readonly Drawing[]> {
  const further = (options.atMm ?? []).map((yMm) => gaugePlace(arch, yMm));
  const places = [...arch.stations.map((station) => accept<GaugePlace>(station)), ...further];
  const made = [
    ...places.map((place) => (place.ok ? crossGauge(arch, place.value, inside, options) : place)),
    longGauge(arch, inside, options),
  ];
  const faults: Fault[] = made.flatMap((gauge) => (gauge.ok ? [] : gauge.faults));
  if (faults.length > 0) return refuse(...faults);
  return accept(made.flatMap((gauge) => (gauge.ok ? [gauge.value] : [])));
}

function crossGauge(
  arch: PlateArch,
  place: GaugePlace,
  inside: InsideHeight,
  options: ArchGaugeOptions,
): Checked<Drawing> {
  const plain = insideStationEdge(arch, place, inside);
  if (!plain.ok) return plain;
  const stuff = insideStuff(place, inside, plain.value.rims[1], options.gaugeThicknessMm);
  const edge =
    options.workingEdge === 'square' ? insideStationEdge(arch, place, inside, stuff.behindMm) : plain;
  if (!edge.ok) return edge;
  const x = place.edgeHalfWidthMm;
  return accept(drawn(arch, edge.value, [-x, x], 0, { place, stuff }, options));
}

function longGauge(arch: PlateArch, inside: InsideHeight, options: ArchGaugeOptions): Checked<Drawing> {
  const edge = insideLongEdge(arch, inside);
  if (!edge.ok) return edge;
  const middle = (arch.longArch.startMm + arch.longArch.endMm) / 2;
  return accept(drawn(arch, edge.value, [0, arch.bodyLengthMm], middle, null, options));
}

function drawn(
  arch: PlateArch,
  edge: InsideEdge,
  ends: readonly [number, number],
  middle: number,
  stand: { readonly place: GaugePlace; readonly stuff: GaugeStuff } | null,
  options: ArchGaugeOptions,
): Drawing {
  const body = insideGaugeBody(below(edge.chain), ends);
  const holes = gaugeHoles(middle, body);
  const box = boundsOf(body);
  const where = stand ? placeText(stand.place) : 'along the centre line';
  return {
    name: `inside-gauge-${arch.plate}-${stand ? placeName(stand.place) : 'long'}`,
    title: `Inside gauge, ${arch.plate}, ${where}`,
    part: 'arching',
    lines: [
      { meaning: 'cut', chain: body },
      ...holes.map((chain) => ({ meaning: 'cut-inside' as const, chain })),
      ...centreMark(middle, body, holes),
    ],
    lettering: insideGaugeLettering(arch, edge, middle, stand, options, body),
    notes: notes(stand, options),
    count: 1,
    routes: ['print', 'laser'],
    checks: sizeChecks(box),
  };
}

/** Depths written downward. */
function below(chain: Chain<'section'>): Chain<'drawing'> {
  return {
    closed: false,
    vertices: chain.vertices.map(
      ({ x, y, bulge }): Vertex<'drawing'> => ({ x, y: y === 0 ? 0 : -y, bulge: bulge === 0 ? 0 : -bulge }),
    ),
  };
}

function notes(
  stand: { readonly place: GaugePlace; readonly stuff: GaugeStuff } | null,
  options: ArchGaugeOptions,
): readonly string[] {
  const made = `Made for stuff ${options.gaugeThicknessMm} mm thick.`;
  return [
    'Lay the plate on its outside in a cradle; both feet rest on the gluing face and the gauge hangs into the hollow. Where it rides, wood is still to go; when the feet sit and no light shows under it, the plate has its thickness there. Never lower: measure the thickness with a calliper before the last cuts.',
    stand
      ? `${made} The lettered face stands on the station line, ${Number(stand.place.yMm.toFixed(1))} mm above the lower end; the stuff lies behind it. ${squareEdgeText(stand.stuff, options)}`
      : `${made} Stands on the centre line. The inside is taken from the outside and its thickness, before bar and linings are in.`,
    EDGE_TOOLS_CAUTION,
  ];
}
