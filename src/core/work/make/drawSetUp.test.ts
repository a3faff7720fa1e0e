import { describe, expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import { boundsOf, type Chain, containsPoint, heightOn, nearestOn, sampleChain } from '../../curve/index.ts';
import { type Design, draftDesign, type Family } from '../../design/index.ts';
import type { Drawing } from '../../drawing/index.ts';
import { plateHeight } from '../../instrument/arching/index.ts';
import { deriveInstrument, type Instrument, insideHeight, SLOT_SHARE } from '../../instrument/index.ts';
import { chosen } from '../../quantity/index.ts';
import { drawSetUp } from './drawSetUp.ts';

function instrumentOf(family: Family, bodyLengthMm: number, changes: Partial<Design> = {}): Instrument {
  const bodyLength = { value: bodyLengthMm, unit: 'mm', origin: chosen('test') } as const;
  const drafted = draftDesign({ family, name: 'sample', values: { bodyLength } });
  const derived = drafted.ok ? deriveInstrument({ ...drafted.value.design, ...changes }) : drafted;
  if (!derived.ok) throw new Error(JSON.stringify(derived.faults));
  return derived.value;
}

const SHOWN = {
  violin: instrumentOf('violin', 355),
  viola: instrumentOf('viola', 390),
  cello: instrumentOf('cello', 755),
};
const left = instrumentOf('violin', 355, { leftHanded: true });

function piece(instrument: Instrument, name: string): Drawing {
  const found = drawSetUp(instrument).find((drawing) => drawing.name === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
}
const chainsOf = ({ lines }: Drawing, wanted: string): readonly Chain<'drawing'>[] =>
  lines.filter(({ meaning }) => meaning === wanted).map(({ chain }) => chain);
const cut = (drawing: Drawing): Chain<'drawing'> => chainsOf(drawing, 'cut')[0] as Chain<'drawing'>;
const window = (drawing: Drawing): Chain<'drawing'> => chainsOf(drawing, 'cut-inside')[0] as Chain<'drawing'>;
const onLine = (chain: Chain<'drawing'>, x: number, y: number): number =>
  nearestOn(chain, point<'drawing'>(x, y)).distanceMm;

describe.each(Object.entries(SHOWN))('the pieces of the %s', (_family, instrument) => {
  const { setUp, plates, hollows, design } = instrument;
  const value = (name: 'stop' | 'barThickness'): number => design.values[name]?.value ?? Number.NaN;
  const bridgeMm = plates.top.bodyLengthMm - value('stop');

  test('the bridge passes through the tops of its slots, and its feet lie on the top', () => {
    const outline = window(piece(instrument, 'bridge'));
    for (const { atBridgeMm, bridgeUpMm, diameterMm } of setUp.places)
      expect(onLine(outline, atBridgeMm, bridgeUpMm + SLOT_SHARE * diameterMm)).toBeLessThan(0.001);
    const crest = plateHeight(plates.top, 0, bridgeMm, 'finished');
    for (let share = 0; share <= 1; share += 0.1)
      for (const side of [-1, 1]) {
        const x = setUp.feetMm / 2 - share * setUp.footLengthMm;
        const top = plateHeight(plates.top, x, bridgeMm, 'finished') - crest;
        expect(onLine(outline, side * x, top)).toBeLessThan(0.006);
      }
    const { min, max } = boundsOf(outline);
    expect(max.x - min.x).toBeCloseTo(setUp.feetMm, 6);
  });

  test('what is left of the bridge between waist and arch is wood enough', () => {
    const outline = window(piece(instrument, 'bridge'));
    const legs = sampleChain(outline, 0.01).filter(
      ({ x, y }) => x > 0 && y > 2 && y < 0.4 * setUp.crownHeightMm,
    );
    const inner = legs.filter(({ x }) => x < setUp.feetMm / 2 - setUp.footLengthMm + 1);
    const outer = legs.filter(({ x }) => x > setUp.feetMm / 2 - setUp.footLengthMm + 1);
    for (const one of inner)
      for (const other of outer)
        expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThan(0.1 * setUp.feetMm);
  });

  test('the slot for its thickness is as wide as the foot below and as the top above', () => {
    const slot = cut(piece(instrument, 'bridge-side'));
    const inSlot = slot.vertices.filter(({ x }) => Math.abs(x) < 20);
    const wide = (y: number): number => {
      const xs = inSlot.filter((vertex) => Math.abs(vertex.y - y) < 0.001).map(({ x }) => x);
      return Math.max(...xs) - Math.min(...xs);
    };
    expect(wide(0)).toBeCloseTo(design.values.bridgeFootThickness?.value ?? 0, 9);
    expect(wide(setUp.crownHeightMm)).toBeCloseTo(design.values.bridgeTopThickness?.value ?? 0, 9);
  });

  test('crown gauge and bridge are one curve', () => {
    const gauge = cut(piece(instrument, 'bridge-crown'));
    for (const { x, y } of sampleChain(setUp.crown, 0.01)) expect(onLine(gauge, x, y)).toBeLessThan(0.001);
  });

  test('the glue face of the bar is the inside of the top, its template as high as the bar', () => {
    const { bar } = hollows.barAndPost;
    const face = cut(piece(instrument, 'bar-glue-face'));
    const height = cut(piece(instrument, 'bar-height'));
    const slant = (bar.to.x - bar.from.x) / (bar.to.y - bar.from.y);
    const fromY = bar.from.y - bar.halfWidthMm;
    for (let along = 3; along < 0.98 * hollows.barAndPost.barLengthMm; along += 17.3) {
      const y = fromY + along / Math.hypot(1, slant);
      const inside = insideHeight(hollows.top, bar.from.x + slant * (y - bar.from.y), y);
      expect(onLine(face, along, inside)).toBeLessThan(0.03);
      expect(onLine(height, along, -inside)).toBeLessThan(0.03);
    }
    const bridgeAlong = (bridgeMm - fromY) * Math.hypot(1, slant);
    const foot = -insideHeight(hollows.top, bar.from.x + slant * (bridgeMm - bar.from.y), bridgeMm);
    expect(onLine(height, bridgeAlong, foot + hollows.barAndPost.barHeightMm)).toBeLessThan(0.03);
  });

  test('the strip beside the bar ends where its inner face does', () => {
    const { bar } = hollows.barAndPost;
    const { min, max } = boundsOf(cut(piece(instrument, 'bar-place')));
    expect(max.x - min.x).toBeCloseTo(hollows.barAndPost.barLengthMm, 6);
    const slant = (bar.to.x - bar.from.x) / (bar.to.y - bar.from.y);
    const lowerX = bar.from.x - slant * bar.halfWidthMm;
    expect(max.y - min.y).toBeCloseTo(Math.abs(lowerX) - bar.halfWidthMm, 6);
  });

  test('the post is cut to the insides of both plates, as long as the register has it', () => {
    const { from, halfWidthMm } = hollows.barAndPost.post;
    const gauge = cut(piece(instrument, 'post-gauge'));
    const box = boundsOf(gauge);
    const quarter = (box.max.x - box.min.x) / 4;
    const ribs = instrument.plan.ribs;
    const high = (x: number, y: number): number =>
      ribs.heightTailMm +
      ((ribs.heightNeckMm - ribs.heightTailMm) * y) / plates.top.bodyLengthMm +
      insideHeight(hollows.top, x, y);
    const low = (x: number, y: number): number => -insideHeight(hollows.back, -x, y);
    const foot = low(from.x, from.y);
    for (const [dx, dy, x] of [
      [0, 0, -quarter],
      [halfWidthMm, 0, -quarter + halfWidthMm],
      [0, halfWidthMm, quarter + halfWidthMm],
      [0, -halfWidthMm, quarter - halfWidthMm],
    ] as const) {
      expect(onLine(gauge, x, high(from.x + dx, from.y + dy) - foot)).toBeLessThan(0.06);
      expect(onLine(gauge, x, low(from.x + dx, from.y + dy) - foot)).toBeLessThan(0.06);
    }
  });

  test('the hole of the place card is the post, seen from the centre line', () => {
    const card = piece(instrument, 'post-place');
    const box = boundsOf(window(card));
    const { from, halfWidthMm } = hollows.barAndPost.post;
    expect((box.min.x + box.max.x) / 2).toBeCloseTo(Math.abs(from.x), 9);
    expect((box.min.y + box.max.y) / 2).toBeCloseTo(from.y - bridgeMm, 9);
    expect(box.max.x - box.min.x).toBeCloseTo(2 * halfWidthMm, 9);
  });

  test('after-length, tailpiece and feelers have the sizes that they are for', () => {
    const wide = (name: string): number => {
      const { min, max } = boundsOf(cut(piece(instrument, name)));
      return max.x - min.x;
    };
    expect(wide('after-length')).toBeCloseTo(setUp.strings.lengthMm / 6, 9);
    expect(wide('tailpiece-rule')).toBeCloseTo(setUp.bridgeToSaddleMm, 9);
    const comb = cut(piece(instrument, 'string-feelers'));
    const box = boundsOf(comb);
    for (const { overEndMm } of setUp.places) {
      const isTongue = [box.min.x, box.max.x].some((x) => {
        const ends = comb.vertices.filter((vertex) => Math.abs(vertex.x - x) < 0.001).map(({ y }) => y);
        return ends.some((a) => ends.some((b) => Math.abs(b - a - overEndMm) < 0.001));
      });
      expect(isTongue, `${overEndMm}`).toBe(true);
    }
  });

  test('the seat of the saddle follows the edge of the body', () => {
    const seat = cut(piece(instrument, 'saddle-seat'));
    const half = boundsOf(seat).max.x;
    for (const side of [-1, 1])
      expect(
        nearestOn(
          instrument.plan.outline.chain,
          point(side * (half - 1), heightOn(lowerOf(seat, side), side * (half - 1))),
        ).distanceMm,
      ).toBeLessThan(0.01);
  });
});

/** The wing of a seat on one side of its notch. */
function lowerOf({ vertices }: Chain<'drawing'>, side: number): Chain<'drawing'> {
  const low = vertices.filter(({ x, y }) => Math.sign(x) === side && y < 5);
  return { closed: false, vertices: low };
}

test('spring lowers both ends of the glue face by itself and leaves the middle', () => {
  const spring = { value: 0.8, unit: 'mm', origin: chosen('test') } as const;
  const sprung = instrumentOf('violin', 355, {
    values: { ...SHOWN.violin.design.values, barSpring: spring },
  });
  const [plain, bent] = [SHOWN.violin, sprung].map((one) => cut(piece(one, 'bar-glue-face')));
  const topAt = (chain: Chain<'drawing'> | undefined, x: number): number =>
    Math.max(...(chain?.vertices ?? []).filter((vertex) => Math.abs(vertex.x - x) < 0.001).map(({ y }) => y));
  const { max } = boundsOf(plain as Chain<'drawing'>);
  expect(topAt(plain, 0) - topAt(bent, 0)).toBeCloseTo(0.8, 2);
  expect(topAt(plain, max.x) - topAt(bent, max.x)).toBeCloseTo(0.8, 2);
});

test('left-handed, bridge, nut and post are mirror images', () => {
  const [right, other] = [SHOWN.violin, left];
  const slot = (instrument: Instrument): readonly number[] =>
    piece(instrument, 'string-spacing')
      .lettering.filter(({ text }) => text.length === 1)
      .map(({ at }) => at.x)
      .slice(0, 4);
  slot(right).forEach((x, index) => expect(slot(other)[index]).toBeCloseTo(-x, 9));
  const bridge = window(piece(right, 'bridge'));
  const mirrored = window(piece(other, 'bridge'));
  for (const { x, y } of sampleChain(bridge, 0.05)) expect(onLine(mirrored, -x, y)).toBeLessThan(0.001);
  const { placed } = { placed: other.hollows.barAndPost.post.from };
  expect(placed.x).toBeLessThan(0);
  expect(containsPoint(other.plan.outline.chain, placed)).toBe(true);
});
