import { outlineChain } from '../curve/index.ts';
import type { Instrument, Plate } from '../instrument/index.ts';
import { compareDesigns } from '../judging/index.ts';
import type { RegisterEntry } from '../quantity/index.ts';
import { type ShownLine, shownLine } from './shownLine.ts';

/** A place at which two designs differ: across from the centre line and up from the lower end, and by how much the other is more. */
export interface ShownDifference {
  readonly xMm: number;
  readonly stationMm: number;
  readonly offMm: number;
}

/** Another design laid over one: lower end on lower end, centre line on centre line. */
export interface ShownBeside {
  readonly name: string;
  /** Of the other, y down from the upper end of the first. */
  readonly outline: ShownLine<'beside'>;
  /** Where the other outline lies farthest outside and farthest inside; null where nowhere by a twentieth of a millimetre. */
  readonly outside: ShownDifference | null;
  readonly inside: ShownDifference | null;
  readonly heights: { readonly rmsMm: number; readonly worst: readonly ShownDifference[] };
  /** Numbers that differ, those of the maker's design first in each row. */
  readonly numbers: readonly {
    readonly name: string;
    readonly here: number;
    readonly there: number;
    readonly unit: RegisterEntry['unit'];
  }[];
}

/** Numbers nearer than this are the same, in their own unit. */
const SAME = 0.005;

/** Another instrument laid over one; heights are those of one plate, its edge finished. */
export function shownBeside(first: Instrument, other: Instrument, plate: Plate): ShownBeside {
  const { heights, outline } = compareDesigns(first, other, plate, 'finished');
  const there = new Map(other.register.entries.map((entry) => [entry.name, entry]));
  return {
    name: other.plan.name,
    outline: shownLine('beside', outlineChain(other.half), first.plan.outline.bodyLengthMm),
    outside: placeOf(outline.out),
    inside: placeOf(outline.in),
    heights: {
      rmsMm: heights.rmsMm,
      worst: heights.worst.map(({ xMm, yMm, differenceMm }) => ({
        xMm,
        stationMm: yMm,
        offMm: differenceMm,
      })),
    },
    numbers: first.register.entries.flatMap(({ name, value, unit }) => {
      const twin = there.get(name);
      if (twin === undefined || twin.unit !== unit || Math.abs(twin.value - value) < SAME) return [];
      return [{ name, here: value, there: twin.value, unit }];
    }),
  };
}

function placeOf(
  place: { readonly at: { readonly x: number; readonly y: number }; readonly offMm: number } | null,
): ShownDifference | null {
  return place && { xMm: place.at.x, stationMm: place.at.y, offMm: place.offMm };
}
