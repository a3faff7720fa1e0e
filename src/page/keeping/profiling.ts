import { signal } from '@preact/signals';
import type { Fault, ProfileOutcome } from '../../core/index.ts';
import { seeingBench, slowBench } from '../bench/bench.ts';
import type { PhotographFile } from '../bench/seeingWork.ts';
import { design, edit, plate } from '../store.ts';
import { words } from '../words/words.ts';
import { PROFILES_OF, type ProfileSaid } from './profileSaid.ts';

/** The stop that a photograph is read for; null where none is. */
export const profilingFor = signal<keyof typeof PROFILES_OF | null>(null);
export const profileSaid = signal<ProfileSaid>({
  of: 'cross-arch',
  plate: 'back',
  station: 'waist',
  rightIs: 'unknown',
  lies: 'card',
  leaveOut: false,
  sheetBar: '',
  height: '',
});
export const profilePhotograph = signal<(PhotographFile & { readonly address: string }) | null>(null);
export const profileRead = signal<ProfileOutcome | null>(null);
export const profileTrouble = signal<readonly Fault[]>([]);
export const isReadingProfile = signal(false);

export function beginProfile(stop: keyof typeof PROFILES_OF): void {
  leaveProfile();
  profileSaid.value = { ...profileSaid.value, of: PROFILES_OF[stop][0], plate: plate.value };
  profilingFor.value = stop;
}

export function leaveProfile(): void {
  if (profilePhotograph.value) URL.revokeObjectURL(profilePhotograph.value.address);
  profilePhotograph.value = null;
  profileRead.value = null;
  profileTrouble.value = [];
  profilingFor.value = null;
}

export async function holdProfile(file: File): Promise<void> {
  if (profilePhotograph.value) URL.revokeObjectURL(profilePhotograph.value.address);
  const bytes = new Uint8Array(await file.arrayBuffer());
  profilePhotograph.value = { name: file.name, bytes, address: URL.createObjectURL(file) };
  profileRead.value = null;
  profileTrouble.value = [];
}

/** Something more is said: what was read before is read again when asked. */
export function sayOfProfile(more: Partial<ProfileSaid>): void {
  profileSaid.value = { ...profileSaid.value, ...more };
  profileRead.value = null;
}

export async function readProfile(): Promise<void> {
  const held = profilePhotograph.value;
  if (held === null || isReadingProfile.value) return;
  isReadingProfile.value = true;
  profileTrouble.value = [];
  try {
    const answer = await seeingBench().readProfile({ name: held.name, bytes: held.bytes }, profileSaid.value);
    if (profilePhotograph.value !== held) return;
    if (answer.ok) profileRead.value = answer.value;
    else profileTrouble.value = answer.faults;
  } finally {
    isReadingProfile.value = false;
  }
}

/** What was read goes into the design: one step. */
export async function takeReadProfile(): Promise<void> {
  const [on, read] = [design.value, profileRead.value];
  if (on === null || read === null) return;
  const taken = await slowBench.takeProfile(on, read.document);
  if (design.value !== on) return;
  if (!taken.ok) {
    profileTrouble.value = taken.faults;
    return;
  }
  edit(words().profile.taken[profileSaid.value.of], taken.value.design);
  leaveProfile();
}
