/**
 * Photographs of things that were made, lying or standing on the calibration sheet, with a known truth. Rays are cast
 * from a lens of its own through upper face, wall and paper; nothing is shared with the code that measures.
 */
import { type Point, seededNormal, seededRandom } from '../../src/core/base/index.ts';
import {
  blackBoxesOfMarker,
  type CalibrationSheet,
  type FoundMarker,
  type MarkerFinder,
  type Picture,
} from '../../src/core/photo/index.ts';

type Ring = readonly (readonly [number, number])[];
type Light = readonly [number, number, number];

export interface MadeThing {
  /** Closed, mm on the sheet: the true edge, and what is cut out of it. */
  readonly edge: Ring;
  readonly holes?: readonly Ring[];
  /** Height of its upper face over the paper, mm. */
  readonly heightMm: (x: number, y: number) => number;
  readonly upper: Light;
  readonly wall: Light;
  /** Something that lies over it, drawn on the upper face. */
  readonly over?: { readonly ring: Ring; readonly light: Light };
}

export interface ThingLens {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly focalPx: number;
  readonly k1: number;
  /** mm over the sheet's lower left corner. */
  readonly eye: readonly [number, number, number];
  readonly target: readonly [number, number, number];
  readonly rollRad: number;
}

export interface ThingLight {
  /** Where the shadow falls, how soft it is (mm) and how much light it takes. */
  readonly shadow: {
    readonly x: number;
    readonly y: number;
    readonly softMm: number;
    readonly depth: number;
  };
  readonly noise: number;
  readonly blurPx: number;
  readonly grain: number;
  readonly seed: number;
  /** The sheet was printed so much larger than it should be. */
  readonly print?: { readonly x: number; readonly y: number };
}

const CELL_MM = 0.1;
const COARSE_MM = 1;
const SAMPLES = 2;

export function photographThing(
  sheet: CalibrationSheet,
  thing: MadeThing,
  lens: ThingLens,
  light: ThingLight,
): Picture {
  const { widthPx, heightPx } = lens;
  const ink = inkOf(sheet);
  const own = raster(sheet, [thing.edge, ...(thing.holes ?? [])], CELL_MM);
  const over = thing.over && raster(sheet, [thing.over.ring], CELL_MM);
  const shade = blurred(raster(sheet, [thing.edge, ...(thing.holes ?? [])], COARSE_MM), light.shadow.softMm);
  const near = grown(raster(sheet, [thing.edge], COARSE_MM), 16);
  const print = light.print ?? { x: 1, y: 1 };
  const ray = rayOf(lens);
  const random = seededRandom(light.seed);
  const linear = new Float32Array(3 * widthPx * heightPx);
  const at = (mask: Raster, x: number, y: number): number => {
    const column = Math.floor(x * mask.perMm);
    const row = Math.floor(y * mask.perMm);
    return column < 0 || row < 0 || column >= mask.columns || row >= mask.rows
      ? 0
      : mask.values[row * mask.columns + column]!;
  };
  const grainAt = (x: number, y: number): number =>
    1 + light.grain * Math.sin(0.9 * x + 3 * Math.sin(0.05 * y)) * Math.sin(2.3 * x + 0.4 * y);
  const [ex, ey, ez] = lens.eye;
  const lightAt = (dx: number, dy: number, dz: number, into: Float64Array): void => {
    const px = ex - (ez / dz) * dx;
    const py = ey - (ez / dz) * dy;
    if (at(near, px, py)) {
      let x = px;
      let y = py;
      let z = 0;
      for (let turn = 0; turn < 3; turn++) {
        z = thing.heightMm(x, y);
        x = ex + ((z - ez) / dz) * dx;
        y = ey + ((z - ez) / dz) * dy;
      }
      const steps = Math.ceil((z * Math.hypot(dx, dy)) / -dz / 0.25) + 1;
      for (let step = 0; step <= steps; step++) {
        const t = (z * (1 - step / steps) - ez) / dz;
        const wx = ex + t * dx;
        const wy = ey + t * dy;
        if (!at(own, wx, wy)) continue;
        const tone = step === 0 ? thing.upper : thing.wall;
        const lies = step === 0 && over && at(over, wx, wy);
        const g = lies ? 1 : grainAt(wx, wy);
        for (let c = 0; c < 3; c++) into[c]! += (lies ? thing.over!.light[c]! : tone[c]!) * g;
        return;
      }
    }
    const sx = px / print.x;
    const sy = py / print.y;
    const inside = sx > 0 && sy > 0 && sx < sheet.widthMm && sy < sheet.heightMm;
    const level = inside ? (at(ink, sx, sy) ? 0.03 : 0.82) : 0.25;
    const s = 1 - light.shadow.depth * at(shade, px - light.shadow.x, py - light.shadow.y);
    into[0]! += level * s;
    into[1]! += level * s;
    into[2]! += level * s * 0.96;
  };
  const sum = new Float64Array(3);
  const way = new Float64Array(3);
  for (let y = 0; y < heightPx; y++)
    for (let x = 0; x < widthPx; x++) {
      sum.fill(0);
      for (let j = 0; j < SAMPLES; j++)
        for (let i = 0; i < SAMPLES; i++) {
          ray(x + (i + 0.5) / SAMPLES - 0.5, y + (j + 0.5) / SAMPLES - 0.5, way);
          lightAt(way[0]!, way[1]!, way[2]!, sum);
        }
      const fall = 1 - 0.22 * (x / widthPx) - 0.1 * (y / heightPx);
      for (let c = 0; c < 3; c++)
        linear[c * widthPx * heightPx + y * widthPx + x] = (fall * sum[c]!) / SAMPLES ** 2;
    }
  const rgb = new Uint8Array(3 * widthPx * heightPx);
  for (let c = 0; c < 3; c++) {
    const plane = smooth(
      linear.subarray(c * widthPx * heightPx, (c + 1) * widthPx * heightPx),
      widthPx,
      heightPx,
      light.blurPx,
    );
    for (let i = 0; i < plane.length; i++) {
      const v = plane[i]!;
      const code = 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055);
      rgb[3 * i + c] = Math.min(255, Math.max(0, Math.round(code + light.noise * seededNormal(random))));
    }
  }
  return { widthPx, heightPx, rgb };
}

