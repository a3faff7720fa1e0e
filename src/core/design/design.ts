import type { HalfOutline } from '../curve/index.ts';
import type { Family } from '../knowledge/index.ts';
import type { Quantity } from '../quantity/index.ts';
import type { HeadFit } from './headFit.ts';
import type { FittedHoleShape } from './holeShape.ts';
import type { LongArchChoices } from './longArchChoice.ts';
import type { MeasuredHeightsOfPlates } from './measuredHeights.ts';
import type { RibChoice } from './ribChoice.ts';
import type { StringSpread } from './stringSpread.ts';
import type { ThicknessLayouts } from './thickness.ts';
import type { TraceRecord } from './traceRecord.ts';
import type { ValueName } from './values.ts';

/** How far an outline taken from a photograph may be trusted, and what was restored in it. */
export interface TracedOutline {
  readonly kind: 'traced';
  readonly half: HalfOutline;
  readonly fitRmsMm: number;
  readonly fitMaxMm: number;
  readonly plusMinusMm: number;
  /** What the trace was asked for, so that it can be run again to the same result. */
  readonly request?: TraceRecord;
}

/** The outline is solved from the values each time; the same values give the same outline. */
export interface DraftedOutline {
  readonly kind: 'drafted';
}

/**
 * The one document a maker saves. `values` holds an entry for every name of VALUES that is not optional,
 * each with its origin, so that a design means the same when the tables of the trade are revised.
 */
export interface Design {
  readonly format: 'garland-design';
  readonly version: 1;
  readonly name: string;
  readonly family: Family;
  readonly values: Readonly<Partial<Record<ValueName, Quantity>>>;
  readonly outline: TracedOutline | DraftedOutline;
  readonly thickness?: ThicknessLayouts | undefined;
  readonly longArch?: LongArchChoices | undefined;
  readonly stringSpread?: StringSpread | undefined;
  readonly ribs?: RibChoice | undefined;
  readonly measuredHeights?: MeasuredHeightsOfPlates | undefined;
  /** The shape of the sound holes where it was fitted to a traced one; the family's when left out. */
  readonly holeShape?: FittedHoleShape | undefined;
  /** Built for a player who bows with the left hand: strings, pegs, bar and post change sides. False when left out. */
  readonly leftHanded?: boolean | undefined;
  /** What is left between the drawn head and the original that it was fitted to. */
  readonly headFit?: HeadFit | undefined;
  /** What was proposed where the maker put a number of their own, so that going back is one step. */
  readonly overruled?: Readonly<Partial<Record<ValueName, Quantity>>> | undefined;
  /** The stops of the work that the maker has agreed to, by name. */
  readonly settled?: readonly string[] | undefined;
}
