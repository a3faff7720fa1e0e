import type { ChannelLine } from '../../src/core/instrument/arching/channelLine.ts';
import { type LinePoint, smoothLine } from '../../src/core/instrument/arching/smoothLine.ts';
import type { StationPlace } from '../../src/core/instrument/arching/stations.ts';

/** A dome given by a formula over a smooth waisted outline without corners: 0 and level all along it, even in x. */
export interface KnownDome {
  readonly name: string;
  readonly heightAt: (x: number, y: number) => number;
}

export const LENGTH_MM = 354;
const END_MM = 7;
const HALF_MM = (LENGTH_MM - 2 * END_MM) / 2;
const MIDDLE_MM = LENGTH_MM / 2;

/** Along the body, −1 at the lower end and 1 at the upper. */
function shareAlong(y: number): number {
  return (y - MIDDLE_MM) / HALF_MM;
}

/** Square of the outline's half width: round at both ends, waisted, wider below. */
function squaredWidth(t: number): number {
  return 108 ** 2 * (1 - t * t) * (0.34 + 1.9 * t * t) * (1 - 0.18 * t);
}

/** From outline to outline, an arch over t from −1 to 1: broad as a long arch is, level at its ends. */
function broad(t: number): number {
  return (1 - t * t) ** 2 * (1 + 0.9 * t * t);
}

/** As {@link broad}, carried farther out. */
function broader(t: number): number {
  return (1 - t * t) ** 2 * (1 + 1.1 * t * t + 0.8 * t ** 4);
}

function across(x: number, t: number): number {
  return Math.abs(x) / Math.sqrt(squaredWidth(t));
}

function over(height: (t: number) => number, arch: (u: number, t: number) => number): KnownDome['heightAt'] {
  return (x, y) => {
    const t = shareAlong(y);
    if (!(Math.abs(t) < 1)) return 0;
    const u = across(x, t);
    return u < 1 ? height(t) * arch(u, t) : 0;
  };
}

/** A cycloid rolled out by stepping, its fullness changing along the body. */
function cycloid(riseMm: number, along: (t: number) => number) {
  return (u: number, t: number): number => {
    const q = (Math.PI * riseMm * along(t)) / (2 * Math.sqrt(squaredWidth(t)));
    let [low, high] = [0, Math.PI];
    for (let halving = 0; halving < 55; halving++) {
      const middle = (low + high) / 2;
      if (middle + q * Math.sin(middle) > Math.PI * u) high = middle;
      else low = middle;
    }
    const share = (1 + Math.cos(low)) / 2;
    return share + 4 * (0.02 - 0.03 * t * t) * share * (1 - share);
  };
}

export const KNOWN_DOMES: readonly KnownDome[] = [
  {
    name: 'cycloids of changing fullness over a broader arch, 13 mm',
    heightAt: over((t) => 13 * broader(t), cycloid(13, broader)),
  },
  {
    name: 'raised cosines over a broad arch, 12 mm',
    heightAt: over(
      (t) => 12 * broad(t),
      (u) => (1 + Math.cos(Math.PI * u)) / 2,
    ),
  },
  {
    name: 'a flattened ellipsoid brought level, 15 mm',
    heightAt: over(
      (t) => 15 * broad(t),
      (u) => (1 - u * u) ** 2 * (1 + 0.35 * u * u),
    ),
  },
  {
    name: 'cosines whose power changes along the body, 14 mm',
    heightAt: over(
      (t) => 14 * broad(t),
      (u, t) => Math.cos((Math.PI * u) / 2) ** (1.9 + 0.25 * t * t),
    ),
  },
];

/** The outline as a channel, treble half, from the lower end up; its corners lie beyond all reach. */
export function domeChannel(): ChannelLine {
  const count = 900;
  const points = Array.from({ length: count + 1 }, (_, index): LinePoint => {
    const angle = Math.PI * (index / count);
    const t = -Math.cos(angle);
    const [step, x] = [1e-5, Math.sqrt(Math.max(0, squaredWidth(t)))];
    const at = (a: number): number => Math.sqrt(Math.max(0, squaredWidth(-Math.cos(a))));
    const headingRad =
      index === 0
        ? 0
        : index === count
          ? Math.PI
          : Math.atan2(HALF_MM * Math.sin(angle), (at(angle + step) - at(angle - step)) / (2 * step));
    return { x, y: MIDDLE_MM + HALF_MM * t, headingRad };
  });
  const far = { centre: { x: 1e5, y: 0 }, radiusMm: 16, fromRad: 0, toRad: 1 };
  return {
    line: smoothLine(points),
    lastOf: [0, 0, count, count, count],
    lowerCorner: far,
    upperCorner: far,
  };
}

/** Where the five sections are taken: the widest places, the narrowest, and half way between. */
export function domeStations(): readonly StationPlace[] {
  const extreme = (from: number, to: number, sign: 1 | -1): number => {
    let best = from;
    for (let t = from; t < to; t += 1e-4) if (sign * squaredWidth(t) > sign * squaredWidth(best)) best = t;
    return best;
  };
  const [lower, waist, upper] = [extreme(-0.95, 0, 1), extreme(-0.4, 0.4, -1), extreme(0, 0.95, 1)] as const;
  const places = {
    lowerBout: lower,
    lowerCorner: (lower + waist) / 2,
    waist,
    upperCorner: (waist + upper) / 2,
    upperBout: upper,
  };
  return Object.entries(places).map(([name, t]) => ({
    name: name as StationPlace['name'],
    yMm: MIDDLE_MM + HALF_MM * t,
    halfWidthMm: Math.sqrt(squaredWidth(t)),
    level: true,
  }));
}
