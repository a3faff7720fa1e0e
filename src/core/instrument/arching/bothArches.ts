import { accept, type Checked, refuse } from '../../base/index.ts';
import type { HalfOutline } from '../../curve/index.ts';
import type { Design } from '../../design/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { archNumbers, type Plate } from './archNumbers.ts';
import { chosenLongArch } from './chosenLongArch.ts';
import { archOn } from './plateArch.ts';
import { type PlateGround, plateGround } from './plateGround.ts';

/** Both plates, and what they stand on. */
export interface BothArches extends Readonly<Record<Plate, Checked<PlateArch>>> {
  readonly ground: Checked<PlateGround>;
}

/**
 * The arching of both plates as a design asks for it, over one ground: `kept`, where the ground of this half and of these
 * values is there already. Faults: those of `plateArch` and `arch.flat`.
 */
export function bothArches(design: Design, half: HalfOutline, kept: PlateGround | null = null): BothArches {
  const ground = kept ? accept(kept) : plateGround(design.values, half);
  const arch = (plate: Plate): Checked<PlateArch> => {
    const read = archNumbers(design.values, plate);
    if (!read.ok) return read;
    const chosen = chosenLongArch(design, plate);
    if (!chosen.ok) return chosen;
    return ground.ok ? archOnGround(design, plate, ground.value) : refuse(...ground.faults);
  };
  return { ground, back: arch('back'), top: arch('top') };
}

/** The arching of one plate as a design asks for it, over a ground of its values. Faults: those of `archOn` and `arch.flat`. */
export function archOnGround(design: Design, plate: Plate, ground: PlateGround): Checked<PlateArch> {
  const chosen = chosenLongArch(design, plate);
  if (!chosen.ok) return chosen;
  const heights = design.measuredHeights?.[plate];
  return archOn(ground, design.values, plate, { ...chosen.value, ...(heights && { heights }) });
}
