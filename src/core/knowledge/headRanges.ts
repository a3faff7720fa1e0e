import { fromMemory, published } from '../quantity/index.ts';
import { citation } from './sources.ts';

const memory = (low: number, high: number) => ({ low, high, origin: fromMemory() });
const viola = (low: number, high: number) => ({ low, high, origin: published(citation('violaTable')) });

/** What is usual of a head, for the ordinary size of each family. */
export const HEAD_RANGES = {
  violin: {
    headLength: memory(102, 112),
    scrollEye: memory(3, 4),
    scrollEars: memory(41, 43),
    headNarrowest: memory(11, 13),
    pegboxWallNut: memory(4.5, 5.5),
    pegDiameter: memory(7.5, 8),
  },
  viola: {
    headLength: viola(122, 128),
    pegboxWidthNut: viola(27, 31),
    pegboxWidthThroat: viola(20, 22),
  },
  cello: {
    scrollEars: memory(64, 68),
  },
} as const;
