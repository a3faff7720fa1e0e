import { computed, effect, signal } from '@preact/signals';
import { type Design, type Fault, type ValueName, valuesOfProfile } from '../../core/index.ts';
import { seeingBench, slowBench } from '../bench/bench.ts';
import { design, edit, plate, sitting } from '../store.ts';
import { words } from '../words/words.ts';
import { PROFILES_OF, type ProfileSaid } from './profileSaid.ts';
import { dropProfile, type KeptProfile, keepProfile, profilesOf } from './profileShelf.ts';
import { photographs } from './tracing.ts';

/** Every photograph of an arch or a head that lies beside the design, in the order they came. */
export const profiles = signal<readonly KeptProfile[]>([]);
const openId = signal<string | null>(null);
/** The one that is asked about; null where none is. */
export const profile = computed(() => profiles.value.find(({ id }) => id === openId.value) ?? null);
/** The stop that a photograph is read for; null where none is. */
export const profilingFor = computed(() => profile.value?.stop ?? null);
export const profileTrouble = signal<readonly Fault[]>([]);
export const isReadingProfile = signal(false);

let shownBytes: Uint8Array | undefined;
/** Where the photograph that is asked about can be seen. */
export const profileAddress = signal<string | null>(null);
effect(() => {
  const bytes = profile.value?.photograph?.bytes;
  if (bytes === shownBytes) return;
  shownBytes = bytes;
  const old = profileAddress.peek();
  if (old !== null) URL.revokeObjectURL(old);
  profileAddress.value = bytes ? URL.createObjectURL(new Blob([Uint8Array.from(bytes)])) : null;
});

effect(() => {
  const id = sitting.value;
  profiles.value = [];
  openId.value = null;
  if (id === '') return;
  // A browser that refuses storage keeps them as long as the page is open.
  void profilesOf(id).then(
    (kept) => {
      if (sitting.value === id && profiles.value.length === 0) profiles.value = kept;
    },
    () => undefined,
  );
});

const NOTHING_SAID: ProfileSaid = {
  of: 'cross-arch',
  plate: 'back',
  station: 'waist',
  rightIs: 'unknown',
  lies: 'card',
  leaveOut: false,
  sheetBar: '',
  height: '',
};

/** Begins to ask about a new photograph; what the last one of its kind had in common with it is proposed. */
export function beginProfile(stop: keyof typeof PROFILES_OF): void {
  const last = profiles.value.findLast((one) => one.stop === stop);
  const { sheetBar, height, lies } = last?.said ?? NOTHING_SAID;
  const said = { ...NOTHING_SAID, sheetBar, height, lies, of: PROFILES_OF[stop][0], plate: plate.value };
  const id = `${Date.now()}`.padStart(15, '0');
  const begun = { id, sitting: sitting.value, stop, said, photograph: null, read: null, taken: null };
  profiles.value = [...profiles.value, begun];
  profileTrouble.value = [];
  openId.value = id;
}

export function openProfile(id: string): void {
  profileTrouble.value = [];
  openId.value = id;
}

/** Leaves it in the list as it stands; one that nothing was said of is gone. */
export function leaveProfile(): void {
  const left = profile.value;
  openId.value = null;
  profileTrouble.value = [];
  if (left && !isBegun(left)) profiles.value = profiles.value.filter((one) => one !== left);
}

/** Whether anything was said or chosen. */
export function isBegun({ photograph, said }: KeptProfile): boolean {
  return photograph !== null || said.sheetBar !== '' || said.height !== '';
}

function change(id: string, more: Partial<KeptProfile>): void {
  profiles.value = profiles.value.map((one) => (one.id === id ? { ...one, ...more } : one));
  const changed = profiles.value.find((one) => one.id === id);
  if (changed) void keepProfile(changed, 'photograph' in more).catch(() => undefined);
}

export async function holdProfile(file: File): Promise<void> {
  const to = profile.value;
  if (to === null) return;
  const bytes = new Uint8Array(await file.arrayBuffer());
  profileTrouble.value = [];
  change(to.id, { photograph: { name: ownName(file.name, to), bytes }, read: null });
}

