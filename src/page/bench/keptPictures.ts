import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { accept, type Checked, type Picture } from '../../core/index.ts';
import { decodePictureHere } from '../../host/browser/index.ts';

/** A photograph's file. */
export interface PhotographFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A photograph's file, decoded once for a sitting. */
export interface KeptPicture {
  readonly bytes: Uint8Array;
  readonly picture: Picture;
  readonly sha256: string;
}

/** Pixels that are kept beyond the newest photograph, before anything is traced (chosen by us: three bytes each). */
const KEPT_PIXELS = 16_000_000;

let kept: readonly KeptPicture[] = [];
let last: Promise<unknown> = Promise.resolve();

/**
 * The decoded photograph, the very same object as long as its file is the same. One is decoded after the other, so that none is
 * decoded twice and no two need the room for it at once. Faults: those of decoding.
 */
export function pictureOf(file: PhotographFile): Promise<Checked<KeptPicture>> {
  const read = last.then(() => readOrKept(file));
  last = read;
  return read;
}

async function readOrKept({ name, bytes }: PhotographFile): Promise<Checked<KeptPicture>> {
  const known = kept.find((one) => isSame(one.bytes, bytes));
  if (known) return accept(known);
  const picture = await decodePictureHere(bytes, name);
  if (!picture.ok) return picture;
  const fresh = { bytes, picture: picture.value, sha256: bytesToHex(sha256(bytes)) };
  kept = [...kept, fresh];
  return accept(fresh);
}

/** Lets go of all photographs but these. */
export function keepOnly(these: readonly KeptPicture[]): void {
  kept = kept.filter((one) => these.includes(one));
}

/** Lets go of the oldest photographs that are too much to keep, the newest never. */
export function keepFew(): void {
  let pixels = 0;
  const few = kept.toReversed().filter(({ picture }, place) => {
    pixels += picture.widthPx * picture.heightPx;
    return place === 0 || pixels <= KEPT_PIXELS;
  });
  kept = few.toReversed();
}

function isSame(one: Uint8Array, other: Uint8Array): boolean {
  return one.length === other.length && one.every((byte, at) => byte === other[at]);
}
