/** What is said of earlier sittings, in English. */
export const keptEn = {
  goOn: (name: string) => `Go on with ${name}`,
  sitting: (family: string, length: string) => `${family}, ${length}`,
  steps: (count: number) => (count === 0 ? 'nothing changed yet' : count === 1 ? '1 step' : `${count} steps`),
  inFile: (name: string) => `in ${name}`,
  changed: (name: string) => `changed since it was put in ${name}`,
  onlyHere: 'only in this browser',
  photographs: (names: string) => `Go on with ${names}`,
  notSettled: 'photographs, the edge not yet settled',
  gone: 'Its pictures are no longer kept here. Bring them in again.',
  drop: 'Throw away',
  dropOf: (name: string) => `Throw away ${name}`,
  dropped: (name: string) => `${name} is thrown away.`,
  putBack: 'Take that back',
  own: 'Look at its photograph again',
  ownWhy: 'With everything that was said and marked. A new outline leaves your own numbers as they are.',
};