/** Stands in for a finder of codes: the true corners, each moved up to half a pixel. */
export function thingMarkers(
  sheet: CalibrationSheet,
  lens: ThingLens,
  seed: number,
  print = { x: 1, y: 1 },
): MarkerFinder {
  const see = placeOf(lens);
  const random = seededRandom(seed);
  const full = sheet.markers.flatMap(({ id, corners }) => {
    const seen = corners.map((corner) => {
      const at = see(corner.x * print.x, corner.y * print.y, 0);
      return { x: at.x + random() - 0.5, y: at.y + random() - 0.5 } as Point<'photo'>;
    });
    const inside = seen.every(({ x, y }) => x > 2 && y > 2 && x < lens.widthPx - 3 && y < lens.heightPx - 3);
    return inside ? [{ id, corners: seen as unknown as FoundMarker['corners'] }] : [];
  });
  return (gray) => {
    const times = Math.round(lens.widthPx / gray.widthPx);
    const small = (corner: Point<'photo'>) =>
      ({ x: (corner.x + 0.5) / times - 0.5, y: (corner.y + 0.5) / times - 0.5 }) as Point<'photo'>;
    return full.map(({ id, corners: [a, b, c, d] }) => ({
      id,
      corners: [small(a), small(b), small(c), small(d)],
    }));
  };
}

function axesOf({ eye, target, rollRad }: ThingLens) {
  const ahead = unit([target[0] - eye[0], target[1] - eye[1], target[2] - eye[2]]);
  const level = unit(cross(ahead, [0, 1, 0]));
  const upright = cross(level, ahead);
  const [c, s] = [Math.cos(rollRad), Math.sin(rollRad)];
  const right = [0, 1, 2].map((i) => c * level[i]! + s * upright[i]!);
  const down = [0, 1, 2].map((i) => s * level[i]! - c * upright[i]!);
  return { ahead, right, down };
}

function rayOf(lens: ThingLens) {
  const { ahead, right, down } = axesOf(lens);
  const [cx, cy] = [(lens.widthPx - 1) / 2, (lens.heightPx - 1) / 2];
  return (px: number, py: number, into: Float64Array): void => {
    const u0 = (px - cx) / lens.focalPx;
    const v0 = (py - cy) / lens.focalPx;
    let bend = 1;
    for (let turn = 0; turn < 4; turn++) bend = 1 + (lens.k1 * (u0 * u0 + v0 * v0)) / (bend * bend);
    for (let i = 0; i < 3; i++) into[i] = ahead[i]! + (u0 * right[i]! + v0 * down[i]!) / bend;
  };
}

