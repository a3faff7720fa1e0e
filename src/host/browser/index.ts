export { decodePictureHere } from './pictures.ts';
export { pngOf } from './renderPicture.ts';
