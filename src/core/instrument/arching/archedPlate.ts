import type { Finding } from '../../base/index.ts';
import type { CurtateCycloid, FairNet, Loft, LongArch } from '../../surface/index.ts';
import type { ArchNumbers, Plate, StationName } from './archNumbers.ts';
import type { ChannelLine } from './channelLine.ts';
import type { ChannelMiss } from './channelMiss.ts';
import type { HeightPull } from './drawnHeights.ts';
import type { EdgeMembers } from './edgeShape.ts';

/** An arch across the plate: where it stands, what it spans, how high and how full it is. */
export interface ArchStation {
  readonly name: StationName;
  readonly yMm: number;
  /** From the centre line to the channel's lowest line. */
  readonly halfWidthMm: number;
  /** From the centre line to the edge of the plate. */
  readonly edgeHalfWidthMm: number;
  /** Height of the crest above the channel, from the long arch. */
  readonly riseMm: number;
  readonly fullness: number;
  /** The cycloid that fullness is added to. */
  readonly cycloid: CurtateCycloid;
  /** Share of the half width, from the middle, on which the surface is held to the formula; beyond it the loft has its way. */
  readonly heldShare: number;
}

/** The outside of one plate. Heights are above the gluing face, millimetres; symmetric about the centre line. */
export interface PlateArch {
  readonly plate: Plate;
  readonly bodyLengthMm: number;
  readonly numbers: ArchNumbers;
  /** Height of the channel's lowest line. */
  readonly channelZMm: number;
  /** Of the highest place: as the numbers say, or as measured heights draw it. */
  readonly archHeightMm: number;
  /** Crest above channel. */
  readonly riseMm: number;
  readonly longArch: LongArch;
  readonly channel: ChannelLine;
  readonly edge: EdgeMembers;
  readonly loft: Loft;
  /** Added to the loft inside the channel: what makes it fair, and what draws it to measured heights. */
  readonly correction: FairNet;
  /** What both miss along the channel, which is faded out beside it. */
  readonly miss: ChannelMiss;
  /** How measured heights draw the surface; null where none are given. */
  readonly pull: HeightPull | null;
  /** From the lower end up. */
  readonly stations: readonly ArchStation[];
  readonly findings: readonly Finding[];
}
