import type { besideEn } from './besideEn.ts';

/** Worte, wo ein anderer Entwurf über dem auf der Bank liegt. */
export const besideDe: typeof besideEn = {
  title: 'darübergelegt',
  lay: 'Einen anderen Entwurf darüberlegen',
  asItCame: 'Darüberlegen, wie er kam',
  lies: (name) =>
    `${name} liegt darüber, gestrichelt: unteres Ende auf unterem Ende, Mittellinie auf Mittellinie.`,
  takeOff: 'Wieder wegnehmen',
  alike: 'Die Umrisse stimmen auf 0,05 mm überein.',
  outside: (off, at) => `Er liegt höchstens ${off} mm außerhalb, ${at} vom unteren Ende.`,
  inside: (off, at) => `Er liegt höchstens ${off} mm innerhalb, ${at} vom unteren Ende.`,
  heights: (plate, rms) => `Höhen, ${plate}: im Mittel ${rms} mm auseinander (quadratisch).`,
  higher: (off, at, x) => `${off} mm höher, ${at} vom unteren Ende, ${x} von der Mittellinie.`,
  lower: (off, at, x) => `${off} mm tiefer, ${at} vom unteren Ende, ${x} von der Mittellinie.`,
  numbers: (count) => (count === 1 ? '1 Zahl weicht ab' : `${count} Zahlen weichen ab`),
  number: 'Zahl',
  here: 'hier',
  there: 'darüber',
};
