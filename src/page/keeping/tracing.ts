import { computed, effect, signal } from '@preact/signals';
import { proxy } from 'comlink';
import { type Design, type Fault, type SheetInPhotograph, type TraceRecord } from '../../core/index.ts';
import { letGoOfBuffer } from '../../host/browser/index.ts';
import { makeRoomForPhotographs, seeingBench, slowBench } from '../bench/bench.ts';
import type { PhotographFile } from '../bench/keptPictures.ts';
import { newestOnly } from '../bench/newestOnly.ts';
import type { Seen } from '../bench/seeingWork.ts';
import { bringIn, design, edit, stop } from '../store.ts';
import { words } from '../words/words.ts';
import type { Said } from './said.ts';
import { beginToSay, said, saidSteps } from './saying.ts';

/** A photograph in the maker's hand. */
export interface HeldPhotograph extends PhotographFile {
  /** The same made small enough for a screen; null where it cannot be. */
  readonly view: Promise<Blob | null>;
  /** What is to be seen of the printed sheet: undefined while nobody knows yet. */
  readonly sheet?: SheetInPhotograph | null;
  /** Why the sheet cannot be read, though it is there. */
  readonly trouble: readonly Fault[];
}

/** px of the long side of a photograph as it is shown: more is seen under the glass. */
const VIEW_PX = 1600;

/** The photographs in hand, all of the same face. */
export const photographs = signal<readonly HeldPhotograph[]>([]);
/** Which of them is looked at. */
export const shot = signal(0);
export const photograph = computed(() => photographs.value[shot.value] ?? photographs.value[0] ?? null);

/** A table of measurements that lies beside the photographs: a design is drafted from both. */
export const table = signal<{ readonly name: string; readonly json: unknown } | null>(null);
/** Whether a design was drawn from the photographs in hand. */
export const isSettled = signal(false);

/** Share of the way while the edge is looked for; null while nobody looks. */
export const lookedAt = signal<number | null>(null);
export const seen = signal<Seen | null>(null);
/** What was said when the edge was found. */
const seenWith = signal<Said | null>(null);
export const seeingTrouble = signal<readonly Fault[]>([]);

/** Photographs were dropped, chosen or taken: they are shown, and what is known about them is asked. */
export async function holdPhotographs(files: readonly File[]): Promise<void> {
  if (files.length === 0) return;
  if (photographs.value.length === 0) makeRoomForPhotographs();
  const held: HeldPhotograph[] = [];
  for (const file of files) {
    held.push(await takenInHand(file));
  }
  if (photographs.value.length === 0) {
    beginToSay({});
    isSettled.value = false;
  }
  photographs.value = [...photographs.value, ...held].map(withOwnName);
  shot.value = photographs.value.length - held.length;
  seen.value = null;
  seeingTrouble.value = [];
  stop.value = 'photograph';
  for (const one of photographs.value.slice(-held.length)) void lookForSheet(one);
}

/** A photograph as it is now: what becomes of the file that was chosen changes nothing any more. */
async function takenInHand(chosen: File): Promise<HeldPhotograph> {
  const { name, type } = chosen;
  const buffer = await chosen.arrayBuffer();
  const file = new Blob([buffer], { type });
  letGoOfBuffer(buffer);
  const one: PhotographFile = { name, file, address: URL.createObjectURL(file) };
  const view = seeingBench()
    .view(one, VIEW_PX)
    .catch(() => null);
  return { ...one, view, trouble: [] };
}

/** What the bench is asked with. */
function fileOf({ name, file, address }: HeldPhotograph): PhotographFile {
  return { name, file, address };
}

/** Marks are kept by the name of their photograph: no two have the same. */
function withOwnName(one: HeldPhotograph, place: number, all: readonly HeldPhotograph[]): HeldPhotograph {
  const isTaken = all.slice(0, place).some(({ name }) => name === one.name);
  return isTaken ? { ...one, name: one.name.replace(/(\.[^.]*)?$/, ` (${place + 1})$1`) } : one;
}

async function lookForSheet(held: HeldPhotograph): Promise<void> {
  const { address } = held;
  const answer = await seeingBench().sheetIn(fileOf(held));
  photographs.value = photographs.value.map((one) =>
    one.address !== address
      ? one
      : answer.ok
        ? { ...one, sheet: answer.value }
        : { ...one, trouble: answer.faults },
  );
  proposeScale();
}

/** Without a sheet in any of them, a known length is asked for; who chose a scale keeps it. */
function proposeScale(): void {
  const isNone = photographs.value.every(({ sheet }) => sheet === null);
  if (isNone && saidSteps.value.length === 0 && said.value.scaleFrom === 'sheet')
    said.value = { ...said.value, scaleFrom: 'known' };
}