/** Numbers tell by its name which photograph they come from: no two have the same. */
function ownName(name: string, of: KeptProfile): string {
  const taken = new Set(
    profiles.value.flatMap((one) => (one.id === of.id ? [] : (one.photograph?.name ?? []))),
  );
  for (let count = 2, own = name; ; count++) {
    if (!taken.has(own)) return own;
    own = name.replace(/(\.[^.]*)?$/, ` (${count})$1`);
  }
}

/** Something more is said: what was read before is read again when asked. */
export function sayOfProfile(more: Partial<ProfileSaid>): void {
  const to = profile.value;
  if (to) change(to.id, { said: { ...to.said, ...more }, read: null });
}

export async function readProfile(): Promise<void> {
  const asked = profile.value;
  if (!asked?.photograph || isReadingProfile.value) return;
  isReadingProfile.value = true;
  profileTrouble.value = [];
  try {
    const answer = await seeingBench().readProfile(asked.photograph, asked.said);
    if (profile.value !== asked) return;
    if (answer.ok) change(asked.id, { read: answer.value });
    else profileTrouble.value = answer.faults;
  } finally {
    isReadingProfile.value = false;
    if (photographs.value.length === 0) seeingBench.rest();
  }
}

/** The numbers of the design that come from a profile; none where it is not in the drawing. */
export function givenBy({ photograph }: KeptProfile, on: Design | null): readonly ValueName[] {
  return on === null || photograph === null ? [] : valuesOfProfile(on, photograph.name);
}

/** Another profile of the same place, which is in the drawing: only one of the two can be. */
export function inItsPlace(one: KeptProfile): KeptProfile | null {
  return (
    profiles.value.find(
      (other) => other.id !== one.id && isOfSamePlace(other, one) && givenBy(other, design.value).length > 0,
    ) ?? null
  );
}

function isOfSamePlace({ said: one }: KeptProfile, { said: other }: KeptProfile): boolean {
  if (one.of !== other.of) return false;
  if (one.of === 'scroll') return true;
  return one.plate === other.plate && (one.of === 'long-arch' || one.station === other.station);
}

/** What was read goes into the design, in the place of what another photograph told of the same: one step. */
export async function takeProfile(one: KeptProfile): Promise<boolean> {
  const outcome = one.read ?? one.taken;
  if (outcome === null) return false;
  const others = inDrawing().filter((other) => other.id !== one.id && !isOfSamePlace(other, one));
  const isDone = await settle(
    [...others.map(({ taken }) => taken), outcome],
    words().profile.taken[one.said.of],
  );
  if (isDone) change(one.id, { taken: outcome });
  return isDone;
}

/** The numbers that it gave go back to what was proposed: one step. */
export async function leaveOutProfile(one: KeptProfile): Promise<boolean> {
  const others = inDrawing().filter((other) => other.id !== one.id);
  return settle(
    others.map(({ taken }) => taken),
    words().profile.without(one.photograph?.name ?? ''),
  );
}

function inDrawing(): readonly KeptProfile[] {
  return profiles.value.filter((one) => one.taken !== null && givenBy(one, design.value).length > 0);
}

/** The design with these outcomes and nothing of any other photograph in the list. */
async function settle(chosen: readonly KeptProfile['taken'][], says: string): Promise<boolean> {
  const on = design.value;
  if (on === null) return false;
  const listed = profiles.value.flatMap(({ photograph }) => photograph?.name ?? []);
  const answer = await slowBench().takeProfiles(
    on,
    chosen.flatMap((outcome) => outcome?.document ?? []),
    listed,
  );
  if (design.value !== on) return false;
  profileTrouble.value = answer.ok ? [] : answer.faults;
  if (answer.ok) edit(says, answer.value.design);
  return answer.ok;
}

/** Throws a profile away, with the numbers that it gave; how it comes back into the list. */
export async function throwAway(one: KeptProfile): Promise<() => Promise<void>> {
  if (givenBy(one, design.value).length > 0) await leaveOutProfile(one);
  profiles.value = profiles.value.filter(({ id }) => id !== one.id);
  await dropProfile(one.id).catch(() => undefined);
  return async () => {
    profiles.value = [...profiles.value, one].toSorted((a, b) => a.id.localeCompare(b.id));
    await keepProfile(one, true).catch(() => undefined);
  };
}
