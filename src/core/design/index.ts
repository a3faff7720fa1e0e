export type { Design, DraftedOutline, Family, TracedOutline } from './design.ts';
export { VALUES, type ValueName } from './values.ts';
