export { existing, isThere, readBytes, readJson, unwritable, writeWhole } from './node/files.ts';
export { openMarkerFinder } from './node/markerFinder.ts';
export { type PackFile, sha256, writePack } from './node/packFolder.ts';
export { decodePicture, readPhotograph, readPicture } from './node/pictures.ts';
