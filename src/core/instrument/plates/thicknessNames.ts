import type { ValueName } from '../../design/index.ts';
import type { PlateArch } from '../arching/index.ts';
import type { ThicknessNumbers } from './thicknessNumbers.ts';

/** Names of the values that a plate's thickness is drawn through. */
export function thicknessNames(
  plate: PlateArch['plate'],
): Readonly<Record<keyof ThicknessNumbers, ValueName>> {
  return plate === 'back'
    ? {
        middleMm: 'thicknessBackMiddle',
        boutsMm: 'thicknessBackBouts',
        flanksMm: 'thicknessBackFlanks',
        channelMm: 'thicknessBackChannel',
      }
    : {
        middleMm: 'thicknessTopMiddle',
        boutsMm: 'thicknessTopBouts',
        flanksMm: 'thicknessTopFlanks',
        channelMm: 'thicknessTopChannel',
      };
}
