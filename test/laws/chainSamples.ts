import * as fc from 'fast-check';
import type { Chain, HalfOutline, Vertex } from '../../src/core/curve/index.ts';

/** A stretch of a section: signed radius (positive turns anticlockwise; 0 is a line) and sweep in degrees or length. */
type Stretch = readonly [radiusMm: number, sweepDegOrLengthMm: number];

/** An open tangent chain from a point and heading, arc after arc. */
export function tangentChain(
  x: number,
  y: number,
  headingDeg: number,
  stretches: readonly Stretch[],
): Chain<'body'> {
  let heading = (headingDeg * Math.PI) / 180;
  let at = { x, y };
  const vertices: Vertex<'body'>[] = [];
  for (const [radius, amount] of stretches) {
    const sweep = radius === 0 ? 0 : Math.sign(radius) * ((amount * Math.PI) / 180);
    vertices.push({ ...at, bulge: Math.tan(sweep / 4) });
    const after = heading + sweep;
    at =
      radius === 0
        ? { x: at.x + amount * Math.cos(heading), y: at.y + amount * Math.sin(heading) }
        : {
            x: at.x + radius * (Math.sin(after) - Math.sin(heading)),
            y: at.y - radius * (Math.cos(after) - Math.cos(heading)),
          };
    heading = after;
  }
  vertices.push({ ...at, bulge: 0 });
  return { closed: false, vertices };
}

/** An invented half outline, violin size, 13 arcs: not drawn after any instrument. */
export function sampleHalf(): HalfOutline {
  const lowerBout = tangentChain(0, 0, 0, [
    [190, 11],
    [101, 39],
    [64, 50],
    [78, 21],
    [-27, 64],
  ]);
  const tip = lowerBout.vertices.at(-1) ?? { x: 0, y: 0 };
  const lean = (112 * Math.PI) / 180;
  const cBout = tangentChain(tip.x + 7 * Math.cos(lean), tip.y + 7 * Math.sin(lean), 194, [
    [-21.5, 73],
    [-70, 55],
    [-24, 76],
  ]);
  const upperTip = cBout.vertices.at(-1) ?? { x: 0, y: 0 };
  const upperLean = (68 * Math.PI) / 180;
  const from = { x: upperTip.x + 7 * Math.cos(upperLean), y: upperTip.y + 7 * Math.sin(upperLean) };
  const toCentre: readonly Stretch[] = [
    [-24, 61],
    [64, 23],
    [55, 50],
    [82, 37],
  ];
  const bare = tangentChain(from.x, from.y, 118, toCentre);
  const shoulder = bare.vertices.at(-1) ?? { x: 0, y: 0 };
  // The end arc's radius brings the half to the centre line, level.
  const endRadius = shoulder.x / Math.sin((13 * Math.PI) / 180);
  const upperBout = tangentChain(from.x, from.y, 118, [...toCentre, [endRadius, 13]]);
  const last = upperBout.vertices.length - 1;
  return {
    lowerBout,
    cBout,
    upperBout: {
      closed: false,
      vertices: upperBout.vertices.map((v, index) => (index === last ? { ...v, x: 0 } : v)),
    },
  };
}

/** Closed convex loops with rounded sides: points round a circle, joined by arcs that bow outwards. */
export const convexLoops: fc.Arbitrary<Chain<'body'>> = fc
  .record({
    count: fc.integer({ min: 3, max: 9 }),
    radius: fc.double({ min: 5, max: 200, noNaN: true }),
    bows: fc.array(fc.double({ min: 0, max: 0.95, noNaN: true }), { minLength: 9, maxLength: 9 }),
    steps: fc.array(fc.double({ min: 0.4, max: 1, noNaN: true }), { minLength: 9, maxLength: 9 }),
  })
  .map(({ count, radius, bows, steps }) => {
    const used = steps.slice(0, count);
    const total = used.reduce((sum, step) => sum + step, 0);
    let angle = 0;
    const vertices = used.map((step, index) => {
      const sweep = (2 * Math.PI * step) / total;
      const vertex = {
        x: radius * Math.cos(angle),
        y: radius * Math.sin(angle),
        // Up to the bow of the circle itself the loop stays convex.
        bulge: Math.tan(sweep / 4) * (bows[index] ?? 0),
      };
      angle += sweep;
      return vertex;
    });
    return { closed: true, vertices };
  });
