import { boundsOf, type Chain } from '../curve/index.ts';
import type { Drawing, DrawnLine, Lettering } from '../drawing/index.ts';
import { insideLine, type PlateArch } from '../instrument/index.ts';
import { type ContourPlan, contourChain, contourWords, LETTERED_FOR_MM } from './contourPlan.ts';

/**
 * The contours of a plate as a sheet to print at true size and lay beside or under the plate: outline, contours with their
 * heights, centre line and stations. Nothing on it is for a tool but its edge, which may be cut round with scissors.
 */
export function contourDrawing(plan: ContourPlan): Drawing {
  const { arch, outline, lines, numbers } = plan;
  const { min, max } = boundsOf(outline);
  const { title, says } = contourWords(plan);
  const size = arch.bodyLengthMm / LETTERED_FOR_MM;
  return {
    name: `contours-${arch.plate}-${plan.state}`,
    title: `Contours of the ${arch.plate}`,
    part: 'arching',
    lines: [
      { meaning: 'cut', chain: outline },
      ...lines.map((line): DrawnLine => ({ meaning: 'score', chain: contourChain(line) })),
      ...acrossPlate(plan).map((chain): DrawnLine => ({ meaning: 'draw', chain })),
      ...alongPlate(plan).map((chain): DrawnLine => ({ meaning: 'draw', chain, centreLine: true })),
    ],
    lettering: [...numbers.map(({ lettering }) => lettering), ...stationNames(arch, size)],
    notes: [
      `${title}: ${says.join('; ')}.`,
      'Seen from the outside, neck end up. Both halves are alike.',
      'For looking and comparing: gauges are cut from their own sheets.',
    ],
    count: 1,
    routes: ['print'],
    checks: [
      { name: 'width', valueMm: max.x - min.x },
      { name: 'height', valueMm: max.y - min.y },
    ],
  };
}

/** The stations of the arching, from edge to edge. */
export function acrossPlate({
  arch,
  outline,
}: Pick<ContourPlan, 'arch' | 'outline'>): readonly Chain<'drawing'>[] {
  const { max } = boundsOf(outline);
  return arch.stations.flatMap(({ yMm }) =>
    insideLine({ x: -2 * max.x, y: yMm }, { x: 2 * max.x, y: yMm }, outline, []),
  );
}

/** The centre line. */
export function alongPlate({ outline }: Pick<ContourPlan, 'outline'>): readonly Chain<'drawing'>[] {
  const { min, max } = boundsOf(outline);
  const reach = max.y - min.y;
  return insideLine({ x: 0, y: min.y - reach }, { x: 0, y: max.y + reach }, outline, []);
}

const WORDS = {
  upperBout: 'upper bout',
  upperCorner: 'upper corners',
  waist: 'waist',
  lowerCorner: 'lower corners',
  lowerBout: 'lower bout',
} as const;

/** mm at size 1. */
const NAME_MM = 2;

/** Names of the stations with how high they stand, beside their lines outside the bass edge. */
export function stationNames(arch: PlateArch, size: number): readonly Lettering[] {
  return arch.stations.map(
    ({ name, yMm, edgeHalfWidthMm }): Lettering => ({
      text: `${WORDS[name]} ${yMm.toFixed(0)}`,
      at: { x: -edgeHalfWidthMm - 2 * size, y: yMm - (NAME_MM / 2) * size },
      heightMm: NAME_MM * size,
      turnRad: 0,
      anchor: 'end',
    }),
  );
}
