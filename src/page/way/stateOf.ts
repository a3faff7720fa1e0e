import { built, design, faults, findings, takenDesign, takenOn } from '../store.ts';
import { dayText, words } from '../words/words.ts';
import { BUILD_STEPS } from './buildSteps.ts';
import { VALUES_OF_STOP } from './stopNumbers.ts';
import { NUMBERED_STOPS, type Stop } from './stops.ts';

/** The shape of a stop's pin and the word beside it. */
export function stateOf(stop: Stop): {
  readonly shape: 'proposed' | 'settled' | 'questioned';
  readonly word: string;
} {
  const said = words().states;
  if (stop === 'build') {
    const count = BUILD_STEPS.filter(({ name }) => built.value[name] !== undefined).length;
    if (count === 0) return { shape: 'proposed', word: said.notBegun };
    const isDone = count === BUILD_STEPS.length;
    return { shape: isDone ? 'settled' : 'proposed', word: said.stepsDone(count, BUILD_STEPS.length) };
  }
  if (stop === 'takeAway') {
    if (takenOn.value === null) return { shape: 'proposed', word: said.notYetTaken };
    const isStill = JSON.stringify(takenDesign.value) === JSON.stringify(design.value);
    return isStill
      ? { shape: 'settled', word: said.taken(dayText(takenOn.value)) }
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
