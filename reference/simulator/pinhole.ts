/** A place in the room: x and y along the sheet's long and short side from its lower left corner, z up, mm. */
export type Place = readonly [x: number, y: number, z: number];

/** A camera: where it stands, what it looks at, how it is rolled, and its lens. Pixel centres are whole numbers. */
export interface PinholeHabit {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly focalPx: number;
  readonly centrePx: readonly [number, number];
  readonly radial: readonly [number, number];
  readonly tangential: readonly [number, number];
  readonly eye: Place;
  readonly target: Place;
  readonly rollRad: number;
}

export interface Pinhole extends PinholeHabit {
  /** Right, down and forward of the camera in the room. */
  readonly right: Place;
  readonly down: Place;
  readonly forward: Place;
  readonly project: (place: Place) => readonly [xPx: number, yPx: number];
}

/** The camera with its axes. Lens: radial terms of the second and fourth order, and tangential ones. */
export function pinhole(habit: PinholeHabit): Pinhole {
  const forward = unit(minus(habit.target, habit.eye));
  const level = unit(Math.hypot(forward[0], forward[1]) > 1e-6 ? cross(forward, [0, 0, 1]) : [1, 0, 0]);
  const upright = cross(forward, level);
  const [c, s] = [Math.cos(habit.rollRad), Math.sin(habit.rollRad)];
  const right = sum(times(level, c), times(upright, s));
  const down = sum(times(upright, c), times(level, -s));
  const project = (place: Place) => {
    const way = minus(place, habit.eye);
    const deep = dot(way, forward);
    const [x, y] = bent(habit, dot(way, right) / deep, dot(way, down) / deep);
    return [habit.focalPx * x + habit.centrePx[0], habit.focalPx * y + habit.centrePx[1]] as const;
  };
  return { ...habit, right, down, forward, project };
}

function bent(
  { radial: [k1, k2], tangential: [p1, p2] }: PinholeHabit,
  x: number,
  y: number,
): readonly [number, number] {
  const square = x * x + y * y;
  const more = 1 + k1 * square + k2 * square * square;
  return [
    x * more + 2 * p1 * x * y + p2 * (square + 2 * x * x),
    y * more + p1 * (square + 2 * y * y) + 2 * p2 * x * y,
  ];
}

/** Where a place in the picture is seen without the lens's bending, by turns of correction. */
function straightened(habit: PinholeHabit, xPx: number, yPx: number): readonly [number, number] {
  const aimX = (xPx - habit.centrePx[0]) / habit.focalPx;
  const aimY = (yPx - habit.centrePx[1]) / habit.focalPx;
  let [x, y] = [aimX, aimY];
  for (let i = 0; i < 12; i++) {
    const [bx, by] = bent(habit, x, y);
    x += aimX - bx;
    y += aimY - by;
  }
  return [x, y];
}

const KNOT_PX = 8;

/** Writes the viewing direction of a picture place into `out`; between knots every eight pixels it is interpolated. */
export function sights(camera: Pinhole): (xPx: number, yPx: number, out: Float64Array) => void {
  const columns = Math.ceil(camera.widthPx / KNOT_PX) + 3;
  const rows = Math.ceil(camera.heightPx / KNOT_PX) + 3;
  const knots = new Float64Array(columns * rows * 2);
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++) {
      const [x, y] = straightened(camera, (i - 1) * KNOT_PX, (j - 1) * KNOT_PX);
      knots[2 * (j * columns + i)] = x;
      knots[2 * (j * columns + i) + 1] = y;
    }
  const { right, down, forward } = camera;
  return (xPx, yPx, out) => {
    const u = xPx / KNOT_PX + 1;
    const v = yPx / KNOT_PX + 1;
    const i = Math.floor(u);
    const j = Math.floor(v);
    const fu = u - i;
    const fv = v - j;
    const k = 2 * (j * columns + i);
    const m = k + 2 * columns;
    const [a, b, c, d] = [(1 - fu) * (1 - fv), fu * (1 - fv), (1 - fu) * fv, fu * fv];
    const x =
      a * (knots[k] as number) +
      b * (knots[k + 2] as number) +
      c * (knots[m] as number) +
      d * (knots[m + 2] as number);
    const y =
      a * (knots[k + 1] as number) +
      b * (knots[k + 3] as number) +
      c * (knots[m + 1] as number) +
      d * (knots[m + 3] as number);
    out[0] = forward[0] + x * right[0] + y * down[0];
    out[1] = forward[1] + x * right[1] + y * down[1];
    out[2] = forward[2] + x * right[2] + y * down[2];
  };
}

const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const sum = (a: Place, b: Place): Place => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const times = (a: Place, by: number): Place => [a[0] * by, a[1] * by, a[2] * by];
const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Place): Place => times(a, 1 / Math.hypot(...a));
