import { boundsOf, type Chain, mirrorChain, reverseChain } from '../curve/index.ts';
import { highStringSide } from '../design/index.ts';
import type { Instrument } from '../instrument/index.ts';
import { cutCard, type OnCard } from './cutCard.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { corners, straightChain } from './neckPiece.ts';
import { letteringScale } from './outlineDrawingsMarks.ts';

/** Stands wherever nut, bridge, saddle or end button is cut or filed. */
const SETUP_CAUTION =
  'Knives, files, reamers and saws cut: hold small pieces in a vise, cut away from the hand. Dust of ebony, bone and rosewood harms the lungs: draw it off, wear a mask. Strings can break: tune slowly, eyes out of their line, wear eye protection. Laser and router: follow the manual of the machine.';

/** A card of the set-up, or of another part that is fitted with it. */
export function setupPiece(
  name: string,
  title: string,
  body: Chain<'drawing'>,
  on: OnCard & { readonly part?: Drawing['part']; readonly caution?: string },
): Drawing {
  return cutCard({ name, title, part: on.part ?? 'setup' }, body, on, on.caution ?? SETUP_CAUTION);
}

/** mm. Names that would be written smaller than this are broken into more lines instead. */
const LEAST_NAME_MM = 1.6;

/** A name in as few lines as keep it readable in a width: broken between words, and within one that is longer than a line. */
export function nameInLines(name: string, roomMm: number): readonly string[] {
  const fits = (text: string): boolean => letteringWidthMm({ text, heightMm: LEAST_NAME_MM }) <= roomMm;
  const lines: string[] = [];
  const words = name.split(/\s+/).flatMap((word) => torn(word, fits));
  for (const word of words) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (lines.length > 0 && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function torn(word: string, fits: (text: string) => boolean): readonly string[] {
  if (fits(word) || word.length < 2) return [word];
  let count = word.length - 1;
  while (count > 1 && !fits(`${word.slice(0, count)}-`)) count--;
  return [`${word.slice(0, count)}-`, ...torn(word.slice(count), fits)];
}

/** A shape that stands on a card: over a level line between its ends, on shoulders as wide as the card. */
export function cardBelow(shape: Chain<'drawing'>, half: number, bottomY: number): Chain<'drawing'> {
  const box = boundsOf(shape);
  return {
    closed: true,
    vertices: [
      ...corners([-half, bottomY], [half, bottomY], [half, 0], [box.max.x, 0]),
      ...reverseChain(shape).vertices,
      ...corners([box.min.x, 0], [-half, 0]),
    ],
  };
}

/** A short line from a place up or down. */
export function tick(x: number, fromY: number, toY: number): Chain<'drawing'> {
  return straightChain(false, [
    [x, fromY],
    [x, toY],
  ]);
}

/** One word or letter, its middle at a place across. */
export function letter(text: string, x: number, baseY: number, heightMm: number): Lettering {
  return { text, at: { x, y: baseY }, heightMm, turnRad: 0, anchor: 'middle' };
}

/** What all pieces of the set-up are drawn with. */
export interface SetupSheet {
  readonly instrument: Instrument;
  readonly name: string;
  /** Size of the instrument against a violin, not below three quarters. */
  readonly scale: number;
  /** Sign of x on the side of the highest string, seen with the neck away from the eye. */
  readonly side: 1 | -1;
}

export function setupSheet(instrument: Instrument): SetupSheet {
  const { plan, design } = instrument;
  return {
    instrument,
    name: plan.name,
    scale: letteringScale(plan.outline.bodyLengthMm),
    side: highStringSide(design),
  };
}

/** A line that was worked with the highest string to the right, on its own side of the instrument; it keeps running rightward. */
export function handed(chain: Chain<'section'>, side: 1 | -1): Chain<'drawing'> {
  const turned = side === 1 ? chain : reverseChain(mirrorChain(chain));
  return { closed: turned.closed, vertices: turned.vertices.map(({ x, y, bulge }) => ({ x, y, bulge })) };
}
