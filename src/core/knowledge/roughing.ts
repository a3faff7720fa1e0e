import { type Cell, ours, practised, recalled } from './size.ts';

/** What plates are roughed out with: tools and margins, the same for every size of instrument. */
export const ROUGHING: Readonly<Record<string, Cell>> = {
  roughAllowance: practised(1, 'a gouge takes the rest'),
  roughStep: ours(2, 'few enough terraces to cut, small enough steps to gouge away'),
  drillPitch: ours(12, 'room for the figures between the holes'),
  drillDiameter: recalled(6, '5 to 8'),
  drillPoint: recalled(1.8, 'a twist drill of 6 mm with a point of 118°'),
};
