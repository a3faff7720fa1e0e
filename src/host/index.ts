export { existing, isThere, readJson, writeWhole } from './node/files.ts';
export { type PackFile, sha256, writePack } from './node/packFolder.ts';
export { decodePicture, readPhotograph, readPicture } from './node/pictures.ts';
export { pngOf, pngOfSvg } from './node/renderPicture.ts';
export { type ServedPage, servePage } from './node/servePage.ts';
