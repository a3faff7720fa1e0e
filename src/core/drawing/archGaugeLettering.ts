import { boundsOf, type Chain } from '../curve/index.ts';
import type { GaugePlace, PlateArch, StationName } from '../instrument/index.ts';
import { longArchHeight } from '../surface/index.ts';
import { bridgePlace } from './archGaugeMarks.ts';
import type { ArchGaugeOptions, GaugeStand } from './archGaugeOptions.ts';
import type { Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';

const STATION_TEXT: Readonly<Record<StationName, string>> = {
  lowerBout: 'lower bout',
  lowerCorner: 'lower corners',
  waist: 'waist',
  upperCorner: 'upper corners',
  upperBout: 'upper bout',
};

/** A place as a maker calls it. */
export function placeText({ name, yMm }: Pick<GaugePlace, 'name' | 'yMm'>): string {
  return name === undefined ? `at ${Number(yMm.toFixed(1))} mm` : STATION_TEXT[name];
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

/** Everything written on a gauge. A stand of null is the long gauge, which may carry the bridge. */
export function gaugeLettering(
  arch: PlateArch,
  stand: GaugeStand | null,
  options: ArchGaugeOptions,
  body: Chain<'drawing'>,
): readonly Lettering[] {
  const box = boundsOf(body);
  const middle = stand ? 0 : (arch.longArch.startMm + arch.longArch.endMm) / 2;
  const roomMm = Math.min(middle - box.min.x, box.max.x - middle) - 2 * GAP_MM;
  const place = stand?.place;
  const where = place ? placeText(place) : 'centre line';
  const left = [
    `${arch.plate.toUpperCase()} · ${where}`,
    ...nameLines(options.instrumentName, roomMm),
    ...facing(stand),
  ];
  const right = place ? crossFigures(arch, place, options) : longFigures(arch, options);
  return [
    ...gaugeBlock(left, { x: middle - GAP_MM, y: box.max.y - GAP_MM }, 'end', roomMm),
    ...gaugeBlock(right, { x: middle + GAP_MM, y: box.max.y - GAP_MM }, 'start', roomMm),
    ...edgeNames(arch, place, options),
    ...(place ? [] : alongNames(arch, body, options.stopMm)),
  ];
}

/** The instrument's name, in two lines where one would have to be written much smaller: between words where they allow. */
export function nameLines(name: string, roomMm: number): readonly string[] {
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
function facing(stand: GaugeStand | null): readonly string[] {
  if (!stand) return ['hold upright on the centre line'];
  return [`this side to the ${stand.stuff.behindMm < 0 ? 'neck' : 'lower end'}`];
}

function crossFigures(arch: PlateArch, place: GaugePlace, options: ArchGaugeOptions): readonly string[] {
  return [
    `rise ${mm(place.riseMm)} mm, channel ${mm(2 * place.halfWidthMm)}`,
    `edge to edge ${mm(2 * place.edgeHalfWidthMm)}`,
    `${mm(place.yMm)} from the lower end`,
    restText(arch, options),
  ];
}

function longFigures(arch: PlateArch, options: ArchGaugeOptions): readonly string[] {
  const { startMm, endMm } = arch.longArch;
  return [
    `rise ${mm(arch.riseMm)} mm, channel ${mm(endMm - startMm)}`,
    `with edge ${mm(arch.archHeightMm)}, body ${mm(arch.bodyLengthMm)}`,
    restText(arch, options),
  ];
}

function restText(arch: PlateArch, { state, feet }: ArchGaugeOptions): string {
  const edge = `${state === 'finished' ? 'edge crest' : 'flat edge'} ${mm(arch.numbers.edgeHeightMm)}`;
  return feet === 'bench' ? `feet on the bench, ${edge}` : `rests on ${edge}`;
}

/** On the feet, beside the marks of the edge, read from below upwards. */
function edgeNames(
  arch: PlateArch,
  place: GaugePlace | undefined,
  { feet }: ArchGaugeOptions,
): readonly Lettering[] {
  const [first, second] = place ? [-place.edgeHalfWidthMm, place.edgeHalfWidthMm] : [0, arch.bodyLengthMm];
  const before = (x: number): number => x - NEAR_MM - TAIL * SMALL_MM;
  // Beyond the neck end a gauge on the bench may step over a button: its name stands before the mark.
  const last = !place && feet === 'bench' ? before(second) : second + NEAR_MM + SMALL_MM;
  return [before(first), last].map((x) => ({
    text: 'edge',
    at: { x, y: arch.numbers.edgeHeightMm + NEAR_MM },
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
    text: STATION_TEXT[name],
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
export function gaugeBlock(
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
