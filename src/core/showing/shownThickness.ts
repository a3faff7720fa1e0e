import {
  areaChain,
  type Instrument,
  insideHeight,
  plateHeight,
  thicknessNames,
  zonePlaces,
} from '../instrument/index.ts';
import { roughThicknessPlan, type ThicknessPlan, thicknessPlan } from '../judging/index.ts';
import { pathThrough } from './pathThrough.ts';
import { type ShownLine, shownLine } from './shownLine.ts';

/** A figure on a plate: millimetres right of the centre line and down from the upper end. */
export interface ShownFigure {
  readonly at: readonly [number, number];
  readonly thicknessMm: number;
}

/** A place where one of the plate's few numbers alone decides, and that number. */
export interface ShownZone {
  readonly name: string;
  readonly at: readonly [xMm: number, yMm: number];
  readonly valueMm: number;
}

/** A cut across a plate: its wood as a closed path about the gluing face, x from the centre line, y down. */
export interface ShownCut {
  readonly name: string;
  readonly stationMm: number;
  readonly middleMm: number;
  readonly path: string;
}

/** What a plate is thinned to, seen from outside. Millimetres, y down from the upper end. */
export interface ShownThickness {
  readonly plate: 'back' | 'top';
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
  readonly intervalMm: number;
  readonly lines: readonly ShownLine<'edge' | 'hollow' | 'area'>[];
  /** Lines of equal thickness. */
  readonly levels: readonly { readonly thicknessMm: number; readonly path: string }[];
  /** Figures that stand on lines; and places to be measured, each with the figure a calliper must show. */
  readonly figures: readonly ShownFigure[];
  readonly places: readonly ShownFigure[];
  readonly zones: readonly ShownZone[];
  /** Single places that the design asks a thickness for, in its order; the other half has it too. */
  readonly asked: readonly ShownFigure[];
  readonly cuts: readonly ShownCut[];
  /** Along the centre line: x height over the gluing face, y down from the upper end. */
  readonly longCut: string;
}

/** mm between two places of a cut; how far inside the edge it ends. */
const STEP_MM = 1;
const WITHIN_MM = 0.02;

/** The thickness of a plate to be looked at. */
export function shownThickness(instrument: Instrument, plate: 'back' | 'top'): ShownThickness {
  return shownPlan(instrument, plate, thicknessPlan(instrument, plate));
}

/** The same, quick enough to follow a hand that drags. */
export function roughThickness(instrument: Instrument, plate: 'back' | 'top'): ShownThickness {
  return shownPlan(instrument, plate, roughThicknessPlan(instrument, plate));
}

function shownPlan(
  instrument: Instrument,
  plate: 'back' | 'top',
  plan: Omit<ThicknessPlan, 'outline'>,
): ShownThickness {
  const { arch, hollow } = plan;
  const places = zonePlaces(hollow.thickness);
  const names = thicknessNames(plate);
  const top = arch.bodyLengthMm;
  const { outline } = instrument.plan;
  return {
    plate,
    lengthMm: top,
    widthMm: outline.lowerBout.widthMm,
    leastMm: plan.leastMm,
    mostMm: plan.mostMm,
    intervalMm: plan.intervalMm,
    lines: [
      shownLine('edge', outline.chain, top),
      shownLine('hollow', hollow.line, top),
      ...hollow.thickness.areas.map((area) => shownLine('area', areaChain(area), top)),
    ],
    levels: plan.lines.map(({ levelMm, closed, xyMm }) => ({
      thicknessMm: levelMm,
      path: pathThrough(xyMm, closed, top),
    })),
    figures: plan.numbers.map(({ levelMm, lettering: { at } }) => ({
      at: [at.x, top - at.y],
      thicknessMm: levelMm,
    })),
    places: plan.places.map(({ at, thicknessMm }) => ({ at: [at.x, top - at.y], thicknessMm })),
    zones: (['middleMm', 'boutsMm', 'flanksMm', 'channelMm'] as const).map((zone) => ({
      name: names[zone],
      at: [places[zone].x, top - places[zone].y],
      valueMm: hollow.thickness.numbers[zone],
    })),
    asked: hollow.thickness.points.map(({ x, y, thicknessMm }) => ({ at: [x, top - y], thicknessMm })),
    cuts: arch.stations.map(({ name, yMm, edgeHalfWidthMm }) => ({
      name,
      stationMm: yMm,
      middleMm: plateHeight(arch, 0, yMm, 'finished') - insideHeight(hollow, 0, yMm),
      path: cut(
        -edgeHalfWidthMm,
        edgeHalfWidthMm,
        (x) => plateHeight(arch, x, yMm, 'finished'),
        (x) => insideHeight(hollow, x, yMm),
        (along, heightMm) => [along, -heightMm],
      ),
    })),
    longCut: cut(
      0,
      top,
      (y) => plateHeight(arch, 0, y, 'finished'),
      (y) => insideHeight(hollow, 0, y),
      (along, heightMm) => [heightMm, top - along],
    ),
  };
}

/** The wood between outside and inside, there along the outside and back along the inside. */
function cut(
  from: number,
  to: number,
  outside: (along: number) => number,
  inside: (along: number) => number,
  place: (along: number, heightMm: number) => readonly [number, number],
): string {
  const count = Math.ceil((to - from) / STEP_MM);
  const places = Array.from({ length: count + 1 }, (_, index) =>
    Math.min(to - WITHIN_MM, Math.max(from + WITHIN_MM, from + ((to - from) * index) / count)),
  );
  const written = [
    ...places.map((along) => place(along, outside(along))),
    ...places.toReversed().map((along) => place(along, inside(along))),
  ].map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`);
  return `M${written.join('L')}Z`;
}
