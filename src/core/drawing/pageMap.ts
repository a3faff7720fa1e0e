import { distanceBetween } from '../base/index.ts';
import { boundsOf, placeChain } from '../curve/index.ts';
import type { Drawing, DrawnLine } from './drawing.ts';
import { marginTextWidthMm } from './marginText.ts';
import { type PageLine, type PageText, placedChain } from './page.ts';
import type { PageBlock } from './pageBlock.ts';
import type { PageGroup, Say } from './pageGroup.ts';
import { polyline, smallText } from './sheetFrame.ts';
import { OVERLAP_MM } from './tiles.ts';

const SCALES = [5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 40].map((times) => 1 / times);
const GAP_MM = 6;
const LABEL_MM = 5;
/** mm. The size of type of {@link smallText}. */
const LABEL_SIZE_MM = 2.5;
/** mm. From a tile's side to its name. */
const INSET_MM = 0.8;

/** A group with the numbers its pages carry. */
export interface NumberedGroup {
  readonly group: PageGroup;
  readonly firstPage: number;
}

/**
 * The map: every page in small with the pieces on it, tiles laid together as they will be glued. One block a row;
 * the scale is the largest at which all rows keep to `heightMm`.
 */
export function pageMap(
  groups: readonly NumberedGroup[],
  widthMm: number,
  heightMm: number,
  say: Say,
): PageBlock[] {
  const rowsAt = (scale: number): PageBlock[] => mapRows(groups, scale, widthMm, say);
  const high = (rows: readonly PageBlock[]): number => rows.reduce((sum, row) => sum + row.heightMm, 0);
  const widest = Math.max(...groups.map(({ group }) => group.map.box.max.x - group.map.box.min.x));
  const scale =
    SCALES.find((one) => widest * one <= widthMm && high(rowsAt(one)) <= heightMm) ?? SCALES.at(-1) ?? 1;
  return rowsAt(scale);
}

function mapRows(groups: readonly NumberedGroup[], scale: number, widthMm: number, say: Say): PageBlock[] {
  const rows: { group: NumberedGroup; x: number }[][] = [];
  let used = widthMm;
  for (const group of groups) {
    const { box } = group.group.map;
    const labelMm = marginTextWidthMm(labelOf(group, say), LABEL_SIZE_MM);
    const width = Math.max((box.max.x - box.min.x) * scale, labelMm);
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
    const cells = row.map(({ group, x }) => mapCell(group, x, -tallest, scale, say));
    return {
      heightMm: tallest + LABEL_MM + GAP_MM / 2,
      lines: cells.flatMap((cell) => cell.lines),
      texts: cells.flatMap((cell) => cell.texts),
    };
  });
}

/** mm. What a plan or a chart is known by in the map is longer than this. */
const KNOWN_BY_MM = 20;

/** The lines that a piece is known by in small: what is cut and scored, or of what is only printed all but marks and crosses. */
function linesToKnowBy({ lines }: Drawing): readonly DrawnLine[] {
  if (lines.some(({ meaning }) => meaning === 'cut'))
    return lines.filter(({ meaning }) => meaning !== 'draw');
  return lines.filter(({ chain }) => {
    const { min, max } = boundsOf(chain);
    return distanceBetween(min, max) > KNOWN_BY_MM;
  });
}

function mapCell(
  { group, firstPage }: NumberedGroup,
  x: number,
  y: number,
  scale: number,
  say: Say,
): { readonly lines: PageLine[]; readonly texts: PageText[] } {
  const { box, windows, placements } = group.map;
  const placement = {
    turnRad: 0,
    scale,
    shift: [x - box.min.x * scale, y - box.min.y * scale] as const,
  };
  const pieces = placements.flatMap((placed) =>
    linesToKnowBy(placed.drawing).map((line) => placedChain(placed, line.chain)),
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
  const names = tileNames(group, firstPage, scale, say);
  const numbers = windows.map(({ min, max }, index) =>
    smallText(
      names[index] ?? '',
      placement.shift[0] + min.x * scale + INSET_MM,
      placement.shift[1] + max.y * scale - 3,
    ),
  );
  const tiled = group.pages.length > 1;
  const label = smallText(labelOf({ group, firstPage }, say), x, y - 3.4);
  return {
    lines: [...small('rule', frames), ...small('map', pieces)],
    texts: tiled ? [...numbers, label] : [label],
  };
}

/** What stands in the corners of the tiles: with their pages where all have room for it, else the tiles' names alone. */
function tileNames(group: PageGroup, firstPage: number, scale: number, say: Say): readonly string[] {
  const whole = group.pages.map(({ tile }, index) => `${tile ?? ''} · ${say(`p. ${firstPage + index}`)}`);
  const fits = group.map.windows.every(
    ({ min, max }, index) =>
      marginTextWidthMm(whole[index] ?? '', LABEL_SIZE_MM) + 2 * INSET_MM <=
      (max.x - min.x - OVERLAP_MM) * scale,
  );
  return fits ? whole : group.pages.map(({ tile }) => tile ?? '');
}

function labelOf({ group, firstPage }: NumberedGroup, say: Say): string {
  const count = group.pages.length;
  if (count === 1) return say(`page ${firstPage}`);
  return `${group.pieces[0]?.number}  ${say(`pages ${firstPage}–${firstPage + count - 1}`)}`;
}
