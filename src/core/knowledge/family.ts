/** The families that Garland draws. */
export const FAMILIES = ['violin', 'viola', 'cello'] as const;

/** One of the three families. */
export type Family = (typeof FAMILIES)[number];
