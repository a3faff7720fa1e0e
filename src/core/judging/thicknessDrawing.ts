import { distanceBetween, WRITE_MM } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import { captionBelow, type Drawing, type DrawnLine, EDGE_TOOLS_CAUTION } from '../drawing/index.ts';
import { isEven } from '../instrument/index.ts';
import type { ContourLine } from '../surface/index.ts';
import { acrossPlate, alongPlate, stationNames } from './contourDrawing.ts';
import { contourChain, LETTERED_FOR_MM } from './contourPlan.ts';
import { outsideBoxes } from './numberBox.ts';
import { asDrawn } from './plateMap.ts';
import { MARK_MM, type ThicknessPlace } from './thicknessPlaces.ts';
import { type ThicknessPlan, thicknessText } from './thicknessPlan.ts';

/**
 * The thickness of a plate as a sheet to print at true size: lines of equal thickness with their numbers, places for the
 * calliper with their figures, centre line, stations and the end of the gluing face. Nothing on it is for a tool but its
 * edge, which may be cut round with scissors. Drawing frame: the plate's outside, neck end up.
 */
export function thicknessDrawing(plan: ThicknessPlan): Drawing {
  const { arch, hollow, outline, places } = plan;
  const { min, max } = boundsOf(outline);
  const size = arch.bodyLengthMm / LETTERED_FOR_MM;
  const guide = (chains: readonly Chain<'drawing'>[], centreLine?: true): readonly DrawnLine[] =>
    chains
      .flatMap((chain) =>
        outsideBoxes(
          contourOf(chain),
          places.map(({ box }) => box),
        ),
      )
      .map((line) => ({ meaning: 'draw', chain: contourChain(line), ...(centreLine && { centreLine }) }));
  return {
    name: `thickness-${arch.plate}`,
    title: `Thickness of the ${arch.plate}`,
    part: 'hollowing',
    lines: [
      { meaning: 'cut', chain: outline },
      ...plan.lines.flatMap(thicknessLine),
      ...guide(acrossPlate(plan)),
      ...guide(alongPlate(plan), true),
      { meaning: 'draw', chain: asDrawn(hollow.line) },
      ...places.flatMap(({ at }) => mark(at, MARK_MM * size)),
    ],
    lettering: [
      ...plan.numbers.map(({ lettering }) => lettering),
      ...places.map(({ figure }) => figure),
      ...stationNames(arch, size),
      ...captionBelow(
        [
          `THICKNESS · ${arch.plate.toUpperCase()}`,
          plan.instrumentName,
          `seen from the outside, neck end up; mm square to the outside, a line every ${thicknessText(plan.intervalMm)}`,
          `at each cross: what the calliper must show there; every ${plan.pitchMm} from the centre line and the bridge`,
        ],
        min,
        { scale: size, mostMm: max.x - min.x },
      ),
    ],
    notes: notes(plan),
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: max.x - min.x },
      { name: 'height', valueMm: max.y - min.y },
    ],
  };
}

function notes({ hollow, leastMm, mostMm, pitchMm }: ThicknessPlan): readonly string[] {
  const { middleMm, boutsMm, flanksMm, channelMm } = hollow.thickness.numbers;
  const mm = (value: number): string => `${Number(value.toFixed(2))} mm`;
  return [
    `${mm(middleMm)} under the bridge, ${mm(boutsMm)} in the bouts, ${mm(flanksMm)} at the sides of the waist, ${mm(channelMm)} in the channel; from ${mm(leastMm)} to ${mm(mostMm)} in all.`,
    `Hold the thickness calliper square to the outside at each cross, the figure over it is what it must show. Crosses stand every ${pitchMm} mm from the centre line and from the bridge line: prick them through and mark them on the outside in pencil, or measure them off.`,
    `Along the dashed line, where the gluing face ends, the hollow comes down over ${mm(hollow.rampMm)}: there the plate is thicker than the lines say.`,
    `Stop ${mm(STOP_SHORT_MM)} before the figure with the plane, scrape the rest, and measure after every few strokes: wood that is off stays off.`,
    isEven(hollow.thickness)
      ? 'Both halves are alike.'
      : 'The halves differ by the wood at post and bar: mind which side is up before you thin.',
    EDGE_TOOLS_CAUTION,
  ];
}

/** mm. What is left for the scraper: our own figure. */
const STOP_SHORT_MM = 0.2;

function mark({ x, y }: ThicknessPlace['at'], armMm: number): readonly DrawnLine[] {
  const line = (alongX: number, alongY: number): DrawnLine => ({
    meaning: 'draw',
    chain: {
      closed: false,
      vertices: [
        { x: x - alongX, y: y - alongY, bulge: 0 },
        { x: x + alongX, y: y + alongY, bulge: 0 },
      ],
    },
  });
  return [line(armMm, 0), line(0, armMm)];
}

/** A straight line as a contour, to be broken where figures stand. */
function contourOf({ vertices }: Chain<'drawing'>): ContourLine {
  return { levelMm: 0, closed: false, xyMm: Float64Array.from(vertices.flatMap(({ x, y }) => [x, y])) };
}

/**
 * A line with two ends, also where it comes back to its start: nothing on the sheet is an edge but the outline. None where
 * next to nothing is left of it between two figures.
 */
function thicknessLine(line: ContourLine): readonly DrawnLine[] {
  const { closed, vertices } = contourChain(line);
  const [first] = vertices;
  const round = closed && first ? [...vertices, first] : vertices;
  const apart = round.reduce<Chain<'drawing'>['vertices']>((kept, at) => {
    const last = kept.at(-1);
    return last && distanceBetween(at, last) < WRITE_MM ? kept : [...kept, at];
  }, []);
  return apart.length > 1 ? [{ meaning: 'score', chain: { closed: false, vertices: apart } }] : [];
}
