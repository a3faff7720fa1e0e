/**
 * Source: Angus Johnson, Clipper2, polygon clipping and offsetting (program, 2023), through its TypeScript port.
 * Claimed: the edge of our form, its clamp holes and the inner outline agree with an independent polygon program.
 * The outline goes in as a polygon with chord error 0.0002 mm and 4 decimals, so lengths agree to 0.001 mm; areas to
 * the perimeter times that error.
 */
import { Clipper, EndType, FillRule, JoinType } from 'clipper2-ts';
import { expect, test } from 'vitest';
import {
  areaOf,
  type Chain,
  circleChain,
  lengthOf,
  nearestOn,
  sampleChain,
} from '../src/core/curve/index.ts';
import { planParts } from '../src/core/instrument/index.ts';
import { FAMILIES, sampleDesign, sampleHalf } from '../test/laws/partsSamples.ts';

const CHORD_ERROR_MM = 0.0002;
const UNITS_PER_MM = 10_000;

type Path = { x: number; y: number }[];

function polygon(chain: Chain<'body'>): Path {
  return sampleChain(chain, CHORD_ERROR_MM).map(({ x, y }) => ({
    x: Math.round(x * UNITS_PER_MM),
    y: Math.round(y * UNITS_PER_MM),
  }));
}

function areaMm2(paths: readonly Path[]): number {
  return paths.reduce((sum, path) => sum + Clipper.area(path), 0) / UNITS_PER_MM ** 2;
}

function partsOf(family: (typeof FAMILIES)[number]) {
  const parts = planParts(sampleDesign(family), sampleHalf(family));
  if (!parts.ok) throw new Error(JSON.stringify(parts.faults));
  return parts.value;
}

test.each(FAMILIES)(
  "away from the corners the inner outline of a %s is the polygon program's inset of the edge",
  (family) => {
    const { outline, ribs } = partsOf(family);
    const inset = Clipper.inflatePaths(
      [polygon(outline.chain)],
      -ribs.inner.insetMm * UNITS_PER_MM,
      JoinType.Miter,
      EndType.Polygon,
    ) as Path[];
    const clearMm = 6 * outline.lowerCorner.endWidthMm;
    const { lowerCorner, upperCorner } = outline;
    const tips = [lowerCorner.boutTip, upperCorner.boutTip].flatMap(({ x, y }) => [
      { x, y },
      { x: -x, y },
    ]);
    const clear = inset
      .flat()
      .map(({ x, y }) => ({ x: x / UNITS_PER_MM, y: y / UNITS_PER_MM }))
      .filter((point) => tips.every((tip) => Math.hypot(tip.x - point.x, tip.y - point.y) > clearMm));
    expect(clear.length).toBeGreaterThan(100);
    const worst = Math.max(...clear.map((point) => nearestOn(ribs.inner.chain, point).distanceMm));
    expect(worst).toBeLessThan(0.001);
  },
);

test.each(FAMILIES)('the wood of the form of a %s has the area the polygon program finds', (family) => {
  const { form } = partsOf(family);
  const holes = [...form.clampHoles, ...form.pins].map(({ centre, radiusMm }) =>
    circleChain(centre, radiusMm),
  );
  const wood = Clipper.difference([polygon(form.outline)], holes.map(polygon), FillRule.NonZero) as Path[];
  const ours = areaOf(form.outline) - holes.reduce((sum, hole) => sum + areaOf(hole), 0);
  const roundMm = lengthOf(form.outline) + holes.reduce((sum, hole) => sum + lengthOf(hole), 0);
  expect(Math.abs(areaMm2(wood) - ours)).toBeLessThan(roundMm * 0.001);
});

test.each(FAMILIES)('clamp holes of a %s enlarged by their wall stay in the form', (family) => {
  const { form } = partsOf(family);
  const wallMm = (sampleDesign(family).values.clampHoleWall?.value ?? 0) - 0.001;
  const enlarged = form.clampHoles.map(({ centre, radiusMm }) =>
    polygon(circleChain(centre, radiusMm + wallMm)),
  );
  const outside = Clipper.difference(enlarged, [polygon(form.outline)], FillRule.NonZero) as Path[];
  expect(Math.abs(areaMm2(outside))).toBeLessThan(0.001);
});

test.each(FAMILIES)('blocks and form of a %s overlap nowhere', (family) => {
  const { form, blocks } = partsOf(family);
  const common = Clipper.intersect(
    blocks.parts.map((part) => polygon(part.outline)),
    [polygon(form.outline)],
    FillRule.NonZero,
  ) as Path[];
  expect(Math.abs(areaMm2(common))).toBeLessThan(0.05);
});
