import type { Finding } from '../../base/index.ts';
import type { Chain } from '../../curve/index.ts';
import type { FittedCircle } from '../../numeric/index.ts';
import type { SaddlePlace, StringBreak } from '../neck/stringBreak.ts';
import type { BridgeLoad } from '../strings/bridgeLoad.ts';
import type { StringSet } from '../strings/stringSet.ts';
import type { EndpinHole } from './endpinHole.ts';
import type { StringPlace } from './stringPlaces.ts';

/** The load of the strings on the bridge, and how it comes down on its two feet. */
export interface SetupLoad extends BridgeLoad {
  /** With the bridge leaning so far that it halves the break: legs alike, nothing pushes it over. */
  readonly halvedDownN: number;
  readonly lowFootN: number;
  readonly highFootN: number;
}

/** All that carries the strings, as numbers: nut, bridge, tailpiece and saddle over a set neck. */
export interface SetUp {
  readonly strings: StringSet;
  /** From the lowest string over; across counts toward the highest. */
  readonly places: readonly StringPlace[];
  /** Top of the bridge, through the tops of its slots and on to both ends; across, and over the top's crest. */
  readonly crown: Chain<'section'>;
  /** The circle nearest to the tops of the slots. */
  readonly crownCircle: FittedCircle;
  readonly crownHeightMm: number;
  readonly feetMm: number;
  readonly footLengthMm: number;
  readonly saddle: SaddlePlace;
  readonly angles: StringBreak;
  readonly load: SetupLoad;
  /** Bridge to tailpiece fret, along the strings. */
  readonly afterLengthMm: number;
  /** Bridge to the crest of the saddle, along the strings. */
  readonly bridgeToSaddleMm: number;
  /** The longest tailpiece, fret to end, that leaves its gap before the saddle. */
  readonly tailpieceMostMm: number;
  readonly endpin: EndpinHole;
  readonly findings: readonly Finding[];
}
