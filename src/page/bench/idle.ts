/** ms that a browser may wait for an idle moment before it must see to it. */
const IDLE_MS = 2000;

/** Does something in the next idle moment of the page. */
export function whenIdle(act: () => void): void {
  // Not every browser tells of idle moments.
  if ('requestIdleCallback' in window) requestIdleCallback(() => act(), { timeout: IDLE_MS });
  else setTimeout(act, IDLE_MS);
}

/**
 * Does something so often, each time in an idle moment of its own, while `isWanted`. A browser makes a program quick only by and by
 * as it is used, up to ten times quicker: so that the first hand that comes finds it so, what it will ask is done before.
 */
export function makeReady(times: number, isWanted: () => boolean, act: () => unknown): void {
  if (times <= 0) return;
  whenIdle(() => {
    if (!isWanted()) return;
    void Promise.resolve(act()).then(() => makeReady(times - 1, isWanted, act));
  });
}
