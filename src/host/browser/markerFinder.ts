import type { MarkerFinder } from '../../core/index.ts';
import { markerFinderOf, type Vision } from '../vision/openCv.ts';

/**
 * Loads the vision library in a page or worker and gives its finder of square codes. What the library exports is a
 * promise, and a module that looks like a promise cannot be awaited twice: it is taken out of its wrapping once.
 */
export async function openMarkerFinderHere(): Promise<MarkerFinder> {
  const loaded = (await import('@techstark/opencv-js')) as unknown as {
    readonly default: PromiseLike<Vision>;
  };
  return markerFinderOf(await loaded.default);
}
