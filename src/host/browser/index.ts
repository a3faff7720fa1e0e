export { decodePictureHere } from './pictures.ts';
