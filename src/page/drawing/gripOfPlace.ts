import { askedThicknesses, askThickness } from '../../core/index.ts';
import { design, held } from '../store.ts';
import { words } from '../words/words.ts';
import type { GripNumber } from './useGrip.ts';

/** What a single place of a plate is touched by. */
export function placeName(plate: 'back' | 'top', index: number): string {
  return `thickness.${plate}.points.${index}`;
}

/** The thickness that a design asks for at a single place, to be pulled at. */
export function gripOfPlace(plate: 'back' | 'top', index: number): GripNumber {
  return {
    name: placeName(plate, index),
    now: (shown) => {
      const on = held.value ?? design.value;
      return (on && askedThicknesses(on, plate)[index]?.[2]) ?? shown;
    },
    to: (before, wish) => {
      const asked = askedThicknesses(before, plate)[index];
      return asked ? askThickness(before, plate, index, [asked[0], asked[1], wish]) : before;
    },
    says: (wish) => words().askedPlaces.says(index + 1, wish),
  };
}
