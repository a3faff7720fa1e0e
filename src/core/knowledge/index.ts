export { MARKER_BITS, MARKER_CELLS, markerCellIsWhite } from './markers.ts';
