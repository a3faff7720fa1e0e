import { type Point, point } from '../base/index.ts';
import {
  type Chain,
  containsPoint,
  nearestOn,
  outlineChain,
  sampleChain,
  spansContain,
} from '../curve/index.ts';
import {
  type EdgeState,
  type HollowPlate,
  type Instrument,
  type Plate,
  placeWords,
  plateField,
  thicknessAt,
} from '../instrument/index.ts';
import {
  compareFields,
  type DifferencePlace,
  type FieldDifference,
  type HeightField,
} from '../surface/index.ts';
import { channelArea, insideArea } from './channelArea.ts';
import { LETTERED_FOR_MM } from './contourPlan.ts';
import { differingNumbers } from './differingNumbers.ts';

/** One plate of two designs, lower end on lower end and centre line on centre line. */
export interface DesignDifference {
  readonly heights: FieldDifference;
  /** Where the other outline lies farthest outside (positive) and inside the first, treble half; null where nowhere by so much. */
  readonly outline: { readonly out: OutlinePlace | null; readonly in: OutlinePlace | null };
  /** Where the plates differ most in thickness, where both are hollow; null where nowhere by so much. */
  readonly thickness: DifferencePlace | null;
  /** What differs most, a sentence each. */
  readonly says: readonly string[];
  /** The numbers of both designs that differ, a sentence each. */
  readonly numbers: readonly string[];
}

export interface OutlinePlace {
  readonly at: Point<'body'>;
  readonly offMm: number;
}

/** mm between the places compared, and between two places that are told apart, on an instrument of the usual length. */
const STEP_MM = 2;
const APART_MM = 60;
const PLACES_TOLD = 3;
/** mm. Smaller differences of height and outline are not told. */
const LEAST_MM = 0.05;
/** The other design less the first: heights of one plate inside the first's channel, and outlines. */
export function compareDesigns(
  first: Instrument,
  other: Instrument,
  plate: Plate,
  state: EdgeState,
): DesignDifference {
  const [one, two] = [outlineChain(first.half), outlineChain(other.half)];
  const arch = first.plates[plate];
  const size = arch.bodyLengthMm / LETTERED_FOR_MM;
  const inner = insideArea(plateField(arch, state, STEP_MM * size), channelArea(arch));
  const heights = compareFields(inner, plateField(other.plates[plate], state, STEP_MM * size), {
    most: PLACES_TOLD,
    apartMm: APART_MM * size,
    leastMm: LEAST_MM,
  });
  const outline = outlineDifference(one, two);
  const thickness = thicknessDifference(first.hollows[plate], other.hollows[plate], inner, size);
  return {
    heights,
    outline,
    thickness,
    says: sentences(first, plate, heights, thickness, outline),
    numbers: differingNumbers(first, other),
  };
}

/** Where the maps of both plates differ most, over the places of a field that lie inside linings and blocks of both. */
function thicknessDifference(
  one: HollowPlate,
  two: HollowPlate,
  places: HeightField,
  size: number,
): DifferencePlace | null {
  const { columns, fromXMm, fromYMm, stepMm } = places;
  const fieldOf = ({ thickness, lineSpans }: HollowPlate): HeightField => ({
    ...places,
    zMm: places.zMm.map((z, index) => {
      const [x, y] = [fromXMm + (index % columns) * stepMm, fromYMm + Math.floor(index / columns) * stepMm];
      const isHollow = !Number.isNaN(z) && spansContain(lineSpans, point(x, y));
      return isHollow ? thicknessAt(thickness, x, y) : Number.NaN;
    }),
  });
  const choice = { most: 1, apartMm: APART_MM * size, leastMm: LEAST_MM };
  return compareFields(fieldOf(one), fieldOf(two), choice).worst[0] ?? null;
}

/** mm that stretches between the compared places of an outline leave it. */
const EDGE_CHORD_MM = 0.01;

function outlineDifference(one: Chain<'body'>, two: Chain<'body'>): DesignDifference['outline'] {
  let out: OutlinePlace | null = null;
  let inside: OutlinePlace | null = null;
  for (const at of sampleChain(one, EDGE_CHORD_MM)) {
    if (at.x < 0) continue;
    const far = nearestOn(two, at).distanceMm;
    const offMm = containsPoint(two, at) ? far : -far;
    if (offMm > (out?.offMm ?? LEAST_MM)) out = { at, offMm };
    if (offMm < (inside?.offMm ?? -LEAST_MM)) inside = { at, offMm };
  }
  return { out, in: inside };
}

function sentences(
  first: Instrument,
  plate: Plate,
  { worst, rmsMm }: FieldDifference,
  thickness: DifferencePlace | null,
  outline: DesignDifference['outline'],
): readonly string[] {
  const heights =
    worst.length === 0
      ? [`Heights of the ${plate}: alike to ${LEAST_MM} mm everywhere.`]
      : [
          `Heights of the ${plate}: ${rmsMm.toFixed(2)} mm apart on average (rms).`,
          ...worst.map((place) => heightSentence(first, place)),
        ];
  const edges = [outline.out, outline.in].flatMap((place) =>
    place === null
      ? []
      : [
          `The other outline lies ${Math.abs(place.offMm).toFixed(2)} mm ${place.offMm > 0 ? 'outside' : 'inside'} at most: ${placeWords(first.plan.outline, place.at.x, place.at.y)}.`,
        ],
  );
  const thick =
    thickness === null
      ? `Thickness of the ${plate}: alike to ${LEAST_MM} mm everywhere.`
      : `The other is ${Math.abs(thickness.differenceMm).toFixed(2)} mm ${thickness.differenceMm > 0 ? 'thicker' : 'thinner'} at most: ${placeWords(first.plan.outline, thickness.xMm, thickness.yMm)}.`;
  return [...heights, thick, ...(edges.length > 0 ? edges : [`Outlines: alike to ${LEAST_MM} mm.`])];
}

function heightSentence(first: Instrument, { xMm, yMm, differenceMm }: DifferencePlace): string {
  const way = differenceMm > 0 ? 'higher' : 'lower';
  return `The other is ${Math.abs(differenceMm).toFixed(2)} mm ${way}: ${placeWords(first.plan.outline, xMm, yMm)}.`;
}
