import { afterEach, expect, test } from 'vitest';
import { letGo } from './letGo.ts';

const buffers = ArrayBuffer.prototype as { transfer?: unknown };
const own = buffers.transfer;

afterEach(() => {
  if (own === undefined) delete buffers.transfer;
  else buffers.transfer = own;
});

test('where the language has a way, buffers that are let go of have no bytes any more', () => {
  const gone = new WeakSet<ArrayBuffer>();
  buffers.transfer = function (this: ArrayBuffer) {
    // As the language has it: what is gone cannot be moved again.
    if (gone.has(this)) throw new TypeError('gone already');
    gone.add(this);
    return structuredClone(this, { transfer: [this] });
  };
  const [plane, part] = [new Float32Array(1000), new Uint8Array(new ArrayBuffer(64), 8, 4)];
  letGo(plane, part);
  expect([plane.byteLength, plane.buffer.byteLength]).toEqual([0, 0]);
  expect([part.byteLength, part.buffer.byteLength]).toEqual([0, 0]);
  expect(plane[0]).toBeUndefined();
  // What is gone already, or shares a buffer with what is, is no trouble.
  letGo(plane, new Float32Array(0));
  const shared = new Uint8Array(8);
  expect(() => letGo(shared, shared.subarray(2))).not.toThrow();
});

test('where it has none, they are left to the collector', () => {
  delete buffers.transfer;
  const plane = new Float32Array(1000).fill(3);
  letGo(plane);
  expect(plane[999]).toBe(3);
});
