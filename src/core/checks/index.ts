export { checkDesign } from './checkDesign.ts';
