/**
 * The outside of whole plates against itself, across every line where it is put together of two formulas.
 *
 * Source: common practice (an arch has no crease inside the ridge of its edge, is the same on both sides, and is level in the channel); what a crease is,
 * from the definition of a one-sided slope: differences over 0.02, 0.01 and 0.005 mm on each side, carried to no distance.
 * Claim: for the default violin, viola and cello, back and top, and a top drawn to measured sections, the slope is continuous to 0.01 degrees across the channel, the fade beside it where the
 * channel's arcs meet and its end, the body width, the knots of the correction, the stations, the joints of the long arch, the centre line and anywhere else inside
 * the ridge of the edge (reached: 0.003); both sides are the same to 1e-9 mm;
 * the channel lies at its height to 1e-6 mm and is level to 0.01 degrees from both sides.
 */
import { expect, test } from 'vitest';
import { point } from '../src/core/base/index.ts';
import { containsPoint, nearestOn } from '../src/core/curve/index.ts';
import { footOn } from '../src/core/instrument/arching/smoothLine.ts';
import {
  deriveInstrument,
  plateField,
  plateHeight,
  plateShape,
  plateSlopes,
} from '../src/core/instrument/index.ts';
import { bodyHalfWidth } from '../src/core/surface/index.ts';
import { defaultInstrument, FAMILIES, PLATES } from './made/defaultInstruments.ts';
import { alongChannel, breakDeg, type Seam, seamsOf, slopeFromDeg } from './made/surfaceSeams.ts';

const WITHIN_DEG = 0.01;
const ALIKE_MM = 1e-9;
const BESIDE_MM = 0.02;
/** Fewer places on a line would say nothing of it. */
const FEWEST = 40;

const cases = [
  ...FAMILIES.flatMap((family) => {
    const { plates, plan } = defaultInstrument(family);
    return PLATES.map((plate) => ({
      name: `${family} ${plate}`,
      arch: plates[plate],
      outline: plan.outline.chain,
    }));
  }),
  drawnToSections(),
];

/** A top drawn to five sections and a long arch of another shape, each as an original has them. */
function drawnToSections() {
  const { plates, plan, design } = defaultInstrument('violin');
  const { stations, channel, loft, channelZMm } = plates.top;
  const across = stations.flatMap(({ yMm }) => evenly(-105, 105).map((x) => [x, yMm] as const));
  const heights = [...across, ...evenly(8, 347).map((y) => [0, y] as const)].flatMap(([x, y]) => {
    if (footOn(channel.line, Math.abs(x), y).distanceMm < 0.5) return [];
    const u = Math.min(1, Math.abs(x) / bodyHalfWidth(loft, y));
    const more = 0.05 * Math.sin(2 * Math.PI * u) * (1 - u) + 0.03 * Math.cos(y / 40);
    const z = plateHeight(plates.top, x, y, 'finished');
    return [[x, y, z + (z - channelZMm) * more] as const];
  });
  const drawn = deriveInstrument({ ...design, measuredHeights: { top: { heights, plusMinus: 0.02 } } });
  if (!drawn.ok) throw new Error('no plate is drawn to sections');
  const { top } = drawn.value.plates;
  expect(top.loft.measured?.sections).toHaveLength(stations.length);
  return { name: 'violin top drawn to sections', arch: top, outline: plan.outline.chain };
}

function evenly(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.floor((to - from) / 3) + 1 }, (_, index) => from + 3 * index);
}

/** Largest break on each line, degrees, of its places on the plate and clear of the ridge. */
function breaksOf({ arch, outline }: (typeof cases)[number]): ReadonlyMap<string, number> {
  const clearMm = arch.numbers.crestInsetMm + 0.1;
  const isInside = ({ x, y }: Seam): boolean => {
    const at = point<'body'>(x, y);
    return containsPoint(outline, at) && nearestOn(outline, at).distanceMm > clearMm;
  };
  const lines = Object.entries(seamsOf(arch)).map(([name, seams]): [string, number] => {
    const breaks = seams.filter(isInside).map((seam) => breakDeg(arch, seam));
    expect(breaks.length, name).toBeGreaterThan(FEWEST);
    return [name, Math.max(...breaks)];
  });
  return new Map(lines);
}

test.each(cases)('$name: nowhere inside the ridge is the slope broken', (which) => {
  for (const [name, most] of breaksOf(which)) expect(most, name).toBeLessThan(WITHIN_DEG);
});

test.each(cases)('$name: the channel lies at its height, level from both sides', ({ arch }) => {
  for (const seam of alongChannel(arch, 0)) {
    expect(Math.abs(plateHeight(arch, seam.x, seam.y, 'finished') - arch.channelZMm)).toBeLessThan(1e-6);
    const outward = { ...seam, toX: -seam.toX, toY: -seam.toY };
    for (const side of [seam, outward]) expect(Math.abs(slopeFromDeg(arch, side))).toBeLessThan(WITHIN_DEG);
  }
});

test.each(cases)('$name: both sides are the same', ({ arch }) => {
  const field = plateField(arch, 'finished', arch.bodyLengthMm / 150);
  let worst = 0;
  for (let row = 0; row < field.rows; row++)
    for (let column = 0; column < field.columns; column++) {
      const z = field.zMm[row * field.columns + column] as number;
      if (Number.isNaN(z)) continue;
      const mirrored = field.zMm[(row + 1) * field.columns - 1 - column] as number;
      const x = field.fromXMm + column * field.stepMm;
      const y = field.fromYMm + row * field.stepMm;
      const [right, left] = [plateSlopes(arch, x, y), plateSlopes(arch, -x, y)];
      const [bent, bentLeft] = [plateShape(arch, x, y, 'finished'), plateShape(arch, -x, y, 'finished')];
      for (const off of [
        z - mirrored,
        z - right.zMm,
        z - left.zMm,
        right.slopeX + left.slopeX,
        right.slopeY - left.slopeY,
        // Second differences over 0.02 mm: what rounding leaves of them is taken out.
        BESIDE_MM ** 2 * (bent.bendXX - bentLeft.bendXX),
        BESIDE_MM ** 2 * (bent.bendXY + bentLeft.bendXY),
      ])
        worst = Math.max(worst, Math.abs(off));
    }
  expect(worst).toBeLessThan(ALIKE_MM);
});
