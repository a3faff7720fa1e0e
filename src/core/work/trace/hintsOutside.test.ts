import { expect, test } from 'vitest';
import type { TraceHints } from '../../photo/index.ts';
import { hintsOutsideFaults } from './hintsOutside.ts';

/** A picture of 300 × 400 px with these marks on it. */
const marked = (hints?: TraceHints) => ({
  name: 'fiddle.jpg',
  picture: { widthPx: 300, heightPx: 400, rgb: new Uint8Array(0) },
  ...(hints && { hints }),
});
const at = (x: number, y: number) => ({ x, y });

test('marks inside the picture, to its last pixel, and none at all are no trouble', () => {
  const corners = [at(-0.5, -0.5), at(299.5, 399.5)];
  expect(hintsOutsideFaults([marked(), marked({ inside: corners, onEdge: corners, outside: [] })])).toEqual(
    [],
  );
});

test('a line or polygon that reaches beyond the margin, or all round the picture, is no trouble', () => {
  const round = [at(-50, -50), at(400, -50), at(400, 500), at(-50, 500)];
  const out = [at(280, 200), at(340, 200)];
  expect(hintsOutsideFaults([marked({ excluded: [round], insideStrokes: [out] })])).toEqual([]);
});

test.each<[string, TraceHints]>([
  ['inside', { inside: [at(150, 200), at(300, 200)] }],
  ['onEdge', { onEdge: [at(150, 200), at(150, -1)] }],
  ['outside', { outside: [at(150, 200), at(150, 400)] }],
  ['outsideStrokes', { inside: [at(150, 200)], outsideStrokes: [[at(-9, 20), at(-2, 300)]] }],
  ['excluded', { onEdge: [at(150, 200)], excluded: [[at(310, 10), at(350, 10), at(330, 60)]] }],
])('a mark beside the picture is refused: %s', (kind, hints) => {
  const [fault, ...more] = hintsOutsideFaults([marked(), marked(hints)]);
  expect(more).toEqual([]);
  expect(fault).toMatchObject({ code: 'hints.outside-picture', at: 'fiddle.jpg' });
  expect(fault.found).toMatch(new RegExp(`^1 of 2 marks beside the picture, the first \\(${kind}\\) at `));
});
