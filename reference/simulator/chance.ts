/** A stream of chance from a seed, with the draws the simulator needs. */
export interface Chance {
  /** Even in [0, 1). */
  readonly next: () => number;
  readonly between: (least: number, most: number) => number;
  readonly whole: (least: number, most: number) => number;
  readonly normal: () => number;
  readonly isHappening: (share: number) => boolean;
  readonly oneOf: <T>(choices: readonly T[]) => T;
}

/** The same seed gives the same stream. Method: a 32-bit xorshift counter, mixed (sfc32). */
export function chanceFrom(seed: number): Chance {
  let a = 0x9e3779b9 ^ seed;
  let b = 0x243f6a88 ^ Math.imul(seed, 0x85ebca6b);
  let c = 0xb7e15162;
  let counter = 1;
  const next = () => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    return (sum >>> 0) / 4294967296;
  };
  for (let i = 0; i < 20; i++) next();
  const between = (least: number, most: number) => least + (most - least) * next();
  return {
    next,
    between,
    whole: (least, most) => least + Math.floor(next() * (most - least + 1)),
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    isHappening: (share) => next() < share,
    oneOf: (choices) => choices[Math.floor(next() * choices.length)] as (typeof choices)[number],
  };
}

/** A slow wave along 0..1: a sum of a few cosines with chance phases, of mean square 1. */
export function slowWave(chance: Chance, waves: number): (share: number) => number {
  const parts = Array.from({ length: waves }, (_, i) => ({
    size: chance.between(0.4, 1) / (i + 1),
    phase: chance.between(0, 2 * Math.PI),
    turns: (i + 1) * 0.5 + chance.between(0, 0.4),
  }));
  const scale = Math.sqrt(2 / parts.reduce((sum, { size }) => sum + size * size, 0));
  return (share) =>
    scale *
    parts.reduce(
      (sum, { size, phase, turns }) => sum + size * Math.cos(2 * Math.PI * turns * share + phase),
      0,
    );
}

/** Even noise over the plane in -1..1, smooth over `cellMm`; the same place gives the same value. */
export function noiseAt(x: number, y: number, salt: number): number {
  const ix = Math.floor(x);
  const iy = Math.floor(y);
  const fx = x - ix;
  const fy = y - iy;
  const u = fx * fx * (3 - 2 * fx);
  const v = fy * fy * (3 - 2 * fy);
  const low = lattice(ix, iy, salt) * (1 - u) + lattice(ix + 1, iy, salt) * u;
  const high = lattice(ix, iy + 1, salt) * (1 - u) + lattice(ix + 1, iy + 1, salt) * u;
  return low * (1 - v) + high * v;
}

const LATTICE = Float32Array.from({ length: 65536 }, (_, i) => {
  let h = Math.imul(i + 1, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 2147483648 - 1;
});

function lattice(ix: number, iy: number, salt: number): number {
  return LATTICE[(ix + Math.imul(iy, 269) + Math.imul(salt, 7919)) & 65535] as number;
}
