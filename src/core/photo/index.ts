export type { Picture } from './picture.ts';
