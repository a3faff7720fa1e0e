import { type Chain, closeChain, intersections, joinChains, subChain } from '../curve/index.ts';
import { type HollowHole, type HollowPlate, isEven, type RoughNumbers } from '../instrument/index.ts';
import type { Drawing } from './drawing.ts';
import { drillChartDrawing } from './drillChartDrawing.ts';
import { onDrawing } from './outlineDrawingsMarks.ts';

/** The holes that hollow a plate, as half a chart at true size; see {@link drillChartDrawing}. */
export function hollowDrillDrawing(
  { arch, line, thickness }: HollowPlate,
  rough: RoughNumbers,
  holes: readonly HollowHole[],
  instrumentName: string,
): Drawing {
  const { diameterMm, pointMm, pitchMm } = rough.drill;
  const bit = pointMm > 0 ? `${diameterMm} mm bit, point ${mm(pointMm)}` : `${diameterMm} mm flat bit`;
  const left = holes.map(({ leftMm }) => leftMm);
  return drillChartDrawing({
    name: `hollow-drilling-${arch.plate}`,
    title: `Hollow, ${arch.plate}, holes to depth`,
    part: 'hollowing',
    caption: [
      `DRILLING · ${arch.plate.toUpperCase()} · INSIDE`,
      instrumentName,
      `straight edge on the centre joint, gluing side up, ${bit}`,
      'at each mark: depth from the gluing face, under it (wood left to the finished outside), both to the tip',
      'line inside the edge: where the gluing face ends',
      'only when the outside is finished and its arch checked',
    ],
    edge: onDrawing(closeChain(joinChains(...arch.edge))),
    guides: trebleHalf(onDrawing(line)),
    holes: holes.map(({ at, depthMm, leftMm }) => ({ at: { x: at.x, y: at.y }, depthMm, leftMm })),
    pitchMm,
    bodyLengthMm: arch.bodyLengthMm,
    notes: [
      'Drill only after the outside is finished and its arch has been checked with the gauges: where the outside is lower than the design, every depth here is too deep.',
      `For a ${bit}. No part of it comes nearer than ${mm(rough.insideAllowanceMm)} to the finished inside. A thicker bit, or one with a longer point, needs a chart of its own; never drill with one.`,
      'The plate lies on its arched outside in a cradle cut to that arch, or on a padded bed that bears it under every place to be drilled, its gluing face level with the table of the drill, and is clamped so that it cannot tip or turn. A plate that bears only on its crest rocks, and bends under the bit.',
      `Depths count from the gluing face, or from a straight edge across it: touch that with the tip, and set the stop from there. The figures in brackets are what a calliper finds under the finished hole${left.length > 0 ? `, ${mm(Math.min(...left))} at the least` : ''}: measure the first holes, the shallowest, and stop where one has less.`,
      ...(isEven(thickness)
        ? []
        : [
            'The halves differ by the wood at post and bar: the holes spare the thicker half, and serve both.',
          ]),
      'Prick the marks through, turn over for the other side, try the stop on waste, one setting for all holes alike. Gouge away until the bottoms of the holes just vanish; thumb plane, scraper and calliper take the rest. Leave the slope up to linings and blocks to the gouge.',
    ],
  });
}

/** The treble half of a closed line that crosses the centre line at its lower and its upper end; open, from the lower end. */
function trebleHalf(line: Chain<'drawing'>): readonly Chain<'drawing'>[] {
  const { length } = line.vertices;
  const reach = line.vertices.reduce((most, { y }) => Math.max(most, Math.abs(y)), 0) + length;
  const centre = onCentre(reach);
  const hits = intersections(line, centre).toSorted((a, b) => a.point.y - b.point.y);
  const [lower, upper] = [hits[0], hits.at(-1)];
  return lower && upper && lower !== upper ? [subChain(line, lower.a, upper.a)] : [];
}

function onCentre(reach: number): Chain<'drawing'> {
  return {
    closed: false,
    vertices: [-reach, reach].map((y) => ({ x: 0, y, bulge: 0 })),
  };
}

function mm(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
