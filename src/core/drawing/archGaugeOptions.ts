import type { EdgeState, GaugePlace, GaugeStuff } from '../instrument/index.ts';
import type { GaugeFeet } from './archGaugeBody.ts';

/** What gauges are made for and how. */
export interface ArchGaugeOptions {
  /** As it is lettered on every gauge. */
  readonly instrumentName: string;
  /** Of the stuff they are cut from, mm. */
  readonly gaugeThicknessMm: number;
  /**
   * `arched` gauges, the usual ones, rest on the flat edge before the channel is cut; `finished` ones on the crest of
   * the finished edge, and reach into the channel.
   */
  readonly state?: EdgeState;
  /** Body stop, mm, to mark the bridge on the long gauge of a top. */
  readonly stopMm?: number;
  /** How far the button stands out beyond the back, mm; a usual one where nothing is said. */
  readonly buttonMm?: number;
  /** Further places for cross gauges, mm above the lower end. */
  readonly atMm?: readonly number[];
  /** What they rest on; the edge of the plate unless chosen otherwise. */
  readonly feet?: GaugeFeet;
  /**
   * `bevelled`, unless chosen otherwise: the section itself, the stuff bevelled off behind it; `square`: the lowest edge
   * that clears the plate within the whole thickness.
   */
  readonly workingEdge?: 'bevelled' | 'square';
}

/** Where a cross gauge stands and how its stuff lies there. */
export interface GaugeStand {
  readonly place: GaugePlace;
  readonly stuff: GaugeStuff;
}
