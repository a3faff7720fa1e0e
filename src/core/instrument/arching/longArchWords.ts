import type { Fault } from '../../base/index.ts';
import { type Plate, plateValueNames } from './archNumbers.ts';

/** What is wrong with a plate's long arch, at the entries of a design that it comes from. */
export function longArchWords(fault: Fault, plate: Plate, isCrestGiven: boolean): Fault {
  const entry = (name: string): string => `longArch.${plate}.${name}`;
  const height = plateValueNames(plate).arch;
  switch (fault.code) {
    case 'arch.crest':
      return { ...fault, at: entry('crest') };
    case 'arch.rise':
      return isCrestGiven
        ? {
            ...fault,
            at: `${entry('crest')}, ${height}`,
            remedy: 'move the crest nearer to the middle of the body, or lower the arch',
          }
        : fault;
    case 'arch.platform':
      return {
        ...fault,
        at: `${entry('flatReach')}, ${entry('flatRadius')}`,
        remedy: 'make the flatter circle reach less far, or its radius larger',
      };
    case 'arch.fillet':
      return {
        ...fault,
        at: `longArchFillet, ${isCrestGiven ? entry('crest') : height}`,
        remedy: isCrestGiven
          ? 'use a smaller fillet, or move the crest nearer to the middle of the body'
          : fault.remedy,
      };
    default:
      return fault;
  }
}
