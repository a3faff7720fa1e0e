import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import {
  type Keeper,
  markerFinder,
  newestKeeper,
  type Photograph,
  point,
  type TraceRequest,
  trace,
} from '../../src/core/index.ts';
import { readPicture } from '../../src/host/index.ts';

const ROOT = resolve(import.meta.dirname, '../..');

const read = await readPicture(join(ROOT, 'demo', 'photographs', 'fiddle-top.jpg'));
if (!read.ok) throw new Error(JSON.stringify(read.faults));
const picture = read.value;

const finder = markerFinder();
const at = (x: number, y: number) => point<'photo'>(x * picture.widthPx, y * picture.heightPx);

function asked(hints: Photograph['hints'], more: Partial<TraceRequest> = {}): TraceRequest {
  const photograph = { name: 'fiddle', picture, ...(hints && { hints }) };
  return { photographs: [photograph], face: 'top', known: [], edgeHeightMm: 36.5, ...more };
}

/** Everything that was found, without the pictures. */
function found(request: TraceRequest, keeper?: Keeper) {
  const traced = trace(request, finder, undefined, keeper);
  if (!traced.ok) return traced.faults;
  return JSON.stringify(traced.value, (key, value) => (key === 'picture' ? undefined : value));
}

const onEdge = [at(0.5, 0.27)];
const round = [at(0.25, 0.33), at(0.3, 0.33), at(0.3, 0.4)];
const sitting: readonly (readonly [string, TraceRequest])[] = [
  ['nothing marked', asked(undefined)],
  ['a place on the edge', asked({ onEdge })],
  ['a place beside the body', asked({ onEdge, outside: [at(0.07, 0.1)] })],
  ['a stretch that is not to be believed', asked({ excluded: [round] })],
  ['all taken back', asked(undefined)],
  [
    'a ruling',
    asked(undefined, { meant: { stretches: [{ side: 'bass', from: 100, to: 140, take: 'other' }] } }),
  ],
  ['another height', asked(undefined, { edgeHeightMm: 35 })],
  ['a known width', asked(undefined, { known: [{ name: 'lowerBout', mm: 206 }] })],
  ['no scale but a length', asked(undefined, { scan: { mmPerPixel: 0.2, plusMinus: 0.01 } })],
];

test('a sitting that keeps what was not touched finds what every trace by itself finds', {
  timeout: 240_000,
}, () => {
  const keeper = newestKeeper();
  for (const [said, request] of sitting) expect(found(request, keeper), said).toEqual(found(request));
});

test('a mark asks neither for the sheet nor for the square-on picture again', { timeout: 120_000 }, () => {
  const made: string[] = [];
  const kept = newestKeeper();
  const keeper: Keeper = (of, name, on, make) =>
    kept(of, name, on, () => {
      made.push(name);
      return make();
    });
  found(asked(undefined), keeper);
  expect(made).toEqual(
    expect.arrayContaining(['sheets', 'square on', 'levels', 'poses', 'body', 'near plate']),
  );
  made.length = 0;
  found(asked({ onEdge }), keeper);
  expect(made).toContain('body');
  for (const name of ['sheets', 'square on', 'levels', 'poses']) expect(made).not.toContain(name);
  made.length = 0;
  found(asked({ onEdge }), keeper);
  expect(made).toEqual([]);
});
