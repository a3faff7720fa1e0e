import type { Point } from '../base/index.ts';
import { type Chain, containsPoint, nearestOn, outlineChain, sampleChain } from '../curve/index.ts';
import { type EdgeState, type Instrument, type Plate, plateField } from '../instrument/index.ts';
import { compareFields, type DifferencePlace, type FieldDifference } from '../surface/index.ts';
import { placeWords } from './placeWords.ts';

/** One plate of two designs, lower end on lower end and centre line on centre line. */
export interface DesignDifference {
  readonly heights: FieldDifference;
  /** Where the other outline lies farthest outside (positive) and inside the first, treble half; null where nowhere by so much. */
  readonly outline: { readonly out: OutlinePlace | null; readonly in: OutlinePlace | null };
  /** What differs most, a sentence each. */
  readonly says: readonly string[];
}

export interface OutlinePlace {
  readonly at: Point<'body'>;
  readonly offMm: number;
}

/** mm between the places compared, and between two places that are told apart (on an instrument of the usual length). */
const STEP_MM = 1;
const APART_MM = 40;
const PLACES_TOLD = 3;
/** mm. Smaller differences of height and outline are not told. */
const LEAST_MM = 0.05;
/** mm. The edge's rounding is steep: beside it heights differ as soon as outlines do. Outlines are compared by themselves. */
const EDGE_MM = 5;

/** The other design less the first: heights of one plate, and outlines. */
export function compareDesigns(
  first: Instrument,
  other: Instrument,
  plate: Plate,
  state: EdgeState,
): DesignDifference {
  const [one, two] = [outlineChain(first.half), outlineChain(other.half)];
  const inner = plateField(first.plates[plate], state, STEP_MM);
  const heights = compareFields(offEdge(inner, one), plateField(other.plates[plate], state, STEP_MM), {
    most: PLACES_TOLD,
    apartMm: APART_MM,
    leastMm: LEAST_MM,
  });
  const outline = outlineDifference(one, two);
  return { heights, outline, says: sentences(first, plate, heights, outline) };
}

function offEdge(field: ReturnType<typeof plateField>, outline: Chain<'body'>): typeof field {
  const { columns, fromXMm, fromYMm, stepMm } = field;
  const edge = sampleChain(outline, EDGE_CHORD_MM);
  const near = new Set<number>();
  const reach = Math.ceil(EDGE_MM / stepMm);
  for (const { x, y } of edge) {
    const column = Math.round((x - fromXMm) / stepMm);
    const row = Math.round((y - fromYMm) / stepMm);
    for (let down = -reach; down <= reach; down++)
      for (let across = -reach; across <= reach; across++)
        if (Math.hypot(down, across) * stepMm <= EDGE_MM && column + across >= 0 && column + across < columns)
          near.add((row + down) * columns + column + across);
  }
  return { ...field, zMm: field.zMm.map((z, index) => (near.has(index) ? Number.NaN : z)) };
}

/** mm. Fine enough that edge samples follow each other more closely than they reach. */
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
          `The other outline lies ${Math.abs(place.offMm).toFixed(2)} mm ${place.offMm > 0 ? 'outside' : 'inside'} at most: ${placeWords(first, place.at.x, place.at.y)}.`,
        ],
  );
  return [...heights, ...(edges.length > 0 ? edges : [`Outlines: alike to ${LEAST_MM} mm.`])];
}

function heightSentence(first: Instrument, { xMm, yMm, differenceMm }: DifferencePlace): string {
  const way = differenceMm > 0 ? 'higher' : 'lower';
  return `The other is ${Math.abs(differenceMm).toFixed(2)} mm ${way}: ${placeWords(first, xMm, yMm)}.`;
}
