export type { Origin, Quantity, RegisterEntry, Unit } from './quantity.ts';
