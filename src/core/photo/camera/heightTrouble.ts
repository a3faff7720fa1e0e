import { type Finding, hypot } from '../../base/index.ts';
import type { ScenePlane } from './scenePlane.ts';

/**
 * What is said when a height that was measured by hand and one that the photographs show disagree by more than both
 * allow: finding `view.heightApart`, a caution; none where they agree.
 */
export function heightFindings(
  given: ScenePlane,
  seen: ScenePlane,
  by: 'height card' | 'two photographs',
): readonly Finding[] {
  const apartMm = given.heightMm - seen.heightMm;
  if (Math.abs(apartMm) <= hypot(given.plusMinusMm, seen.plusMinusMm)) return [];
  return [
    {
      weight: 'caution',
      code: 'view.heightApart',
      at: 'edge height',
      found:
        `${given.heightMm.toFixed(1)} mm were given, but ${by === 'height card' ? 'the height card shows' : 'the two photographs show'} ` +
        `${seen.heightMm.toFixed(1)} ± ${seen.plusMinusMm.toFixed(1)} mm`,
      need: 'the height of the very edge that is traced, over the sheet',
      remedy:
        'measure from the sheet up to the edge of the plate that faces the camera, or leave the height to the photographs',
    },
  ];
}
