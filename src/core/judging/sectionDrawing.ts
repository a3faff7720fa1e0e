import { accept, atan, type Checked, distanceBetween, type Point, point, refuse } from '../base/index.ts';
import { type Chain, chainThrough, containsPoint, outlineChain } from '../curve/index.ts';
import type { Drawing, Lettering } from '../drawing/index.ts';
import {
  type EdgeState,
  type HollowPlate,
  type Instrument,
  insideHeight,
  type Plate,
  plateHeight,
} from '../instrument/index.ts';
import { sectionLine } from '../surface/index.ts';

/** A section through a plate, as a drawing and in words. */
export interface PlateSection {
  readonly drawing: Drawing;
  /** Way from the first place where the line meets the plate, and height above the gluing face, mm. */
  readonly profile: readonly Point<'section'>[];
  readonly says: readonly string[];
}

/** mm between two places of the profile; between two heights that are written. */
const STEP_MM = 0.25;
const WRITTEN_EVERY_MM = 10;
const NUMBER_MM = 2.2;
/** mm. A line that meets less of the plate than this shows nothing. */
const SHORTEST_MM = 1;

/**
 * A plate cut over a straight line between two places of it, at true size on its gluing face: its outside, a height written every
 * 10 mm, and where it is finished its inside too, with the wood between both, straight up, under each height.
 * Where the line passes out of the plate and in again the profile has a gap.
 * Fault: `section.off-plate` when it never meets the plate.
 */
export function sectionDrawing(
  instrument: Instrument,
  plate: Plate,
  state: EdgeState,
  from: Point<'body'>,
  to: Point<'body'>,
): Checked<PlateSection> {
  const arch = instrument.plates[plate];
  const outline = outlineChain(instrument.half);
  const profile = sectionLine(
    (x, y) => (containsPoint(outline, point(x, y)) ? plateHeight(arch, x, y, state) : Number.NaN),
    from,
    to,
    STEP_MM,
  );
  const pieces = piecesOf(profile).filter((piece) => lengthOf(piece) >= SHORTEST_MM);
  const [first, last] = [pieces[0]?.[0], pieces.at(-1)?.at(-1)];
  if (first === undefined || last === undefined) return refuse(offPlate(instrument, from, to));
  const highest = profile.reduce((a, b) => (b.y > a.y ? b : a));
  const steepest = steepestOf(pieces);
  const inside = state === 'finished' ? insideOf(instrument.hollows[plate], pieces, from, to) : null;
  const says = [
    `${(last.x - first.x).toFixed(1)} mm of the ${plate}, ${state === 'finished' ? 'edge and channel finished' : 'arched, channel not yet cut'}`,
    `highest ${highest.y.toFixed(2)} mm, ${highest.x.toFixed(0)} mm from the start; steepest inside the edge ${steepest.toFixed(0)}°`,
  ];
  const words = [
    'heights above the gluing face, ways along the line, mm',
    ...(inside
      ? ['in brackets: wood from the inside straight up, thicker on a slope than square to it']
      : []),
    ...says,
  ];
  const line = `${from.x.toFixed(0)},${from.y.toFixed(0)} to ${to.x.toFixed(0)},${to.y.toFixed(0)}`;
  return accept({
    drawing: {
      name: `section-${plate}-${state}`,
      title: `Section of the ${plate}`,
      part: 'arching',
      lines: [
        { meaning: 'score', chain: open([point(first.x, 0), point(last.x, 0)]) },
        ...pieces.map((piece) => ({ meaning: 'cut' as const, chain: standing(piece) })),
        ...ordinates(pieces).map(({ x, y }) => ({
          meaning: 'draw' as const,
          chain: open([point(x, -1), point(x, y)]),
        })),
        ...(inside?.pieces ?? []).map((piece) => ({
          meaning: 'draw' as const,
          chain: open(piece.map(({ x, y }) => point<'drawing'>(x, y))),
        })),
      ],
      lettering: [
        ...ordinates(pieces).flatMap(({ x, y }) => [
          written(y.toFixed(1), x, y + 1.2, 'middle'),
          written(x.toFixed(0), x, -1.6 - NUMBER_MM, 'middle'),
          ...(inside ? [written(`(${(y - inside.heightAt(x)).toFixed(1)})`, x, WOOD_Y_MM, 'middle')] : []),
        ]),
        written(`${plate === 'back' ? 'Back' : 'Top'}: ${line}`, first.x, -16, 'start', 3),
        ...words.map((text, index) => written(text, first.x, -21 - 4.5 * index, 'start', 2.6)),
      ],
      notes: words,
      count: 1,
      routes: ['print'],
      checks: [{ name: 'width', valueMm: last.x - first.x }],
    },
    profile,
    says,
  });
}

