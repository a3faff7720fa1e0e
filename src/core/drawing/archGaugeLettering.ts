import { boundsOf, type Chain } from '../curve/index.ts';
import type { ArchStation, EdgeState, PlateArch, StationName } from '../instrument/index.ts';
import { longArchHeight } from '../surface/index.ts';
import { bridgePlace } from './archGaugeMarks.ts';
import type { Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';

const STATION_TEXT: Readonly<Record<StationName, string>> = {
  lowerBout: 'lower bout',
  lowerCorner: 'lower corners',
  waist: 'waist',
  upperCorner: 'upper corners',
  upperBout: 'upper bout',
};

/** A station as a maker calls it. */
export function stationText(name: StationName): string {
  return STATION_TEXT[name];
}

/** mm, heights of the lettering. */
const TITLE_MM = 4;
const TEXT_MM = 2.8;
const SMALL_MM = 2.2;
/** How far small letters such as g reach below their base line, as a share of the height of capitals. */
const TAIL = 0.25;
/** A name that one line would shrink below this share is written in two. */
const LEAST_SHRINK = 0.75;

/** mm. On the long gauge of a shorter body the names of the stations are written smaller, to keep clear of each other. */
const FULL_SIZE_MM = 355;

/** mm from a mark to its name. */
const NEAR_MM = 1;

/** mm from the centre line to the lettering, and from the lettering to back and sides. */
const GAP_MM = 5;

/** Everything written on a gauge. A station of null is the long gauge, which may carry the bridge. */
export function gaugeLettering(
  arch: PlateArch,
  station: ArchStation | null,
  state: EdgeState,
  instrumentName: string,
  body: Chain<'drawing'>,
  stopMm?: number,
): readonly Lettering[] {
  const box = boundsOf(body);
  const middle = (box.min.x + box.max.x) / 2;
  const roomMm = (box.max.x - box.min.x) / 2 - 2 * GAP_MM;
  const where = station ? stationText(station.name) : 'centre line';
  const left = [
    `${arch.plate.toUpperCase()} · ${where}`,
    ...nameLines(instrumentName, roomMm),
    ...facing(arch, station),
  ];
  const right = station ? crossFigures(arch, station, state) : longFigures(arch, state);
  return [
    ...block(left, { x: middle - GAP_MM, y: box.max.y - GAP_MM }, 'end', roomMm),
    ...block(right, { x: middle + GAP_MM, y: box.max.y - GAP_MM }, 'start', roomMm),
    ...edgeNames(
      arch,
      station ? [-station.edgeHalfWidthMm, station.edgeHalfWidthMm] : [0, arch.bodyLengthMm],
    ),
    ...(station ? [] : alongNames(arch, body, stopMm)),
  ];
}

/** The instrument's name, in two lines where one would have to be written much smaller: between words where they allow. */
function nameLines(name: string, roomMm: number): readonly string[] {
  const width = (text: string): number => letteringWidthMm({ text, heightMm: TEXT_MM });
  if (LEAST_SHRINK * width(name) <= roomMm) return [name];
  const half = Math.ceil(name.length / 2);
  const torn = [`${name.slice(0, half)}-`, name.slice(half)];
  const longest = (lines: readonly string[]): number => Math.max(...lines.map(width));
  const [split] = [...name.matchAll(/\s+/g)]
    .map(({ index }) => [name.slice(0, index), name.slice(index).trim()])
    .sort((one, other) => longest(one) - longest(other));
  return split && longest(split) * LEAST_SHRINK <= longest(torn) ? split : torn;
}

/** Which way the lettered face looks, so that the plate falls away behind the gauge. */
function facing(arch: PlateArch, station: ArchStation | null): readonly string[] {
  if (!station) return ['hold upright on the centre line'];
  const middle = (arch.longArch.startMm + arch.longArch.endMm) / 2;
  return [`this side to the ${station.yMm < middle ? 'neck' : 'lower end'}`];
}

function crossFigures(arch: PlateArch, station: ArchStation, state: EdgeState): readonly string[] {
  return [
    `rise ${mm(station.riseMm)} mm, channel ${mm(2 * station.halfWidthMm)}`,
    `edge to edge ${mm(2 * station.edgeHalfWidthMm)}`,
    `${mm(station.yMm)} from the lower end`,
    restText(arch, state),
  ];
}

function longFigures(arch: PlateArch, state: EdgeState): readonly string[] {
  const { startMm, endMm } = arch.longArch;
  return [
    `rise ${mm(arch.riseMm)} mm, channel ${mm(endMm - startMm)}`,
    `with edge ${mm(arch.archHeightMm)}, body ${mm(arch.bodyLengthMm)}`,
    restText(arch, state),
  ];
}

function restText(arch: PlateArch, state: EdgeState): string {
  const { edgeHeightMm } = arch.numbers;
  return state === 'arched'
    ? `rests on flat edge ${mm(edgeHeightMm)}`
    : `rests on edge crest ${mm(edgeHeightMm)}`;
}

/** On the feet, beside the marks of the edge, read from below upwards. */
function edgeNames(arch: PlateArch, edges: readonly [number, number]): readonly Lettering[] {
  const y = arch.numbers.edgeHeightMm + NEAR_MM;
  return [edges[0] - NEAR_MM - TAIL * SMALL_MM, edges[1] + NEAR_MM + SMALL_MM].map((x) => ({
    text: 'edge',
    at: { x, y },
    heightMm: SMALL_MM,
    turnRad: Math.PI / 2,
    anchor: 'start',
  }));
}

function alongNames(
  arch: PlateArch,
  body: Chain<'drawing'>,
  stopMm: number | undefined,
): readonly Lettering[] {
  const box = boundsOf(body);
  const y = box.max.y - GAP_MM - TITLE_MM;
  const places: { text: string; yMm: number; before: boolean }[] = arch.stations.map(({ name, yMm }) => ({
    text: stationText(name),
    yMm,
    // The bridge stands close after the lower corners, so their name goes before their mark.
    before: name === 'lowerCorner',
  }));
  const bridgeMm = bridgePlace(arch, stopMm);
  if (bridgeMm !== undefined) places.push({ text: 'bridge', yMm: bridgeMm, before: false });
  const heightMm = SMALL_MM * Math.min(1, Math.sqrt(arch.bodyLengthMm / FULL_SIZE_MM));
  return [
    { text: 'LOWER END', at: { x: box.min.x + GAP_MM, y }, heightMm: TITLE_MM, turnRad: 0, anchor: 'start' },
    { text: 'NECK END', at: { x: box.max.x - GAP_MM, y }, heightMm: TITLE_MM, turnRad: 0, anchor: 'end' },
    ...places.map(({ text, yMm, before }): Lettering => {
      const at = {
        x: before ? yMm - NEAR_MM : yMm + NEAR_MM,
        y: arch.channelZMm + longArchHeight(arch.longArch, yMm) + 3 * NEAR_MM,
      };
      return { text, at, heightMm, turnRad: 0, anchor: before ? 'end' : 'start' };
    }),
  ];
}

/** Lines under one another, the first larger; a line too long for its room is written smaller. */
function block(
  texts: readonly string[],
  top: Lettering['at'],
  anchor: Lettering['anchor'],
  roomMm: number,
): readonly Lettering[] {
  let y = top.y;
  return texts.map((text, index) => {
    const wished = index === 0 && anchor === 'end' ? TITLE_MM : TEXT_MM;
    const widthMm = letteringWidthMm({ text, heightMm: wished });
    y -= wished;
    const heightMm = widthMm > roomMm ? (wished * roomMm) / widthMm : wished;
    const line: Lettering = { text, at: { x: top.x, y }, heightMm, turnRad: 0, anchor };
    y -= 0.75 * heightMm;
    return line;
  });
}

function mm(value: number): string {
  return value.toFixed(1);
}
