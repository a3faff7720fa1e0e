import {
  barDrawings,
  bridgeDrawings,
  type Drawing,
  nutDrawings,
  postDrawings,
  setupSheet,
  tailDrawings,
} from '../../drawing/index.ts';
import type { Instrument } from '../../instrument/index.ts';

/** Bar and post, then all that carries the strings, in the order in which they are made. */
export function drawSetUp(instrument: Instrument): readonly Drawing[] {
  const sheet = setupSheet(instrument);
  return [
    ...barDrawings(sheet),
    ...postDrawings(sheet),
    ...nutDrawings(sheet),
    ...tailDrawings(sheet),
    ...bridgeDrawings(sheet),
  ];
}