/** mm below the gluing face at which the wood under a height is written. */
const WOOD_Y_MM = -4.6 - 2 * NUMBER_MM;

/** The inside over the same places: lines without what lies on the gluing face, and its height so far along. */
function insideOf(
  hollow: HollowPlate,
  pieces: readonly (readonly Point<'section'>[])[],
  from: Point<'body'>,
  to: Point<'body'>,
) {
  const lengthMm = distanceBetween(from, to);
  const heightAt = (alongMm: number): number => {
    const share = alongMm / lengthMm;
    // A back is hollowed as one looks at its outside, with the treble side on the left.
    const side = hollow.arch.plate === 'back' ? -1 : 1;
    return insideHeight(hollow, side * (from.x + share * (to.x - from.x)), from.y + share * (to.y - from.y));
  };
  const hollowed = pieces.flatMap((piece) =>
    piecesOf(piece.map(({ x }) => point<'section'>(x, heightAt(x))).filter(({ y }) => y > 0)),
  );
  return { heightAt, pieces: hollowed.filter((piece) => piece.length > 1) };
}

function open(points: readonly Point<'drawing'>[]): Chain<'drawing'> {
  return chainThrough(points, false);
}

/** The profile and its ends down to the gluing face. */
function standing(piece: readonly Point<'section'>[]): Chain<'drawing'> {
  const [first, last] = [piece[0] as Point<'section'>, piece.at(-1) as Point<'section'>];
  return open([point(first.x, 0), ...piece.map(({ x, y }) => point<'drawing'>(x, y)), point(last.x, 0)]);
}

/** Runs without a gap. */
function piecesOf(profile: readonly Point<'section'>[]): readonly (readonly Point<'section'>[])[] {
  const pieces: Point<'section'>[][] = [];
  for (const place of profile) {
    const last = pieces.at(-1)?.at(-1);
    if (last && place.x - last.x <= 1.5 * STEP_MM) pieces.at(-1)?.push(place);
    else pieces.push([place]);
  }
  return pieces;
}

function lengthOf(piece: readonly Point<'section'>[]): number {
  return (piece.at(-1)?.x ?? 0) - (piece[0]?.x ?? 0);
}

/** Places every 10 mm from the start, as far as they lie on the profile. */
function ordinates(pieces: readonly (readonly Point<'section'>[])[]): readonly Point<'section'>[] {
  return pieces.flatMap((piece) => {
    const [start, end] = [piece[0]?.x ?? 0, piece.at(-1)?.x ?? 0];
    const first = Math.ceil(start / WRITTEN_EVERY_MM);
    const count = Math.floor(end / WRITTEN_EVERY_MM) - first + 1;
    return Array.from({ length: Math.max(0, count) }, (_, index) => {
      const x = (first + index) * WRITTEN_EVERY_MM;
      return piece.reduce((a, b) => (Math.abs(b.x - x) < Math.abs(a.x - x) ? b : a));
    });
  });
}

/** mm at either end of a piece in which the rounding of the edge stands upright. */
const ROUNDING_MM = 2;

function steepestOf(pieces: readonly (readonly Point<'section'>[])[]): number {
  const slopes = pieces.flatMap((piece) => {
    const [start, end] = [piece[0]?.x ?? 0, piece.at(-1)?.x ?? 0];
    return piece.slice(1).flatMap((place, index) => {
      const before = piece[index] as Point<'section'>;
      const inside = before.x > start + ROUNDING_MM && place.x < end - ROUNDING_MM;
      return inside ? [Math.abs((place.y - before.y) / (place.x - before.x))] : [];
    });
  });
  return (atan(slopes.reduce((a, b) => Math.max(a, b), 0)) * 180) / Math.PI;
}

function written(
  text: string,
  x: number,
  y: number,
  anchor: Lettering['anchor'],
  heightMm = NUMBER_MM,
): Lettering {
  return { text, at: point(x, y), heightMm, turnRad: 0, anchor };
}

function offPlate({ plan }: Instrument, from: Point<'body'>, to: Point<'body'>) {
  return {
    code: 'section.off-plate',
    at: '--line',
    found: `a line from ${from.x}, ${from.y} to ${to.x}, ${to.y} that does not meet the plate`,
    need: `a line over a plate from 0 to ${plan.outline.bodyLengthMm.toFixed(0)} mm above the lower end`,
    remedy: 'x counts from the centre line, y from the lower end',
  };
}
