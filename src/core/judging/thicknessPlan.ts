import { point } from '../base/index.ts';
import { boundsOf, type Chain, outlineChain, placeChain, sampleChain } from '../curve/index.ts';
import type { HollowPlate, Instrument, Plate, PlateArch } from '../instrument/index.ts';
import type { ContourLine } from '../surface/index.ts';
import { guideLines, LETTERED_FOR_MM } from './contourPlan.ts';
import { type Ladder, type NumberOnLine, numberedLines } from './lineNumbers.ts';
import { type NumberBox, outsideBoxes } from './numberBox.ts';
import { plateLadders } from './plateLadders.ts';
import { thicknessField, thicknessLevels, thicknessLines } from './thicknessLines.ts';
import { MARK_MM, placesEveryMm, type ThicknessPlace, thicknessPlaces } from './thicknessPlaces.ts';

/** What a plate is thinned to, as lines and as places to measure, and what else its sheet shows. */
export interface ThicknessPlan {
  readonly instrumentName: string;
  readonly arch: PlateArch;
  readonly hollow: HollowPlate;
  readonly outline: Chain<'drawing'>;
  readonly leastMm: number;
  readonly mostMm: number;
  readonly intervalMm: number;
  /** Lines of equal thickness, broken at all figures. */
  readonly lines: readonly ContourLine[];
  readonly numbers: readonly NumberOnLine[];
  readonly places: readonly ThicknessPlace[];
  readonly pitchMm: number;
}

/** mm at the usual length: between the places of the grid that lines are found on, and the height of their numbers. */
const STEP_MM = 1;
const NUMBER_MM = 2.2;

/** mm at the usual length: the grid of a rough look. */
const ROUGH_STEP_MM = 2.5;

/** The same to look at while a hand drags: on a coarser grid, its lines whole and without figures. */
export function roughThicknessPlan(instrument: Instrument, plate: Plate): Omit<ThicknessPlan, 'outline'> {
  const hollow = instrument.hollows[plate];
  const size = hollow.arch.bodyLengthMm / LETTERED_FOR_MM;
  const stepMm = ROUGH_STEP_MM * size;
  const { leastMm, mostMm, intervalMm, levelsMm } = thicknessLevels(thicknessField(hollow, stepMm));
  return {
    instrumentName: instrument.plan.name,
    arch: hollow.arch,
    hollow,
    leastMm,
    mostMm,
    intervalMm,
    lines: thicknessLines(hollow, levelsMm, stepMm),
    numbers: [],
    places: thicknessPlaces(hollow, size),
    pitchMm: placesEveryMm(size),
  };
}

export function thicknessPlan(instrument: Instrument, plate: Plate): ThicknessPlan {
  const hollow = instrument.hollows[plate];
  const { arch } = hollow;
  const outline = outlineChain(instrument.half);
  const size = arch.bodyLengthMm / LETTERED_FOR_MM;
  const { leastMm, mostMm, intervalMm, levelsMm } = thicknessLevels(thicknessField(hollow, STEP_MM * size));
  const places = thicknessPlaces(hollow, size);
  const boxes = places.map(({ box }) => box);
  const numbered = numberedLines(
    thicknessLines(hollow, levelsMm, STEP_MM * size),
    thicknessText,
    NUMBER_MM * size,
    plateLadders(outline),
    [
      ...guideLines(arch, outline),
      asContour(sampleChain(hollow.line, LINE_CHORD_MM), true),
      ...places.flatMap(({ at, box }) => [...rimOf(box), ...crossOf(at, MARK_MM * size)]),
    ],
    () => true,
    spareLadders(outline),
  );
  return {
    instrumentName: instrument.plan.name,
    arch,
    hollow,
    outline: placeChain<'drawing', 'body'>(outline, { turnRad: 0, shift: [0, 0] }),
    leastMm,
    mostMm,
    intervalMm,
    lines: numbered.lines.flatMap((line) => outsideBoxes(line, boxes)),
    numbers: numbered.numbers,
    places,
    pitchMm: placesEveryMm(size),
  };
}

/** Shares of the half width and of the length between which the sides of the waist are looked at. */
const FLANK = { across: 0.45, from: 0.35, to: 0.65 } as const;

/** Where lines that stay on one side of the plate find a number: the same ladders mirrored, and both sides of the waist. */
function spareLadders(outline: Chain<'body'>): readonly Ladder[] {
  const { min, max } = boundsOf(outline);
  const up = (share: number): number => min.y + share * (max.y - min.y);
  const mirrored = plateLadders(outline).map(
    ([from, to]): Ladder => [point(-from.x, from.y), point(-to.x, to.y)],
  );
  const flanks = [max.x, min.x].map((side): Ladder => {
    const x = FLANK.across * side;
    return [point(x, up(FLANK.from)), point(x, up(FLANK.to))];
  });
  return [...mirrored, ...flanks];
}

/** mm that points of a line may leave it for keeping numbers off. */
const LINE_CHORD_MM = 0.05;

/** A thickness as its number stands on a line: no more decimals than it has, tenths at least. */
export function thicknessText(mm: number): string {
  return mm.toFixed(2).replace(/0$/, '');
}

function asContour(
  points: readonly { readonly x: number; readonly y: number }[],
  closed: boolean,
): ContourLine {
  return { levelMm: 0, closed, xyMm: Float64Array.from(points.flatMap(({ x, y }) => [x, y])) };
}

/** The sides of a figure's room, and its middle: what is as high as a figure passes neither beside nor through it. */
function rimOf({ at: [x, y], halfWidthMm, halfHeightMm }: NumberBox): readonly ContourLine[] {
  const [left, right, low, high] = [x - halfWidthMm, x + halfWidthMm, y - halfHeightMm, y + halfHeightMm];
  const corner = (cornerX: number, cornerY: number) => ({ x: cornerX, y: cornerY });
  return [
    asContour([corner(left, low), corner(right, low), corner(right, high), corner(left, high)], true),
    asContour([corner(left, y), corner(right, y)], false),
  ];
}

function crossOf({ x, y }: ThicknessPlace['at'], armMm: number): readonly ContourLine[] {
  return [
    asContour(
      [
        { x: x - armMm, y },
        { x: x + armMm, y },
      ],
      false,
    ),
    asContour(
      [
        { x, y: y - armMm },
        { x, y: y + armMm },
      ],
      false,
    ),
  ];
}
