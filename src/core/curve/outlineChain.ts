import { Bug, distanceBetween, sin, WELD_MM, WRITE_MM } from '../base/index.ts';
import type { Chain, Vertex } from './chain.ts';
import type { HalfOutline } from './halfOutline.ts';
import { headingOn, segments } from './segment.ts';

/**
 * The whole outline of a treble half: closed, anticlockwise, body frame, symmetric to the last bit. It starts
 * at the treble end of the arc that crosses the centre line at the lower end; corner ends are lines, left out
 * where a corner runs to a point; no vertex stands on the centre line, since both end arcs are written whole.
 */
export function outlineChain(half: HalfOutline): Chain<'body'> {
  const { below, treble, above } = trebleSide(half);
  const lowerBulge = acrossCentre(below);
  const upperBulge = acrossCentre(above);
  const bass = treble.map(({ x, y }) => ({ x: -x, y })).reverse();
  const count = treble.length;
  const vertices: Vertex<'body'>[] = treble.map((v, index) => ({
    x: v.x,
    y: v.y,
    bulge: index === count - 1 ? upperBulge : v.bulge,
  }));
  for (const [index, { x, y }] of bass.entries()) {
    // The mirrored segment is walked backwards: mirrored and reversed, its bulge keeps its sign.
    const bulge = index === count - 1 ? lowerBulge : (treble[count - 2 - index]?.bulge ?? 0);
    vertices.push({ x, y, bulge });
  }
  return { closed: true, vertices };
}

/** The treble side between its end arcs (`treble`), and the bulges of the halves of the end arcs. */
function trebleSide(half: HalfOutline): { below: number; treble: readonly Vertex<'body'>[]; above: number } {
  const sections = [half.lowerBout, half.cBout, half.upperBout];
  checkLevel(half);
  const run: Vertex<'body'>[] = [];
  for (const section of sections) {
    const last = run.at(-1);
    const first = section.vertices[0];
    // A corner end too short to be a line is a point: the next section takes it over.
    if (last && first && distanceBetween(last, first) <= WELD_MM) run.pop();
    run.push(...section.vertices);
  }
  const below = run[0]?.bulge;
  const above = run.at(-2)?.bulge;
  if (below === undefined || above === undefined || run.length < 4)
    throw new Bug('a half outline without arcs');
  return { below, treble: run.slice(1, -1), above };
}

/** The bulge of an arc of twice the sweep: tan 2φ = 2 tan φ / (1 − tan² φ). */
function acrossCentre(bulge: number): number {
  return (2 * bulge) / (1 - bulge * bulge);
}

function checkLevel(half: HalfOutline): void {
  const lower = segments(half.lowerBout)[0];
  const upper = segments(half.upperBout).at(-1);
  if (!lower || !upper) throw new Bug('a half outline without a bout');
  const offMm = Math.max(Math.abs(lower.start.x), Math.abs(lower.start.y), Math.abs(upper.end.x));
  if (offMm > WRITE_MM) throw new Bug(`a half outline that ends ${offMm} mm off the centre line`);
  const tiltRad = Math.max(Math.abs(sin(headingOn(lower, 0))), Math.abs(sin(headingOn(upper, 1))));
  if (tiltRad > LEVEL_RAD)
    throw new Bug(`a half outline that crosses the centre line ${tiltRad} rad off level`);
}

/** rad. The tilt that coordinates rounded to WRITE_MM may show on an end arc of 1 mm. */
const LEVEL_RAD = 0.0001;
