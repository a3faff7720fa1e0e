import { cos, hypot, sin } from '../../base/index.ts';
import { HAND_STUFF, type HandBody, type HandMarks, type HandNet } from './handBody.ts';

/** How the body is held: turned about its length, then tilted towards the eye, radians; 0, 0 shows the top squarely. */
export interface HandHold {
  readonly turnRad: number;
  readonly tiltRad: number;
}

/** Light on one plate: as a lit plate gives it, from the upper end down. */
export interface HandLight {
  readonly columns: number;
  readonly rows: number;
  readonly stepMm: number;
  readonly light: Uint8Array;
}

/** What is seen, pixel by pixel from the upper left: light 0 to 255, and what it falls on (see {@link HAND_STUFF}). */
export interface HandPicture {
  readonly width: number;
  readonly height: number;
  readonly light: Uint8Array;
  readonly stuff: Uint8Array;
}

/** Body lengths from the eye to the body; share of the picture that the body fills at most. */
const EYE = 3.4;
const FILLS = 0.86;
/** Light of a wall or an underside that squarely faces the lamp, and of one that does not see it at all. */
const FACING = 190;
const TURNED_AWAY = 36;

/**
 * The body as it is seen in the hand under a lamp that stands at the bench: `lamp` is the direction to it in the body frame,
 * a unit vector, `lights` what it gives each plate with the shadows that the plate casts on itself.
 *
 * Method: triangles painted with their depth, places on a plate looked up by their place in its plan.
 */
export function handPicture(
  body: HandBody,
  lights: Readonly<Record<'top' | 'back', HandLight>>,
  lamp: readonly [number, number, number],
  hold: HandHold,
  width: number,
  height: number,
): HandPicture {
  const light = new Uint8Array(width * height);
  const stuff = new Uint8Array(width * height);
  const depth = new Float32Array(width * height).fill(Number.NEGATIVE_INFINITY);
  const turn = turned(hold);
  const scale = fitting(body, turn, width, height);
  for (const net of body.nets) paintNet(net);
  return { width, height, light, stuff };

  function paintNet({ kind, plate, xyzMm, triangles }: HandNet): void {
    const count = xyzMm.length / 3;
    const seen = new Float32Array(3 * count);
    for (let at = 0; at < count; at++) {
      const [x, y, z] = turn(
        xyzMm[3 * at] as number,
        (xyzMm[3 * at + 1] as number) - body.lengthMm / 2,
        (xyzMm[3 * at + 2] as number) + body.ribMm / 2,
      );
      const near = (scale * EYE * body.lengthMm) / (EYE * body.lengthMm - z);
      seen[3 * at] = width / 2 + x * near;
      seen[3 * at + 1] = height / 2 - y * near;
      seen[3 * at + 2] = z;
    }
    const marks = plate === 'ribs' ? null : body.marks[plate];
    const lit = plate === 'ribs' ? null : lights[plate];
    for (let at = 0; at < triangles.length; at += 3) {
      const [a, b, c] = [triangles[at], triangles[at + 1], triangles[at + 2]] as [number, number, number];
      const [ax, ay] = [seen[3 * a] as number, seen[3 * a + 1] as number];
      const [bx, by] = [seen[3 * b] as number, seen[3 * b + 1] as number];
      const [cx, cy] = [seen[3 * c] as number, seen[3 * c + 1] as number];
      const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
      // Pixels run down: what faces the eye runs clockwise on them.
      if (area >= 0) continue;
      const plain = kind === 'outside' ? 0 : plainLight(xyzMm, a, b, c, lamp);
      const left = Math.max(0, Math.floor(Math.min(ax, bx, cx)));
      const right = Math.min(width - 1, Math.ceil(Math.max(ax, bx, cx)));
      const up = Math.max(0, Math.floor(Math.min(ay, by, cy)));
      const down = Math.min(height - 1, Math.ceil(Math.max(ay, by, cy)));
      for (let py = up; py <= down; py++)
        for (let px = left; px <= right; px++) {
          const u = ((bx - px) * (cy - py) - (by - py) * (cx - px)) / area;
          const v = ((cx - px) * (ay - py) - (cy - py) * (ax - px)) / area;
          const w = 1 - u - v;
          if (u < -SLACK || v < -SLACK || w < -SLACK) continue;
          const place = py * width + px;
          const z =
            u * (seen[3 * a + 2] as number) +
            v * (seen[3 * b + 2] as number) +
            w * (seen[3 * c + 2] as number);
          if (z <= (depth[place] as number)) continue;
          let what: number = HAND_STUFF.wood;
          let bright = plain;
          if (marks && kind !== 'wall') {
            const x =
              u * (xyzMm[3 * a] as number) + v * (xyzMm[3 * b] as number) + w * (xyzMm[3 * c] as number);
            const y =
              u * (xyzMm[3 * a + 1] as number) +
              v * (xyzMm[3 * b + 1] as number) +
              w * (xyzMm[3 * c + 1] as number);
            what = stuffAt(marks, x, y);
            if (what === HAND_STUFF.nothing) continue;
            if (lit && kind === 'outside') bright = lightAt(lit, plate === 'back' ? -x : x, y);
          }
          depth[place] = z;
          light[place] = bright;
          stuff[place] = what;
        }
    }
  }
}

