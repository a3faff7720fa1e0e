import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { accept, type Checked, type Picture } from '../../core/index.ts';
import { decodePictureHere, letGoOfBuffer } from '../../host/browser/index.ts';

/** A photograph in hand: its file lies with the browser, outside of the page's own room, and is read where it is needed. */
export interface PhotographFile {
  readonly name: string;
  readonly file: Blob;
  /** No two files have the same. */
  readonly address: string;
}

/** A photograph, decoded once for a sitting. */
export interface KeptPicture {
  readonly address: string;
  readonly picture: Picture;
  readonly sha256: string;
}

/** Pixels that are kept beyond the newest photograph, before anything is traced (chosen by us: three bytes each). */
const KEPT_PIXELS = 16_000_000;

let kept: readonly KeptPicture[] = [];
let last: Promise<unknown> = Promise.resolve();

/**
 * The decoded photograph, the very same object as long as it is the same file. One is decoded after the other, so that none is
 * decoded twice and no two need the room for it at once. Faults: those of decoding.
 */
export function pictureOf(file: PhotographFile): Promise<Checked<KeptPicture>> {
  const read = last.then(() => readOrKept(file));
  last = read.catch(() => undefined);
  return read;
}

async function readOrKept({ name, file, address }: PhotographFile): Promise<Checked<KeptPicture>> {
  const known = kept.find((one) => one.address === address);
  if (known) return accept(known);
  const buffer = await file.arrayBuffer();
  const bytes = new Uint8Array(buffer);
  const picture = await decodePictureHere(bytes, name);
  const print = picture.ok ? bytesToHex(sha256(bytes)) : '';
  letGoOfBuffer(buffer);
  if (!picture.ok) return picture;
  const fresh = { address, picture: picture.value, sha256: print };
  kept = [...kept, fresh];
  return accept(fresh);
}

/** What tells a photograph from every other: the SHA-256 of its file. */
export async function fingerprintOf({ file, address }: PhotographFile): Promise<string> {
  const known = kept.find((one) => one.address === address);
  return known?.sha256 ?? bytesToHex(sha256(new Uint8Array(await file.arrayBuffer())));
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
