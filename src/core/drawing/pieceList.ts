import { BODY, INDENT_MM, NOTE, withHeading } from './coverText.ts';
import { pieceSizeMm } from './drawingExtent.ts';
import type { PageText } from './page.ts';
import { type PageBlock, stackBlocks, textBlock } from './pageBlock.ts';
import type { Piece, Say } from './pageGroup.ts';
import type { NumberedGroup } from './pageMap.ts';
import { type SharedNote, sharedNotes } from './sharedNotes.ts';
import { polyline, smallText } from './sheetFrame.ts';

/** The list of pieces on the cover: notes that several have first, then each with its size, number, pages and own notes. */
export function pieceList(groups: readonly NumberedGroup[], widthMm: number, say: Say): PageBlock[] {
  const shared = sharedNotes(groups.flatMap(({ group }) => group.pieces.map(({ drawing }) => drawing)));
  const rows = groups
    .flatMap(({ group, firstPage }) =>
      group.pieces.map((piece) => ({ piece, firstPage, lastPage: firstPage + group.pages.length - 1 })),
    )
    .sort((a, b) => a.piece.number - b.piece.number)
    .map(({ piece, firstPage, lastPage }) => pieceRow(piece, [firstPage, lastPage], widthMm, shared, say));
  if (rows.length === 0) return [];
  return [...noteList(shared, widthMm, say), ...withHeading(say('Pieces'), rows, widthMm)];
}

/** The shared notes, each with its letter; the heading keeps the first with it. */
function noteList(shared: readonly SharedNote[], widthMm: number, say: Say): PageBlock[] {
  const rows = shared.map(({ letter, text }): PageBlock => {
    const words = textBlock(text, { ...NOTE, tone: 'black' }, widthMm, INDENT_MM, 0.8);
    const head = textBlock(letter, { ...NOTE, tone: 'black', bold: true }, widthMm);
    return { ...words, texts: [...words.texts, ...head.texts] };
  });
  return rows.length === 0 ? [] : withHeading(say('Notes for several pieces'), rows, widthMm);
}

function pieceRow(
  piece: Piece,
  [firstPage, lastPage]: readonly [number, number],
  widthMm: number,
  shared: readonly SharedNote[],
  say: Say,
): PageBlock {
  const { drawing } = piece;
  const size = pieceSizeMm(drawing);
  const columns = { size: widthMm - 72, make: widthMm - 32, page: widthMm };
  const title = textBlock(drawing.title, BODY, columns.size - 4, INDENT_MM, 0.6);
  const cell = (text: string, x: number, anchor: 'start' | 'end'): PageText => ({
    ...smallText(text, x, -BODY.sizeMm),
    sizeMm: BODY.sizeMm,
    tone: 'black',
    anchor,
  });
  const pages = say(firstPage === lastPage ? `page ${firstPage}` : `pages ${firstPage}–${lastPage}`);
  const head: PageBlock = {
    heightMm: title.heightMm,
    lines: [],
    texts: [
      { ...cell(`${piece.number}`, 0, 'start'), bold: true },
      ...title.texts,
      cell(say(`${size.widthMm.toFixed(1)} × ${size.heightMm.toFixed(1)} mm`), columns.size, 'start'),
      cell(say(`make ${drawing.count}`), columns.make, 'start'),
      cell(pages, columns.page, 'end'),
    ],
  };
  const own = drawing.notes.filter((note) => shared.every(({ text }) => text !== note));
  const letters = shared.filter(({ text }) => drawing.notes.includes(text)).map(({ letter }) => letter);
  const words = [...(letters.length > 0 ? [`${say('Notes')} ${letters.join(', ')}.`] : []), ...own];
  const notes = words.map((note) => textBlock(note, NOTE, widthMm, INDENT_MM));
  const rule: PageBlock = {
    heightMm: 1.6,
    lines: [
      {
        pen: 'rule',
        chain: polyline([
          [0, -0.6],
          [widthMm, -0.6],
        ]),
      },
    ],
    texts: [],
  };
  return stackBlocks([head, ...notes, rule]);
}
