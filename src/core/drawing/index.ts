export type { Drawing, DrawnLine, Lettering, Meaning } from './drawing.ts';
