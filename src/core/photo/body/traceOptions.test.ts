import { describe, expect, test } from 'vitest';
import {
  BOARDS,
  CLOTH,
  type Painted,
  type PaintedBody,
  paint,
  type Scene,
  WHITE,
} from '../../../../test/fixtures/paintedBody.ts';
import { type Checked, type Point, point } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import type { BodyTrace, EdgePoint } from './bodyTrace.ts';
import { traceBody } from './traceBody.ts';

const small: Scene = {
  widthPx: 360,
  heightPx: 450,
  pxPerMm: 1.05,
  middle: [182, 230],
  ground: WHITE,
  shadow: { shift: [4, 3], softPx: 3, strength: 0.4 },
};
const plain = paint(small);

function valueOf<T>(checked: Checked<T>): T {
  if (!checked.ok) throw new Error(checked.faults.map((fault) => `${fault.code} ${fault.found}`).join());
  return checked.value;
}

function codesOf(checked: Checked<unknown>): readonly string[] {
  return checked.ok ? [] : checked.faults.map((fault) => fault.code);
}

/** Root mean square distance of edge points from the nearest true point (they stand 0.2 to 0.5 mm apart), mm. */
function rmsMm(points: readonly EdgePoint[], painted: Painted, pxPerMm: number): number {
  const squares = points.map((one) => squareToEdge(one.point, painted.edge) / pxPerMm ** 2);
  return Math.sqrt(squares.reduce((sum, value) => sum + value, 0) / squares.length);
}

function squareToEdge(place: Point<'photo'>, edge: Painted['edge']): number {
  let least = Number.POSITIVE_INFINITY;
  edge.forEach(([ax, ay], i) => {
    const [bx, by] = edge[(i + 1) % edge.length]!;
    const square = (bx - ax) ** 2 + (by - ay) ** 2 || 1;
    const along = ((place.x - ax) * (bx - ax) + (place.y - ay) * (by - ay)) / square;
    const share = Math.min(1, Math.max(0, along));
    least = Math.min(
      least,
      (place.x - ax - share * (bx - ax)) ** 2 + (place.y - ay - share * (by - ay)) ** 2,
    );
  });
  return least;
}

function seen(trace: BodyTrace): readonly EdgePoint[] {
  return trace.edge.filter((one) => one.state === 'seen');
}

function lengthOf({ pose }: BodyTrace): number {
  return Math.hypot(pose.upperEnd.x - pose.lowerEnd.x, pose.upperEnd.y - pose.lowerEnd.y);
}

function box(left: number, top: number, right: number, bottom: number): readonly Point<'photo'>[] {
  return [point(left, top), point(right, top), point(right, bottom), point(left, bottom)];
}

/** Two pictures of the same height as one. */
function beside(left: Picture, right: Picture): Picture {
  const rgb = new Uint8Array(left.rgb.length + right.rgb.length);
  const [a, b] = [3 * left.widthPx, 3 * right.widthPx];
  for (let y = 0; y < left.heightPx; y++) {
    rgb.set(left.rgb.subarray(y * a, (y + 1) * a), y * (a + b));
    rgb.set(right.rgb.subarray(y * b, (y + 1) * b), y * (a + b) + a);
  }
  return { widthPx: left.widthPx + right.widthPx, heightPx: left.heightPx, rgb };
}

describe('two bodies in one picture, a larger one on the left', () => {
  const { shadow: _, ...unshaded } = small;
  const one = (pxPerMm: number): Picture =>
    paint({ ...unshaded, widthPx: 250, heightPx: 330, pxPerMm, middle: [125, 165] }).picture;
  const picture = beside(one(0.84), one(0.66));
  const middleOf = ({ pose }: BodyTrace): number => (pose.lowerEnd.x + pose.upperEnd.x) / 2;

  test('are asked about when nothing tells which is meant', () => {
    const trace = valueOf(traceBody(picture));
    expect(trace.verdict).toBe('ask');
    expect(trace.findings.map((finding) => finding.code)).toEqual(['trace.several-bodies']);
    expect(trace.bodies.map(({ number, where }) => `${number} ${where}`)).toEqual(['1 left', '2 right']);
    const own = trace.bodies.find(({ number }) => number === trace.body);
    expect(Math.abs(own!.middle.x - middleOf(trace))).toBeLessThan(2);
  });

  test('are traced by their number without a question, and a number that none has is refused', () => {
    const second = valueOf(traceBody(picture, { body: 2 }));
    expect(second.findings).toEqual([]);
    expect(Math.abs(middleOf(second) - 375)).toBeLessThan(2);
    expect(codesOf(traceBody(picture, { body: 3 }))).toEqual(['trace.no-such-body']);
  });

  test.each([
    ['a place inside the left one', { inside: [point<'photo'>(125, 165)] }, 125],
    ['a place outside the right one', { outside: [point<'photo'>(375, 165)] }, 125],
  ])('%s decides without a question', (_what, hints, middle) => {
    const trace = valueOf(traceBody(picture, { hints }));
    expect(trace.verdict).toBe('accept');
    expect(Math.abs(middleOf(trace) - middle)).toBeLessThan(2);
  });

  test.each([
    [0.84, 125],
    [0.66, 375],
  ])('a known length, told a hundredth too long, finds the body with %s px a 355th', (pxPerMm, middle) => {
    const length = 355 * pxPerMm;
    const trace = valueOf(traceBody(picture, { lengthPx: { value: 1.01 * length, sigma: 0.02 * length } }));
    expect(trace.verdict).toBe('accept');
    expect(Math.abs(middleOf(trace) - middle)).toBeLessThan(2);
    expect(Math.abs(lengthOf(trace) / length - 1)).toBeLessThan(0.01);
  });
});

