import { type Checked, refuse } from '../core/index.ts';

/** Names of an option's values that a command takes, or a fault that lists them. Fault: `option.unknown`. */
export function oneOf<T extends string>(option: string, given: string, allowed: readonly T[]): Checked<T> {
  const found = allowed.find((name) => name.toLowerCase() === given.toLowerCase());
  if (found !== undefined) return { ok: true, value: found };
  return refuse({
    code: 'option.unknown',
    at: option,
    found: `"${given}"`,
    need: `one of ${allowed.join(', ')}`,
    remedy: 'choose one of them',
  });
}
