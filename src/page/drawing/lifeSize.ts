import { signal } from '@preact/signals';
import { keepChoice, keptChoice } from '../keeping/choices.ts';

/** CSS pixels of a millimetre by the standard's own reckoning: 96 to the inch. */
export const CSS_PX_PER_MM = 96 / 25.4;

/** How many CSS pixels a millimetre of this screen has, as measured with a bank card; null before that. */
export const screenPxPerMm = signal<number | null>(kept());
/** Whether the drawing stands at life size. */
export const isLifeSize = signal(false);
/** Whether the card is being asked for. */
export const isMeasuring = signal(false);

/** Life size from now on: at once where the screen was measured, else the card is asked for. */
export function showLifeSize(): void {
  if (screenPxPerMm.value === null) isMeasuring.value = true;
  else isLifeSize.value = true;
}

export function keepScreen(pxPerMm: number): void {
  screenPxPerMm.value = pxPerMm;
  isMeasuring.value = false;
  isLifeSize.value = true;
  keepChoice('px-per-mm', String(pxPerMm));
}

function kept(): number | null {
  const value = Number(keptChoice('px-per-mm'));
  return value > 0 ? value : null;
}
