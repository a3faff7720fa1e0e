import { accept, type Checked, type Point, point, refuse, tan } from '../../base/index.ts';
import { type Chain, chainThrough, fitArcs, joinChains } from '../../curve/index.ts';
import type { PlateArch } from './archedPlate.ts';

/** The finished edge of a plate, cut square to it: from under the overhang round the edge and over the crest to the channel. */
export interface EdgeProfile {
  /** x inward from the edge, y above the gluing face; from the gluing face to the lowest line of the channel. */
  readonly chain: Chain<'section'>;
  /** Height of the upright face between both roundings. */
  readonly uprightMm: number;
  readonly channelMm: number;
}

const QUARTER_BULGE = -tan(Math.PI / 8);

/** Places along the scoop. */
const SCOOP_PLACES = 40;

/** mm. Arcs leave the scoop by no more than this. */
const ARC_FIT_MM = 0.005;

/**
 * The profile of a finished edge where its channel has a distance from it: a quarter circle below, the upright face, a
 * quarter circle up to the crest, and the scoop, which is level in the channel. Where one side of the edge alone is near
 * (bouts, waist, the sides of a corner) it is the surface itself.
 *
 * Fault: `edge.rounding` (both roundings together are higher than the edge, or the lower one is no size).
 */
export function edgeProfile(
  { numbers, plate }: PlateArch,
  underRoundingMm: number,
  channelMm: number,
  jawMm: number,
): Checked<EdgeProfile> {
  const { edgeHeightMm, crestInsetMm, scoopDepthMm } = numbers;
  const uprightMm = edgeHeightMm - crestInsetMm - underRoundingMm;
  if (!(underRoundingMm > 0 && uprightMm >= 0))
    return refuse({
      code: 'edge.rounding',
      at: 'edgeUnderRounding',
      found: `roundings of ${underRoundingMm} mm below and ${crestInsetMm} mm above on an edge of ${edgeHeightMm} mm, ${plate}`,
      need: 'two roundings that fit on the edge',
      remedy: 'make the lower one smaller, or the crest less far in',
    });
  const under: Chain<'section'> = {
    closed: false,
    vertices: [
      { x: Math.max(jawMm, underRoundingMm), y: 0, bulge: 0 },
      ...(jawMm > underRoundingMm ? [{ x: underRoundingMm, y: 0, bulge: QUARTER_BULGE }] : []),
      { x: 0, y: underRoundingMm, bulge: 0 },
      ...(uprightMm > 0 ? [{ x: 0, y: edgeHeightMm - crestInsetMm, bulge: QUARTER_BULGE }] : []),
      { x: crestInsetMm, y: edgeHeightMm, bulge: 0 },
    ],
  };
  const scoop = Array.from({ length: SCOOP_PLACES + 1 }, (_, index): Point<'section'> => {
    const share = 1 - index / SCOOP_PLACES;
    return point(
      channelMm - share * (channelMm - crestInsetMm),
      edgeHeightMm - scoopDepthMm * (1 - share * share),
    );
  });
  const fitted = fitArcs(scoop, { toleranceMm: ARC_FIT_MM, endHeadingRad: 0 });
  const scooped = fitted.ok ? fitted.value.chain : chainThrough(scoop, false);
  return accept({ chain: joinChains(under, scooped), uprightMm, channelMm });
}
