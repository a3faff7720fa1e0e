/** Outlines and designs of the three families to test parts with: rounded figures of our own default outlines. */
import type { Chain, HalfOutline, Vertex } from '../../src/core/curve/index.ts';
import type { Design, Family, ValueName } from '../../src/core/design/index.ts';

/** Signed radius (full positive) and heading at the end in degrees. */
type ArcRow = readonly [radiusMm: number, headingOutDeg: number];

interface OutlineRows {
  readonly lengthMm: number;
  readonly lower: readonly ArcRow[];
  readonly lowerEnd: readonly [widthMm: number, headingDeg: number];
  readonly waistIn: number;
  readonly waist: readonly ArcRow[];
  /** From the top, in the frame mirrored end for end. */
  readonly upper: readonly ArcRow[];
}

const ROWS: Readonly<Record<Family, OutlineRows>> = {
  violin: {
    lengthMm: 355,
    lower: [
      [206.29, 13.44],
      [71.46, 50.4],
      [72.31, 96.58],
      [133.01, 114.91],
      [-22.39, 59.2],
    ],
    lowerEnd: [6.7, 113.71],
    waistIn: 205.3,
    waist: [
      [-18.65, 115.32],
      [-89.26, 78.54],
      [-14.55, -25.65],
    ],
    upper: [
      [130.09, 17.65],
      [63.34, 51.54],
      [65.27, 96.09],
      [149.81, 107.19],
      [-21.26, 53.94],
    ],
  },
  viola: {
    lengthMm: 406,
    lower: [
      [236.35, 13.47],
      [81.76, 50.4],
      [82.7, 96.53],
      [152.06, 114.84],
      [-25.71, 58.97],
    ],
    lowerEnd: [7.5, 113.54],
    waistIn: 204.2,
    waist: [
      [-20.89, 115.05],
      [-103.24, 78.44],
      [-16.27, -24.72],
    ],
    upper: [
      [149.69, 17.74],
      [72.56, 51.55],
      [74.6, 96.09],
      [171.35, 107.14],
      [-24.43, 53.76],
    ],
  },
  cello: {
    lengthMm: 755,
    lower: [
      [441.35, 13.53],
      [151.9, 50.42],
      [153.59, 96.64],
      [291.51, 115.89],
      [-47.04, 60.75],
    ],
    lowerEnd: [11.5, 113.97],
    waistIn: 206.83,
    waist: [
      [-39.65, 115.97],
      [-190.53, 79.19],
      [-29.52, -22.8],
    ],
    upper: [
      [260.42, 16.77],
      [132.35, 51.42],
      [140.1, 95.93],
      [318.93, 107.5],
      [-44.13, 54.43],
    ],
  },
};

