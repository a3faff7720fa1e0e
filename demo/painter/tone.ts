/** Colours in linear light, 0 to 1, and the grain and dirt that vary them. */
export type Tone = readonly [number, number, number];

export function mixTone(a: Tone, b: Tone, share: number): Tone {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share];
}

export function scaleTone(a: Tone, k: number): Tone {
  return [a[0] * k, a[1] * k, a[2] * k];
}

/** An eight-bit sRGB colour as linear light. */
export function fromBytes(red: number, green: number, blue: number): Tone {
  return [linear(red), linear(green), linear(blue)];
}

/** Linear light to an eight-bit sRGB level, not rounded. */
export function toByte(light: number): number {
  const l = Math.min(1, Math.max(0, light));
  return 255 * (l <= 0.0031308 ? 12.92 * l : 1.055 * l ** (1 / 2.4) - 0.055);
}

function linear(byte: number): number {
  const s = byte / 255;
  return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
}

/** Smooth noise between -1 and 1, one hill about every unit; the same for the same place. */
export function noise(x: number, y: number, seed: number): number {
  const i = Math.floor(x);
  const j = Math.floor(y);
  const a = ease(x - i);
  const b = ease(y - j);
  const low = lattice(i, j, seed) * (1 - a) + lattice(i + 1, j, seed) * a;
  const high = lattice(i, j + 1, seed) * (1 - a) + lattice(i + 1, j + 1, seed) * a;
  return low * (1 - b) + high * b;
}

function ease(t: number): number {
  return t * t * (3 - 2 * t);
}

function lattice(i: number, j: number, seed: number): number {
  let h = Math.imul(i, 374761393) ^ Math.imul(j, 668265263) ^ Math.imul(seed, 2246822519);
  h = Math.imul(h ^ (h >>> 13), 1274126177);
  return ((h ^ (h >>> 16)) >>> 0) / 2147483648 - 1;
}

export function smoothStep(from: number, to: number, at: number): number {
  return ease(Math.min(1, Math.max(0, (at - from) / (to - from))));
}
