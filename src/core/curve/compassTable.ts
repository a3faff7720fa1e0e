import { type Point, WELD_MM, WRITE_MM } from '../base/index.ts';
import type { HalfOutline } from './halfOutline.ts';
import { arcOf, segments } from './segment.ts';

/** One arc of a half outline as a compass draws it; body frame, mm, treble side. */
export interface CompassArc {
  /** Counted from the lower end upwards, corner ends left out. */
  readonly number: number;
  readonly section: 'lowerBout' | 'cBout' | 'upperBout';
  /** To a tenth of a millimetre, as a compass is set; null for a straight piece. */
  readonly radiusMm: number | null;
  readonly centre: Point<'body'> | null;
  /** Whether the outline is full or hollow here; `straight` without a radius. */
  readonly kind: 'full' | 'hollow' | 'straight';
  readonly from: Point<'body'>;
  readonly to: Point<'body'>;
  readonly sweepDeg: number;
  /** The centre lies on the centre line: one setting draws both sides. */
  readonly onCentreLine: boolean;
}

/** The arcs of a half outline in order from the lower to the upper end, each with what a compass is set to. */
export function compassTable(half: HalfOutline): readonly CompassArc[] {
  const pieces = (['lowerBout', 'cBout', 'upperBout'] as const).flatMap((section) =>
    segments(half[section]).map((segment) => ({ section, segment })),
  );
  return pieces.map(({ section, segment }, index) => {
    const arc = arcOf(segment);
    const ends = { number: index + 1, section, from: segment.start, to: segment.end };
    if (arc === null)
      return { ...ends, radiusMm: null, centre: null, kind: 'straight', sweepDeg: 0, onCentreLine: false };
    return {
      ...ends,
      // A radius chosen to half a tenth goes up, on whichever side of it the last place of the arc falls.
      radiusMm: Math.round((arc.radiusMm + WELD_MM) * TENTHS) / TENTHS,
      centre: arc.centre,
      // A half outline runs anticlockwise round the wood: turning the same way, it is full.
      kind: segment.bulge > 0 ? 'full' : 'hollow',
      sweepDeg: (Math.abs(arc.sweepRad) * 180) / Math.PI,
      onCentreLine: Math.abs(arc.centre.x) <= WRITE_MM,
    };
  });
}

const TENTHS = 10;
