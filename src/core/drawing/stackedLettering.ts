import type { Box } from '../base/index.ts';
import type { Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';

/** mm. Lettering is no higher than this, and left out where it would be lower than can be cut and read. */
const MOST_MM = 2.8;
const LEAST_MM = 1.4;

/** mm. Rather than write a line lower than this it is broken. */
const EASY_MM = 1.8;

/** Base line to base line, in letter heights. */
const SPACING = 1.7;

/**
 * Lines under each other from the top left of a room, as large as the room allows. A line too long for it goes on in the next,
 * broken between words; a word too long for it is left out.
 */
export function stackedLettering(
  texts: readonly string[],
  room: Box<'drawing'>,
  mostMm = MOST_MM,
): readonly Lettering[] {
  const [widthMm, heightMm] = [room.max.x - room.min.x, room.max.y - room.min.y];
  const of = { kind: 'stack', texts, room, mostMm } as const;
  const sizeOf = (text: string): number =>
    Math.min(mostMm, widthMm / letteringWidthMm({ text, heightMm: 1 }));
  const readable = texts
    .flatMap((text) => broken(text, (line) => sizeOf(line) >= EASY_MM))
    .filter((line) => sizeOf(line) >= LEAST_MM);
  const shown = readable.slice(0, Math.floor((heightMm / LEAST_MM - 1) / SPACING) + 1);
  const pitchMm = Math.min(SPACING * mostMm, heightMm / (shown.length - 1 + 1 / SPACING));
  return shown.map((text, index): Lettering => {
    const size = Math.min(sizeOf(text), pitchMm / SPACING);
    return {
      text,
      at: { x: room.min.x, y: room.max.y - pitchMm / SPACING - index * pitchMm },
      heightMm: size,
      turnRad: 0,
      anchor: 'start',
      of,
    };
  });
}

/** A text in as few lines as fit, broken between words. */
function broken(text: string, fits: (text: string) => boolean): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