function placeOf(lens: ThingLens) {
  const { ahead, right, down } = axesOf(lens);
  return (x: number, y: number, z: number): { x: number; y: number } => {
    const d = [x - lens.eye[0], y - lens.eye[1], z - lens.eye[2]];
    const dot = (a: readonly number[]) => a[0]! * d[0]! + a[1]! * d[1]! + a[2]! * d[2]!;
    const [u, v] = [dot(right) / dot(ahead), dot(down) / dot(ahead)];
    const bend = lens.focalPx * (1 + lens.k1 * (u * u + v * v));
    return { x: (lens.widthPx - 1) / 2 + u * bend, y: (lens.heightPx - 1) / 2 + v * bend };
  };
}

interface Raster {
  readonly cell: number;
  readonly perMm: number;
  readonly columns: number;
  readonly rows: number;
  readonly values: Uint8Array | Float32Array;
}

function raster(sheet: CalibrationSheet, rings: readonly Ring[], cell: number): Raster {
  const [columns, rows] = [Math.ceil(sheet.widthMm / cell), Math.ceil(sheet.heightMm / cell)];
  const values = new Uint8Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const y = (row + 0.5) * cell;
    const cuts: number[] = [];
    for (const ring of rings)
      ring.forEach(([x0, y0], i) => {
        const [x1, y1] = ring[(i + 1) % ring.length]!;
        if (y0 <= y !== y1 <= y) cuts.push(x0 + ((y - y0) / (y1 - y0)) * (x1 - x0));
      });
    cuts.sort((a, b) => a - b);
    for (let k = 0; k + 1 < cuts.length; k += 2) {
      const from = Math.max(0, Math.ceil(cuts[k]! / cell - 0.5));
      const to = Math.min(columns - 1, Math.floor(cuts[k + 1]! / cell - 0.5));
      if (to >= from) values.fill(1, row * columns + from, row * columns + to + 1);
    }
  }
  return { cell, perMm: 1 / cell, columns, rows, values };
}

function inkOf(sheet: CalibrationSheet): Raster {
  const [columns, rows] = [Math.ceil(sheet.widthMm / CELL_MM), Math.ceil(sheet.heightMm / CELL_MM)];
  const values = new Uint8Array(columns * rows);
  const put = (x0: number, y0: number, x1: number, y1: number) => {
    for (let row = Math.round(y0 / CELL_MM); row < Math.round(y1 / CELL_MM); row++)
      values.fill(1, row * columns + Math.round(x0 / CELL_MM), row * columns + Math.round(x1 / CELL_MM));
  };
  for (const { min, max } of sheet.blackSquares) put(min.x, min.y, max.x, max.y);
  for (const { id, corners } of sheet.markers) {
    const cell = sheet.markerMm / 7;
    for (const box of blackBoxesOfMarker(id))
      put(
        corners[3].x + box.column * cell,
        corners[3].y + box.row * cell,
        corners[3].x + (box.column + box.columns) * cell,
        corners[3].y + (box.row + box.rows) * cell,
      );
  }
  return { cell: CELL_MM, perMm: 1 / CELL_MM, columns, rows, values };
}

function blurred(mask: Raster, softMm: number): Raster {
  const values = smooth(Float32Array.from(mask.values), mask.columns, mask.rows, softMm / mask.cell);
  return { ...mask, values };
}

function grown(mask: Raster, byMm: number): Raster {
  const spread = smooth(Float32Array.from(mask.values), mask.columns, mask.rows, byMm / mask.cell / 2);
  return { ...mask, values: Uint8Array.from(spread, (value) => (value > 0.0001 ? 1 : 0)) };
}

function smooth(from: Float32Array, width: number, height: number, sigma: number): Float32Array {
  if (sigma <= 0) return from;
  const half = Math.ceil(4 * sigma);
  const weights = Array.from({ length: 2 * half + 1 }, (_, i) =>
    Math.exp(-((i - half) ** 2) / (2 * sigma ** 2)),
  );
  const total = weights.reduce((sum, one) => sum + one, 0);
  const pass = (source: Float32Array, length: number, stride: number, lines: number, lineStride: number) => {
    const to = new Float32Array(source.length);
    for (let line = 0; line < lines; line++)
      for (let i = 0; i < length; i++) {
        let sum = 0;
        for (let k = -half; k <= half; k++) {
          const j = Math.min(length - 1, Math.max(0, i + k));
          sum += weights[k + half]! * source[line * lineStride + j * stride]!;
        }
        to[line * lineStride + i * stride] = sum / total;
      }
    return to;
  };
  return pass(pass(from, width, 1, height, width), height, width, width, 1);
}

const cross = (a: readonly number[], b: readonly number[]): readonly [number, number, number] => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
];
const unit = (a: readonly number[]): readonly [number, number, number] => {
  const length = Math.hypot(a[0]!, a[1]!, a[2]!);
  return [a[0]! / length, a[1]! / length, a[2]! / length];
};
