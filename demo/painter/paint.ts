import type { Lens } from './lens.ts';
import { lightAlong, type Scene } from './scene.ts';
import { toByte } from './tone.ts';

export interface Painting {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly rgb: Uint8Array;
}

/**
 * The scene through the lens: `raysPerSide` squared rays a pixel, a light blur as of a real lens, and the
 * grain of a sensor, all repeatable.
 */
export function paint(
  scene: Scene,
  lens: Lens,
  widthPx: number,
  heightPx: number,
  raysPerSide: number,
): Painting {
  const sharp = new Float32Array(3 * widthPx * heightPx);
  const share = 1 / (raysPerSide * raysPerSide);
  for (let row = 0; row < heightPx; row++)
    for (let column = 0; column < widthPx; column++) {
      let red = 0;
      let green = 0;
      let blue = 0;
      for (let i = 0; i < raysPerSide; i++)
        for (let j = 0; j < raysPerSide; j++) {
          const x = column - 0.5 + (i + 0.5) / raysPerSide;
          const y = row - 0.5 + (j + 0.5) / raysPerSide;
          const light = lightAlong(scene, (z) => lens.onPlane(x, y, z));
          red += light[0];
          green += light[1];
          blue += light[2];
        }
      const at = 3 * (row * widthPx + column);
      sharp[at] = red * share;
      sharp[at + 1] = green * share;
      sharp[at + 2] = blue * share;
    }
  return { widthPx, heightPx, rgb: develop(blur(sharp, widthPx, heightPx), widthPx, heightPx) };
}

/** Three-tap blur both ways, standard deviation about 0.7 px. */
function blur(light: Float32Array, widthPx: number, heightPx: number): Float32Array {
  const across = new Float32Array(light.length);
  const side = 0.22;
  const pass = (
    from: Float32Array,
    to: Float32Array,
    stride: number,
    inside: (p: number) => boolean,
  ): void => {
    for (let p = 0; p < widthPx * heightPx; p++)
      for (let k = 0; k < 3; k++) {
        const at = 3 * p + k;
        to[at] = inside(p)
          ? side * (from[at - stride] + from[at + stride]) + (1 - 2 * side) * from[at]
          : from[at];
      }
  };
  pass(light, across, 3, (p) => p % widthPx > 0 && p % widthPx < widthPx - 1);
  const both = new Float32Array(light.length);
  pass(across, both, 3 * widthPx, (p) => p >= widthPx && p < widthPx * (heightPx - 1));
  return both;
}

function develop(light: Float32Array, widthPx: number, heightPx: number): Uint8Array {
  const rgb = new Uint8Array(light.length);
  let state = 12345;
  const random = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
  for (let p = 0; p < widthPx * heightPx; p++) {
    const grain = (random() + random() + random() - 1.5) * 3;
    for (let k = 0; k < 3; k++) {
      const own = (random() + random() - 1) * 2;
      rgb[3 * p + k] = Math.min(255, Math.max(0, Math.round(toByte(light[3 * p + k]) + grain + own)));
    }
  }
  return rgb;
}
