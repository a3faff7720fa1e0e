import { type Point, point } from '../base/index.ts';
import { type Chain, containsPoint, nearestOn } from '../curve/index.ts';
import { type EdgeState, type PlateArch, plateField, plateHeight } from '../instrument/index.ts';
import {
  type ContourLine,
  contourLevels,
  contourLines,
  contourOnSurface,
  type HeightField,
  trimContour,
} from '../surface/index.ts';
import { widenedField } from './widenedField.ts';

/** The contours of a plate inside its outline, lowest first, and the field that they were found on. */
export interface PlateContours {
  readonly lines: readonly ContourLine[];
  readonly field: HeightField;
  /** Places that stand where the grid had them, because the surface has no such height near: none on a sound plate. */
  readonly unsettled: number;
}

/** mm that a contour may leave the surface's own line between two of its places, where it is drawn on paper or on wood. */
const CHORD_ERROR_MM = 0.003;

/**
 * Contours of a plate's outside at whole multiples of an interval above the gluing face, on the surface itself and cut
 * at the outline. Outside the outline the surface is thought to fall on, so that lines close to the edge are whole.
 */
export function plateContours(
  arch: PlateArch,
  outline: Chain<'body'>,
  state: EdgeState,
  intervalMm: number,
  stepMm: number,
  chordErrorMm = CHORD_ERROR_MM,
): PlateContours {
  const { field, found, heightAt } = contoursOnGrid(arch, outline, state, intervalMm, stepMm);
  let unsettled = 0;
  const lines = found.flatMap((line) => {
    const made = contourOnSurface(line, { heightAt, reachMm: 2 * stepMm, chordErrorMm });
    unsettled += made.unsettled;
    return trimContour(made.line, outline);
  });
  return { lines, field, unsettled };
}

/**
 * As {@link plateContours}, straight from the grid: off by what the surface bends within a step of it. For an eye that
 * follows a hand, never for wood.
 */
export function roughContours(
  arch: PlateArch,
  outline: Chain<'body'>,
  state: EdgeState,
  intervalMm: number,
  stepMm: number,
): readonly ContourLine[] {
  const { found } = contoursOnGrid(arch, outline, state, intervalMm, stepMm);
  return found.flatMap((line) => trimContour(line, outline));
}

function contoursOnGrid(
  arch: PlateArch,
  outline: Chain<'body'>,
  state: EdgeState,
  intervalMm: number,
  stepMm: number,
) {
  const field = plateField(arch, state, stepMm);
  const heightAt = (x: number, y: number): number => heightWithBeyond(arch, outline, state, point(x, y));
  // The edge of an arched plate is flat: it has no line of its own height.
  const levels = contourLevels(field, intervalMm).filter(
    (level) => state === 'finished' || level > arch.numbers.edgeHeightMm,
  );
  const lines = contourLines(
    widenedField(field, heightAt),
    levels.map((level) => levelToFind(arch, level)),
  );
  const found = lines.map((line) => ({
    ...line,
    levelMm: levels.find((level) => levelToFind(arch, level) === line.levelMm) ?? line.levelMm,
  }));
  return { field, found, heightAt };
}

/** mm. Nearer than this to the height of the channel or of the edge's crest a line would run along them, in beads. */
const ALONG_MM = 0.02;

/** The level at which the lines of a height are found: clear of channel and crest, which are as high as that all round. */
function levelToFind({ channelZMm, numbers }: PlateArch, levelMm: number): number {
  if (Math.abs(levelMm - channelZMm) < ALONG_MM) return channelZMm - ALONG_MM;
  if (Math.abs(levelMm - numbers.edgeHeightMm) < ALONG_MM) return numbers.edgeHeightMm + ALONG_MM;
  return levelMm;
}

/** The height of a plate; beyond its edge the height of the nearest place on the edge, less the way there. */
function heightWithBeyond(
  arch: PlateArch,
  outline: Chain<'body'>,
  state: EdgeState,
  at: Point<'body'>,
): number {
  if (containsPoint(outline, at)) return plateHeight(arch, at.x, at.y, state);
  const nearest = nearestOn(outline, at);
  return plateHeight(arch, nearest.point.x, nearest.point.y, state) - nearest.distanceMm;
}
