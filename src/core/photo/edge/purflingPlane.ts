import type { View } from '../camera/view.ts';
import { PURFLING_OVER_MM } from './roundedRim.ts';

/**
 * The view of the purfling's own plane, above that of the edge: seen aslant, the line stands off to one side by what the
 * camera leans times what it lies higher, so that both its halves would seem at different distances from their edges.
 */
export function purflingPlane(view: View): View {
  return view.kind === 'camera' ? { ...view, planeHeightMm: view.planeHeightMm + PURFLING_OVER_MM } : view;
}
