import { acos, atan2, cos, hypot, type Point, point, sin } from '../../base/index.ts';
import { sampleChain } from '../../curve/index.ts';
import { insideWidth, type Pegbox } from './pegbox.ts';
import { type Peg, type PegSizes, pegAt, pegRoom, pegSeats } from './pegs.ts';

/** A string as it comes to the nut. */
export interface NutString {
  /** As players call it. */
  readonly letter: string;
  /** 1 the highest. */
  readonly number: number;
  readonly diameterMm: number;
  /** From the middle of the nut, to the right looking at the front. */
  readonly acrossMm: number;
  /** Its underside over the gluing face. */
  readonly upMm: number;
}

/** A string from the nut to its peg. */
export interface StringPath extends NutString {
  readonly peg: number;
  /** Side on which the peg's head stands, looking at the front: 1 right, −1 left. */
  readonly side: 1 | -1;
  /** Middle of the string where it leaves the nut and where it meets the peg, in the side view. */
  readonly from: Point<'head'>;
  readonly to: Point<'head'>;
  /** Across, where it meets the peg. */
  readonly toAcrossMm: number;
  /** Room to each peg that it passes, the least first where several; null where it passes none. */
  readonly leastRoom: { readonly peg: number; readonly mm: number } | null;
  /** Least room to the wall on its way inside the pegbox. */
  readonly wallRoomMm: number;
}

/** Strings by their number in the order of their pegs, from the nut. Common practice in every family. */
const ORDER = [4, 1, 3, 2] as const;

/** No unit. Of the way from the middle to the wall beside the peg's head, where a string is wound. Chosen by us. */
const WOUND_SHARE = 0.4;

/** Rounds in which pegs make room for strings: each halves the worst that is lacking. */
const ROUNDS = 40;

/** What pegs and strings must leave each other. */
export interface RoomWishes {
  /** Between a string and a peg that it passes, mm. */
  readonly stringToPegMm: number;
  /** Least wood in front of a hole and room under it that a peg is moved within, mm. */
  readonly coverMm: number;
  /** Depth of the nut, along the strings. */
  readonly nutDepthMm: number;
}

/**
 * Pegs, and the paths of the strings to them. Each peg stands midway between front edge and floor at its distance from the
 * nut; where a string would come too near to a peg that it passes, that peg is moved toward the floor and the string's own
 * toward the front, each by as much as it has wood to spare. In the order of their pegs from the nut the
 * strings are the 4th, 1st, 3rd and 2nd; low strings have their pegs' heads on the bass side.
 *
 * Null where a peg has no place between front edge and floor.
 */
export function stringPaths(
  box: Pegbox,
  sizes: PegSizes,
  strings: readonly NutString[],
  wishes: RoomWishes,
): { readonly pegs: readonly Peg[]; readonly paths: readonly StringPath[] } | null {
  const moved = sizes.fromNutMm.map(() => 0);
  const room = pegRoom(box);
  const seats = pegSeats(room, sizes);
  if (seats === null) return null;
  const set = (): readonly Peg[] => seats.map((seat, index) => pegAt(room, sizes, seat, moved[index] ?? 0));
  let pegs = set();
  for (let round = 0; round < ROUNDS; round++) {
    const lacking = lackingRoom(pegs, strings, wishes);
    // The worst first: what it moves may help or hinder the others.
    const [worst] = lacking.toSorted((a, b) => b.mm - a.mm);
    if (!worst) break;
    const { own, passed, mm } = worst;
    const back = Math.max(0, (pegs[passed]?.floorCoverMm ?? 0) - wishes.coverMm);
    const forth = Math.max(0, (pegs[own]?.frontCoverMm ?? 0) - wishes.coverMm);
    const stepMm = Math.min(mm / 2, back + forth);
    if (!(stepMm > 0)) break;
    moved[passed] = (moved[passed] ?? 0) + (stepMm * back) / (back + forth);
    moved[own] = (moved[own] ?? 0) - (stepMm * forth) / (back + forth);
    pegs = set();
  }
  return { pegs, paths: pathsTo(box, pegs, strings, wishes) };
}

function stringOf(strings: readonly NutString[], pegIndex: number): NutString | undefined {
  return strings.find(({ number }) => number === ORDER[pegIndex]);
}

interface Lacking {
  readonly own: number;
  readonly passed: number;
  readonly mm: number;
}

function lackingRoom(
  pegs: readonly Peg[],
  strings: readonly NutString[],
  wishes: RoomWishes,
): readonly Lacking[] {
  return pegs.flatMap((peg, own) => {
    const string = stringOf(strings, own);
    if (!string) return [];
    const { from, to } = lineTo(pegs, peg, string, wishes);
    return pegs
      .slice(0, own)
      .map((other, passed) => ({
        own,
        passed,
        mm: wishes.stringToPegMm - roomBeside(from, to, other, string.diameterMm),
      }))
      .filter(({ mm }) => mm > 0);
  });
}

