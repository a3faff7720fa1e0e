import type { ValueMeaning } from './valueMeaning.ts';

/** Numbers a maker may give about the strings; the 1st is the highest, as players count them. */
export const STRING_VALUES = {
  tuningA: { unit: 'Hz', says: 'frequency that the A is tuned to' },
  pullLength: { unit: 'mm', says: 'length of string for which the pulls are stated, at an A of 440 Hz' },
  string1Pull: { unit: 'N', says: 'pull of the 1st string as its packet states it' },
  string2Pull: { unit: 'N', says: 'pull of the 2nd string as its packet states it' },
  string3Pull: { unit: 'N', says: 'pull of the 3rd string as its packet states it' },
  string4Pull: { unit: 'N', says: 'pull of the 4th string as its packet states it' },
  string1Diameter: { unit: 'mm', says: 'gauge of the 1st string: its diameter' },
  string2Diameter: { unit: 'mm', says: 'gauge of the 2nd string: its diameter' },
  string3Diameter: { unit: 'mm', says: 'gauge of the 3rd string: its diameter' },
  string4Diameter: { unit: 'mm', says: 'gauge of the 4th string: its diameter' },
  string1Mass: { unit: 'g/m', optional: true, says: 'mass of a metre of the 1st string' },
  string2Mass: { unit: 'g/m', optional: true, says: 'mass of a metre of the 2nd string' },
  string3Mass: { unit: 'g/m', optional: true, says: 'mass of a metre of the 3rd string' },
  string4Mass: { unit: 'g/m', optional: true, says: 'mass of a metre of the 4th string' },
  string1Density: { unit: 'kg/m³', optional: true, says: 'density of the 1st string, where it is plain' },
  string2Density: { unit: 'kg/m³', optional: true, says: 'density of the 2nd string, where it is plain' },
  string3Density: { unit: 'kg/m³', optional: true, says: 'density of the 3rd string, where it is plain' },
  string4Density: { unit: 'kg/m³', optional: true, says: 'density of the 4th string, where it is plain' },
} as const satisfies Record<string, ValueMeaning>;
