import type { Instrument } from './instrument.ts';

/** What a ray met: written into one array that is used again, so that no ray makes garbage. */
export const HIT = { kind: 0, x: 1, y: 2, z: 3, nx: 4, ny: 5, nz: 6 } as const;
export const KIND = { none: 0, plate: 1, rim: 2, rib: 3, farPlate: 4 } as const;

/** Casts a ray that falls along (mx, my) for every millimetre down from the eye; all in the instrument's frame. */
export type BodyRay = (
  ex: number,
  ey: number,
  ez: number,
  mx: number,
  my: number,
  hit: Float64Array,
) => boolean;

const ARCH_NORMAL_MM = 1.5;
/** mm inside the edge from where the surface is the arch, not the rounding. */
const ARCH_FROM_MM = 3.5;
const TOUCH_MM = 0.004;

/** The near plate with its rounded edge and arch, the ribs under it, and the far plate. */
export function bodyRay(body: Instrument): BodyRay {
  const {
    nearGrid,
    farGrid,
    meantGrid,
    edgeHeightMm: zc,
    halfThickMm,
    roundMm,
    arch,
    farTopMm,
    farHalfThickMm,
  } = body;
  const top = zc + halfThickMm;
  const farMiddle = farTopMm - farHalfThickMm;
  return (ex, ey, ez, mx, my, hit) => {
    hit[0] = KIND.none;
    const lean = Math.sqrt(mx * mx + my * my);
    const down = ez - zc;
    const d = nearGrid.at(ex + down * mx, ey + down * my);
    if (d > lean * zc + 5) return false;
    if (d < -(ARCH_FROM_MM + 0.5 + lean * (arch.mostMm + halfThickMm + 1)))
      return onArch(ex, ey, ez, mx, my, hit);
    if (onPlateEdge(nearGrid.at, zc, halfThickMm, roundMm, ex, ey, ez, mx, my, lean, hit)) {
      const inside = -nearGrid.at(hit[HIT.x] as number, hit[HIT.y] as number);
      if (inside > ARCH_FROM_MM && (hit[HIT.z] as number) > zc) return onArch(ex, ey, ez, mx, my, hit);
      hit[0] = KIND.rim;
      return true;
    }
    if (onRib(ex, ey, ez, mx, my, lean, hit)) return true;
    if (!onPlateEdge(farGrid.at, farMiddle, farHalfThickMm, 1.5, ex, ey, ez, mx, my, lean, hit)) return false;
    hit[0] = KIND.farPlate;
    return true;
  };

  function onArch(ex: number, ey: number, ez: number, mx: number, my: number, hit: Float64Array): boolean {
    let z = top;
    for (let i = 0; i < 2; i++) z = top + arch.at(ex + (ez - z) * mx, ey + (ez - z) * my);
    const x = ex + (ez - z) * mx;
    const y = ey + (ez - z) * my;
    const nx = (arch.at(x - ARCH_NORMAL_MM, y) - arch.at(x + ARCH_NORMAL_MM, y)) / (2 * ARCH_NORMAL_MM);
    const ny = (arch.at(x, y - ARCH_NORMAL_MM) - arch.at(x, y + ARCH_NORMAL_MM)) / (2 * ARCH_NORMAL_MM);
    write(hit, KIND.plate, x, y, z, nx, ny, 1);
    return true;
  }

  function onRib(
    ex: number,
    ey: number,
    ez: number,
    mx: number,
    my: number,
    lean: number,
    hit: Float64Array,
  ): boolean {
    if (lean < 1e-4) return false;
    let z = zc - halfThickMm;
    for (let i = 0; i < 24 && z > farTopMm; i++) {
      const x = ex + (ez - z) * mx;
      const y = ey + (ez - z) * my;
      const gap = meantGrid.at(x, y) + body.overhangMm;
      if (gap < 0.02) {
        const nx = meantGrid.at(x + 0.8, y) - meantGrid.at(x - 0.8, y);
        const ny = meantGrid.at(x, y + 0.8) - meantGrid.at(x, y - 0.8);
        write(hit, KIND.rib, x, y, z, nx, ny, 0);
        return true;
      }
      z -= Math.max(0.02, gap / lean);
    }
    return false;
  }
}

/** Sphere tracing of an outline given a thickness and rounded by a radius. */
function onPlateEdge(
  outline: (x: number, y: number) => number,
  middle: number,
  halfThick: number,
  round: number,
  ex: number,
  ey: number,
  ez: number,
  mx: number,
  my: number,
  lean: number,
  hit: Float64Array,
): boolean {
  const long = Math.sqrt(1 + lean * lean);
  let z = middle + halfThick;
  for (let i = 0; i < 40; i++) {
    const x = ex + (ez - z) * mx;
    const y = ey + (ez - z) * my;
    const away = solidDistance(outline(x, y), z - middle, halfThick, round);
    if (away < TOUCH_MM) {
      const across = outline(x, y);
      const side = Math.max(0, across + round);
      const high = z - middle;
      const up = Math.sign(high) * Math.max(0, Math.abs(high) - (halfThick - round));
      const nx = outline(x + 0.5, y) - outline(x - 0.5, y);
      const ny = outline(x, y + 0.5) - outline(x, y - 0.5);
      const flat = Math.hypot(nx, ny) || 1;
      write(hit, KIND.rim, x, y, z, (side * nx) / flat, (side * ny) / flat, side === 0 && up === 0 ? 1 : up);
      return true;
    }
    z -= away / long;
    if (z < middle - halfThick) return false;
  }
  return false;
}

function solidDistance(across: number, high: number, halfThick: number, round: number): number {
  const a = across + round;
  const b = (high < 0 ? -high : high) - (halfThick - round);
  const out = Math.sqrt((a > 0 ? a * a : 0) + (b > 0 ? b * b : 0));
  return out + Math.min(0, Math.max(a, b)) - round;
}

function write(
  hit: Float64Array,
  kind: number,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
): void {
  const long = Math.sqrt(nx * nx + ny * ny + nz * nz) || 1;
  hit[0] = kind;
  hit[1] = x;
  hit[2] = y;
  hit[3] = z;
  hit[4] = nx / long;
  hit[5] = ny / long;
  hit[6] = nz / long;
}
