import { accept, type Checked } from '../../base/index.ts';
import { type Chain, joinChains, type Vertex } from '../../curve/index.ts';
import { longArchChain } from '../../surface/index.ts';
import type { ArchStation, PlateArch } from './archedPlate.ts';
import { type ArchProfile, longProfile, stationProfile } from './archProfile.ts';
import type { EdgeState } from './edgeShape.ts';
import { fitProfile } from './profileFit.ts';

/**
 * The outside across a station as tangent arcs, from where the scoop begins on one side to where it begins on the
 * other; section frame, heights above the gluing face, x growing. Symmetric, the arc over the crest written once.
 */
export function stationArcs(
  arch: PlateArch,
  station: ArchStation,
  state: EdgeState,
): Checked<Chain<'section'>> {
  const profile = stationProfile(arch, station, state);
  const right = between(profile, 0, profile.borders[1]);
  const fitted = fitProfile(right, { start: true });
  return fitted.ok ? accept(mirroredBoth(fitted.value)) : fitted;
}

/**
 * The outside along the centre line as tangent arcs, from where the scoop begins at the lower end to where it begins
 * at the upper; section frame (y, height above the gluing face). The arcs of the long arch are its own, exactly.
 */
export function longArcs(arch: PlateArch, state: EdgeState): Checked<Chain<'section'>> {
  const profile = longProfile(arch, state);
  const [lower, upper] = profile.borders;
  const { startMm, endMm } = arch.longArch;
  const own = longArchChain(arch.longArch);
  if (!own) {
    return fitProfile(between(profile, lower, upper), {});
  }
  const rising = fitProfile(between(profile, lower, startMm), { end: true });
  if (!rising.ok) return rising;
  const falling = fitProfile(between(profile, endMm, upper), { start: true });
  if (!falling.ok) return falling;
  const lifted = own.vertices.map((vertex) => ({ ...vertex, y: vertex.y + arch.channelZMm }));
  return accept(joinChains(rising.value, { closed: false, vertices: lifted }, falling.value));
}

function between(profile: ArchProfile, from: number, to: number): ArchProfile['points'] {
  return profile.points.filter(({ x }) => x >= from && x <= to);
}

/** A half that starts level on the centre line, and its mirror, with one arc across the centre line. */
function mirroredBoth(right: Chain<'section'>): Chain<'section'> {
  const [first, ...rest] = right.vertices;
  if (!first) return right;
  const across = Math.tan(2 * Math.atan(first.bulge));
  const left = rest.map((vertex, index): Vertex<'section'> => {
    const bulge = index === 0 ? across : (rest[index - 1]?.bulge ?? 0);
    return { x: -vertex.x, y: vertex.y, bulge };
  });
  return { closed: false, vertices: [...left.reverse(), ...rest] };
}
