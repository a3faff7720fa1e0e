import { boundsOf, type Chain, type HalfOutline, outlineChain } from '../curve/index.ts';
import type { ValueName } from '../design/index.ts';
import {
  type ArchStation,
  type EdgeState,
  type Instrument,
  type PlateArch,
  plateHeight,
} from '../instrument/index.ts';
import { plateContours, roughContours } from '../judging/index.ts';
import type { ContourLine } from '../surface/index.ts';
import { pathThrough } from './pathThrough.ts';
import { type ShownLine, shownLine } from './shownLine.ts';

/** A line of one height, as points through which it runs; `everyFifth` ones are drawn broader and carry their number. */
export interface ShownContour {
  readonly heightMm: number;
  readonly everyFifth: boolean;
  readonly path: string;
}

/** A cross arch as a gauge shows it: x from the centre line, y down from the gluing face upwards negative. Millimetres. */
export interface ShownStation {
  readonly name: string;
  readonly stationMm: number;
  readonly edgeHalfWidthMm: number;
  /** Of the crest over the gluing face. */
  readonly heightMm: number;
  /** Of the crest over the channel. */
  readonly riseMm: number;
  readonly fullness: number;
  /** The number of the design that it comes from. */
  readonly fullnessFrom: ValueName;
  readonly edgeHeightMm: number;
  /** From edge to edge over the plate. */
  readonly path: string;
}

/** One plate from its outside: contours, stations with their profiles, and the long arch. Millimetres, y down from the upper end. */
export interface ShownPlate {
  readonly plate: 'back' | 'top';
  readonly state: EdgeState;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly outline: ShownLine<'edge'>;
  readonly contours: readonly ShownContour[];
  readonly stations: readonly ShownStation[];
  /** Along the centre line, from the lower end: x height over the gluing face, y down from the upper end. */
  readonly longArch: { readonly path: string; readonly highestMm: number };
}

/** mm between two contours; grid they are found on; chords of profiles. */
const CONTOUR_MM = 1;
const FIELD_STEP_MM = 1.5;
const PROFILE_STEP_MM = 1;
/** mm that a contour may leave the surface between two of its places: a tenth of what a screen at life size can show. */
const CONTOUR_ERROR_MM = 0.03;
const USUAL_LENGTH_MM = 355;

/** mm: the same while a hand drags. */
const ROUGH_STEP_MM = 3;

/** The outside of a plate to be looked at. */
export function shownPlate(instrument: Instrument, plate: 'back' | 'top', state: EdgeState): ShownPlate {
  const arch = instrument.plates[plate];
  const outline = outlineChain(instrument.half);
  const [intervalMm, size] = intervalOf(arch);
  const { lines } = plateContours(arch, outline, state, intervalMm, FIELD_STEP_MM * size, CONTOUR_ERROR_MM);
  return platePaths(arch, outline, state, lines);
}

/** A plate while a hand drags at it: contours straight from a wide grid. */
export function roughPlate(arch: PlateArch, half: HalfOutline, state: EdgeState): ShownPlate {
  const outline = outlineChain(half);
  const [intervalMm, size] = intervalOf(arch);
  const lines = roughContours(arch, outline, state, intervalMm, ROUGH_STEP_MM * size);
  return platePaths(arch, outline, state, lines);
}

function intervalOf({ bodyLengthMm }: PlateArch): readonly [intervalMm: number, size: number] {
  const size = bodyLengthMm / USUAL_LENGTH_MM;
  return [CONTOUR_MM * Math.max(1, Math.round(size)), size];
}

/** Those gauges that take their fullness from a number, as both {@link roughPlate} and {@link shownPlate} have them: what a hand holds that pulls at it. */
export function gaugesUnderHand(
  arch: PlateArch,
  state: EdgeState,
  fullnessFrom: ValueName,
): readonly ShownStation[] {
  return arch.stations
    .filter(({ name }) => arch.numbers.fullnessFrom[name] === fullnessFrom)
    .map((station) => shownStation(arch, station, state));
}

function shownStation(arch: PlateArch, station: ArchStation, state: EdgeState): ShownStation {
  const { name, yMm, edgeHalfWidthMm, fullness } = station;
  const heightMm = plateHeight(arch, 0, yMm, state);
  return {
    name,
    stationMm: yMm,
    edgeHalfWidthMm,
    heightMm,
    riseMm: heightMm - arch.channelZMm,
    fullness,
    fullnessFrom: arch.numbers.fullnessFrom[name],
    edgeHeightMm: arch.numbers.edgeHeightMm,
    path: profilePath(
      -edgeHalfWidthMm,
      edgeHalfWidthMm,
      (x) => plateHeight(arch, x, yMm, state),
      (along, height) => [along, -height],
    ),
  };
}

function platePaths(
  arch: PlateArch,
  outline: Chain<'body'>,
  state: EdgeState,
  lines: readonly ContourLine[],
): ShownPlate {
  const top = arch.bodyLengthMm;
  const [intervalMm] = intervalOf(arch);
  return {
    plate: arch.plate,
    state,
    lengthMm: top,
    widthMm: 2 * boundsOf(outline).max.x,
    outline: shownLine('edge', outline, top),
    contours: lines.map(({ levelMm, closed, xyMm }) => ({
      heightMm: levelMm,
      everyFifth: Math.round(levelMm / intervalMm) % 5 === 0,
      path: pathThrough(xyMm, closed, top),
    })),
    stations: arch.stations.map((station) => shownStation(arch, station, state)),
    longArch: {
      path: profilePath(
        0,
        top,
        (y) => plateHeight(arch, 0, y, state),
        (along, heightMm) => [heightMm, top - along],
      ),
      highestMm: arch.archHeightMm,
    },
  };
}

function profilePath(
  from: number,
  to: number,
  heightAt: (along: number) => number,
  place: (along: number, heightMm: number) => readonly [number, number],
): string {
  const count = Math.ceil((to - from) / PROFILE_STEP_MM);
  const at = (index: number): string => {
    // The ends are the edge itself: a hair inside, where the plate is.
    const along = Math.min(to - WITHIN_MM, Math.max(from + WITHIN_MM, from + ((to - from) * index) / count));
    const [x, y] = place(along, heightAt(along));
    return `${x.toFixed(2)} ${y.toFixed(2)}`;
  };
  return `M${Array.from({ length: count + 1 }, (_, index) => at(index)).join('L')}`;
}

/** mm. */
const WITHIN_MM = 0.01;
