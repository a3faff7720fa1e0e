import { accept, type Checked } from '../../base/index.ts';
import {
  boardDrawings,
  type Drawing,
  mortiseDrawings,
  neckDrawings,
  neckElevationDrawing,
  neckSetDrawings,
} from '../../drawing/index.ts';
import type { Instrument } from '../../instrument/index.ts';

/** Neck and fingerboard, in the order in which they are cut, fitted and set. Faults: those of the gauges on the arch. */
export function drawNeck({ plan, plates, neck }: Instrument): Checked<readonly Drawing[]> {
  const parts = { plan, top: plates.top, neck };
  const set = neckSetDrawings(parts);
  const elevation = neckElevationDrawing(parts);
  if (!set.ok) return set;
  if (!elevation.ok) return elevation;
  return accept([
    elevation.value,
    ...neckDrawings(parts),
    ...boardDrawings(parts),
    ...mortiseDrawings(parts),
    ...set.value,
  ]);
}
