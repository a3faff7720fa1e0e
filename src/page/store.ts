import { batch, computed, effect, signal, untracked } from '@preact/signals';
import type { Design } from '../core/index.ts';
import { afterFrame } from './bench/afterFrame.ts';
import { checkBench, quickBench, slowBench } from './bench/bench.ts';
import { makeReady } from './bench/idle.ts';
import { tableAnswers } from './bench/tableAnswers.ts';
import { holdSitting } from './keeping/holdSitting.ts';
import { copyProfiles } from './keeping/profileShelf.ts';
import { copySteps, keepSitting, type PlacedStep, type Sitting, stepsOf } from './keeping/session.ts';
import { type Step, stepBetween, withStep } from './keeping/step.ts';
import type { Stop } from './way/stops.ts';

/** The one design on the bench; null before anything is brought in. */
export const design = signal<Design | null>(null);
/** While a hand drags: what the design would be. Shown, not yet an edit. */
export const held = signal<Design | null>(null);
export const stop = signal<Stop>('photograph');
/** The number that the hand is on, and the stop at which the hand was laid on it. */
export const touched = signal<string | null>(null);
export const touchedAt = signal<Stop>('photograph');
effect(() => {
  if (touched.value !== null) touchedAt.value = stop.peek();
});
export const plate = signal<'back' | 'top'>('back');

/** What lies on the table: what the hand holds, or the design. */
export const onTable = computed(() => held.value ?? design.value);

/** The sitting that is held, by which it lies on the shelf. */
export const sitting = signal('');

const answers = tableAnswers(
  { design, held, sitting },
  {
    body: (of) => quickBench().body(of),
    numbers: (of) => slowBench().numbers(of),
    allNumbers: (of) => slowBench().allNumbers(of),
    findings: (of) => checkBench().check(of),
  },
);
export const { body, bodyOf, whole, sound, findings, faults, heldFaults, keepView } = answers;

export const steps = signal<readonly Step[]>([]);
export const done = signal(0);
export const savedAs = signal<string | null>(null);
/** The design as it was last put in a file. */
export const savedDesign = signal<Design | null>(null);
export const isInFile = computed(
  () => savedDesign.value !== null && JSON.stringify(savedDesign.value) === JSON.stringify(design.value),
);
/** When the browser last put the sitting on its shelf; false where it cannot. */
export const keptAt = signal<number | false | null>(null);

/** The day the last pack was taken, as an ISO date, and the design that it was made from. */
export const takenOn = signal<string | null>(null);
export const takenDesign = signal<Design | null>(null);
/** Which steps at the bench are done, and on which day. */
export const built = signal<Readonly<Record<string, string>>>({});

/** A design comes to the bench, with what was done to it before if it was here already. */
export async function bringIn(given: Design, kept?: Sitting): Promise<void> {
  const isFree = kept === undefined || (await holdSitting(kept.id));
  steps.value = kept ? await stepsOf(kept.id) : [];
  // The same sitting in two tabs would write over itself: the second goes on with a copy.
  const id = kept && isFree ? kept.id : newSittingId();
  if (kept && !isFree) {
    await copySteps(id, steps.value);
    await copyProfiles(kept.id, id);
  }
  if (!kept || !isFree) await holdSitting(id);
  // All at once: nothing that is in sight of the one before may pass to it.
  batch(() => {
    sitting.value = id;
    done.value = kept?.done ?? 0;
    savedAs.value = kept?.savedAs ?? null;
    savedDesign.value = kept?.savedDesign ? (JSON.parse(kept.savedDesign) as Design) : null;
    takenOn.value = kept?.taken?.on ?? null;
    takenDesign.value = kept?.taken ? (JSON.parse(kept.taken.design) as Design) : null;
    built.value = kept?.built ?? {};
    held.value = null;
    touched.value = null;
    answers.forget();
    design.value = given;
  });
  await keep(null);
}

function newSittingId(): string {
  return `${Date.now()}-${Math.round(Math.random() * 1e9)}`;
}

/** One edit: at once in sight, one step to take back. */
export function edit(says: string, after: Design): void {
  const before = design.value;
  const step = before && stepBetween(says, before, after);
  // All at once: what was held and is now the design must not give way in between to what it was before.
  batch(() => {
    held.value = null;
    if (step === null) return;
    steps.value = [...steps.value.slice(0, done.value), step];
    done.value += 1;
    design.value = after;
  });
  if (step !== null) void keep(step);
}

