import { type Chance, noiseAt } from './chance.ts';
import type { Varnish } from './instrument.ts';
import type { SheetTexture } from './sheetTexture.ts';

/** Writes how the ground reflects at a place of the room (linear red, green, blue). */
export type Ground = (x: number, y: number, out: Float64Array) => void;

export type GroundName =
  | 'white'
  | 'gradient'
  | 'cloth'
  | 'boards'
  | 'black'
  | 'varnished'
  | 'pattern'
  | 'bench';

/** The ground of that name with chance colours. */
export function drawGround(name: GroundName, varnish: Varnish, chance: Chance): Ground {
  const salt = chance.whole(1, 100000);
  switch (name) {
    case 'white':
      return plain([0.82, 0.81, 0.79], 0.01, salt);
    case 'gradient':
      return graded(chance, salt);
    case 'black':
      return plain([0.02, 0.02, 0.022], 0.12, salt);
    case 'cloth':
      return cloth(chance, salt);
    case 'pattern':
      return patterned(chance, salt);
    case 'boards':
      return boards(
        [chance.between(0.2, 0.5), chance.between(0.12, 0.3), chance.between(0.05, 0.16)],
        chance.between(70, 180),
        chance.between(0, 3.2),
        salt,
      );
    case 'bench':
      return boards([0.4, 0.29, 0.17], 2000, 0.1, salt);
    case 'varnished':
      return boards(
        [varnish.tone[0] * 1.1, varnish.tone[1] * 1.1, varnish.tone[2] * 1.1],
        400,
        chance.between(0, 3.2),
        salt,
      );
  }
}

function plain([red, green, blue]: readonly [number, number, number], rough: number, salt: number): Ground {
  return (x, y, out) => {
    const much = 1 + rough * noiseAt(x / 8, y / 8, salt) + 0.5 * rough * noiseAt(x / 90, y / 90, salt + 1);
    write(out, red * much, green * much, blue * much);
  };
}

function graded(chance: Chance, salt: number): Ground {
  const dark = chance.between(0.08, 0.25);
  const pale = chance.between(0.5, 0.85);
  const turn = chance.between(0, 6.28);
  const tint = chance.between(-0.06, 0.06);
  return (x, y, out) => {
    const share = 0.5 + ((x - 200) * Math.cos(turn) + (y - 150) * Math.sin(turn)) / 900;
    const much = dark + (pale - dark) * Math.min(1, Math.max(0, share)) + 0.005 * noiseAt(x / 5, y / 5, salt);
    write(out, much * (1 + tint), much, much * (1 - tint));
  };
}

function cloth(chance: Chance, salt: number): Ground {
  const tone = chance.oneOf([
    [0.05, 0.09, 0.22],
    [0.2, 0.03, 0.04],
    [0.06, 0.16, 0.08],
    [0.35, 0.31, 0.26],
    [0.03, 0.03, 0.035],
    [0.45, 0.43, 0.4],
  ] as const);
  const turn = chance.between(0, 3.14);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const fold = chance.between(0.1, 0.5);
  return (x, y, out) => {
    const u = c * x + s * y;
    const v = c * y - s * x;
    const weave = 0.1 * Math.sin(u * 2.6) * Math.sin(v * 2.6);
    const folds = fold * (noiseAt(u / 60, v / 220, salt) + 0.5 * noiseAt(u / 25, v / 150, salt + 1));
    const much = Math.max(0.2, 1 + weave + folds);
    write(out, tone[0] * much, tone[1] * much, tone[2] * much);
  };
}

function patterned(chance: Chance, salt: number): Ground {
  const size = chance.between(25, 60);
  const one = [chance.between(0.3, 0.7), chance.between(0.2, 0.6), chance.between(0.15, 0.5)] as const;
  const two = [chance.between(0.03, 0.3), chance.between(0.03, 0.2), chance.between(0.03, 0.2)] as const;
  return (x, y, out) => {
    const wander = 6 * noiseAt(x / 80, y / 80, salt);
    const isOne = (Math.floor((x + wander) / size) + Math.floor((y + wander) / size)) % 2 === 0;
    const [r, g, b] = isOne ? one : two;
    const much = 1 + 0.15 * noiseAt(x / 4, y / 4, salt + 1);
    write(out, r * much, g * much, b * much);
  };
}

function boards(
  [red, green, blue]: readonly [number, number, number],
  wideMm: number,
  turn: number,
  salt: number,
): Ground {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return (x, y, out) => {
    const u = c * x + s * y;
    const v = c * y - s * x;
    const row = Math.floor(v / wideMm);
    const inside = v - row * wideMm;
    const own = noiseAt(row * 7.3 + 0.5, 0.5, salt);
    if (wideMm < 1000 && (inside < 1.2 || Math.abs(((u + own * 900) % 1400) - 700) < 0.6)) {
      write(out, red * 0.12, green * 0.12, blue * 0.12);
      return;
    }
    const ring = noiseAt(u / 260, v / 7 + 50 * own, salt + row) + 0.5 * noiseAt(u / 90, v / 1.4, salt + 1);
    const much = 1 + 0.2 * own + 0.22 * ring;
    write(out, red * much, green * much * (1 + 0.03 * own), blue * much);
  };
}

/** The printed sheet on another ground, printed so much too large or too small. */
export function withSheet(
  under: Ground,
  texture: SheetTexture,
  printed: { readonly x: number; readonly y: number },
): Ground {
  const wide = texture.widthMm * printed.x;
  const high = texture.heightMm * printed.y;
  return (x, y, out) => {
    if (x < 0 || y < 0 || x > texture.widthMm || y > texture.heightMm) {
      under(x, y, out);
      return;
    }
    const white = texture.at(
      texture.widthMm / 2 + ((x - texture.widthMm / 2) * texture.widthMm) / wide,
      texture.heightMm / 2 + ((y - texture.heightMm / 2) * texture.heightMm) / high,
    );
    write(out, 0.035 + 0.8 * white, 0.035 + 0.79 * white, 0.036 + 0.765 * white);
  };
}

function write(out: Float64Array, red: number, green: number, blue: number): void {
  out[0] = red;
  out[1] = green;
  out[2] = blue;
}
