/**
 * A unit arch made fuller or leaner: ζ + 4 f ζ (1 − ζ), where ζ is 0 at the channel and 1 at the crest.
 *
 * Ends, crest and both level slopes stay as they were; at half height the arch stands f × rise higher. It
 * rises from channel to crest without turning back while |f| ≤ {@link FULLNESS_LIMIT}.
 */
export function withFullness(zeta: number, fullness: number): number {
  return zeta + 4 * fullness * zeta * (1 - zeta);
}

/** How fast {@link withFullness} rises with ζ: multiplies every slope of the unit arch. */
export function fullnessGain(zeta: number, fullness: number): number {
  return 1 + 4 * fullness * (1 - 2 * zeta);
}

/** No unit. From here on the arch would turn back on its way from channel to crest. */
export const FULLNESS_LIMIT = 0.25;
