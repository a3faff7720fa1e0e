/** What a photograph shows besides a body: an arch, across or along a plate, or the side of a head. */
export const PROFILES_OF = { arch: ['cross-arch', 'long-arch'], head: ['scroll'] } as const;
export type ProfileKind = 'cross-arch' | 'long-arch' | 'scroll';

/** Where across a plate an arch is taken, from the neck down. */
export const ARCH_STATIONS = ['upperBout', 'upperCorner', 'waist', 'lowerCorner', 'lowerBout'] as const;
export const RIGHT_IS = {
  'cross-arch': ['unknown', 'treble', 'bass'],
  'long-arch': ['unknown', 'neck', 'lower-end'],
} as const;

/** What the maker says of such a photograph. */
export interface ProfileSaid {
  readonly of: ProfileKind;
  readonly plate: 'back' | 'top';
  readonly station: (typeof ARCH_STATIONS)[number];
  readonly rightIs: 'unknown' | 'treble' | 'bass' | 'neck' | 'lower-end';
  /** A card with a straight edge that was laid to the gluing face, one without, or a line drawn on paper. */
  readonly lies: 'card' | 'free' | 'drawn';
  readonly leaveOut: boolean;
  readonly sheetBar: string;
  readonly height: string;
}
