import { expect, test } from 'vitest';
import { instrumentOf } from '../../../../test/fixtures/heads.ts';
import { nearestOn } from '../../curve/index.ts';
import { widthAlong } from './headWidths.ts';
import type { VoluteArc } from './volute.ts';
import { wrapEdge } from './wrapBand.ts';

/** Simpson's rule over a curve given as a place for each parameter, its speed from central differences. */
function lengthByQuadrature(at: (t: number) => readonly [number, number], from: number, to: number): number {
  const count = 400;
  const step = (to - from) / count;
  const small = step / 50;
  const speed = (t: number): number => {
    const [a, b] = [at(t - small), at(t + small)];
    return Math.hypot(b[0] - a[0], b[1] - a[1]) / (2 * small);
  };
  let sum = 0;
  for (let index = 0; index <= count; index++) {
    const weight = index === 0 || index === count ? 1 : index % 2 === 1 ? 4 : 2;
    sum += weight * speed(from + index * step);
  }
  return (sum * step) / 3;
}

test.each([
  ['violin', 355],
  ['viola', 406],
  ['cello', 755],
] as const)(
  'the wrap of a %s is as long as the line it is bent round, by quadrature over its angles',
  (family, length) => {
    const { profile, widths } = instrumentOf(family, length).head;
    const { sizes, volute } = profile;
    const turn = (arc: VoluteArc, from: number, to: number): number =>
      lengthByQuadrature(
        (rad) => [arc.centre.x + arc.radiusMm * Math.cos(rad), arc.centre.y + arc.radiusMm * Math.sin(rad)],
        from,
        to,
      );
    const [outer, top, front] = volute.arcs as readonly [VoluteArc, VoluteArc, VoluteArc];
    const quarter = Math.PI / 2;
    const spiral =
      turn(outer, sizes.leaveRad, quarter) +
      turn(top, quarter, 2 * quarter) +
      turn(front, 2 * quarter, 3 * quarter);
    // Back, straight and hollow from their own numbers, not from the chain.
    const back = profile.backRadiusMm * (sizes.leaveRad + sizes.leanRad);
    const leave = [
      outer.centre.x + outer.radiusMm * Math.cos(sizes.leaveRad),
      outer.centre.y + outer.radiusMm * Math.sin(sizes.leaveRad),
    ] as const;
    const straightFrom = [
      leave[0] + profile.backRadiusMm * (Math.cos(sizes.leanRad) - Math.cos(sizes.leaveRad)),
      leave[1] - profile.backRadiusMm * (Math.sin(sizes.leanRad) + Math.sin(sizes.leaveRad)),
    ] as const;
    const reach = [profile.chinTip.x - straightFrom[0], profile.chinTip.y - straightFrom[1]] as const;
    const along = -reach[0] * Math.sin(sizes.leanRad) - reach[1] * Math.cos(sizes.leanRad);
    const across = -reach[1] * Math.sin(sizes.leanRad) + reach[0] * Math.cos(sizes.leanRad);
    const straight = along - Math.sqrt(sizes.hollowRadiusMm ** 2 - (across - sizes.hollowRadiusMm) ** 2);
    const hollow = lengthByQuadrature(
      (rad) => [sizes.hollowRadiusMm * Math.cos(rad), sizes.hollowRadiusMm * Math.sin(rad)],
      0,
      Math.acos(1 - across / sizes.hollowRadiusMm),
    );
    expect(widths.bottomMm).toBeCloseTo(spiral + back + straight + hollow, 5);
  },
);

test('the edge of the wrap keeps to the widths within a hundredth of a millimetre', () => {
  const { widths } = instrumentOf('violin', 355).head;
  const edge = wrapEdge(widths);
  expect(edge.vertices.length).toBeLessThan(40);
  for (let along = 0; along <= widths.bottomMm; along += 0.37)
    expect(nearestOn(edge, { x: along, y: widthAlong(widths, along) / 2 }).distanceMm).toBeLessThan(0.011);
});
