import { atan, cos, hypot } from '../base/index.ts';
import { type Chain, lengthOf, reverseChain, sampleChain } from '../curve/index.ts';
import { insideWidth, outsideWidth } from '../instrument/index.ts';
import type { Drawing } from './drawing.ts';
import { type HeadPlan, headPiece, headScale, withName } from './headPiece.ts';
import { mm, straightChain, textBlock } from './neckPiece.ts';

/** mm. How closely the straight pieces of its edges follow the widths. */
const CHORD_MM = 0.005;
/** mm. What a laser can burn and an eye can read; a name is cut short before letters of this height shrink below it. */
const LEAST_MM = 1.25;
const LEAST_WHOLE_MM = 1.7;

/**
 * The front of the pegbox laid flat: its width from nut to throat with the opening cut out. Drawing frame: x along the front
 * edge from the nut, y across.
 */
export function headFrontDrawing({ head, plan }: HeadPlan): Drawing {
  const { pegbox, profile } = head;
  const scale = headScale(head);
  const front = flat(reverseChain(profile.front));
  const opening = flat(pegbox.opening);
  const opensAtMm = alongTo(front, pegbox.opensFromMm);
  const [beforeMm, halfNutMm] = [BEFORE_NUT_MM * scale, outsideWidth(pegbox, 0) / 2];
  const body = band([
    [-beforeMm, halfNutMm],
    ...withShoulders(front, pegbox.sizes.shoulderMm).map(({ alongMm, fromNutMm }): [number, number] => [
      alongMm,
      outsideWidth(pegbox, fromNutMm) / 2,
    ]),
  ]);
  const hole = band(
    opening.map(({ alongMm, fromNutMm }) => [opensAtMm + alongMm, insideWidth(pegbox, fromNutMm, 0) / 2]),
  );
  const lengthMm = front.at(-1)?.alongMm ?? 0;
  const wallMm = pegbox.sizes.wallThroatMm;
  const heightMm = Math.max(LEAST_MM, Math.min(2, 0.42 * wallMm));
  const y = -insideWidth(pegbox, 0, 0) / 2 - (wallMm - heightMm) / 2;
  const written = textBlock(
    [
      withName(plan.name, Math.max(heightMm, LEAST_WHOLE_MM), lengthMm * 0.8, {
        before: 'PEGBOX FRONT · ',
        after: ' · line: nut',
      }),
    ],
    { x: 3 * scale, y: 0 },
    lengthMm * 0.8,
    { scale: heightMm / TITLE_MM },
  ).map((line) => ({
    ...line,
    at: { x: line.at.x, y: y - heightMm },
    turnRad: leanOf(head),
  }));
  return headPiece('head-front', 'Pegbox, front', body, {
    windows: [{ ...hole, vertices: clockwise(hole) }],
    scored: [
      straightChain(false, [
        [0, -halfNutMm],
        [0, halfNutMm],
      ]),
    ],
    lettering: written,
    notes: [
      `Of thin card, laid on the sawn front edge of the pegbox its scored line where the nut ends, the short piece beyond it on the neck, its middle on the centre line: ${mm(pegbox.sizes.widthNutMm)} wide at the nut, ${mm(pegbox.sizes.widthThroatMm)} at the throat, walls ${mm(pegbox.sizes.wallNutMm)} and ${mm(pegbox.sizes.wallThroatMm)}.${shoulderWords(pegbox)} Draw round it and round the opening. The opening starts ${mm(pegbox.opensFromMm)} from the nut and ends ${mm(pegbox.sizes.webMm)} of wood before the throat.`,
    ],
  });
}

/** mm on a violin. Card beyond the nut line, so that no thin strip is left before the opening. */
const BEFORE_NUT_MM = 5;

/** Steps round a shoulder, from the neck to the side of the pegbox. */
const SHOULDER_STEPS = 24;

/** The same places with those of the shoulders, close where they turn most. */
function withShoulders(front: readonly FlatPlace[], shoulderMm: number): readonly FlatPlace[] {
  if (!(shoulderMm > 0)) return front;
  const turned = Array.from({ length: SHOULDER_STEPS + 1 }, (_, step) => {
    const fromNutMm = shoulderMm * (1 - cos((step * Math.PI) / 2 / SHOULDER_STEPS));
    return { fromNutMm, alongMm: alongTo(front, fromNutMm) };
  });
  return [...turned, ...front.filter(({ fromNutMm }) => fromNutMm > shoulderMm)];
}

function shoulderWords({ sizes }: HeadPlan['head']['pegbox']): string {
  if (!(sizes.shoulderMm > 0)) return '';
  return ` Its shoulders round it out from the neck, ${mm(sizes.neckWidthMm)} wide at the nut, over the first ${mm(sizes.shoulderMm)}: saw them straight and cut them round with a knife when the neck has its width.`;
}

/** mm. Height of the first line of a text block. */
const TITLE_MM = 3.4;

interface FlatPlace {
  readonly alongMm: number;
  readonly fromNutMm: number;
}

/** Places along a line of the front edge: how far along it, and how far from the nut, straight. */
function flat(line: Chain<'head'>): readonly FlatPlace[] {
  const points = sampleChain(line, CHORD_MM);
  const whole = lengthOf(line);
  let alongMm = 0;
  const places = points.map(({ x, y }, index) => {
    const before = points[index - 1];
    if (before) alongMm += hypot(x - before.x, y - before.y);
    return { alongMm, fromNutMm: hypot(x, y) };
  });
  // Chords are a little short of the arcs.
  return places.map((place) => ({ ...place, alongMm: (place.alongMm * whole) / alongMm }));
}

function alongTo(places: readonly FlatPlace[], fromNutMm: number): number {
  const after = Math.max(
    1,
    places.findIndex((place) => place.fromNutMm >= fromNutMm),
  );
  const [a, b] = [places[after - 1], places[after]];
  if (!a || !b) return 0;
  return a.alongMm + ((b.alongMm - a.alongMm) * (fromNutMm - a.fromNutMm)) / (b.fromNutMm - a.fromNutMm);
}

/** A band of these half widths, anticlockwise. */
function band(edge: readonly (readonly [x: number, half: number])[]): Chain<'drawing'> {
  return straightChain(true, [
    ...edge.map(([x, half]): [number, number] => [x, -half]),
    ...edge.toReversed().map(([x, half]): [number, number] => [x, half]),
  ]);
}

function clockwise({ vertices }: Chain<'drawing'>): Chain<'drawing'>['vertices'] {
  return vertices.toReversed();
}

/** The lettering on the lower wall runs as the wall does. */
function leanOf({ pegbox }: HeadPlan['head']): number {
  const { widthNutMm, widthThroatMm } = pegbox.sizes;
  return atan((widthNutMm - widthThroatMm) / 2 / pegbox.lengthMm);
}
