import { plainMarginText } from '../drawing/index.ts';

/** Signs of code page 1252 from 0x80 on; a blank stands for a code without a sign. */
const HIGH = '€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ';

/** A text as the hexadecimal string of a PDF in the encoding of its standard faces; nothing in it can end the string. */
export function winAnsiHex(text: string): string {
  return [...plainMarginText(text)]
    .map((character) => {
      const high = character === ' ' ? -1 : HIGH.indexOf(character);
      const code = high >= 0 ? 0x80 + high : (character.codePointAt(0) ?? 63);
      return code.toString(16).padStart(2, '0');
    })
    .join('');
}
