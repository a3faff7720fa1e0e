import { letteringWidthMm } from '../drawing/index.ts';
import type { Speech } from '../words/index.ts';
import type { InkedLettering, PictureSheet } from './pictureSheet.ts';

/** mm that words stay clear of the sheet's edge. */
const CLEAR_MM = 2;

/**
 * A picture with its words in another language: lines, colours and places stay. Words that would run off the sheet are written
 * smaller.
 */
export function spokenSheet(sheet: PictureSheet, speech: Speech): PictureSheet {
  if (speech.language === 'en') return sheet;
  return {
    ...sheet,
    title: named(sheet.title, speech),
    lettering: sheet.lettering.map((one) => within(sheet, said(one, speech))),
  };
}

function said(one: InkedLettering, speech: Speech): InkedLettering {
  return { ...one, lettering: { ...one.lettering, text: named(one.lettering.text, speech) } };
}

/** What stands after a name and a colon is told; a name that somebody gave stays. */
function named(text: string, { say, tell }: Speech): string {
  const at = text.indexOf(': ');
  const name = text.slice(0, Math.max(0, at));
  return at > 0 && say(name) === name ? `${name}: ${tell(text.slice(at + 2))}` : tell(text);
}

function within({ box }: PictureSheet, one: InkedLettering): InkedLettering {
  const { lettering } = one;
  // Only level words are long.
  if (lettering.turnRad !== 0) return one;
  const { x } = lettering.at;
  const [left, right] = [x - box.min.x - CLEAR_MM, box.max.x - x - CLEAR_MM];
  const { anchor } = lettering;
  const room = anchor === 'middle' ? 2 * Math.min(left, right) : anchor === 'end' ? left : right;
  const widthMm = letteringWidthMm(lettering);
  if (widthMm <= room) return one;
  return { ...one, lettering: { ...lettering, heightMm: (lettering.heightMm * room) / widthMm } };
}
