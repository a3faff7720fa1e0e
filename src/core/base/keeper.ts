/**
 * What was worked out before and need not be again: asks for what the stage `name` makes of `of`, which depends on nothing but `of`
 * itself and on `on`. What is given back may be the very thing that was given before, so nobody writes into it.
 */
export type Keeper = <Made>(of: object, name: string, on: unknown, make: () => Made) => Made;

/** Keeps nothing: everything is worked out when it is asked for. */
export const KEEP_NOTHING: Keeper = (_, __, ___, make) => make();

/**
 * Keeps the newest answer of every stage as long as somebody holds what it was made of. `on` is compared as JSON, so it
 * holds plain data only; a new answer takes the place of the old one, which therefore is let go before the new one is made.
 */
export function newestKeeper(): Keeper {
  const kept = new WeakMap<object, Map<string, { readonly on: string; readonly made: unknown }>>();
  return <Made>(of: object, name: string, on: unknown, make: () => Made): Made => {
    const stages = kept.get(of) ?? new Map<string, { readonly on: string; readonly made: unknown }>();
    kept.set(of, stages);
    const text = JSON.stringify(on) ?? '';
    const known = stages.get(name);
    if (known?.on === text) return known.made as Made;
    stages.delete(name);
    const made = make();
    stages.set(name, { on: text, made });
    return made;
  };
}
