import { join, resolve } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { markerFinder, newestKeeper, type TraceRequest, trace } from '../../src/core/index.ts';
import { decodePicture } from '../../src/host/index.ts';

const ROOT = resolve(import.meta.dirname, '../..');
/** Buffers of this size and more are counted: smaller ones are thousands, and collected as they go. */
const COUNTED_BYTES = 200_000;

const small = await sharp(join(ROOT, 'demo', 'photographs', 'fiddle-top.jpg'))
  .rotate()
  .resize(1500)
  .png()
  .toBuffer();
/** What is kept of the picture's four sizes in Lab, with what is learned of their colours, however large the photograph is. */
const FOUR_SIZES_BYTES = 33e6;
/** The same with gradients of the largest, while the edge is followed. */
const MOST_BYTES = 67.5e6;
/** Rooms of single fits. */
const LEFT_BY_A_MARK_BYTES = 1.1e6;

const read = await decodePicture(small, 'fiddle.png');
if (!read.ok) throw new Error(JSON.stringify(read.faults));
const picture = read.value;
const pixels = picture.widthPx * picture.heightPx;
const request: TraceRequest = {
  photographs: [{ name: 'fiddle', picture }],
  face: 'top',
  known: [],
  edgeHeightMm: 36.5,
};

const ARRAYS = [
  'Uint8Array',
  'Int8Array',
  'Uint16Array',
  'Int32Array',
  'Uint32Array',
  'Float32Array',
  'Float64Array',
];

/**
 * What `work` has not let go of, and the most at any moment, in bytes: by counting what it makes, collected or not. Buffers can be
 * let go of meanwhile, also where the language has no way to yet.
 */
function counted<Made>(work: () => Made): {
  readonly made: Made;
  readonly heldBytes: number;
  readonly mostBytes: number;
} {
  const globals = globalThis as unknown as Record<
    string,
    { new (...words: unknown[]): ArrayBufferView; prototype: object }
  >;
  const plain = ARRAYS.map((name) => [name, globals[name]] as const);
  const buffers = ArrayBuffer.prototype as { transfer?: (this: ArrayBuffer, bytes: number) => unknown };
  const transfer = buffers.transfer;
  buffers.transfer ??= function () {
    return structuredClone(this, { transfer: [this] });
  };
  let all: ArrayBufferLike[] = [];
  let mostBytes = 0;
  const held = () => {
    all = all.filter(({ byteLength }) => byteLength > 0);
    return all.reduce((sum, { byteLength }) => sum + byteLength, 0);
  };
  for (const [name, Plain] of plain)
    globals[name] = class extends Plain {
      constructor(...[of, from, count]: unknown[]) {
        super(of, from, count);
        if (this.byteLength < COUNTED_BYTES || of instanceof ArrayBuffer) return;
        all.push(this.buffer);
        mostBytes = Math.max(mostBytes, held());
      }
    };
  try {
    return { made: work(), heldBytes: held(), mostBytes };
  } finally {
    for (const [name, Plain] of plain) globals[name] = Plain;
    if (transfer === undefined) delete buffers.transfer;
  }
}

const told = (traced: ReturnType<typeof trace>) =>
  JSON.stringify(traced, (key, value) => (key === 'picture' ? undefined : value));

test('a trace lets go of everything large but what a mark needs again, and looks at nothing that it let go of', {
  timeout: 240_000,
}, () => {
  const meant = told(trace(request, markerFinder()));
  const keeper = newestKeeper();
  const first = counted(() => trace(request, markerFinder(), undefined, keeper));
  expect(told(first.made)).toBe(meant);
  if (!first.made.ok) throw new Error('not traced');
  const squareOn = first.made.value.seen.rectified?.picture.rgb.length ?? 0;
  expect(squareOn / pixels).toBeGreaterThan(1.5);
  expect(first.heldBytes - squareOn).toBeGreaterThan(0.95 * FOUR_SIZES_BYTES);
  expect(first.heldBytes - squareOn).toBeLessThan(FOUR_SIZES_BYTES);
  expect(first.mostBytes - squareOn).toBeLessThan(MOST_BYTES);
  const hints = { onEdge: [{ x: 0.5 * picture.widthPx, y: 0.27 * picture.heightPx } as never] };
  const marked = { ...request, photographs: [{ name: 'fiddle', picture, hints }] } as TraceRequest;
  const again = counted(() => trace(marked, markerFinder(), undefined, keeper));
  expect(told(again.made)).toBe(told(trace(marked, markerFinder())));
  expect(again.heldBytes).toBeLessThan(LEFT_BY_A_MARK_BYTES);
});
