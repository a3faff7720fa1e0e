import type { GaugePlace } from '../instrument/index.ts';

/** A place in the name of a file: unlike for places a tenth of a millimetre apart. */
export function placeName({ name, yMm }: Pick<GaugePlace, 'name' | 'yMm'>): string {
  return name === undefined
    ? `at-${Number(yMm.toFixed(1))}`.replace('.', '-')
    : name.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);
}