export function takeBack(): void {
  const step = steps.value[done.value - 1];
  if (design.value === null || step === undefined) return;
  done.value -= 1;
  design.value = withStep(design.value, step, 'back');
  void keep(null);
}

export function doAgain(): void {
  const step = steps.value[done.value];
  if (design.value === null || step === undefined) return;
  done.value += 1;
  design.value = withStep(design.value, step, 'again');
  void keep(null);
}

/** The design was put in a file of this name. */
export function putInFile(name: string): void {
  savedAs.value = name;
  savedDesign.value = design.value;
  void keep(null);
}

/** A pack was taken today of the design as it stood. */
export function takeAway(of: Design): void {
  takenOn.value = today();
  takenDesign.value = of;
  void keep(null);
}

/** A step at the bench is done today, or not yet done after all. */
export function markBuilt(step: string, isDone: boolean): void {
  const { [step]: _, ...others } = built.value;
  built.value = isDone ? { ...others, [step]: today() } : others;
  void keep(null);
}

function today(): string {
  return new Date().toISOString().slice(0, 'yyyy-mm-dd'.length);
}

/** What is still to be put on the shelf, by sitting. */
const unkept = new Map<string, { readonly sitting: Sitting; readonly steps: readonly PlacedStep[] }>();
let keeping: Promise<void> | null = null;

/** Edits that come while the shelf is written to go there together afterwards. */
function keep(newest: Step | null): Promise<void> {
  if (design.value === null) return Promise.resolve();
  const before = unkept.get(sitting.value)?.steps ?? [];
  unkept.set(sitting.value, {
    sitting: {
      id: sitting.value,
      design: design.value,
      done: done.value,
      savedAs: savedAs.value,
      savedDesign: savedDesign.value && JSON.stringify(savedDesign.value),
      touchedAt: Date.now(),
      taken:
        takenOn.value === null || takenDesign.value === null
          ? null
          : { on: takenOn.value, design: JSON.stringify(takenDesign.value) },
      built: built.value,
    },
    steps: newest === null ? before : [...before, { n: done.value - 1, step: newest }],
  });
  keeping ??= keepAll().finally(() => {
    keeping = null;
  });
  return keeping;
}

async function keepAll(): Promise<void> {
  for (const [id, { sitting: of, steps: newest }] of unkept) {
    unkept.delete(id);
    try {
      await keepSitting(of, newest);
      keptAt.value = Date.now();
    } catch {
      // A browser may refuse storage, in a private window for one: the page says so and goes on.
      keptAt.value = false;
    }
  }
}

/** Where the body in its plane is drawn. */
const BODY_STOPS: readonly Stop[] = ['photograph', 'outline', 'form'];

/** ms. A hand that has not moved for so long rests (chosen by us: longer than between two moves of a slow mouse). */
export const REST_MS = 60;

/** Times that a bench rehearses before the first edit: by then it derives three times as quickly as at first, in a second of its time. */
const REHEARSALS = 6;

const isNumbered = computed(() => whole.value !== null);
effect(() => {
  const on = isNumbered.value ? design.peek() : null;
  if (on === null) return;
  // As soon as something is asked, that is rehearsal enough; and a photograph needs the room.
  const isWanted = () => onTable.peek() === on && isNumbered.peek() && stop.peek() !== 'photograph';
  makeReady(REHEARSALS, isWanted, () => slowBench().rehearse(on));
});

effect(() => {
  const shown = onTable.value;
  const isHeld = held.value !== null;
  // Elsewhere the quick bench answers for the view that the hand is in: it must not wait for a body that nobody sees.
  const isOutOfSight = isHeld && !BODY_STOPS.includes(stop.value);
  if (shown === null || isOutOfSight) return;
  // What the hand holds is drawn first, and by the page itself: the bench would take the time of its frame.
  if (isHeld) return afterFrame(() => answers.askBody(shown));
  untracked(() => answers.askBody(shown));
});
effect(() => {
  const on = held.value === null ? design.value : null;
  if (on !== null) untracked(() => answers.askNumbers(on));
});
// Where the hand rests its numbers settle, so that letting go finds them ready.
effect(() => {
  const resting = held.value;
  if (resting === null) return;
  const timer = setTimeout(() => answers.askNumbers(resting), REST_MS);
  return () => clearTimeout(timer);
});