/** Share of a triangle by which a pixel on the seam of two may miss both. */
const SLACK = 0.000_1;

/** What is at a place: edges of plate and holes run between the places of the grid, so that they are no steps. */
function stuffAt({ columns, rows, stepMm, stuff }: HandMarks, x: number, y: number): number {
  const [column, row] = [x / stepMm + (columns - 1) / 2, y / stepMm];
  const [c, r] = [Math.floor(column), Math.floor(row)];
  if (c < 0 || c + 1 >= columns || r < 0 || r + 1 >= rows) return HAND_STUFF.nothing;
  const at = r * columns + c;
  const near = stuff[Math.round(row) * columns + Math.round(column)] as number;
  const [a, b, d, e] = [stuff[at], stuff[at + 1], stuff[at + columns], stuff[at + columns + 1]];
  if (a === b && b === d && d === e) return near;
  const [right, up] = [column - c, row - r];
  const share = (kind: number): number =>
    (a === kind ? (1 - right) * (1 - up) : 0) +
    (b === kind ? right * (1 - up) : 0) +
    (d === kind ? (1 - right) * up : 0) +
    (e === kind ? right * up : 0);
  if (share(HAND_STUFF.nothing) > 0.5) return HAND_STUFF.nothing;
  if (share(HAND_STUFF.hole) > 0.5) return HAND_STUFF.hole;
  return near === HAND_STUFF.purfling ? near : HAND_STUFF.wood;
}

/** Light between four places of a lit plate; those off the plate do not count. */
function lightAt({ columns, rows, stepMm, light }: HandLight, x: number, y: number): number {
  const column = Math.min(columns - 2, Math.max(0, x / stepMm + (columns - 1) / 2));
  const row = Math.min(rows - 2, Math.max(0, rows - 1 - y / stepMm));
  const [c, r] = [Math.floor(column), Math.floor(row)];
  const [right, down] = [column - c, row - r];
  const at = r * columns + c;
  let sum = 0;
  let weight = 0;
  for (const [place, share] of [
    [at, (1 - right) * (1 - down)],
    [at + 1, right * (1 - down)],
    [at + columns, (1 - right) * down],
    [at + columns + 1, right * down],
  ] as const) {
    const value = light[place] as number;
    if (value === 0) continue;
    sum += share * value;
    weight += share;
  }
  return weight > 0 ? sum / weight : 0;
}

function plainLight(
  xyz: Float32Array,
  a: number,
  b: number,
  c: number,
  [lx, ly, lz]: readonly [number, number, number],
): number {
  const side = (from: number, to: number, axis: number): number =>
    (xyz[3 * to + axis] as number) - (xyz[3 * from + axis] as number);
  const nx = side(a, b, 1) * side(a, c, 2) - side(a, b, 2) * side(a, c, 1);
  const ny = side(a, b, 2) * side(a, c, 0) - side(a, b, 0) * side(a, c, 2);
  const nz = side(a, b, 0) * side(a, c, 1) - side(a, b, 1) * side(a, c, 0);
  const long = hypot(nx, ny, nz) || 1;
  const facing = Math.max(0, (nx * lx + ny * ly + nz * lz) / long);
  return TURNED_AWAY + (FACING - TURNED_AWAY) * facing;
}

function turned({
  turnRad,
  tiltRad,
}: HandHold): (x: number, y: number, z: number) => [number, number, number] {
  const [ct, st, cl, sl] = [cos(turnRad), sin(turnRad), cos(tiltRad), sin(tiltRad)];
  return (x, y, z) => {
    const [ax, az] = [ct * x + st * z, ct * z - st * x];
    return [ax, cl * y + sl * az, cl * az - sl * y];
  };
}

/** Pixels of a millimetre at which the body, however it is held, fills the picture as far as it may. */
function fitting(
  { lengthMm, widthMm, ribMm }: HandBody,
  turn: ReturnType<typeof turned>,
  width: number,
  height: number,
): number {
  let [across, up] = [0, 0];
  for (const x of [-widthMm / 2, widthMm / 2])
    for (const y of [-lengthMm / 2, lengthMm / 2])
      for (const z of [-ribMm, ribMm]) {
        const [sx, sy, sz] = turn(x, y, z);
        const near = (EYE * lengthMm) / (EYE * lengthMm - sz);
        across = Math.max(across, Math.abs(sx) * near);
        up = Math.max(up, Math.abs(sy) * near);
      }
  return FILLS * Math.min(width / (2 * across), height / (2 * up));
}

/** Direction to a lamp that stands over the side of the body that is seen; its own direction is told from outside of that side. */
export function handLamp(
  { fromRad, heightRad }: { readonly fromRad: number; readonly heightRad: number },
  hold: HandHold,
): readonly [number, number, number] {
  const side = seesTop(hold) ? 1 : -1;
  const level = cos(heightRad);
  return [side * sin(fromRad) * level, cos(fromRad) * level, side * sin(heightRad)];
}

/** Whether it is the top that looks towards the eye. */
export function seesTop({ turnRad, tiltRad }: HandHold): boolean {
  return cos(turnRad) * cos(tiltRad) >= 0;
}
