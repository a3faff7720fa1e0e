import type { Frame, Point } from '../../base/index.ts';
import type { OutlineSection } from '../body/templateStations.ts';

/** One place of the edge of one half. `alongMm` tells the station: the same number on both halves is the same place. */
export interface EdgeSpot<F extends Frame> extends Point<F> {
  readonly section: OutlineSection;
  readonly alongMm: number;
  /** False where something crosses the edge and the place is only bridged. */
  readonly seen: boolean;
  /** mm, one standard deviation across the edge. */
  readonly sigmaMm: number;
  /** How far ribs and far plate can show beyond the near plate here, mm; left out where none can, or it is not known. */
  readonly overlookMm?: number;
}

/** Both halves of an edge as they are seen with the neck up, each from the lower to the upper end, over the same stations. */
export interface FoundEdge<F extends Frame> {
  readonly left: readonly EdgeSpot<F>[];
  readonly right: readonly EdgeSpot<F>[];
}
