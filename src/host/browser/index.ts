export { letGoOfBuffer } from './letGoOfBuffer.ts';
export { decodePictureHere } from './pictures.ts';
export { pngOf } from './renderPicture.ts';
export { viewOfPicture } from './viewOfPicture.ts';
