import { accept, type Box, type Checked, point } from '../../base/index.ts';
import { boundsOf } from '../../curve/index.ts';
import {
  type Drawing,
  layoutWholeSheet,
  letteringStrokes,
  PAPERS,
  type Page,
  type PageSet,
  type PageText,
  type PaperName,
} from '../../drawing/index.ts';

/** mm of free paper round a map that is larger than an A4 page. */
const BORDER_MM = 10;
/** mm under a map, for a line of its notes; size of their type. */
const NOTE_MM = 5;
const NOTE_TYPE_MM = 3;

/**
 * A map on one page: a drawing that is made as an A4 page as it is; any other at true size in the middle of the smallest paper that
 * holds it, or of a page of its own size, with its notes at the foot. Faults: those of `layoutWholeSheet`.
 */
export function mapPages(map: Drawing): Checked<PageSet> {
  const whole = layoutWholeSheet(map, { paper: 'A4', title: map.title });
  if (!whole.ok) return whole;
  const box = boxOf(map);
  const { widthMm, heightMm } = PAPERS.A4;
  if (box.min.x >= 0 && box.min.y >= 0 && box.max.x <= widthMm && box.max.y <= heightMm) return whole;
  const { paper, page } = pageRound(map, box);
  return accept({ ...whole.value, paper, pages: [page] });
}

const FROM_THE_SMALLEST = ['A4', 'A3', 'A2'] as const satisfies readonly PaperName[];

function pageRound(map: Drawing, { min, max }: Box<'drawing'>): { paper: PaperName; page: Page } {
  const footMm = BORDER_MM + NOTE_MM * map.notes.length;
  const needs = { widthMm: max.x - min.x + 2 * BORDER_MM, heightMm: max.y - min.y + BORDER_MM + footMm };
  const paper = FROM_THE_SMALLEST.find(
    (name) => PAPERS[name].widthMm >= needs.widthMm && PAPERS[name].heightMm >= needs.heightMm,
  );
  const { widthMm, heightMm } = paper === undefined ? needs : PAPERS[paper];
  const shift = point<'page'>(
    widthMm / 2 - (min.x + max.x) / 2,
    footMm + (heightMm - needs.heightMm) / 2 - min.y,
  );
  return {
    paper: paper ?? 'A2',
    page: {
      number: 1,
      title: map.title,
      widthMm,
      heightMm,
      placements: [
        { drawing: map, turnRad: 0, shift, window: { min: point(0, 0), max: point(widthMm, heightMm) } },
      ],
      lines: [],
      texts: map.notes.map(
        (text, line): PageText => ({
          text,
          at: point(BORDER_MM, BORDER_MM + NOTE_MM * (map.notes.length - 1 - line)),
          sizeMm: NOTE_TYPE_MM,
          tone: 'grey',
          bold: false,
          anchor: 'start',
          turnRad: 0,
        }),
      ),
    },
  };
}

function boxOf(map: Drawing): Box<'drawing'> {
  const boxes = [...map.lines.map(({ chain }) => chain), ...map.lettering.flatMap(letteringStrokes)]
    .filter(({ vertices }) => vertices.length > 0)
    .map((chain) => boundsOf(chain));
  return {
    min: point(Math.min(...boxes.map(({ min }) => min.x)), Math.min(...boxes.map(({ min }) => min.y))),
    max: point(Math.max(...boxes.map(({ max }) => max.x)), Math.max(...boxes.map(({ max }) => max.y))),
  };
}
