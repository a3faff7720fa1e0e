import { type Checked, refuse } from '../../base/index.ts';
import type { HalfOutline } from '../../curve/index.ts';
import type { Design } from '../../design/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { archNumbers, type Plate } from './archNumbers.ts';
import { chosenLongArch } from './chosenLongArch.ts';
import { archOn } from './plateArch.ts';
import { type PlateGround, plateGround } from './plateGround.ts';

/** The arching of both plates as a design asks for it, over one ground. Faults: those of `plateArch` and `arch.flat`. */
export function bothArches(design: Design, half: HalfOutline): Readonly<Record<Plate, Checked<PlateArch>>> {
  const ground = plateGround(design.values, half);
  const arch = (plate: Plate): Checked<PlateArch> => {
    const read = archNumbers(design.values, plate);
    if (!read.ok) return read;
    const chosen = chosenLongArch(design, plate);
    if (!chosen.ok) return chosen;
    return ground.ok ? archOnGround(design, plate, ground.value) : refuse(...ground.faults);
  };
  return { back: arch('back'), top: arch('top') };
}

/** The arching of one plate as a design asks for it, over a ground of its values. Faults: those of `archOn` and `arch.flat`. */
export function archOnGround(design: Design, plate: Plate, ground: PlateGround): Checked<PlateArch> {
  const chosen = chosenLongArch(design, plate);
  if (!chosen.ok) return chosen;
  const heights = design.measuredHeights?.[plate];
  return archOn(ground, design.values, plate, { ...chosen.value, ...(heights && { heights }) });
}
