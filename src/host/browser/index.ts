export { openMarkerFinderHere } from './markerFinder.ts';
export { decodePictureHere } from './pictures.ts';
