import type { Mesh } from '../solid/index.ts';

/** Bytes of a binary STL's head, and of one triangle. */
const HEAD = 80;
const TRIANGLE = 50;

/**
 * A mesh as binary STL: single precision, which keeps a micrometre up to eight metres. STL names no unit; the numbers are
 * millimetres, and the head says so.
 */
export function writeStl(title: string, { positions, triangles }: Mesh): Uint8Array {
  const count = triangles.length / 3;
  const bytes = new Uint8Array(HEAD + 4 + TRIANGLE * count);
  const words = `${title.replace(/[^\x20-\x7e]/g, '?')}; units: mm`;
  // A head that starts with "solid" would be taken for a text file.
  const head = words.startsWith('solid') ? `Part: ${words}` : words;
  bytes.set(new TextEncoder().encode(head.slice(0, HEAD)));
  const view = new DataView(bytes.buffer);
  view.setUint32(HEAD, count, true);
  for (let triangle = 0; triangle < count; triangle++) {
    const at = HEAD + 4 + TRIANGLE * triangle;
    const corners = [0, 1, 2].map((corner) => 3 * (triangles[3 * triangle + corner] as number));
    const place = (corner: number, axis: number): number =>
      positions[(corners[corner] as number) + axis] as number;
    const side = (corner: number, axis: number): number => place(corner, axis) - place(0, axis);
    const normal = [0, 1, 2].map((axis) => {
      const [next, last] = [(axis + 1) % 3, (axis + 2) % 3];
      return side(1, next) * side(2, last) - side(1, last) * side(2, next);
    });
    const length = Math.hypot(...normal) || 1;
    normal.forEach((part, axis) => {
      view.setFloat32(at + 4 * axis, part / length, true);
    });
    for (let corner = 0; corner < 3; corner++)
      for (let axis = 0; axis < 3; axis++)
        view.setFloat32(at + 12 + 12 * corner + 4 * axis, place(corner, axis), true);
  }
  return bytes;
}
