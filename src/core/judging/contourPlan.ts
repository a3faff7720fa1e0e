import { boundsOf, type Chain, outlineChain, placeChain, sampleChain } from '../curve/index.ts';
import { type EdgeState, type Instrument, type Plate, type PlateArch } from '../instrument/index.ts';
import type { ContourLine, HeightField } from '../surface/index.ts';
import { type NumberOnLine, numberedLines } from './lineNumbers.ts';
import { plateContours } from './plateContours.ts';
import { plateLadders } from './plateLadders.ts';

/** The contours of one plate with their numbers, and what else a contour sheet shows. */
export interface ContourPlan {
  readonly instrumentName: string;
  readonly arch: PlateArch;
  readonly state: EdgeState;
  readonly intervalMm: number;
  readonly outline: Chain<'drawing'>;
  readonly field: HeightField;
  readonly lines: readonly ContourLine[];
  readonly numbers: readonly NumberOnLine[];
  readonly unsettled: number;
}

/** Every so many contours one is drawn heavier. */
const HEAVY_EVERY = 5;

/** mm on an instrument of this length; others are scaled. */
export const LETTERED_FOR_MM = 355;
const NUMBER_MM = 2.6;

/** mm, at size 1. Closer lines have no room for numbers: then only the heavy ones are numbered, across their neighbours. */
const NUMBERED_FROM_MM = 0.4;

/** mm between the places of the grid that contours are found on, at size 1. */
const CONTOUR_STEP_MM = 0.5;

export function contourPlan(
  instrument: Instrument,
  plate: Plate,
  state: EdgeState,
  intervalMm: number,
): ContourPlan {
  const arch = instrument.plates[plate];
  const outline = outlineChain(instrument.half);
  const size = arch.bodyLengthMm / LETTERED_FOR_MM;
  const found = plateContours(arch, outline, state, intervalMm, CONTOUR_STEP_MM * size);
  const numbered = numberedLines(
    found.lines,
    (levelMm) => heightText(levelMm),
    NUMBER_MM * size,
    plateLadders(outline),
    guideLines(arch, outline),
    (levelMm) => intervalMm >= NUMBERED_FROM_MM * size || isHeavy(levelMm, intervalMm),
  );
  return {
    instrumentName: instrument.plan.name,
    arch,
    state,
    intervalMm,
    outline: placeChain<'drawing', 'body'>(outline, { turnRad: 0, shift: [0, 0] }),
    field: found.field,
    lines: numbered.lines,
    numbers: numbered.numbers,
    unsettled: found.unsettled,
  };
}

/** mm that the outline's points may leave it for keeping numbers off. */
const OUTLINE_CHORD_MM = 0.05;

/** Centre line, stations and outline, which numbers are kept off. */
export function guideLines(arch: PlateArch, outline: Chain<'body'>): readonly ContourLine[] {
  const { min, max } = boundsOf(outline);
  const guide = (...xyMm: number[]): ContourLine => ({
    levelMm: 0,
    closed: false,
    xyMm: Float64Array.from(xyMm),
  });
  return [
    guide(0, min.y, 0, max.y),
    { ...guide(...sampleChain(outline, OUTLINE_CHORD_MM).flatMap(({ x, y }) => [x, y])), closed: true },
    ...arch.stations.map(({ yMm, edgeHalfWidthMm }) => guide(-edgeHalfWidthMm, yMm, edgeHalfWidthMm, yMm)),
  ];
}

/** A height as its number stands on the plate: no more decimals than it has, tenths at least where it is no whole. */
function heightText(mm: number): string {
  return Number.isInteger(mm) ? mm.toFixed(0) : mm.toFixed(2).replace(/0$/, '');
}

export function isHeavy(levelMm: number, intervalMm: number): boolean {
  return Math.round(levelMm / intervalMm) % HEAVY_EVERY === 0;
}

/** A contour as a chain of a drawing. */
export function contourChain({ closed, xyMm }: ContourLine): Chain<'drawing'> {
  const vertices = Array.from({ length: xyMm.length / 2 }, (_, index) => ({
    x: xyMm[2 * index] as number,
    y: xyMm[2 * index + 1] as number,
    bulge: 0,
  }));
  return { closed, vertices };
}

/** What a contour sheet says of its plate. */
export function contourWords({ arch, state, intervalMm }: ContourPlan): {
  readonly title: string;
  readonly says: readonly string[];
} {
  const { edgeHeightMm } = arch.numbers;
  return {
    title: `${arch.plate === 'back' ? 'Back' : 'Top'}, heights above the gluing face`,
    says: [
      `a line every ${heightText(intervalMm)} mm, ${state === 'finished' ? 'edge and channel finished' : 'arched, channel not yet cut'}`,
      `highest ${arch.archHeightMm.toFixed(1)}, edge ${edgeHeightMm.toFixed(1)}${state === 'finished' ? `, channel ${arch.channelZMm.toFixed(1)}` : ''} mm`,
    ],
  };
}
