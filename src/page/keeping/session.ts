import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Design } from '../../core/index.ts';
import type { Step } from './step.ts';

/** What one sitting at the bench leaves behind, so that it can be gone on with. */
export interface Sitting {
  readonly id: string;
  readonly design: Design;
  /** How many of its steps are done; those beyond were taken back. */
  readonly done: number;
  readonly savedAs: string | null;
  readonly savedDesign: string | null;
  readonly touchedAt: number;
  /** When the last pack was taken, and the design it was made from; day by day which steps at the bench were done. ISO dates. */
  readonly taken?: { readonly on: string; readonly design: string } | null;
  readonly built?: Readonly<Record<string, string>>;
}

interface Shelf extends DBSchema {
  sittings: { key: string; value: Sitting };
  steps: { key: [string, number]; value: { readonly id: string; readonly n: number; readonly step: Step } };
}

/** Sittings that are kept; older ones make room. */
const KEPT = 12;

let opened: Promise<IDBPDatabase<Shelf>> | null = null;

function shelf(): Promise<IDBPDatabase<Shelf>> {
  opened ??= openDB<Shelf>('garland', 1, {
    upgrade(database) {
      database.createObjectStore('sittings', { keyPath: 'id' });
      database.createObjectStore('steps', { keyPath: ['id', 'n'] });
    },
  });
  return opened;
}

/** A step at its place among those of its sitting. */
export interface PlacedStep {
  readonly n: number;
  readonly step: Step;
}

/** Puts a sitting on the shelf with its newest steps, in the order they were made; steps that were taken back and left are dropped. */
export async function keepSitting(sitting: Sitting, newest: readonly PlacedStep[]): Promise<void> {
  const written = (await shelf()).transaction(['sittings', 'steps'], 'readwrite');
  await written.objectStore('sittings').put(sitting);
  const steps = written.objectStore('steps');
  for (const { n, step } of newest) {
    await steps.delete(IDBKeyRange.bound([sitting.id, n], [sitting.id, Number.MAX_SAFE_INTEGER]));
    await steps.put({ id: sitting.id, n, step });
  }
  await written.done;
}

/** Every sitting on the shelf, newest first. */
export async function keptSittings(): Promise<readonly Sitting[]> {
  const all = await (await shelf()).getAll('sittings');
  const sorted = all.toSorted((a, b) => b.touchedAt - a.touchedAt);
  for (const old of sorted.slice(KEPT)) await dropSitting(old.id);
  return sorted.slice(0, KEPT);
}

/** The steps of a sitting, in order, with those that were taken back. */
export async function stepsOf(id: string): Promise<readonly Step[]> {
  const range = IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);
  return (await (await shelf()).getAll('steps', range)).map(({ step }) => step);
}

/** Puts steps under another sitting, so that it can go on by itself. */
export async function copySteps(id: string, steps: readonly Step[]): Promise<void> {
  const written = (await shelf()).transaction('steps', 'readwrite');
  for (const [n, step] of steps.entries()) await written.store.put({ id, n, step });
  await written.done;
}

export async function dropSitting(id: string): Promise<void> {
  const written = (await shelf()).transaction(['sittings', 'steps'], 'readwrite');
  await written.objectStore('sittings').delete(id);
  await written.objectStore('steps').delete(IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]));
  await written.done;
}