export function putPhotographAway(address: string): void {
  URL.revokeObjectURL(address);
  photographs.value = photographs.value.filter((one) => one.address !== address);
  if (photographs.value.length === 0) seeingBench.rest();
  shot.value = 0;
  seen.value = null;
  seeingTrouble.value = [];
}

/** Nothing is in hand any more. */
export function putPhotographsAway(): void {
  if (photographs.value.length > 0) seeingBench.rest();
  for (const { address } of photographs.value) URL.revokeObjectURL(address);
  photographs.value = [];
  table.value = null;
  shot.value = 0;
  seen.value = null;
  seeingTrouble.value = [];
}

/** Looks for the edge with what was said. */
export async function look(): Promise<void> {
  const held = photographs.value;
  const [first, ...others] = held.map(fileOf);
  if (first === undefined || lookedAt.value !== null) return;
  const asked = said.value;
  lookedAt.value = 0;
  seeingTrouble.value = [];
  try {
    const answer = await seeingBench().see(
      [first, ...others],
      asked,
      shot.value,
      proxy((_: string, share: number) => {
        lookedAt.value = share;
      }),
    );
    if (photographs.value.length !== held.length) return;
    seenWith.value = asked;
    if (answer.ok) seen.value = answer.value;
    else seeingTrouble.value = answer.faults;
  } finally {
    lookedAt.value = null;
  }
}

/** Once an edge was found, whatever is said more or taken back is looked for at once. */
effect(() => {
  const isOld = seen.value !== null && seenWith.value !== said.value;
  if (isOld && lookedAt.value === null) void look();
});

/** Another of several photographs is looked at. */
const showOther = newestOnly(
  async (asked: number) => seeingBench().showShot(asked),
  (shown, asked) => {
    if (shown !== null && seen.value !== null && asked === shot.value) seen.value = { ...seen.value, shown };
  },
);

export function lookAtShot(number: number): void {
  shot.value = number;
  if (seen.value !== null) showOther(number);
}

/** The outline as meant becomes a design; where the design on the bench came from these photographs, its outline changes. */
export async function settleOutline(): Promise<void> {
  const [held] = photographs.value;
  if (held === undefined || seen.value === null) return;
  const { document, shown } = seen.value;
  const name = held.name.replace(/\.[^.]+$/, '');
  const drafted = await slowBench().draft([
    { name: held.name, json: document },
    table.value
      ? withLength(table.value, shown.lengthMm)
      : { name, json: measurementsOf(name, shown.lengthMm) },
  ]);
  if (!drafted.ok) {
    seeingTrouble.value = drafted.faults;
    return;
  }
  const fresh: Design = { ...drafted.value.design, settled: ['photograph'] };
  if (design.value !== null && isOfThese(design.value))
    edit(words().see.tracedAnew, withOwnNumbers(fresh, design.value));
  else await bringIn(fresh);
  isSettled.value = true;
  stop.value = 'outline';
}

/** What a photograph alone tells of an instrument. */
function measurementsOf(name: string, lengthMm: number) {
  const { family } = said.value;
  return { format: 'garland-measurements', version: 1, family, name, values: { bodyLength: lengthMm } };
}

/** A table that leaves the body length to the photograph gets it. */
function withLength(given: { readonly name: string; readonly json: unknown }, lengthMm: number) {
  const { values, ...rest } = given.json as { readonly values?: object };
  return { name: given.name, json: { ...rest, values: { bodyLength: lengthMm, ...values } } };
}

/** Whether a design was traced from the photographs in hand: told by their fingerprints. */
function isOfThese({ outline, family }: Design): boolean {
  const ours = fingerprints((seen.value?.document as { readonly request?: TraceRecord }).request);
  if (outline.kind !== 'traced' || family !== said.value.family) return false;
  return fingerprints(outline.request).some((print) => ours.includes(print));
}

function fingerprints(record: TraceRecord | undefined): readonly string[] {
  return record?.photographs.flatMap(({ sha256 }) => sha256 ?? []) ?? [];
}

/** A design traced anew with everything that the maker decided or measured in the old one. */
function withOwnNumbers(fresh: Design, old: Design): Design {
  const isOwn = (name: string) =>
    name in (old.overruled ?? {}) ||
    (originOf(old, name) === 'measured' && originOf(fresh, name) !== 'measured');
  const own = Object.fromEntries(Object.entries(old.values).filter(([name]) => isOwn(name)));
  return {
    ...old,
    outline: fresh.outline,
    values: { ...fresh.values, ...own },
    ...(fresh.holeShape !== undefined && { holeShape: fresh.holeShape }),
  };
}

function originOf({ values }: Design, name: string): string | undefined {
  return values[name as keyof typeof values]?.origin.kind;
}
