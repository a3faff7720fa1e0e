import { type Design, VALUE_NAMES, type ValueName } from '../../design/index.ts';

/** The names of the numbers of a design that the profile in a photograph gave. */
export function valuesOfProfile(design: Design, photograph: string): readonly ValueName[] {
  return VALUE_NAMES.filter((name) => {
    const origin = design.values[name]?.origin;
    return origin?.kind === 'measured' && isFrom(origin.from, photograph);
  });
}

/** As origins of profiles are written: alone, or before the next of several. */
function isFrom(from: string, photograph: string): boolean {
  return ['profile in ', 'side of the head in '].some(
    (words) => from.endsWith(words + photograph) || from.includes(`${words}${photograph} and profile in `),
  );
}
