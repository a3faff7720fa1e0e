import { accept, type Checked, refuse } from '../../base/index.ts';
import type { ArchStation, PlateArch } from './archedPlate.ts';
import type { StationName } from './archNumbers.ts';
import { edgeHalfWidth } from './edgeWidth.ts';
import { plateHeight } from './plateHeight.ts';
import { placesWhere } from './smoothLine.ts';

/** A place across a plate where a gauge stands: one of the five stations, or a height that the maker names. */
export interface GaugePlace
  extends Pick<ArchStation, 'yMm' | 'halfWidthMm' | 'edgeHalfWidthMm' | 'riseMm' | 'heldShare'> {
  /** None where the maker named the height. */
  readonly name?: StationName;
}

/**
 * The place at a height above the lower end that a maker names; its measures are those of the surface there.
 *
 * Fault: `gauge.place`, where the arch does not stand out above the edge: off the plate, or too near to its ends.
 */
export function gaugePlace(arch: PlateArch, yMm: number): Checked<GaugePlace> {
  const { startMm, endMm } = arch.longArch;
  const onArch = yMm > startMm && yMm < endMm;
  const riseMm = onArch ? plateHeight(arch, 0, yMm, 'finished') - arch.channelZMm : 0;
  if (!(riseMm > arch.numbers.scoopDepthMm)) return refuse(offArch(arch, yMm));
  const halfWidthMm = Math.max(...placesWhere(arch.channel.line, ({ y }) => y - yMm).map(({ x }) => x));
  return accept({
    yMm,
    halfWidthMm,
    edgeHalfWidthMm: edgeHalfWidth(arch.edge, yMm),
    riseMm,
    heldShare: 1,
  });
}

function offArch(arch: PlateArch, yMm: number) {
  const { startMm, endMm } = arch.longArch;
  return {
    code: 'gauge.place',
    at: '--gauge-at',
    found: `a gauge of the ${arch.plate} at ${yMm} mm above the lower end`,
    need: `a height at which the arch stands out above the edge; the channel ends at ${startMm.toFixed(1)} and ${endMm.toFixed(1)} mm`,
    remedy: 'name a height farther from the ends of the body',
  };
}
