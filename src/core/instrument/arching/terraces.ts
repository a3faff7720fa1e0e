import { type Point, point } from '../../base/index.ts';
import { boundsOf, type Chain, chainThrough } from '../../curve/index.ts';
import { type ContourLine, contourLines, contourOnSurface, heightField } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { plateHeight } from './plateHeight.ts';
import type { RoughNumbers } from './roughNumbers.ts';
import { footOn } from './smoothLine.ts';

/** A step of the roughed-out arch: outside its line the wood comes down to its level. */
export interface Terrace {
  /** Above the gluing face. */
  readonly levelMm: number;
  /** From the upper face of the board. */
  readonly depthMm: number;
  /**
   * Treble half, from the centre line at the lower end up to the centre line; the other half is its mirror image. The wood
   * on its left stays.
   */
  readonly half: Chain<'body'>;
}

/** mm. A last step lower than this under the crest is left to the gouge. */
const LEAST_CROWN_MM = 0.4;

/** mm. Lines are drawn so much lower on the arch that straight pieces along them still enclose it. */
const OUTSIDE_MM = 0.05;

/** mm. Straight pieces leave the line by no more than this: on a slope of 45° still within what it is drawn outside. */
const CHORD_ERROR_MM = 0.04;

/** Steps of the grid along the body: 4 mm on a violin. */
const STEPS_ALONG = 90;

/**
 * The terraces of a plate, lowest first: the first level with the flat edge and its allowance, each next a step higher.
 * Nowhere does one reach below the arched outside and the allowance.
 */
export function terraces(arch: PlateArch, rough: RoughNumbers): readonly Terrace[] {
  const crownMm = arch.archHeightMm + rough.allowanceMm;
  const first = arch.numbers.edgeHeightMm + rough.allowanceMm;
  const count = Math.ceil((crownMm - LEAST_CROWN_MM - first) / rough.stepMm);
  const levels = Array.from({ length: Math.max(0, count) }, (_, step) => first + step * rough.stepMm);
  const lines = levelLines(
    arch,
    levels.map((levelMm) => levelMm - rough.allowanceMm - OUTSIDE_MM),
  );
  return levels.map((levelMm, index) => ({
    levelMm,
    depthMm: rough.boardMm - levelMm,
    half: lines[index] ?? { closed: false, vertices: [] },
  }));
}

/** The lines on which the outside inside the channel has some heights, treble half, from centre line to centre line. */
export function levelLines(arch: PlateArch, levelsMm: readonly number[]): readonly Chain<'body'>[] {
  const stepMm = arch.bodyLengthMm / STEPS_ALONG;
  const widthMm = Math.max(...arch.edge.map((member) => boundsOf(member).max.x));
  const heightAt = (x: number, y: number): number => heightInside(arch, x, y);
  const grid = {
    fromXMm: 0,
    fromYMm: 0,
    stepMm,
    columns: Math.ceil(widthMm / stepMm) + 1,
    rows: STEPS_ALONG + 1,
  };
  const found = contourLines(heightField(grid, heightAt), levelsMm);
  return levelsMm.map((levelMm) => {
    const over = found.filter((line) => line.levelMm === levelMm && !line.closed);
    // The line over the crest spans most of the body.
    const longest = over.toSorted((a, b) => b.xyMm.length - a.xyMm.length)[0];
    if (longest === undefined) return { closed: false, vertices: [] };
    const task = { heightAt, reachMm: stepMm, chordErrorMm: CHORD_ERROR_MM };
    return toCentre(contourOnSurface(longest, task).line);
  });
}

/** Straight pieces along a line, its ends brought on to the centre line. */
function toCentre({ xyMm }: ContourLine): Chain<'body'> {
  const count = xyMm.length / 2;
  const points = Array.from({ length: count }, (_, index): Point<'body'> => {
    const atEnd = index === 0 || index === count - 1;
    return point(atEnd ? 0 : (xyMm[2 * index] as number), xyMm[2 * index + 1] as number);
  });
  return chainThrough(points, false);
}

/** The finished outside; beyond the channel as low as the channel, so that the edge's crest is not taken for the arch. */
function heightInside(arch: PlateArch, xMm: number, yMm: number): number {
  const zMm = plateHeight(arch, xMm, yMm, 'finished');
  // Only the arch stands higher than the edge.
  if (zMm > arch.numbers.edgeHeightMm) return zMm;
  return footOn(arch.channel.line, Math.abs(xMm), yMm).distanceMm > 0 ? zMm : arch.channelZMm;
}
