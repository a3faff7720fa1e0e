import { atan2, cos, type Point, point, sin, tan } from '../../base/index.ts';
import { type Chain, intersections, nearestOnSpans, type Span, spansOf } from '../../curve/index.ts';
import { insideWidth, outsideWidth, type Pegbox } from './pegbox.ts';

/** What the pegs are set by, from the nut to the throat; mm. */
export interface PegSizes {
  readonly fromNutMm: readonly number[];
  /** At the outside of the wall on the side of the peg's head. */
  readonly diameterMm: number;
  /** Length over which a peg gains 1 mm. */
  readonly taper: number;
}

/** A peg hole. */
export interface Peg {
  /** 1 nearest to the nut. */
  readonly number: number;
  readonly centre: Point<'head'>;
  readonly fromNutMm: number;
  /** How far it was moved from midway between front and floor, toward the back; for the strings' sake. */
  readonly movedMm: number;
  /** Of the hole, at the outside of the wall with the peg's head and at that of the other. */
  readonly largeMm: number;
  readonly smallMm: number;
  /** Wood from the hole to the front edge, and room from it to the floor. */
  readonly frontCoverMm: number;
  readonly floorCoverMm: number;
  /** Room from it to the nearer end of the inside. */
  readonly endRoomMm: number;
  /** Width of the inside at the hole. */
  readonly insideMm: number;
}

/** Halvings that leave nothing of the arc between front and floor. */
const HALVINGS = 48;

/** The lines that peg holes keep away from, made ready to be asked many times. */
export interface PegRoom {
  readonly box: Pegbox;
  readonly front: readonly Span<'head'>[];
  readonly floor: readonly Span<'head'>[];
  readonly ends: readonly Span<'head'>[];
}

/** A pegbox made ready for {@link pegSeats} and {@link pegAt}. */
export function pegRoom(box: Pegbox): PegRoom {
  return {
    box,
    front: spansOf(box.opening),
    floor: spansOf(box.floor),
    ends: box.ends.flatMap((end) => spansOf(end)),
  };
}

/** Where a peg hole is as far from the front edge as from the floor, at its distance from the nut. */
export interface PegSeat {
  readonly number: number;
  readonly fromNutMm: number;
  /** Seen from the nut, from the gluing face toward the back. */
  readonly midwayRad: number;
}

/** The seat of each peg from the nut on; null where one has no place between front edge and floor. */
export function pegSeats(room: PegRoom, { fromNutMm: distances }: PegSizes): readonly PegSeat[] | null {
  const seats = distances.map((fromNutMm, index): PegSeat | null => {
    const span = spanInside(room.box, fromNutMm);
    if (span === null) return null;
    let [low, high] = span;
    for (let round = 0; round < HALVINGS; round++) {
      const middle = (low + high) / 2;
      const at = about(fromNutMm, middle);
      if (toLine(room.front, at) < toLine(room.floor, at)) low = middle;
      else high = middle;
    }
    return { number: index + 1, fromNutMm, midwayRad: (low + high) / 2 };
  });
  return seats.every((seat) => seat !== null) ? seats : null;
}

/** A peg hole in its seat, or moved from it toward the back. */
export function pegAt(room: PegRoom, { diameterMm, taper }: PegSizes, seat: PegSeat, movedMm: number): Peg {
  const { number, fromNutMm, midwayRad } = seat;
  const centre = about(fromNutMm, midwayRad + movedMm / fromNutMm);
  const frontMm = toLine(room.front, centre);
  const floorMm = toLine(room.floor, centre);
  return {
    number,
    centre,
    fromNutMm,
    movedMm,
    largeMm: diameterMm,
    smallMm: diameterMm - outsideWidth(room.box, fromNutMm) / taper,
    frontCoverMm: frontMm - diameterMm / 2,
    floorCoverMm: floorMm - diameterMm / 2,
    endRoomMm: toLine(room.ends, centre) - diameterMm / 2,
    insideMm: insideWidth(room.box, fromNutMm, frontMm / (frontMm + floorMm)),
  };
}

function about(fromNutMm: number, rad: number): Point<'head'> {
  return point(fromNutMm * sin(rad), fromNutMm * cos(rad));
}

/** Polar angles about the nut, from the gluing face toward the back, at which a circle enters the inside and leaves it. */
function spanInside(box: Pegbox, fromNutMm: number): [number, number] | null {
  const arc: Chain<'head'> = {
    closed: false,
    vertices: [
      { x: 0, y: fromNutMm, bulge: -tan(Math.PI / 8) },
      { x: fromNutMm, y: 0, bulge: 0 },
    ],
  };
  const radOf = ({ x, y }: Point<'head'>): number => atan2(x, y);
  const front = intersections(arc, box.opening)[0];
  if (!front) return null;
  const floor = intersections(arc, box.floor)[0];
  // Near the nut a circle reaches the end of the pegbox before the floor.
  const [from, to] = [radOf(front.point), floor ? radOf(floor.point) : Math.PI / 2];
  return to > from ? [from, to] : null;
}

function toLine(line: readonly Span<'head'>[], at: Point<'head'>): number {
  return nearestOnSpans(line, at).distanceMm;
}
