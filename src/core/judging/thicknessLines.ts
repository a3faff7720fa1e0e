import { point } from '../base/index.ts';
import { containsPoint } from '../curve/index.ts';
import { type HollowPlate, thicknessAt } from '../instrument/index.ts';
import {
  type ContourLine,
  contourLevels,
  contourLines,
  contourOnSurface,
  type HeightField,
  heightField,
  trimContour,
} from '../surface/index.ts';

/** Thickness of a plate over a grid, mm, inside the edge of its gluing face; NaN elsewhere. */
export function thicknessField(plate: HollowPlate, stepMm: number): HeightField {
  return everywhere(plate, stepMm, (x, y) => containsPoint(plate.line, point<'body'>(x, y)));
}

function everywhere(
  { thickness, line, arch }: HollowPlate,
  stepMm: number,
  isKnown: (x: number, y: number) => boolean,
): HeightField {
  const half = Math.ceil(Math.max(...line.vertices.map(({ x }) => x)) / stepMm);
  return heightField(
    {
      fromXMm: -half * stepMm,
      fromYMm: 0,
      stepMm,
      columns: 2 * half + 1,
      rows: Math.ceil(arch.bodyLengthMm / stepMm) + 1,
    },
    (x, y) => (isKnown(x, y) ? thicknessAt(thickness, x, y) : Number.NaN),
  );
}

/** mm between lines: the first that leaves no more than this many of them. */
const INTERVALS = [0.1, 0.2, 0.25, 0.5, 1] as const;
const MOST_LINES = 12;

/** Share of an interval: a line nearer than this to the least or the most would run along all places that have it. */
const CLEAR_SHARE = 0.02;

/** Between which thicknesses a plate lies, and for which of them lines are drawn: whole multiples of one round interval, rising. */
export interface ThicknessLevels {
  readonly leastMm: number;
  readonly mostMm: number;
  readonly intervalMm: number;
  readonly levelsMm: readonly number[];
}

export function thicknessLevels(field: HeightField): ThicknessLevels {
  const known = field.zMm.filter((value) => !Number.isNaN(value));
  const leastMm = known.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const mostMm = known.reduce((a, b) => Math.max(a, b), 0);
  const intervalMm = INTERVALS.find((step) => (mostMm - leastMm) / step <= MOST_LINES) ?? 1;
  const clearMm = CLEAR_SHARE * intervalMm;
  const levelsMm = contourLevels(field, intervalMm).filter(
    (level) => level > leastMm + clearMm && level < mostMm - clearMm,
  );
  return { leastMm, mostMm, intervalMm, levelsMm };
}

/** mm that a line may leave the map's own between two of its places: a pencil's width is coarser. */
const CHORD_ERROR_MM = 0.03;

/** The lines of equal thickness on the map itself, cut at the edge of the gluing face. */
export function thicknessLines(
  plate: HollowPlate,
  levelsMm: readonly number[],
  stepMm: number,
): readonly ContourLine[] {
  // The map goes on beyond the gluing face, so that lines that end there come out whole.
  const field = everywhere(plate, stepMm, () => true);
  const heightAt = (x: number, y: number): number => thicknessAt(plate.thickness, x, y);
  return contourLines(field, levelsMm).flatMap((line) => {
    const made = contourOnSurface(line, { heightAt, reachMm: 2 * stepMm, chordErrorMm: CHORD_ERROR_MM });
    return trimContour(made.line, plate.line);
  });
}
