import type { Box, Point } from '../base/index.ts';
import { type Chain, circleChain, placeChain } from '../curve/index.ts';
import { boxAround, printedChains } from './drawingExtent.ts';
import type { PageLine, PageText, PlacedDrawing } from './page.ts';
import type { DraftPage, PageGroup, Piece, Say } from './pageGroup.ts';
import { polyline, type SheetFrame, smallText } from './sheetFrame.ts';
import { type Seam, type Tile, type TileGrid, tileGrid, tileName } from './tiles.ts';

const MARK_RADIUS_MM = 1.5;
const MARK_ARM_MM = 3;

/** A piece larger than a page, over tiles: the paper upright or lying, the piece upright or turned, whichever needs fewest. */
export function tiledPages(piece: Piece, frames: readonly SheetFrame[], say: Say): PageGroup {
  const chains = printedChains(piece.drawing);
  const ways = [0, Math.PI / 2].flatMap((turnRad) => {
    const turned = chains.map((chain) => placeChain<'drawing', 'drawing'>(chain, { turnRad, shift: [0, 0] }));
    const box = boxAround(turned) ?? piece.box;
    return frames.map((frame) => ({ turnRad, grid: tileGrid(turned, box, frame) }));
  });
  const best = ways.reduce((least, way) => (way.grid.tiles.length < least.grid.tiles.length ? way : least));
  const { turnRad, grid } = best;
  return {
    pieces: [piece],
    pages: grid.tiles.map((tile) => tilePage(piece, turnRad, tile, grid, say)),
    map: {
      box: boundsOfTiles(grid.tiles),
      windows: grid.tiles.map((tile) => boundsOfTiles([tile])),
      placements: [
        { drawing: piece.drawing, turnRad, shift: { x: 0, y: 0 }, window: boundsOfTiles(grid.tiles) },
      ],
    },
  };
}

function tilePage(piece: Piece, turnRad: number, tile: Tile, grid: TileGrid, say: Say): DraftPage {
  const { frame } = grid;
  const toPage: Point<'page'> = {
    x: frame.window.min.x - tile.window.min.x,
    y: frame.window.min.y - tile.window.min.y,
  };
  const placed: PlacedDrawing = { drawing: piece.drawing, turnRad, shift: toPage, window: frame.window };
  const seams = grid.seams.filter((seam) => seam.first === tile || seam.second === tile);
  const make = piece.drawing.count > 1 ? ` – ${say(`make ${piece.drawing.count}`)}` : '';
  return {
    frame,
    title: `${piece.number}  ${piece.drawing.title}${make}`,
    tile: tileName(tile),
    placements: [placed],
    lines: [
      ...seams.flatMap((seam) => seam.marks.flatMap((mark) => registrationMark(mark, toPage))),
      ...trimLines(tile, seams, frame.window),
    ],
    texts: seams.map((seam) => seamText(seam, toPage)),
  };
}

/** A cross in a circle, at one point of the drawing. */
function registrationMark(mark: Point<'drawing'>, toPage: Point<'page'>): PageLine[] {
  const x = mark.x + toPage.x;
  const y = mark.y + toPage.y;
  const chains: Chain<'page'>[] = [
    polyline([
      [x - MARK_ARM_MM, y],
      [x + MARK_ARM_MM, y],
    ]),
    polyline([
      [x, y - MARK_ARM_MM],
      [x, y + MARK_ARM_MM],
    ]),
    circleChain({ x, y }, MARK_RADIUS_MM),
  ];
  return chains.map((chain) => ({ pen: 'mark', chain }));
}

/** Where a page is trimmed before it is laid over its left and its lower neighbour. */
function trimLines(tile: Tile, seams: readonly Seam[], window: Box<'page'>): PageLine[] {
  const lines: PageLine[] = [];
  const { min, max } = window;
  if (seams.some((seam) => seam.upright && seam.second === tile))
    lines.push({
      pen: 'trim',
      chain: polyline([
        [min.x, min.y],
        [min.x, max.y],
      ]),
    });
  if (seams.some((seam) => !seam.upright && seam.first === tile))
    lines.push({
      pen: 'trim',
      chain: polyline([
        [min.x, min.y],
        [max.x, min.y],
      ]),
    });
  return lines;
}

/** The names of the two tiles beside the middle mark of their seam. */
function seamText(seam: Seam, toPage: Point<'page'>): PageText {
  const middle = seam.marks[1] ?? { x: 0, y: 0 };
  const x = middle.x + toPage.x;
  const y = middle.y + toPage.y;
  const text = `${tileName(seam.first)} + ${tileName(seam.second)}`;
  return seam.upright
    ? { ...smallText(text, x + 0.9, y + MARK_ARM_MM + 1.2), turnRad: Math.PI / 2 }
    : smallText(text, x + MARK_ARM_MM + 1.2, y - 0.9);
}

function boundsOfTiles(tiles: readonly Tile[]): Box<'page'> {
  return {
    min: {
      x: Math.min(...tiles.map((tile) => tile.window.min.x)),
      y: Math.min(...tiles.map((tile) => tile.window.min.y)),
    },
    max: {
      x: Math.max(...tiles.map((tile) => tile.window.max.x)),
      y: Math.max(...tiles.map((tile) => tile.window.max.y)),
    },
  };
}