test('a trace tells how far it has come, from nothing to all, never backwards', () => {
  const shares: number[] = [];
  valueOf(traceBody(plain.picture, { progress: (_, share) => shares.push(share) }));
  expect([shares[0], shares.at(-1)]).toEqual([0, 1]);
  expect([...shares].sort((a, b) => a - b)).toEqual(shares);
});

test.each([
  [370, 0],
  [370, -4],
  [0, 4],
  [370, Number.NaN],
  [Number.POSITIVE_INFINITY, 4],
])('a known length of %s px with a spread of %s px is refused in words', (value, sigma) => {
  expect(codesOf(traceBody(plain.picture, { lengthPx: { value, sigma } }))).toEqual(['trace.known-length']);
});

test('of the back, the side at the right of the picture is the bass side, and a stretch left out by hand is not believed', () => {
  const trace = valueOf(
    traceBody(plain.picture, { face: 'back', hints: { excluded: [box(40, 280, 130, 380)] } }),
  );
  const rightmost = trace.edge.reduce((most, one) => (one.point.x > most.point.x ? one : most));
  expect(rightmost.side).toBe('bass');
  const leftOut = trace.edge.filter(({ point: { x, y } }) => x > 44 && x < 126 && y > 284 && y < 376);
  expect(leftOut.length).toBeGreaterThan(60);
  expect(new Set(leftOut.map((one) => `${one.side} ${one.state}`))).toEqual(new Set(['treble bridged']));
  expect(trace.unseen.map((one) => one.name)).toContain(
    'lower bout, treble side: outside the picture or left out',
  );
  expect(rmsMm(seen(trace), plain, small.pxPerMm)).toBeLessThan(0.2);
});

test('a checker band round the body hides it from the search, and no longer when it is masked', () => {
  const [left, top, right, bottom] = [71, 39, 293, 420];
  const checker = (x: number, y: number): readonly [number, number, number] => {
    if (x > left && x < right && y > top && y < bottom) return [0.65, 0.52, 0.37];
    return (Math.floor(x / 14) + Math.floor(y / 14)) % 2 ? [0.9, 0.9, 0.9] : [0.01, 0.01, 0.01];
  };
  const painted = paint({ ...small, ground: checker });
  const masked = [
    box(-1, -1, small.widthPx, top + 1),
    box(-1, bottom - 1, small.widthPx, small.heightPx),
    box(-1, -1, left + 1, small.heightPx),
    box(right - 1, -1, small.widthPx, small.heightPx),
  ];
  expect(codesOf(traceBody(painted.picture))).toEqual(['trace.no-body']);
  const trace = valueOf(traceBody(painted.picture, { masked }));
  expect(trace.verdict).toBe('accept');
  expect(seen(trace).length).toBeGreaterThan(1000);
  expect(rmsMm(seen(trace), painted, small.pxPerMm)).toBeLessThan(0.3);
});

/** Widths over those painted; the aims are the usual proportions of the family on a body of 355 mm. */
const FAMILIES: readonly (readonly [string, PaintedBody, readonly [number, number, number]])[] = [
  ['viola', { widths: { lower: 1.012, waist: 1.054, upper: 1.034 } }, [0.581, 0.323, 0.475]],
  ['cello', { widths: { lower: 1.014, waist: 1, upper: 0.985 }, corners: 5 }, [0.583, 0.306, 0.453]],
];

test.each(FAMILIES)(
  'a body of the proportions of a %s is followed without a question',
  (_family, body, aims) => {
    const painted = paint({ ...small, body });
    const trace = valueOf(traceBody(painted.picture));
    expect(trace.verdict).toBe('accept');
    expect(seen(trace).length).toBeGreaterThan(1000);
    expect(rmsMm(seen(trace), painted, small.pxPerMm)).toBeLessThan(0.3);
    expect(rmsMm(trace.edge, painted, small.pxPerMm)).toBeLessThan(0.3);
    const { lowerBout, waist, upperBout } = trace.ratios;
    [lowerBout, waist, upperBout].forEach((ratio, i) => {
      expect(Math.abs(ratio / aims[i]! - 1)).toBeLessThan(0.012);
    });
  },
);

/** On both the likeliest outline is hardly seen and also leaves the picture. */
test.each([
  ['cloth', CLOTH, 240, 180],
  ['board', BOARDS, 200, 280],
])(
  'a bare %s bench is refused as no body, not as one that runs out of the picture',
  (_what, ground, widthPx, heightPx) => {
    const bench = paint({ widthPx, heightPx, pxPerMm: 1, middle: [0, 0], ground, body: 'none' });
    expect(codesOf(traceBody(bench.picture))).toEqual(['trace.no-body']);
  },
);