const VALUES_OF: Readonly<Record<Family, Partial<Record<ValueName, number>>>> = {
  violin: {
    stop: 195,
    overhang: 2.5,
    cornerOverhang: 2.2,
    ribThickness: 1.1,
    ribHeightNeck: 30,
    ribHeightTail: 31.5,
    liningWidth: 7,
    liningThickness: 1.8,
    liningLetIn: 6,
    caulDepth: 20,
    caulFacing: 1,
    upperBlockWidth: 50,
    upperBlockDepth: 15,
    lowerBlockWidth: 45,
    lowerBlockDepth: 14,
    lowerCornerBlockAlongWaist: 26,
    lowerCornerBlockAlongBout: 20,
    upperCornerBlockAlongWaist: 20.28,
    upperCornerBlockAlongBout: 18,
    formThickness: 12.7,
    clampHoleDiameter: 20,
    clampHoleWall: 10,
    clampHolePitch: 48,
    pinDiameter: 3,
    pinFromEnd: 80,
    purflingToEdge: 3.75,
    purflingWidth: 1.25,
  },
  viola: {
    stop: 220,
    overhang: 2.3,
    cornerOverhang: 2.3,
    ribThickness: 1.2,
    ribHeightNeck: 37,
    ribHeightTail: 38.5,
    liningWidth: 8,
    liningThickness: 2,
    liningLetIn: 7,
    caulDepth: 22,
    caulFacing: 1,
    upperBlockWidth: 55,
    upperBlockDepth: 18,
    lowerBlockWidth: 50,
    lowerBlockDepth: 15,
    lowerCornerBlockAlongWaist: 30,
    lowerCornerBlockAlongBout: 23,
    upperCornerBlockAlongWaist: 23.4,
    upperCornerBlockAlongBout: 20.7,
    formThickness: 14,
    clampHoleDiameter: 22,
    clampHoleWall: 11,
    clampHolePitch: 54,
    pinDiameter: 3,
    pinFromEnd: 90,
    purflingToEdge: 4,
    purflingWidth: 1.3,
  },
  cello: {
    stop: 400,
    overhang: 3.5,
    cornerOverhang: 3.5,
    ribThickness: 1.5,
    ribHeightNeck: 110,
    ribHeightTail: 118,
    liningWidth: 14,
    liningThickness: 2.2,
    liningLetIn: 12,
    caulDepth: 34,
    caulFacing: 2,
    upperBlockWidth: 78,
    upperBlockDepth: 28,
    lowerBlockWidth: 68,
    lowerBlockDepth: 24,
    lowerCornerBlockAlongWaist: 52,
    lowerCornerBlockAlongBout: 40,
    upperCornerBlockAlongWaist: 40.56,
    upperCornerBlockAlongBout: 36,
    formThickness: 25,
    clampHoleDiameter: 30,
    clampHoleWall: 16,
    clampHolePitch: 95,
    pinDiameter: 4,
    pinFromEnd: 160,
    purflingToEdge: 5,
    purflingWidth: 1.6,
  },
};

export const FAMILIES: readonly Family[] = ['violin', 'viola', 'cello'];

/** The treble half of the family's default outline, to the rounding of the rows (some hundredths of a millimetre). */
export function sampleHalf(family: Family): HalfOutline {
  const rows = ROWS[family];
  const lowerBout = walk({ x: 0, y: 0 }, 0, rows.lower);
  const tip = lowerBout.vertices.at(-1) as Vertex<'body'>;
  const [width, heading] = [rows.lowerEnd[0], rad(rows.lowerEnd[1])];
  const start = { x: tip.x + width * Math.cos(heading), y: tip.y + width * Math.sin(heading) };
  const upperFromTop = walk({ x: 0, y: 0 }, 0, rows.upper).vertices;
  const count = upperFromTop.length;
  const upperBout: Chain<'body'> = {
    closed: false,
    vertices: upperFromTop.toReversed().map((vertex, at) => ({
      x: vertex.x,
      y: rows.lengthMm - vertex.y,
      bulge: at === count - 1 ? 0 : (upperFromTop[count - 2 - at] as Vertex<'body'>).bulge,
    })),
  };
  return { lowerBout, cBout: walk(start, rad(rows.waistIn), rows.waist), upperBout };
}

/** A design of the family with every value that the parts in the plane need; some may be changed. */
export function sampleDesign(family: Family, change: Partial<Record<ValueName, number>> = {}): Design {
  const values: Design['values'] = Object.fromEntries(
    Object.entries({ ...VALUES_OF[family], ...change }).map(([name, value]) => [
      name,
      { value, unit: 'mm' as const, origin: { kind: 'common-practice' as const } },
    ]),
  );
  return {
    format: 'garland-design',
    version: 1,
    name: `Sample ${family}`,
    family,
    values,
    outline: { kind: 'drafted' },
  };
}

function walk(
  from: { readonly x: number; readonly y: number },
  headingRad: number,
  rows: readonly ArcRow[],
): Chain<'body'> {
  const vertices: Vertex<'body'>[] = [];
  let [x, y, heading] = [from.x, from.y, headingRad];
  for (const [radius, outDeg] of rows) {
    const out = rad(outDeg);
    vertices.push({ x, y, bulge: Math.tan((out - heading) / 4) });
    x += radius * (Math.sin(out) - Math.sin(heading));
    y += radius * (Math.cos(heading) - Math.cos(out));
    heading = out;
  }
  return { closed: false, vertices: [...vertices, { x, y, bulge: 0 }] };
}

function rad(deg: number): number {
  return (deg * Math.PI) / 180;
}
