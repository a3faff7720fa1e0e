import { distanceBetween, type Point, point } from '../base/index.ts';
import { type Chain, chainThrough } from '../curve/index.ts';

/** One place of an edge with what was measured there; body frame, in order along the edge. */
export interface MapPlace {
  readonly at: Point<'body'>;
  /** Unit, out of the material. */
  readonly normal: Point<'body'>;
  /** mm, + outside the expected edge; undefined where nothing was measured. */
  readonly missMm?: number;
}

/** mm on paper between two teeth of the comb, and over which its back is not carried on where nothing was measured. */
const TOOTH_MM = 1.5;
const GAP_MM = 1;
/** mm on paper. Shorter teeth than this are left out: the back of the comb lies on the edge there. */
const SHORTEST_MM = 0.15;

/** The comb of deviations along an edge: a line through the ends of its teeth, and the teeth, on the page. */
export function deviationComb(
  places: readonly MapPlace[],
  onPage: (at: Point<'body'>) => Point<'drawing'>,
  enlarged: number,
): readonly Chain<'drawing'>[] {
  const teeth: Chain<'drawing'>[] = [];
  const backs: Point<'drawing'>[][] = [[]];
  let since = TOOTH_MM;
  let before: Point<'drawing'> | undefined;
  for (const { at, normal, missMm } of places) {
    const foot = onPage(at);
    const stepMm = before ? distanceBetween(foot, before) : 0;
    before = foot;
    if (missMm === undefined || stepMm > GAP_MM) {
      if ((backs.at(-1) as Point<'drawing'>[]).length > 0) backs.push([]);
      since = TOOTH_MM;
      if (missMm === undefined) continue;
    }
    const tip = point<'drawing'>(
      foot.x + enlarged * missMm * normal.x,
      foot.y + enlarged * missMm * normal.y,
    );
    backs.at(-1)?.push(tip);
    since += stepMm;
    if (since < TOOTH_MM || Math.abs(enlarged * missMm) < SHORTEST_MM) continue;
    teeth.push(chainThrough([foot, tip], false));
    since = 0;
  }
  const lines = backs.map((back) => chainThrough(back, false));
  return [...lines.filter(({ vertices }) => vertices.length > 1), ...teeth];
}
