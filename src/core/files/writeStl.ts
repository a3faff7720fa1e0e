import { hypot } from '../base/index.ts';
import type { Mesh } from '../solid/index.ts';

/** Bytes of a binary STL's head, and of one triangle. */
const HEAD = 80;
const TRIANGLE = 50;

type Nine = [number, number, number, number, number, number, number, number, number];

/**
 * A mesh as binary STL: single precision, which keeps a micrometre up to eight metres. STL names no unit; the numbers are
 * millimetres, and the head says so.
 */
export function writeStl(title: string, { positions, triangles }: Mesh): Uint8Array {
  const count = triangles.length / 3;
  const bytes = new Uint8Array(HEAD + 4 + TRIANGLE * count);
  const words = `${plainLetters(title)}; units: mm`;
  // A head that starts with "solid" would be taken for a text file.
  const head = words.startsWith('solid') ? `Part: ${words}` : words;
  bytes.set(new TextEncoder().encode(head.slice(0, HEAD)));
  const view = new DataView(bytes.buffer);
  view.setUint32(HEAD, count, true);
  // Three numbers a corner.
  const corners: Nine = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (let triangle = 0; triangle < count; triangle++) {
    const at = HEAD + 4 + TRIANGLE * triangle;
    for (let corner = 0; corner < 3; corner++) {
      const from = 3 * (triangles[3 * triangle + corner] as number);
      for (let axis = 0; axis < 3; axis++) corners[3 * corner + axis] = positions[from + axis] as number;
    }
    const [ax, ay, az, bx, by, bz, cx, cy, cz] = corners;
    const normalX = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
    const normalY = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
    const normalZ = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    const length = hypot(normalX, normalY, normalZ) || 1;
    view.setFloat32(at, normalX / length, true);
    view.setFloat32(at + 4, normalY / length, true);
    view.setFloat32(at + 8, normalZ / length, true);
    for (let number = 0; number < 9; number++)
      view.setFloat32(at + 12 + 4 * number, corners[number] as number, true);
  }
  return bytes;
}

/** How letters beyond ASCII are written where a format knows none: as German does, else without their marks. */
const AS_LETTERS: Readonly<Record<string, string>> = {
  ä: 'ae',
  ö: 'oe',
  ü: 'ue',
  Ä: 'Ae',
  Ö: 'Oe',
  Ü: 'Ue',
  ß: 'ss',
};

function plainLetters(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[äöüÄÖÜß]/g, (letter) => AS_LETTERS[letter] ?? letter)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\x20-\x7e]/g, '?');
}
