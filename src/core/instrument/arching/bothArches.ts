import { type Checked, refuse } from '../../base/index.ts';
import type { HalfOutline } from '../../curve/index.ts';
import type { Design } from '../../design/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { archNumbers, type Plate } from './archNumbers.ts';
import { chosenLongArch } from './chosenLongArch.ts';
import { archOn } from './plateArch.ts';
import { plateGround } from './plateGround.ts';

/** The arching of both plates as a design asks for it, over one ground. Faults: those of `plateArch` and `arch.flat`. */
export function bothArches(design: Design, half: HalfOutline): Readonly<Record<Plate, Checked<PlateArch>>> {
  const { values } = design;
  const ground = plateGround(values, half);
  const arch = (plate: Plate): Checked<PlateArch> => {
    const heights = design.measuredHeights?.[plate];
    const read = archNumbers(values, plate);
    if (!read.ok) return read;
    const chosen = chosenLongArch(design, plate);
    if (!chosen.ok) return chosen;
    return ground.ok
      ? archOn(ground.value, values, plate, { ...chosen.value, ...(heights && { heights }) })
      : refuse(...ground.faults);
  };
  return { back: arch('back'), top: arch('top') };
}
