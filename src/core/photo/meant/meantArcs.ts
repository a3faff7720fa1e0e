import { Bug, type Point, point } from '../../base/index.ts';
import { type Chain, carryChain, fitArcs, type HalfOutline } from '../../curve/index.ts';
import type { MeantCorner } from './meantCorner.ts';
import { type MeantRun, nodeAt, onLine } from './meantRun.ts';

/** Thirteen arcs of the usual scheme, or as many tangent arcs as the edge needs. */
export type ArcKind = 'thirteen' | 'asNeeded';

type Runs = Readonly<Record<'lowerBout' | 'cBout' | 'upperBout', MeantRun>>;
type Corners = { readonly lower?: MeantCorner; readonly upper?: MeantCorner };

/** The half outline drawn along runs, and what became of it. */
export interface DrawnArcs {
  readonly half: HalfOutline;
  readonly kind: ArcKind;
  readonly corners: Corners;
  /** How far above the runs' own lower end the drawn one lies. */
  readonly lowerEndMm: number;
  /** Root mean square by which the arcs leave the smooth line. */
  readonly fitMm: number;
}

/** mm. Arcs as needed stay this near to the smooth line. */
export const ARC_TOLERANCE_MM = 0.06;
const STEP_MM = 1;

/**
 * Arcs along the runs from the lower to the upper end, each run as far as its corners: the thirteen fitted ones with
 * their last arcs carried on or cut back, or the fewest tangent arcs that keep to the smooth line. Where such arcs are
 * not found the thirteen stand.
 */
export function arcsOfRuns(
  runs: Runs,
  kind: ArcKind,
  cornersOn: (line: 'smooth' | 'arcs') => {
    readonly lower: MeantCorner | undefined;
    readonly upper: MeantCorner | undefined;
  },
): DrawnArcs {
  const corners = present(cornersOn(kind === 'thirteen' ? 'arcs' : 'smooth'));
  if (kind === 'thirteen') return { ...thirteen(runs, corners), kind, corners };
  return asNeeded(runs, corners) ?? arcsOfRuns(runs, 'thirteen', cornersOn);
}

function present({ lower, upper }: ReturnType<Parameters<typeof arcsOfRuns>[2]>): Corners {
  return { ...(lower && { lower }), ...(upper && { upper }) };
}

/** Where each run is cut: its ends along itself. */
function reachOf(runs: Runs, { lower, upper }: Corners) {
  return {
    lowerBout: { from: 0, to: lower?.boutAlongMm ?? runs.lowerBout.lengthMm },
    cBout: { from: lower?.waistAlongMm ?? 0, to: upper?.waistAlongMm ?? runs.cBout.lengthMm },
    upperBout: { from: upper?.boutAlongMm ?? 0, to: runs.upperBout.lengthMm },
  };
}

function thirteen(runs: Runs, corners: Corners) {
  const reach = reachOf(runs, corners);
  const cut = (name: keyof Runs): Chain<'body'> =>
    carryChain(runs[name].chain, -reach[name].from, reach[name].to - runs[name].lengthMm);
  return {
    half: { lowerBout: cut('lowerBout'), cBout: cut('cBout'), upperBout: cut('upperBout') },
    lowerEndMm: 0,
    fitMm: 0,
  };
}

function asNeeded(runs: Runs, corners: Corners): DrawnArcs | undefined {
  const reach = reachOf(runs, corners);
  const places = (name: keyof Runs): readonly Point<'body'>[] => {
    const { from, to } = reach[name];
    const steps = Math.max(2, Math.ceil((to - from) / STEP_MM));
    return Array.from({ length: steps + 1 }, (_, i) =>
      onLine(nodeAt(runs[name], from + ((to - from) * i) / steps), 'smooth'),
    );
  };
  const lowerBout = places('lowerBout').map(({ x, y }, i) => point<'body'>(i === 0 ? 0 : x, y));
  const upper = places('upperBout');
  const upperBout = upper.map(({ x, y }, i) => point<'body'>(i === upper.length - 1 ? 0 : x, y));
  const fits = [
    fitArcs(lowerBout, { toleranceMm: ARC_TOLERANCE_MM, startHeadingRad: 0 }),
    fitArcs(places('cBout'), { toleranceMm: ARC_TOLERANCE_MM }),
    fitArcs(upperBout, { toleranceMm: ARC_TOLERANCE_MM, endHeadingRad: Math.PI }),
  ];
  const lowerEndMm = lowerBout[0]?.y;
  if (lowerEndMm === undefined) throw new Bug('a lower bout without a place');
  const [lower, waist, top] = fits.map((fit) => (fit.ok ? lowered(fit.value.chain, lowerEndMm) : undefined));
  if (lower === undefined || waist === undefined || top === undefined) return undefined;
  const square = fits.reduce((sum, fit) => sum + (fit.ok ? fit.value.rmsMm ** 2 : 0), 0);
  return {
    half: { lowerBout: lower, cBout: waist, upperBout: top },
    kind: 'asNeeded',
    corners: present({
      lower: corners.lower && loweredCorner(corners.lower, lowerEndMm),
      upper: corners.upper && loweredCorner(corners.upper, lowerEndMm),
    }),
    lowerEndMm,
    fitMm: Math.sqrt(square / fits.length),
  };
}

function loweredCorner(corner: MeantCorner, byMm: number): MeantCorner {
  const lower = ({ x, y }: Point<'body'>) => point<'body'>(x, y - byMm);
  return { ...corner, boutTip: lower(corner.boutTip), waistTip: lower(corner.waistTip) };
}

function lowered({ closed, vertices }: Chain<'body'>, byMm: number): Chain<'body'> {
  return { closed, vertices: vertices.map((vertex) => ({ ...vertex, y: vertex.y - byMm })) };
}
