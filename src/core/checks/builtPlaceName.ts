import { hypot, type Point } from '../base/index.ts';
import { mirrorChain, nearestOn } from '../curve/index.ts';
import type { PlanParts } from '../instrument/index.ts';

/** Made things that can be held against a design. */
export type BuiltPart = 'form' | 'outline' | 'inner' | 'garland';

export const BUILT_PARTS: readonly BuiltPart[] = ['form', 'outline', 'inner', 'garland'];

/** What each is called in a sentence. */
export const BUILT_PART_WORDS: Readonly<Record<BuiltPart, string>> = {
  form: 'form',
  outline: 'outline template',
  inner: 'inner template',
  garland: 'garland',
};

/** mm. How near a recess a place belongs to it; shares of the body length for a corner, and for an end's half width. */
const RECESS_MM = 1.5;
const CORNER_SHARE = 0.036;
const END_SHARE = 0.04;

/** Where a place of the edge lies, in a maker's words: side first, then the stretch. */
export function builtPlaceName(plan: PlanParts, part: BuiltPart, at: Point<'body'>): string {
  const stretch = (part === 'form' && recessName(plan, at)) || stretchName(plan, at);
  if (Math.abs(at.x) < END_SHARE * plan.outline.bodyLengthMm) return stretch;
  return `${at.x > 0 ? 'treble' : 'bass'} side, ${stretch}`;
}

function recessName({ blocks }: PlanParts, at: Point<'body'>): string | null {
  const named = [
    [blocks.lower.recess, 'recess of the lower block'],
    [blocks.lowerCorner.recess, 'recess of the lower corner block'],
    [blocks.upperCorner.recess, 'recess of the upper corner block'],
    [blocks.upper.recess, 'recess of the upper block'],
  ] as const;
  const found = named.find(([recess]) =>
    [recess, mirrorChain(recess)].some((chain) => nearestOn(chain, at).distanceMm < RECESS_MM),
  );
  return found?.[1] ?? null;
}

function stretchName({ outline }: PlanParts, { x, y }: Point<'body'>): string {
  const { bodyLengthMm, lowerCorner, upperCorner } = outline;
  const near = (tip: Point<'body'>) => hypot(Math.abs(x) - tip.x, y - tip.y) < CORNER_SHARE * bodyLengthMm;
  if (near(lowerCorner.boutTip) || near(lowerCorner.waistTip)) return 'lower corner';
  if (near(upperCorner.boutTip) || near(upperCorner.waistTip)) return 'upper corner';
  const isEnd = Math.abs(x) < END_SHARE * bodyLengthMm;
  if (y < lowerCorner.stationMm) return isEnd ? 'lower end' : 'lower bout';
  if (y > upperCorner.stationMm) return isEnd ? 'upper end' : 'upper bout';
  return 'waist';
}
