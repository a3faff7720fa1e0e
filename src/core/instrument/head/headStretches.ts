import { segments } from '../../curve/index.ts';
import type { HeadProfile } from './headProfile.ts';

/** A part of the side view, as a maker calls it. */
export type HeadStretch =
  | 'under the chin'
  | 'hollow over the chin'
  | 'straight of the back'
  | 'round of the back'
  | 'top and front of the scroll'
  | 'bottom of the scroll'
  | 'throat'
  | 'front of the pegbox';

/** How far a stretch of the silhouette lies outside the fitted side view; mm, outside positive. */
export interface StretchMisfit {
  readonly stretch: HeadStretch;
  readonly count: number;
  readonly meanMm: number;
  readonly rmsMm: number;
  readonly mostMm: number;
}

/** Which stretch each segment of the carried-on outline belongs to, in its order; null for the neck. */
function stretchNames(profile: HeadProfile): readonly (HeadStretch | null)[] {
  const under = segments(profile.underside).map((): HeadStretch => 'under the chin');
  return [
    null,
    ...under,
    'hollow over the chin',
    'straight of the back',
    'round of the back',
    'round of the back',
    'top and front of the scroll',
    'top and front of the scroll',
    'bottom of the scroll',
    'throat',
    'front of the pegbox',
    'front of the pegbox',
    null,
  ];
}

/**
 * How far the places of a silhouette lie off, stretch by stretch.
 *
 * @param offMm of each place, outside positive
 * @param feet the segment of the outline, carried on by the neck, that each lies beside; −1 for none
 */
export function stretchesOf(
  profile: HeadProfile,
  offMm: Float64Array,
  feet: readonly number[],
): readonly StretchMisfit[] {
  const names = stretchNames(profile);
  const order = [...new Set(names.filter((name) => name !== null))];
  return order.flatMap((stretch): StretchMisfit[] => {
    const offs = feet.flatMap((segment, index) => (names[segment] === stretch ? [offMm[index] ?? 0] : []));
    if (offs.length === 0) return [];
    const mean = offs.reduce((sum, off) => sum + off, 0) / offs.length;
    const most = offs.reduce((worst, off) => (Math.abs(off) > Math.abs(worst) ? off : worst), 0);
    return [
      {
        stretch,
        count: offs.length,
        meanMm: mean,
        rmsMm: Math.sqrt(offs.reduce((sum, off) => sum + off * off, 0) / offs.length),
        mostMm: most,
      },
    ];
  });
}
