import { accept, type Checked, type Fault, refuse } from '../base/index.ts';
import { boundsOf, type Chain, placeChain } from '../curve/index.ts';
import { edgeProfile, type PlateArch } from '../instrument/index.ts';
import { gaugeBlock, nameLines } from './archGaugeLettering.ts';
import { EDGE_TOOLS_CAUTION } from './archGaugeNotes.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing } from './drawing.ts';

export interface EdgeGaugeOptions {
  readonly instrumentName: string;
  readonly underRoundingMm: number;
  /** How far a jaw may reach under the plate: less than it stands out beyond the ribs. */
  readonly overhangMm: number;
}

/** mm of card outside the edge, below the gluing face and above the crest. */
const OUTSIDE_MM = 46;
const BELOW_MM = 8;
const ABOVE_MM = 24;

/** Share of the overhang that the lower jaw reaches under the plate. */
const JAW_SHARE = 0.8;

/** mm from the edges of the card to the lettering. */
const GAP_MM = 4;

/**
 * Gauges that are pushed on to the finished edge of a plate from outside: one for every distance of the channel, named after
 * the places that have it. Drawing frame: x inward from the edge, y above the gluing face. Fault: `edge.rounding`.
 */
export function edgeGaugeDrawings(arch: PlateArch, options: EdgeGaugeOptions): Checked<readonly Drawing[]> {
  const places = placesByDistance(arch);
  const made = [...places].map(([channelMm, names]) => gauge(arch, channelMm, names, options));
  const faults: Fault[] = made.flatMap((one) => (one.ok ? [] : one.faults));
  // The same rounding is wrong at every place: said once.
  if (faults[0]) return refuse(faults[0]);
  return accept(made.flatMap((one) => (one.ok ? [one.value] : [])));
}

function placesByDistance({ numbers }: PlateArch): ReadonlyMap<number, readonly string[]> {
  const places = new Map<number, string[]>();
  const at = [
    ['bouts', numbers.channelAtBoutsMm],
    ['waist', numbers.channelAtWaistMm],
    ['corners', numbers.channelAtCornersMm],
  ] as const;
  for (const [name, distanceMm] of at) places.set(distanceMm, [...(places.get(distanceMm) ?? []), name]);
  return places;
}

function gauge(
  arch: PlateArch,
  channelMm: number,
  names: readonly string[],
  options: EdgeGaugeOptions,
): Checked<Drawing> {
  const jawMm = JAW_SHARE * options.overhangMm;
  const profile = edgeProfile(arch, options.underRoundingMm, channelMm, jawMm);
  if (!profile.ok) return profile;
  const body = card(placeChain<'drawing', 'section'>(profile.value.chain, { turnRad: 0, shift: [0, 0] }));
  const box = boundsOf(body);
  const { edgeHeightMm, crestInsetMm, scoopDepthMm, edgeLandMm } = arch.numbers;
  const lines = [
    `${arch.plate.toUpperCase()} · EDGE`,
    names.join(', '),
    ...nameLines(options.instrumentName, OUTSIDE_MM - 2 * GAP_MM),
    `edge ${edgeHeightMm.toFixed(1)}, crest ${crestInsetMm.toFixed(1)} in`,
    `channel ${channelMm.toFixed(1)} in, ${scoopDepthMm.toFixed(1)} deep`,
  ];
  return accept({
    name: `edge-gauge-${arch.plate}-${names.join('-')}`,
    title: `Edge gauge, ${arch.plate}, ${names.join(', ')}`,
    part: 'edge',
    lines: [{ meaning: 'cut', chain: body }],
    lettering: gaugeBlock(
      lines,
      { x: box.min.x + GAP_MM, y: box.max.y - GAP_MM },
      'start',
      OUTSIDE_MM - 2 * GAP_MM,
    ),
    notes: [
      `Pushed on from outside, square to the edge; the lower jaw goes under the overhang. Rounded ${mm(options.underRoundingMm)} below and ${mm(crestInsetMm)} above, upright ${mm(profile.value.uprightMm)} between; the crest stands ${mm(edgeHeightMm)} over the gluing face, the channel is ${mm(scoopDepthMm)} deep ${mm(channelMm)} from the edge. Before the channel is cut the edge stays flat over ${mm(edgeLandMm)}.`,
      ...(names.includes('corners')
        ? ['For the sides of a corner; across its tip the channel runs out and the crest is followed by eye.']
        : []),
      EDGE_TOOLS_CAUTION,
    ],
    count: 1,
    routes: ['print', 'laser'],
    checks: sizeChecks(box),
  });
}

/** The card around a profile that opens to the right: closed, anticlockwise. */
function card({ vertices }: Chain<'drawing'>): Chain<'drawing'> {
  const [first, last] = [vertices[0], vertices.at(-1)];
  const top = Math.max(...vertices.map(({ y }) => y)) + ABOVE_MM;
  const corner = (x: number, y: number) => ({ x, y, bulge: 0 });
  return {
    closed: true,
    vertices: [
      corner(-OUTSIDE_MM, -BELOW_MM),
      corner(first?.x ?? 0, -BELOW_MM),
      ...vertices,
      corner(last?.x ?? 0, top),
      corner(-OUTSIDE_MM, top),
    ],
  };
}

function mm(value: number): string {
  return `${Number(value.toFixed(2))} mm`;
}
