import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { ProfileOutcome } from '../../core/index.ts';
import type { PROFILES_OF, ProfileSaid } from './profileSaid.ts';
import { keptSittings } from './session.ts';

/** A photograph of an arch or a head, everything that was answered about it, and what was read in it. */
export interface KeptProfile {
  readonly id: string;
  /** The sitting that it belongs to. */
  readonly sitting: string;
  readonly stop: keyof typeof PROFILES_OF;
  readonly said: ProfileSaid;
  readonly photograph: { readonly name: string; readonly bytes: Uint8Array } | null;
  /** As it was read with what is said now; null before. */
  readonly read: ProfileOutcome | null;
  /** As it was last put into the drawing. */
  readonly taken: ProfileOutcome | null;
}

interface Shelf extends DBSchema {
  profiles: {
    key: string;
    value: Omit<KeptProfile, 'photograph'> & { readonly photographName: string | null };
    indexes: { sitting: string };
  };
  pictures: { key: string; value: { readonly id: string; readonly bytes: Uint8Array } };
}

let opened: Promise<IDBPDatabase<Shelf>> | null = null;

function shelf(): Promise<IDBPDatabase<Shelf>> {
  opened ??= openDB<Shelf>('garland-profiles', 1, {
    upgrade(database) {
      database.createObjectStore('profiles', { keyPath: 'id' }).createIndex('sitting', 'sitting');
      database.createObjectStore('pictures', { keyPath: 'id' });
    },
  });
  return opened;
}

/** Puts a profile on the shelf; its picture is large, and goes there once. */
export async function keepProfile(profile: KeptProfile, isNewPicture: boolean): Promise<void> {
  const { photograph, ...rest } = profile;
  const written = (await shelf()).transaction(['profiles', 'pictures'], 'readwrite');
  await written.objectStore('profiles').put({ ...rest, photographName: photograph?.name ?? null });
  if (photograph && isNewPicture)
    await written.objectStore('pictures').put({ id: profile.id, bytes: photograph.bytes });
  await written.done;
}

/** The profiles of a sitting in the order they were begun; those of sittings that are gone make room. */
export async function profilesOf(sitting: string): Promise<readonly KeptProfile[]> {
  const database = await shelf();
  const kept = new Set((await keptSittings()).map(({ id }) => id));
  for (const { id, sitting: of } of await database.getAll('profiles'))
    if (of !== sitting && !kept.has(of)) await dropProfile(id);
  const found: KeptProfile[] = [];
  for (const { photographName, ...rest } of await database.getAllFromIndex('profiles', 'sitting', sitting)) {
    const bytes = (await database.get('pictures', rest.id))?.bytes;
    const photograph = photographName === null || !bytes ? null : { name: photographName, bytes };
    found.push({ ...rest, photograph });
  }
  return found.toSorted((a, b) => a.id.localeCompare(b.id));
}

export async function dropProfile(id: string): Promise<void> {
  const written = (await shelf()).transaction(['profiles', 'pictures'], 'readwrite');
  await written.objectStore('profiles').delete(id);
  await written.objectStore('pictures').delete(id);
  await written.done;
}

/** Puts the profiles of a sitting under another as well, so that both go on by themselves. */
export async function copyProfiles(from: string, to: string): Promise<void> {
  for (const profile of await profilesOf(from))
    await keepProfile({ ...profile, id: `${profile.id}+${to}`, sitting: to }, true);
}
