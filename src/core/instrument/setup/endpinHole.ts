import type { Design, ValueName } from '../../design/index.ts';

/** The hole of the end button (cello: of the endpin's plug) through ribs and lower block, on the centre line. */
export interface EndpinHole {
  /** At the outer face of the ribs. */
  readonly diameterMm: number;
  /** Where it comes out inside, at the face of the block. */
  readonly insideMm: number;
  /** From the edge of the ribs toward the back to its middle: half way up, common practice. */
  readonly upMm: number;
  /** What the hole is drilled to before it is reamed. */
  readonly drillMm: number;
  /** Wood of the block on either side of it. */
  readonly besideMm: number;
}

/** mm that the reamer takes at least where the hole is narrowest; common practice. */
const REAMED_MM = 0.5;

/** mm. Drills come in such steps. */
const DRILL_STEP_MM = 0.5;

export function endpinHole({ values }: Design): EndpinHole {
  const value = (name: ValueName): number => values[name]?.value ?? Number.NaN;
  const diameterMm = value('endpinDiameter');
  const insideMm = diameterMm - (value('ribThickness') + value('lowerBlockDepth')) / value('endpinTaper');
  return {
    diameterMm,
    insideMm,
    upMm: value('ribHeightTail') / 2,
    drillMm: Math.floor((insideMm - REAMED_MM) / DRILL_STEP_MM) * DRILL_STEP_MM,
    besideMm: (value('lowerBlockWidth') - diameterMm) / 2,
  };
}
