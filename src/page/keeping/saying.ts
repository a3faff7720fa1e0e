import { computed, signal } from '@preact/signals';
import { NOTHING_SAID, type Said, wholeSaid } from './said.ts';

/** One thing that was said of the photographs, as it can be taken back and said again. */
export interface SaidStep {
  readonly says: string;
  /** Typing goes on in the same step while the same thing is typed. */
  readonly typed: string | null;
  readonly before: Said;
  readonly after: Said;
}

/** What the maker says of the photographs in hand. */
export const said = signal<Said>(NOTHING_SAID);
export const saidSteps = signal<readonly SaidStep[]>([]);
export const saidDone = signal(0);
export const lastSaid = computed(() => saidSteps.value[saidDone.value - 1]);
export const nextSaid = computed(() => saidSteps.value[saidDone.value]);

/** Says something more: one step, or more of the last one where the same thing is still being typed. */
export function say(says: string, more: Partial<Said>, typed: string | null = null): void {
  const before = said.value;
  const after = { ...before, ...more };
  const last = lastSaid.value;
  const goesOn = typed !== null && last?.typed === typed;
  const kept = saidSteps.value.slice(0, goesOn ? saidDone.value - 1 : saidDone.value);
  saidSteps.value = [...kept, { says, typed, before: goesOn ? last.before : before, after }];
  saidDone.value = kept.length + 1;
  said.value = after;
}

export function takeBackSaid(): void {
  const last = lastSaid.value;
  if (last === undefined) return;
  said.value = last.before;
  saidDone.value -= 1;
}

export function sayAgain(): void {
  const next = nextSaid.value;
  if (next === undefined) return;
  said.value = next.after;
  saidDone.value += 1;
}

/** Other photographs are in hand: what was said of the instrument stays, what was marked on pictures goes. */
export function beginToSay(from: Partial<Said>): void {
  said.value = { ...NOTHING_SAID, ...from };
  saidSteps.value = [];
  saidDone.value = 0;
}

/** Goes on with what was said before of the same photographs. */
export function goOnSaying(before: {
  readonly said: Said;
  readonly steps: readonly SaidStep[];
  readonly done: number;
}): void {
  saidSteps.value = before.steps.map((step) => ({
    ...step,
    before: wholeSaid(step.before),
    after: wholeSaid(step.after),
  }));
  saidDone.value = before.done;
  said.value = wholeSaid(before.said);
}
