import type { ValueMeaning } from './valueMeaning.ts';

/** Numbers a maker may give about the sound holes. What else their shape needs follows their length. */
export const SOUND_HOLE_VALUES = {
  holeLength: { unit: 'mm', says: 'length of a sound hole, parallel to the centre line' },
  upperEyesApart: { unit: 'mm', says: 'distance between the upper eyes of the sound holes, rim to rim' },
  upperEyeDiameter: { unit: 'mm', says: 'diameter of the upper eye of a sound hole' },
  lowerEyeDiameter: { unit: 'mm', says: 'diameter of the lower eye of a sound hole' },
  holeStemWidth: { unit: 'mm', says: 'width of the stem of a sound hole at its nicks, square to it' },
  holeTipGap: {
    unit: 'mm',
    says: 'opening between the tip of the upper wing of a sound hole and the edge across from it, its narrowest place',
  },
  nickAboveStop: { unit: 'mm', says: 'how far the inner nicks of the sound holes lie above the bridge line' },
  lowerEyeToEdge: {
    unit: 'mm',
    says: 'rim of the lower eye of a sound hole to the nearest place of the edge of the top',
  },
} as const satisfies Record<string, ValueMeaning>;
