/** The stops of the work, in their natural order. */
export const STOPS = [
  'photograph',
  'outline',
  'form',
  'arch',
  'thickness',
  'soundHoles',
  'head',
  'neck',
  'takeAway',
  'build',
] as const;

export type Stop = (typeof STOPS)[number];

/** How a stop stands: filled in by us, agreed to by the maker, or with numbers that disagree. */
export type StopState = 'proposed' | 'settled' | 'questioned';

/** Stops that hold numbers of the design; the others have states of their own. */
export const NUMBERED_STOPS = ['outline', 'form', 'arch', 'thickness', 'soundHoles', 'head', 'neck'] as const;
