import { HIT, KIND } from './bodyRay.ts';
import { noiseAt } from './chance.ts';
import type { Instrument } from './instrument.ts';

/** mm from the outline as meant: outer dark line, white, inner dark line end. */
const PURFLING_MM = [3.6, 4, 4.6, 5] as const;

/** Writes how the body's surface reflects where a ray met it (linear red, green, blue); says whether varnish shines there. */
export type BodyTone = (hit: Float64Array, out: Float64Array) => boolean;

/** Grain, flame, joint, purfling, sound holes and the tone of the varnish. */
export function bodyTone({ face, meantGrid, soundHole, varnish }: Instrument): BodyTone {
  const [red, green, blue] = varnish.tone;
  const { salt } = varnish;
  return (hit, out) => {
    const kind = hit[HIT.kind];
    const x = hit[HIT.x] as number;
    const y = hit[HIT.y] as number;
    let much = 1;
    if (kind === KIND.rib || kind === KIND.farPlate) {
      much = 0.75 * (1 + 0.12 * noiseAt((x + y) / 3, (hit[HIT.z] as number) / 12, salt + 3));
      paint(out, red * much, green * much, blue * much);
      return true;
    }
    if (soundHole && isHole(soundHole, x, y)) {
      paint(out, 0.006, 0.004, 0.003);
      return false;
    }
    const inside = -meantGrid.at(x, y);
    if (inside > PURFLING_MM[0] && inside < PURFLING_MM[3]) {
      if (inside > PURFLING_MM[1] && inside < PURFLING_MM[2]) paint(out, 0.35, 0.22, 0.1);
      else paint(out, 0.02, 0.015, 0.01);
      return true;
    }
    much += face === 'top' ? straightGrain(x, y) : flamed(x, y);
    much *= 1 + 0.15 * noiseAt(x / 45, y / 60, salt + 1);
    if (Math.abs(x) < 0.12) much *= 0.75;
    if (kind === KIND.rim || inside < 2.5) much *= 1.1;
    const pale = 0.03 * Math.max(0, noiseAt(x / 30, y / 30, salt + 2));
    paint(out, red * much + pale, green * much + pale * 0.8, blue * much + pale * 0.5);
    return true;
  };

  function straightGrain(x: number, y: number): number {
    const wander = 1.2 * noiseAt(y / 90, 0.5, salt);
    const across = (Math.abs(x) + wander) / varnish.grainMm;
    const line = across - Math.floor(across);
    return -varnish.grainDepth * line * line * (1 + 0.5 * noiseAt(across * 0.35, y / 120, salt + 5)) * 1.5;
  }

  function flamed(x: number, y: number): number {
    const slope = y + 0.25 * Math.abs(x) + 5 * noiseAt(x / 25, y / 40, salt + 7);
    return (
      varnish.flame * Math.sin(slope / 1.7) * (0.5 + 0.5 * noiseAt(x / 35, y / 14, salt + 8)) +
      0.05 * noiseAt(x / 0.8, y / 14, salt + 9)
    );
  }
}

function isHole(hole: NonNullable<Instrument['soundHole']>, x: number, y: number): boolean {
  const right = x < 0 ? -x : x;
  const { box } = hole;
  return right > box.x0 && right < box.x1 && y > box.y0 && y < box.y1 && hole.at(right, y) < 0;
}

function paint(out: Float64Array, red: number, green: number, blue: number): void {
  out[0] = red;
  out[1] = green;
  out[2] = blue;
}
