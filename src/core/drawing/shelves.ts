/** A piece's box, and the words that stand under it whichever way it is turned. */
export interface ShelfItem {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly captionWidthMm: number;
}

/** Free space for pieces on a page. */
export interface ShelfRoom {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Between pieces. */
  readonly gapMm: number;
  /** Height of the words under a piece. */
  readonly captionMm: number;
}

/** Where an item came to lie: the lower left corner of its piece, from the lower left of the room; turned a quarter or not. */
export interface ShelfPlace {
  readonly item: number;
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

interface Laid {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly turned: boolean;
}

interface Shelf {
  readonly page: number;
  readonly top: number;
  readonly heightMm: number;
  used: number;
}

/** Whether an item fits the room at all, upright or turned. */
export function fitsRoom(item: ShelfItem, room: ShelfRoom): boolean {
  return layings(item, room).length > 0;
}

/**
 * Items laid on pages in rows from the top, none over another. Every item must fit the room.
 * Method: first fit by falling height, items laid flat where they fit so.
 */
export function packShelves(items: readonly ShelfItem[], room: ShelfRoom): ShelfPlace[] {
  const laid = items
    .flatMap((item, index) =>
      layings(item, room)
        .slice(0, 1)
        .map((laying) => ({ index, ...laying })),
    )
    .sort((a, b) => b.heightMm - a.heightMm || a.index - b.index);
  const shelves: Shelf[] = [];
  const bottoms: number[] = [];
  return laid.map(({ index, widthMm, heightMm, turned }) => {
    const shelf =
      shelves.find((open) => open.heightMm >= heightMm && open.used + room.gapMm + widthMm <= room.widthMm) ??
      openShelf(heightMm);
    const x = shelf.used === 0 ? 0 : shelf.used + room.gapMm;
    shelf.used = x + widthMm;
    return { item: index, page: shelf.page, x, y: shelf.top - heightMm + room.captionMm, turned };
  });

  function openShelf(heightMm: number): Shelf {
    let page = bottoms.findIndex((bottom) => bottom - room.gapMm >= heightMm);
    if (page < 0) {
      page = bottoms.length;
      bottoms.push(room.heightMm + room.gapMm);
    }
    const top = (bottoms[page] ?? 0) - room.gapMm;
    bottoms[page] = top - heightMm;
    const shelf: Shelf = { page, top, heightMm, used: 0 };
    shelves.push(shelf);
    return shelf;
  }
}

/** The ways an item fits the room, the flatter first. */
function layings(item: ShelfItem, room: ShelfRoom): Laid[] {
  const upright = laying(item.widthMm, item.heightMm, item, room, false);
  const turned = laying(item.heightMm, item.widthMm, item, room, true);
  return [upright, turned]
    .filter((one) => one.widthMm <= room.widthMm && one.heightMm <= room.heightMm)
    .sort((a, b) => a.heightMm - b.heightMm);
}

function laying(widthMm: number, heightMm: number, item: ShelfItem, room: ShelfRoom, turned: boolean): Laid {
  return {
    widthMm: Math.max(widthMm, Math.min(item.captionWidthMm, room.widthMm)),
    heightMm: heightMm + room.captionMm,
    turned,
  };
}
