import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Said } from './said.ts';
import type { SaidStep } from './saying.ts';

/** What was said of photographs that lay on the bench together. */
export interface Told {
  /** Their fingerprints in order, joined. */
  readonly id: string;
  readonly photographs: readonly { readonly name: string; readonly sha256: string }[];
  readonly said: Said;
  readonly steps: readonly SaidStep[];
  readonly done: number;
  /** Whether a design was drawn from them. */
  readonly isSettled: boolean;
  readonly touchedAt: number;
}

interface Shelf extends DBSchema {
  pictures: { key: string; value: { readonly sha256: string; readonly bytes: Uint8Array } };
  told: { key: string; value: Told };
}

/** Sets of photographs that are kept; pictures are large, so older ones make room. */
const KEPT = 4;

let opened: Promise<IDBPDatabase<Shelf>> | null = null;

function shelf(): Promise<IDBPDatabase<Shelf>> {
  opened ??= openDB<Shelf>('garland-photographs', 1, {
    upgrade(database) {
      database.createObjectStore('pictures', { keyPath: 'sha256' });
      database.createObjectStore('told', { keyPath: 'id' });
    },
  });
  return opened;
}

export function idOf(prints: readonly string[]): string {
  return prints.join(' ');
}

/** A picture for the shelf; its bytes are asked for only where it does not lie there yet. */
export interface ShelfPicture {
  readonly sha256: string;
  readonly bytes: Uint8Array | (() => Promise<Uint8Array>);
}

/** Puts what was said on the shelf with those of its pictures that are not there yet. */
export async function keepTold(told: Told, pictures: readonly ShelfPicture[]): Promise<void> {
  const database = await shelf();
  for (const { sha256, bytes } of pictures)
    if ((await database.getKey('pictures', sha256)) === undefined)
      await database.put('pictures', { sha256, bytes: typeof bytes === 'function' ? await bytes() : bytes });
  await database.put('told', told);
  await makeRoom(database);
}

/** Everything that was told of photographs that are kept, newest first. */
export async function keptTold(): Promise<readonly Told[]> {
  const all = await (await shelf()).getAll('told');
  return all.toSorted((a, b) => b.touchedAt - a.touchedAt);
}

/** The pictures of a set; null where one is gone. */
export async function picturesOf({
  photographs,
}: Told): Promise<readonly Shelf['pictures']['value'][] | null> {
  const database = await shelf();
  const pictures: Shelf['pictures']['value'][] = [];
  for (const { sha256 } of photographs) {
    const kept = await database.get('pictures', sha256);
    if (kept === undefined) return null;
    pictures.push(kept);
  }
  return pictures;
}

export async function dropTold(id: string): Promise<void> {
  const database = await shelf();
  await database.delete('told', id);
  await makeRoom(database);
}

/** Only the newest sets stay, and only their pictures. */
async function makeRoom(database: IDBPDatabase<Shelf>): Promise<void> {
  const all = (await database.getAll('told')).toSorted((a, b) => b.touchedAt - a.touchedAt);
  for (const { id } of all.slice(KEPT)) await database.delete('told', id);
  const needed = new Set(
    all.slice(0, KEPT).flatMap(({ photographs }) => photographs.map(({ sha256 }) => sha256)),
  );
  for (const sha256 of await database.getAllKeys('pictures'))
    if (!needed.has(sha256)) await database.delete('pictures', sha256);
}
