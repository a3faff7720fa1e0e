import { computed } from '@preact/signals';
import * as store from '../store.ts';
import { lastSaid, nextSaid, sayAgain, takeBackSaid } from './saying.ts';
import { photographs } from './tracing.ts';

/** While photographs are in hand at their stop, what was said of them is taken back; everywhere else, steps of the design. */
const isSaying = computed(() => store.stop.value === 'photograph' && photographs.value.length > 0);

/** What taking back would undo, in words; undefined where there is nothing. */
export const toTakeBack = computed(() =>
  isSaying.value ? lastSaid.value?.says : store.steps.value[store.done.value - 1]?.says,
);
export const canDoAgain = computed(() =>
  isSaying.value ? nextSaid.value !== undefined : store.done.value < store.steps.value.length,
);

export function takeBack(): void {
  if (isSaying.value) takeBackSaid();
  else store.takeBack();
}

export function doAgain(): void {
  if (isSaying.value) sayAgain();
  else store.doAgain();
}
