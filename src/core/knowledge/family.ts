/** The families that Garland draws. */
export const FAMILIES = ['violin', 'viola', 'cello'] as const;

export type Family = (typeof FAMILIES)[number];
