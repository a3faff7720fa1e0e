import type { Family } from './family.ts';
import { type Cell, practised, recalled } from './size.ts';

/** A string as it is tuned: its letter, and semitones from the A that is tuned first. */
export interface StringPitch {
  readonly letter: string;
  readonly stepsFromA: number;
}

/** From the highest string down. */
export const STRING_PITCHES: Readonly<Record<Family, readonly StringPitch[]>> = {
  violin: [
    { letter: 'E', stepsFromA: 7 },
    { letter: 'A', stepsFromA: 0 },
    { letter: 'D', stepsFromA: -7 },
    { letter: 'G', stepsFromA: -14 },
  ],
  viola: [
    { letter: 'A', stepsFromA: 0 },
    { letter: 'D', stepsFromA: -7 },
    { letter: 'G', stepsFromA: -14 },
    { letter: 'C', stepsFromA: -21 },
  ],
  cello: [
    { letter: 'A', stepsFromA: -12 },
    { letter: 'D', stepsFromA: -19 },
    { letter: 'G', stepsFromA: -26 },
    { letter: 'C', stepsFromA: -33 },
  ],
};

/**
 * No unit. How a string's height over the board lies between those of the highest and the lowest, from the lowest over; from
 * memory: 5.5, 5.0, 4.2, 3.5 on a violin, 6.3, 5.6, 5.0, 4.3 on a viola, 6.5, 6, 5, 4 on a cello.
 */
export const STRING_HEIGHT_SHARES: Readonly<Record<Family, readonly number[]>> = {
  violin: [1, 0.75, 0.35, 0],
  viola: [1, 0.65, 0.35, 0],
  cello: [1, 0.8, 0.4, 0],
};

/** Hz. Pulls of packets are stated for this A. */
export const PACKET_TUNING_HZ = 440;

const tuningA = practised(440, '415 to 443 in use: 415 and 430 for older music, 442 and 443 in orchestras');
const weak = 'weak';

/** Modern strings of middling pull. No maker's own table is held. */
export const VIOLIN_STRINGS: Readonly<Record<string, Cell>> = {
  tuningA,
  pullLength: recalled(328, 'the full-size violin'),
  string1Pull: recalled(80, '75 to 82'),
  string2Pull: recalled(56, '52 to 58'),
  string3Pull: recalled(46, '42 to 48'),
  string4Pull: recalled(45, '42 to 48'),
  string1Diameter: recalled(0.26, weak),
  string2Diameter: recalled(0.68, weak),
  string3Diameter: recalled(0.8, weak),
  string4Diameter: recalled(0.82, weak),
};

export const VIOLA_STRINGS: Readonly<Record<string, Cell>> = {
  tuningA,
  pullLength: recalled(375, 'the medium viola; packets for all violas state one length'),
  string1Pull: recalled(74, '68 to 80'),
  string2Pull: recalled(55, '52 to 58'),
  string3Pull: recalled(50.5, '48 to 53'),
  string4Pull: recalled(49, '46 to 52'),
  string1Diameter: recalled(0.72, weak),
  string2Diameter: recalled(0.82, weak),
  string3Diameter: recalled(0.9, weak),
  string4Diameter: recalled(1.15, weak),
};

export const CELLO_STRINGS: Readonly<Record<string, Cell>> = {
  tuningA,
  pullLength: recalled(690, 'the full-size cello'),
  string1Pull: recalled(167, '155 to 180'),
  string2Pull: recalled(142, '135 to 150'),
  string3Pull: recalled(135, '130 to 140'),
  string4Pull: recalled(132, '125 to 140'),
  string1Diameter: recalled(0.75, weak),
  string2Diameter: recalled(1, weak),
  string3Diameter: recalled(1.3, weak),
  string4Diameter: recalled(1.75, weak),
};
