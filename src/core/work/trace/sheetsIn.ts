import { accept, type Checked, type Keeper } from '../../base/index.ts';
import { type MarkerFinder, type Picture, readSheets, type SheetsReading } from '../../photo/index.ts';

/**
 * The sheets and cards in a photograph; null where there are none. One keeper goes with one finder of markers. Faults: those
 * of reading a sheet that is there.
 */
export function sheetsIn(
  picture: Picture,
  finder: MarkerFinder,
  keeper: Keeper,
): Checked<SheetsReading | null> {
  const reading = keeper(picture, 'sheets', null, () => readSheets(picture, finder));
  if (reading.ok) return reading;
  return reading.faults.every(({ code }) => code === 'sheet.notFound') ? accept(null) : reading;
}
