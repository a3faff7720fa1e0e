import { design, faults, findings, takenDesign, takenOn } from '../store.ts';
import { words } from '../words/words.ts';
import { VALUES_OF_STOP } from './stopNumbers.ts';
import { NUMBERED_STOPS, type Stop } from './stops.ts';

/** The shape of a stop's pin and the word beside it. */
export function stateOf(stop: Stop): {
  readonly shape: 'proposed' | 'settled' | 'questioned';
  readonly word: string;
} {
  const said = words().states;
  if (stop === 'build') return { shape: 'proposed', word: said.notBegun };
  if (stop === 'takeAway') {
    if (takenOn.value === null) return { shape: 'proposed', word: said.notYetTaken };
    const isStill = takenDesign.value === design.value;
    return isStill
      ? { shape: 'settled', word: said.taken(takenOn.value) }
      : { shape: 'questioned', word: said.older };
  }
  if (stop === 'photograph') {
    if (design.value === null) return { shape: 'proposed', word: said.notBegun };
    return { shape: 'settled', word: design.value.outline.kind === 'traced' ? said.settled : said.drafted };
  }
  if (isQuestioned(stop)) return { shape: 'questioned', word: said.questioned };
  if (design.value?.settled?.includes(stop)) return { shape: 'settled', word: said.settled };
  return { shape: 'proposed', word: said.proposed };
}

/** Whether a fault, or a finding that is more than a remark, lies in the numbers of a stop. */
export function isQuestioned(stop: (typeof NUMBERED_STOPS)[number]): boolean {
  const names = new Set<string>(VALUES_OF_STOP[stop].flatMap((group) => group.names));
  const places = [
    ...faults.value.map(({ at }) => at),
    ...findings.value.filter(({ weight }) => weight !== 'remark').map(({ at }) => at),
  ];
  return places.some((at) => names.has(at) || names.has(at.replace(/^values\./, '')));
}
