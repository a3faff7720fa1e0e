import { accept, type Checked, refuse } from '../base/index.ts';

/** The one of the allowed names that an option gives, whatever its capitals; else a fault of the code that lists them. */
export function namedOption<T extends string>(
  code: string,
  at: string,
  given: string,
  allowed: readonly T[],
): Checked<T> {
  const found = allowed.find((name) => name.toLowerCase() === given.toLowerCase());
  if (found !== undefined) return accept(found);
  return refuse({
    code,
    at,
    found: `"${given}"`,
    need: `one of ${allowed.join(', ')}`,
    remedy: 'choose one of them',
  });
}
