import { accept, type Checked } from '../../base/index.ts';
import { type Chain, intersections, joinChains, subChain } from '../../curve/index.ts';
import { longArchChain } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { type ArchProfile, longProfile } from './archProfile.ts';
import type { EdgeState } from './edgeShape.ts';
import type { GaugePlace } from './gaugePlace.ts';
import { gaugeProfile } from './gaugeProfile.ts';
import { mirroredBoth } from './mirroredBoth.ts';
import { fitProfile } from './profileFit.ts';

/**
 * The working edge of a cross gauge as tangent arcs, from foot to foot; section frame, heights above the gluing face, x
 * growing. Symmetric, the arc over the crest written once.
 *
 * Without thickness it is the outside across the place; with it, the lowest edge that clears the plate within the
 * thickness, to what arcs are fitted to (0.005 mm). `behindMm` is signed along the body. Faults: those of fitting.
 */
export function stationArcs(
  arch: PlateArch,
  place: GaugePlace,
  state: EdgeState,
  behindMm = 0,
): Checked<Chain<'section'>> {
  const fitted = fitProfile(gaugeProfile(arch, place, state, behindMm), { start: true });
  return fitted.ok ? accept(mirroredBoth(fitted.value)) : fitted;
}

/**
 * The outside along the centre line as tangent arcs, from border to border of its profile; section frame (y, height
 * above the gluing face). The arcs of the long arch are its own, exactly, unless measured heights draw the surface away from them.
 */
export function longArcs(arch: PlateArch, state: EdgeState): Checked<Chain<'section'>> {
  const profile = longProfile(arch, state);
  const [lower, upper] = profile.borders;
  const { startMm, endMm } = arch.longArch;
  const own = longArchChain(arch.longArch);
  if (!own || arch.pull) return fitProfile(between(profile, lower, upper), {});
  const lifted: Chain<'section'> = {
    closed: false,
    vertices: own.vertices.map((vertex) => ({ ...vertex, y: vertex.y + arch.channelZMm })),
  };
  if (state === 'arched') return accept(aboveEdge(lifted, arch));
  const rising = fitProfile(between(profile, lower, startMm), { end: true });
  if (!rising.ok) return rising;
  const falling = fitProfile(between(profile, endMm, upper), { start: true });
  if (!falling.ok) return falling;
  return accept(joinChains(rising.value, lifted, falling.value));
}

/** The part of the long arch that stands higher than the edge. */
function aboveEdge(chain: Chain<'section'>, arch: PlateArch): Chain<'section'> {
  const { startMm, endMm } = arch.longArch;
  const level: Chain<'section'> = {
    closed: false,
    vertices: [startMm - 1, endMm + 1].map((x) => ({ x, y: arch.numbers.edgeHeightMm, bulge: 0 })),
  };
  const crossings = intersections(chain, level);
  const [first, last] = [crossings[0], crossings.at(-1)];
  return first && last && first !== last ? subChain(chain, first.a, last.a) : chain;
}

function between(profile: ArchProfile, from: number, to: number): ArchProfile['points'] {
  return profile.points.filter(({ x }) => x >= from && x <= to);
}
