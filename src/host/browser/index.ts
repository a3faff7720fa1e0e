export { letGoOfBuffer } from './letGoOfBuffer.ts';
export { decodePictureHere } from './pictures.ts';
export { type PixelSquare, pixelsIn } from './pixelsIn.ts';
export { pngOf } from './renderPicture.ts';
export { viewOfPicture } from './viewOfPicture.ts';
