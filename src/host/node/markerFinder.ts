import { createRequire } from 'node:module';
import type { MarkerFinder } from '../../core/index.ts';
import { markerFinderOf, type Vision } from '../vision/openCv.ts';

/**
 * Loads the vision library, which takes a fraction of a second, and gives its finder of square codes. Required rather
 * than imported: what the library exports is a promise, and a module that looks like a promise cannot be awaited.
 */
export async function openMarkerFinder(): Promise<MarkerFinder> {
  const load = createRequire(import.meta.url);
  const vision = (await load('@techstark/opencv-js')) as Vision;
  return markerFinderOf(vision);
}
