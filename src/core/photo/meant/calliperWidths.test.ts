import { expect, test } from 'vitest';
import { point } from '../../base/index.ts';
import type { EdgeSpot } from '../edge/foundEdge.ts';
import { calliperWidths } from './calliperWidths.ts';

type Spots = readonly EdgeSpot<'body'>[];
type Side = 1 | -1;

const LENGTH_MM = 355;
/** Every bout is one arc of so many mm, 80 mm long. */
const [RADIUS_MM, PLACES] = [90, 81];

interface Stretch {
  readonly section: EdgeSpot<'body'>['section'];
  readonly halfMm: number;
  readonly yMm: number;
  readonly bulges: Side;
}

/** A stretch of one side: `halfMm` from the axis at its middle, `bulges` outwards or inwards; one place may slip outwards. */
function stretch(
  side: Side,
  { section, halfMm, yMm, bulges, slipMm = 0 }: Stretch & { readonly slipMm?: number },
): Spots {
  return Array.from({ length: PLACES }, (_, i) => {
    const alongMm = i - (PLACES - 1) / 2;
    const turn = alongMm / RADIUS_MM;
    const x = halfMm - bulges * RADIUS_MM * (1 - Math.cos(turn)) + (i === 43 ? slipMm : 0);
    return {
      ...point<'body'>(side * x, yMm + RADIUS_MM * Math.sin(turn)),
      section,
      alongMm,
      seen: true,
      sigmaMm: 0.03,
    };
  });
}
const lowerBout = (halfMm = 104): Stretch => ({ section: 'lowerBout', halfMm, yMm: 76, bulges: 1 });
const waist = (halfMm = 55): Stretch => ({ section: 'cBout', halfMm, yMm: 190, bulges: -1 });

const read = (bass: Spots, treble: Spots) =>
  calliperWidths(bass, treble, LENGTH_MM).map(({ name, mm }) => ({ name, mm: Math.round(mm * 20) / 20 }));
const plain = (side: Side): Spots => stretch(side, lowerBout());

test.each([0, 0.5])('callipers do not touch a place that slipped out by %s mm', (slipMm) => {
  expect(read(plain(-1), stretch(1, { ...lowerBout(), slipMm }))).toEqual([{ name: 'lowerBout', mm: 208 }]);
});

test.each([0, -0.5])(
  'a waist is read where it is narrowest, past a place that slipped in by %s mm',
  (slipMm) => {
    const treble = [...plain(1), ...stretch(1, { ...waist(), slipMm })];
    expect(read([...plain(-1), ...stretch(-1, waist(54))], treble)).toEqual([
      { name: 'lowerBout', mm: 208 },
      { name: 'waist', mm: 109 },
    ]);
  },
);

test('what is only guessed, and what belongs to another stretch, is not touched', () => {
  const guessed = stretch(1, lowerBout(106)).map((spot) => ({ ...spot, seen: false }));
  const other = stretch(1, lowerBout(106)).map((spot) => ({ ...spot, section: 'cBout' as const }));
  expect(read(plain(-1), [...plain(1), ...guessed, ...other])).toEqual([{ name: 'lowerBout', mm: 208 }]);
});

test('a width of which a side shows nothing, or only a few places, is not read', () => {
  expect(read(plain(-1), [])).toEqual([]);
  expect(read(plain(-1).slice(36, 43), plain(1))).toEqual([]);
  expect(read(plain(-1).slice(36, 44), plain(1))).not.toEqual([]);
});
