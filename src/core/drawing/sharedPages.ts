import { type Box, type Point, WRITE_MM } from '../base/index.ts';
import { marginTextWidthMm } from './marginText.ts';
import type { PageText, PlacedDrawing } from './page.ts';
import type { DraftPage, PageGroup, Piece, Say } from './pageGroup.ts';
import { type SheetFrame, smallText } from './sheetFrame.ts';
import { fitsRoom, packShelves, type ShelfItem, type ShelfPlace, type ShelfRoom } from './shelves.ts';

/** mm. A piece may lie against the border: the outer half of its lines still shows. */
const INK_MM = 0.5;
/** mm. Room for scissors between pieces. */
const GAP_MM = 8;
const CAPTION_MM = 5.5;
const CAPTION_DROP_MM = 3.6;
const CAPTION_SIZE_MM = 2.5;

/**
 * The pieces that fit one page, several to a page, on the paper laid as needs fewest pages; and the pieces that
 * fit neither way.
 */
export function sharedPages(
  pieces: readonly Piece[],
  frames: readonly SheetFrame[],
  say: Say,
): { readonly groups: PageGroup[]; readonly tooLarge: Piece[] } {
  const rooms = frames.map((frame) => ({ frame, room: roomOf(frame) }));
  const small = pieces.filter((piece) => rooms.some(({ room }) => fitsRoom(itemOf(piece, say), room)));
  const tooLarge = pieces.filter((piece) => !small.includes(piece));
  const [first, second] = rooms.map(({ frame, room }) => {
    const here = small.filter((piece) => fitsRoom(itemOf(piece, say), room));
    const others = small.filter((piece) => !here.includes(piece));
    return [...pagesOn(here, frame, room, say), ...others.flatMap((piece) => alone(piece, rooms, say))];
  });
  const groups = second !== undefined && first !== undefined && second.length < first.length ? second : first;
  return { groups: groups ?? [], tooLarge };
}

/** The words under a piece on a shared page. */
function captionOf(piece: Piece, say: Say): string {
  const { title, count } = piece.drawing;
  return `${piece.number}  ${title}${count > 1 ? ` – ${say(`make ${count}`)}` : ''}`;
}

function alone(
  piece: Piece,
  rooms: readonly { readonly frame: SheetFrame; readonly room: ShelfRoom }[],
  say: Say,
): PageGroup[] {
  const found = rooms.find(({ room }) => fitsRoom(itemOf(piece, say), room));
  return found === undefined ? [] : pagesOn([piece], found.frame, found.room, say);
}

function roomOf(frame: SheetFrame): ShelfRoom {
  return {
    widthMm: frame.window.max.x - frame.window.min.x,
    heightMm: frame.window.max.y - frame.window.min.y,
    gapMm: GAP_MM,
    captionMm: CAPTION_MM,
  };
}

function itemOf(piece: Piece, say: Say): ShelfItem {
  return {
    widthMm: written(piece.box.max.x - piece.box.min.x),
    heightMm: written(piece.box.max.y - piece.box.min.y),
    captionWidthMm: marginTextWidthMm(captionOf(piece, say), CAPTION_SIZE_MM),
  };
}

/** To the written step: pieces of one height stay in their order, whatever its last places are. */
function written(sizeMm: number): number {
  return Math.round(sizeMm / WRITE_MM) * WRITE_MM;
}

function pagesOn(pieces: readonly Piece[], frame: SheetFrame, room: ShelfRoom, say: Say): PageGroup[] {
  const places = packShelves(
    pieces.map((piece) => itemOf(piece, say)),
    room,
  );
  const count = 1 + Math.max(-1, ...places.map((place) => place.page));
  return Array.from({ length: count }, (_, page) => {
    const here = places.filter((place) => place.page === page).sort((a, b) => a.item - b.item);
    const laid = here.flatMap((place) => {
      const piece = pieces[place.item];
      return piece === undefined ? [] : [layPiece(piece, place, frame, say)];
    });
    const placements = laid.map((one) => one.placed);
    const draft: DraftPage = {
      frame,
      title: titleOf(
        laid.map((one) => one.piece),
        say,
      ),
      placements,
      lines: [],
      texts: laid.map((one) => one.caption),
    };
    return {
      pieces: laid.map((one) => one.piece),
      pages: [draft],
      map: {
        box: { min: { x: 0, y: 0 }, max: { x: frame.widthMm, y: frame.heightMm } },
        windows: [{ min: { x: 0, y: 0 }, max: { x: frame.widthMm, y: frame.heightMm } }],
        placements,
      },
    };
  });
}

function layPiece(
  piece: Piece,
  place: ShelfPlace,
  frame: SheetFrame,
  say: Say,
): { readonly piece: Piece; readonly placed: PlacedDrawing; readonly caption: PageText } {
  const left = frame.window.min.x + place.x;
  const low = frame.window.min.y + place.y;
  const { min, max } = piece.box;
  // Turned a quarter anticlockwise, what was the top edge comes to lie at the left.
  const shift: Point<'page'> = place.turned
    ? { x: left + max.y, y: low - min.x }
    : { x: left - min.x, y: low - min.y };
  const { min: lowest, max: highest } = frame.printable;
  const window: Box<'page'> = {
    min: { x: lowest.x - INK_MM, y: lowest.y - INK_MM },
    max: { x: highest.x + INK_MM, y: highest.y + INK_MM },
  };
  return {
    piece,
    placed: { drawing: piece.drawing, turnRad: place.turned ? Math.PI / 2 : 0, shift, window },
    caption: smallText(captionOf(piece, say), left, low - CAPTION_DROP_MM),
  };
}

function titleOf(pieces: readonly Piece[], say: Say): string {
  const [only] = pieces;
  if (pieces.length === 1 && only !== undefined) return only.drawing.title;
  const numbers = pieces.map((piece) => piece.number);
  return say(`Pieces ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`);
}
