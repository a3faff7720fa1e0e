import { type MarkerFinder, markerFinder } from '../../core/index.ts';

/** The finder of square codes; kept for its callers, who may as well make one in the core themselves. */
export async function openMarkerFinder(): Promise<MarkerFinder> {
  return markerFinder();
}
