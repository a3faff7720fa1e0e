/**
 * Widths of the type in the margins. Source: the published metrics of the standard sans-serif face that every
 * PDF reader must know (Core 14 font metrics, 1997), thousandths of the size, from the space to the tilde.
 */
const WIDTHS = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556,
  556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278,
  500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469,
  556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500,
  278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
];
const OTHERS: Readonly<Record<string, number>> = {
  '–': 556,
  '—': 1000,
  '·': 278,
  '±': 584,
  '×': 584,
  '°': 400,
  ß: 611,
  Æ: 1000,
  æ: 889,
};
const WIDEST = 1015;
/** The bold face runs wider; its widest ratio among letters and figures, so that a line never comes out too long. */
const BOLD = 1.1;

/** Signs beyond Latin-1 that the margins' type holds. Source: Windows code page 1252. */
const SIGNS = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';

/** Whether the margins' type holds a character: Latin letters of western Europe and common signs. */
export function isMarginCharacter(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  return (code >= 32 && code <= 126) || (code >= 161 && code <= 255) || SIGNS.includes(character);
}

/** A text in the characters that the margins' type holds: a letter loses its accent before it becomes a question mark. */
export function plainMarginText(text: string): string {
  return [...text.normalize('NFC').replace(/\s/g, ' ')]
    .map((character) => {
      if (isMarginCharacter(character)) return character;
      const base = character.normalize('NFD').charAt(0);
      return isMarginCharacter(base) ? base : '?';
    })
    .join('');
}

/** The width of a margin text, in millimetres; never too small for the letters of western Europe. */
export function marginTextWidthMm(text: string, sizeMm: number, bold = false): number {
  let thousandths = 0;
  for (const character of text.normalize('NFC')) {
    const plain = character.normalize('NFD').charCodeAt(0);
    thousandths += OTHERS[character] ?? WIDTHS[plain - 32] ?? WIDEST;
  }
  return (thousandths / 1000) * sizeMm * (bold ? BOLD : 1);
}

/** A text broken between words into lines no wider than `widthMm`; a single longer word is broken where it must be. */
export function wrapMarginText(text: string, sizeMm: number, widthMm: number, bold = false): string[] {
  const lines: string[] = [];
  let line = '';
  const fits = (candidate: string): boolean => marginTextWidthMm(candidate, sizeMm, bold) <= widthMm;
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (line !== '' && fits(`${line} ${word}`)) {
      line = `${line} ${word}`;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const character of word) {
      if (line !== '' && !fits(line + character)) {
        lines.push(line);
        line = '';
      }
      line += character;
    }
  }
  if (line !== '') lines.push(line);
  return lines;
}
