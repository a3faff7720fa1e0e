import { placeChain } from '../curve/index.ts';
import { type PageLine, type PageText, placedChain } from './page.ts';
import type { PageBlock } from './pageBlock.ts';
import type { PageGroup } from './pageGroup.ts';
import { polyline, smallText } from './sheetFrame.ts';

const SCALES = [5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 40].map((times) => 1 / times);
const GAP_MM = 6;
const LABEL_MM = 5;

/** A group with the numbers its pages carry. */
export interface NumberedGroup {
  readonly group: PageGroup;
  readonly firstPage: number;
}

/**
 * The map: every page in small with the pieces on it, tiles laid together as they will be glued. One block a row;
 * the scale is the largest at which all rows keep to `heightMm`.
 */
export function pageMap(groups: readonly NumberedGroup[], widthMm: number, heightMm: number): PageBlock[] {
  const rowsAt = (scale: number): PageBlock[] => mapRows(groups, scale, widthMm);
  const high = (rows: readonly PageBlock[]): number => rows.reduce((sum, row) => sum + row.heightMm, 0);
  const widest = Math.max(...groups.map(({ group }) => group.map.box.max.x - group.map.box.min.x));
  const scale =
    SCALES.find((one) => widest * one <= widthMm && high(rowsAt(one)) <= heightMm) ?? SCALES.at(-1) ?? 1;
  return rowsAt(scale);
}

function mapRows(groups: readonly NumberedGroup[], scale: number, widthMm: number): PageBlock[] {
  const rows: { group: NumberedGroup; x: number }[][] = [];
  let used = widthMm;
  for (const group of groups) {
    const { box } = group.group.map;
    const width = (box.max.x - box.min.x) * scale;
    if (rows.length === 0 || used + GAP_MM + width > widthMm) {
      rows.push([]);
      used = -GAP_MM;
    }
    rows.at(-1)?.push({ group, x: used + GAP_MM });
    used += GAP_MM + width;
  }
  return rows.map((row) => {
    const tallest = Math.max(
      ...row.map(({ group }) => (group.group.map.box.max.y - group.group.map.box.min.y) * scale),
    );
    const cells = row.map(({ group, x }) => mapCell(group, x, -tallest, scale));
    return {
      heightMm: tallest + LABEL_MM + GAP_MM / 2,
      lines: cells.flatMap((cell) => cell.lines),
      texts: cells.flatMap((cell) => cell.texts),
    };
  });
}

function mapCell(
  { group, firstPage }: NumberedGroup,
  x: number,
  y: number,
  scale: number,
): { readonly lines: PageLine[]; readonly texts: PageText[] } {
  const { box, windows, placements } = group.map;
  const placement = {
    turnRad: 0,
    scale,
    shift: [x - box.min.x * scale, y - box.min.y * scale] as const,
  };
  const pieces = placements.flatMap((placed) =>
    placed.drawing.lines
      .filter((line) => line.meaning !== 'draw')
      .map((line) => placedChain(placed, line.chain)),
  );
  const frames = windows.map(({ min, max }) =>
    polyline(
      [
        [min.x, min.y],
        [max.x, min.y],
        [max.x, max.y],
        [min.x, max.y],
      ],
      true,
    ),
  );
  const small = (pen: PageLine['pen'], chains: readonly PageLine['chain'][]): PageLine[] =>
    chains.map((chain) => ({ pen, chain: placeChain<'page', 'page'>(chain, placement) }));
  const numbers = windows.map((window, index): PageText => {
    const x = placement.shift[0] + window.min.x * scale + 1;
    const y = placement.shift[1] + window.max.y * scale - 3;
    const tile = group.pages[index]?.tile;
    const page = `p. ${firstPage + index}`;
    return smallText(tile === undefined ? page : `${tile} · ${page}`, x, y);
  });
  const tiled = group.pages.length > 1;
  const label: PageText = smallText(
    tiled
      ? `${group.pieces[0]?.number}  pages ${firstPage}–${firstPage + windows.length - 1}`
      : `page ${firstPage}`,
    x,
    y - 3.4,
  );
  return {
    lines: [...small('rule', frames), ...small('map', pieces)],
    texts: tiled ? [...numbers, label] : [label],
  };
}
