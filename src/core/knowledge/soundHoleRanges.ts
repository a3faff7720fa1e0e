import { chosen, fromMemory, published } from '../quantity/index.ts';
import { citation } from './sources.ts';

const memory = (low: number, high: number) => ({ low, high, origin: fromMemory() });
const viola = (low: number, high: number) => ({ low, high, origin: published(citation('violaTable')) });
const seen = (low: number, high: number) => ({
  low,
  high,
  origin: chosen('by us: the spread of twelve holes of six old instruments, measured on photographs'),
});

/** What is usual of sound holes, for the ordinary size of each family. */
export const SOUND_HOLE_RANGES = {
  violin: {
    holeLength: memory(68, 80),
    upperEyesApart: { low: 36, high: 46, origin: published(citation('holePlaces')) },
    upperEyeDiameter: seen(6, 7.3),
    lowerEyeDiameter: seen(8.5, 12),
    holeStemWidth: seen(5.5, 7.5),
    holeTipGap: seen(0.9, 1.8),
    nickAboveStop: memory(-1, 1),
  },
  viola: {
    holeLength: memory(74, 83),
    upperEyesApart: viola(46, 50),
    nickAboveStop: memory(-1, 1),
  },
  cello: {
    holeLength: memory(128, 140),
    upperEyesApart: memory(92, 100),
    upperEyeDiameter: memory(11, 13),
    lowerEyeDiameter: memory(14, 18.5),
    nickAboveStop: memory(-2, 2),
  },
} as const;

/**
 * mm. From the rim of the lower eye to the edge; no source says to which place of it. For the ordinary size of the family, or
 * `forAll` sizes alike.
 */
export const LOWER_EYE_TO_EDGE = {
  violin: { ...memory(9, 14), forAll: false },
  viola: { ...viola(13, 15), forAll: true },
  cello: { ...memory(22, 26), forAll: false },
} as const;

/** mm on the ordinary size of each family, from memory; others in proportion. */
export const SOUND_HOLE_LEAST = {
  /** From any place of a hole to the edge of the top: less breaks, and leaves no room for linings. */
  toEdge: { violin: 9, viola: 10, cello: 17 },
  /** Beside the eye, between it and the wing: a saw blade and two cuts of the knife. */
  passage: { violin: 2.5, viola: 2.5, cello: 5 },
  /** At the tips of the wings, for the blade. */
  tipGap: { violin: 0.8, viola: 0.8, cello: 1.5 },
  /** Free between the bar and the nearest place of a hole. */
  toBar: { violin: 1, viola: 1, cello: 2 },
} as const;
