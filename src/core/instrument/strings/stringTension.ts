import { power } from '../../base/index.ts';

/** Standard gravity, m/s²: what a kilogram pulls with (ISO 80000-3 value). */
const GRAVITY = 9.80665;

/** Newtons as the kilograms that string makers print. */
export function kilograms(newtons: number): number {
  return newtons / GRAVITY;
}

/** Frequency of a pitch, Hz: equal steps, `stepsFromA` semitones from the tuning's A. */
export function pitchHz(tuningHz: number, stepsFromA: number): number {
  return tuningHz * power(2, stepsFromA / 12);
}

/** Pull of a string, N, that sounds at a pitch: Mersenne's law, T = μ (2 L f)². Mass in grams a metre, length in mm. */
export function stringTension(gramsPerMetre: number, stringLengthMm: number, soundsHz: number): number {
  return (gramsPerMetre / 1000) * (2 * (stringLengthMm / 1000) * soundsHz) ** 2;
}

/** The mass a string must have to sound at a pitch under a pull (N), grams a metre. */
export function stringMass(tensionN: number, stringLengthMm: number, soundsHz: number): number {
  return (1000 * tensionN) / (2 * (stringLengthMm / 1000) * soundsHz) ** 2;
}

/** Mass of a plain string, grams a metre, from its thickness and the density of its stuff (kg/m³). */
export function plainStringMass(diameterMm: number, densityKgM3: number): number {
  return (Math.PI * diameterMm ** 2 * densityKgM3) / 4000;
}
