import { type Point, point, WELD_MM } from '../../base/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { type EdgeState, edgeDistances } from './edgeShape.ts';
import type { GaugePlace } from './gaugePlace.ts';
import { plateHeight } from './plateHeight.ts';

/** mm between two sections through the stuff of a gauge, at most; between them the highest is sought out. */
const SECTION_MM = 1;

/** mm between two points of the profile, at most. */
const STEP_MM = 0.25;

/** Halvings of a step in which a border is found: to a millionth of a millimetre. */
const HALVINGS = 18;

/**
 * The lowest line that a square-edged gauge may have, treble half, from the crest to where its foot begins: at every
 * x the highest place of the outside within the gauge's thickness. Points (x, height above the gluing face).
 *
 * `behindMm` is the thickness, signed along the body, from the lettered face at the place; 0 gives the plain section.
 */
export function gaugeProfile(
  arch: PlateArch,
  place: GaugePlace,
  state: EdgeState,
  behindMm: number,
): readonly Point<'section'>[] {
  const border = footBegins(arch, place, state, behindMm);
  const count = Math.max(1, Math.ceil(border / STEP_MM));
  return Array.from({ length: count + 1 }, (_, index) => {
    const x = (border * index) / count;
    return point<'section'>(x, highestWithin(arch, x, place.yMm, behindMm, state));
  });
}

/** How the stuff of a cross gauge lies on its station line, and what a square edge on the plain section would do. */
export interface GaugeStuff {
  /** Thickness behind the lettered face, which stands on the line: mm, signed along the body. */
  readonly behindMm: number;
  /** By how much a square edge would ride on wood behind the lettered face, at most. */
  readonly rideMm: number;
  /** Where it rides most, from the centre line. */
  readonly rideAtMm: number;
}

/** The stuff laid to that side of the line on which the plate rises less above the section. */
export function gaugeStuff(
  arch: PlateArch,
  place: GaugePlace,
  state: EdgeState,
  thicknessMm: number,
): GaugeStuff {
  const toNeck = squareRide(arch, place, state, thicknessMm);
  const toLowerEnd = squareRide(arch, place, state, -thicknessMm);
  return toNeck.rideMm < toLowerEnd.rideMm ? toNeck : toLowerEnd;
}

/** Places across half a plate where the ride is looked at. */
const RIDE_PLACES = 40;

function squareRide(arch: PlateArch, place: GaugePlace, state: EdgeState, behindMm: number): GaugeStuff {
  const border = footBegins(arch, place, state, 0);
  let most: GaugeStuff = { behindMm, rideMm: 0, rideAtMm: 0 };
  for (let step = 0; step <= RIDE_PLACES; step++) {
    const x = (border * step) / RIDE_PLACES;
    const ride = highestWithin(arch, x, place.yMm, behindMm, state) - plateHeight(arch, x, place.yMm, state);
    if (ride > most.rideMm) most = { behindMm, rideMm: ride, rideAtMm: x };
  }
  return most;
}

/** The highest place of the outside at x between y and y + behind, mm above the gluing face. */
function highestWithin(arch: PlateArch, x: number, yMm: number, behindMm: number, state: EdgeState): number {
  const heightAt = (share: number): number => plateHeight(arch, x, yMm + share * behindMm, state);
  const count = Math.ceil(Math.abs(behindMm) / SECTION_MM);
  if (count === 0) return heightAt(0);
  const heights = Array.from({ length: count + 1 }, (_, index) => heightAt(index / count));
  const highest = heights.indexOf(Math.max(...heights));
  const [before, top, after] = [heights[highest - 1], heights[highest], heights[highest + 1]];
  if (top === undefined) return heightAt(0);
  if (before === undefined || after === undefined) return top;
  // Three neighbours of so smooth a line are a parabola; its vertex lies between the outer two.
  const bend = before - 2 * top + after;
  const aside = bend < 0 ? (before - after) / (2 * bend) : 0;
  return Math.max(top, heightAt((highest + aside) / count));
}

/** On the way out, the place from which a gauge is level with its feet, whatever part of its thickness is asked. */
function footBegins(arch: PlateArch, place: GaugePlace, state: EdgeState, behindMm: number): number {
  const count = Math.ceil(Math.abs(behindMm) / SECTION_MM);
  const sections = Array.from({ length: count + 1 }, (_, index) => {
    const y = place.yMm + (count === 0 ? 0 : (index / count) * behindMm);
    return Math.max(0, Math.min(arch.bodyLengthMm, y));
  });
  return state === 'arched'
    ? Math.max(...sections.map((y) => archEnds(arch, place, y)))
    : Math.min(...sections.map((y) => crestBegins(arch, place, y)));
}

/** Outermost place at which the arch stands higher than the flat edge. */
function archEnds(arch: PlateArch, place: GaugePlace, yMm: number): number {
  const rises = (x: number): boolean => plateHeight(arch, x, yMm, 'arched') > arch.numbers.edgeHeightMm;
  let high = place.edgeHalfWidthMm;
  let low = high;
  while (low > 0 && !rises(low)) {
    high = low;
    low = Math.max(0, low - STEP_MM);
  }
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (rises(middle)) low = middle;
    else high = middle;
  }
  return high;
}

/** mm. A march toward the crest that is this near has arrived. */
const ARRIVED_MM = WELD_MM;

/** The first place on the way out that is as near to the edge as its crest. */
function crestBegins(arch: PlateArch, place: GaugePlace, yMm: number): number {
  let x = 0;
  while (x < place.edgeHalfWidthMm) {
    // No step can pass the crest: the edge is at least this far away in every direction.
    const free = Math.min(...edgeDistances(arch.edge, point(x, yMm))) - arch.numbers.crestInsetMm;
    if (free <= ARRIVED_MM) return x;
    x += free;
  }
  return place.edgeHalfWidthMm;
}