function pathsTo(
  box: Pegbox,
  pegs: readonly Peg[],
  strings: readonly NutString[],
  wishes: RoomWishes,
): readonly StringPath[] {
  return pegs.flatMap((peg, own): StringPath[] => {
    const string = stringOf(strings, own);
    if (!string) return [];
    const { from, to } = lineTo(pegs, peg, string, wishes);
    const rooms = pegs.slice(0, own).map((other) => ({
      peg: other.number,
      mm: roomBeside(from, to, other, string.diameterMm),
    }));
    const side = sideOf(string, strings);
    const toAcrossMm = side * WOUND_SHARE * (peg.insideMm / 2);
    const [leastRoom = null] = rooms.toSorted((a, b) => a.mm - b.mm);
    return [
      {
        ...string,
        peg: peg.number,
        side,
        from,
        to,
        toAcrossMm,
        leastRoom,
        wallRoomMm: wallRoom(box, from, to, string, toAcrossMm),
      },
    ];
  });
}

/** The side of the peg's head: that of the string at the nut, low strings on the side of the lowest. */
function sideOf(string: NutString, strings: readonly NutString[]): 1 | -1 {
  const lowest = strings.find(({ number }) => number === ORDER[0]);
  const lowSide = (lowest?.acrossMm ?? 0) < 0 ? -1 : 1;
  return string.number > 2 ? lowSide : lowSide === 1 ? -1 : 1;
}

/**
 * The string's middle line in the side view, from the nut's edge over the pegbox to the front of its peg. The top of the nut
 * slopes as the flattest string runs, that of the last peg.
 */
function lineTo(
  pegs: readonly Peg[],
  peg: Peg,
  string: NutString,
  { nutDepthMm }: RoomWishes,
): { readonly from: Point<'head'>; readonly to: Point<'head'> } {
  const last = pegs.at(-1) ?? peg;
  const bearing = point<'head'>(-(string.upMm + string.diameterMm / 2), -nutDepthMm);
  const flattest = tangentPoint(bearing, last, string.diameterMm);
  const slope = (flattest.x - bearing.x) / (flattest.y - bearing.y);
  const from = point<'head'>(bearing.x + slope * nutDepthMm, 0);
  return { from, to: tangentPoint(from, peg, string.diameterMm) };
}

/** Where a line from a place touches the string's middle line round a peg, on the front of the peg. */
function tangentPoint(from: Point<'head'>, { centre, largeMm }: Peg, stringMm: number): Point<'head'> {
  const radiusMm = (largeMm + stringMm) / 2;
  const [dx, dy] = [centre.x - from.x, centre.y - from.y];
  const awayMm = hypot(dx, dy);
  const towardRad = atan2(dy, dx);
  // Seen from the peg the touching place lies off the way back by this, toward the front.
  const offRad = acos(Math.min(1, radiusMm / awayMm));
  const rad = towardRad + Math.PI - offRad;
  return point(centre.x + radiusMm * cos(rad), centre.y + radiusMm * sin(rad));
}

/** Room between string and peg, mm; negative where they overlap. */
function roomBeside(
  from: Point<'head'>,
  to: Point<'head'>,
  { centre, largeMm }: Peg,
  stringMm: number,
): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = hypot(dx, dy);
  // Positive where the peg lies behind the string.
  const behind = ((centre.x - from.x) * dy - (centre.y - from.y) * dx) / length;
  return behind - (largeMm + stringMm) / 2;
}

/** Places along a string at which its room to the walls is looked at. */
const LOOKS = 40;
/** mm. How closely the front edge is followed there. */
const FRONT_ERROR_MM = 0.02;

function wallRoom(
  box: Pegbox,
  from: Point<'head'>,
  to: Point<'head'>,
  { acrossMm, diameterMm }: NutString,
  toAcrossMm: number,
): number {
  const front = sampleChain(box.opening, FRONT_ERROR_MM);
  let leastMm = Number.POSITIVE_INFINITY;
  for (let look = 0; look <= LOOKS; look++) {
    const share = look / LOOKS;
    const at = point<'head'>(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    if (at.x < behindAt(front, at.y)) continue;
    const across = Math.abs(acrossMm + share * (toAcrossMm - acrossMm)) + diameterMm / 2;
    // A string meets the front of its peg, which is never deeper than half way to the floor.
    const inside = insideWidth(box, hypot(at.x, at.y), share / 2);
    leastMm = Math.min(leastMm, inside / 2 - across);
  }
  return leastMm;
}

/** How far behind the gluing face a line from the nut on lies at a height over the nut. */
function behindAt(line: readonly Point<'head'>[], yMm: number): number {
  const after = Math.max(
    1,
    line.findIndex(({ y }) => y >= yMm),
  );
  const [a, b] = [line[after - 1], line[after]];
  return a && b ? a.x + ((b.x - a.x) * (yMm - a.y)) / (b.y - a.y) : 0;
}
