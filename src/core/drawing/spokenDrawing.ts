import { cos, sin } from '../base/index.ts';
import { boundsOf, type Chain, intersections } from '../curve/index.ts';
import type { Speech } from '../words/index.ts';
import { captionBelow } from './caption.ts';
import type { Drawing, Lettering, LetteringBlock } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { stackedLettering } from './stackedLettering.ts';

/**
 * A drawing with all its words in another language; lines and sizes stay as they are. Longer words are laid anew in the room that
 * they have: broken into other lines, run on where nothing is in their way, else written smaller. A text that has no words in the
 * language stays as it is.
 */
export function spokenDrawing(drawing: Drawing, speech: Speech): Drawing {
  if (speech.language === 'en') return drawing;
  // Some words mean another thing on one family of pieces: the back of a head is no plate.
  const lettered = (text: string): string => speech.sayOf(drawing.part, text) ?? text;
  return {
    ...drawing,
    title: speech.tell(drawing.title),
    notes: drawing.notes.map(speech.tell),
    lettering: fitted(drawing, relaid(drawing.lettering, lettered)),
  };
}

/** A lettering in its new words, and how wide its old ones were; null where it was laid out by its new ones, or is no longer. */
interface Relaid {
  readonly lettering: Lettering;
  readonly roomMm: number | null;
}

type Say = (text: string) => string;

function relaid(letterings: readonly Lettering[], say: Say): readonly Relaid[] {
  const laid = new Set<LetteringBlock>();
  return letterings.flatMap((lettering): readonly Relaid[] => {
    const { of } = lettering;
    if (of === undefined) {
      const text = say(lettering.text);
      // A point and a comma are equally wide.
      const isFigure = text.replaceAll(',', '.') === lettering.text.replaceAll(',', '.');
      return [{ lettering: { ...lettering, text }, roomMm: isFigure ? null : letteringWidthMm(lettering) }];
    }
    if (laid.has(of)) return [];
    laid.add(of);
    const own = letterings.filter((one) => one.of === of);
    const roomMm = of.kind === 'lines' ? Math.max(...own.map(letteringWidthMm)) : null;
    return laidAnew(of, own, say).map((one) => ({ lettering: one, roomMm }));
  });
}

/** Sizes at which a block is tried, against its own. */
const SHARES = [1, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6] as const;

function laidAnew(of: LetteringBlock, own: readonly Lettering[], say: Say): readonly Lettering[] {
  if (of.kind === 'stack') return stackedLettering(of.texts.map(say), of.room, of.mostMm);
  if (of.kind === 'caption') {
    const texts = of.texts.map(say);
    const lowest = (lines: readonly Lettering[]): number => Math.min(...lines.map(({ at }) => at.y));
    const tries = SHARES.map((share) => captionBelow(texts, of.corner, { ...of, scale: share * of.scale }));
    // What is drawn round or under a caption was laid out for its own lines.
    return tries.find((lines) => lowest(lines) >= lowest(own)) ?? tries.at(-1) ?? [];
  }
  const lines = inLines(say(of.text), own.length);
  return own.flatMap((line, index) => (lines[index] ? [{ ...line, text: lines[index] }] : []));
}

/** A text in at most so many lines, broken between words, the longest of them as short as can be. */
function inLines(text: string, most: number): readonly string[] {
  const words = text.split(' ');
  if (most < 2 || words.length < 2) return [text];
  const ways = words.slice(0, -1).map((_, index) => {
    const rest = inLines(words.slice(index + 1).join(' '), most - 1);
    return [words.slice(0, index + 1).join(' '), ...rest];
  });
  const longest = (lines: readonly string[]): number => Math.max(...lines.map((line) => line.length));
  return ways.reduce((least, way) => (longest(way) < longest(least) ? way : least), [text]);
}

/** mm. What is smaller can neither be cut nor read. */
const LEAST_MM = 1.2;
/** mm. Lettering stays so far off lines and other lettering. */
const CLEAR_MM = 0.6;
/** How far small letters such as g reach below their base line, as a share of the height of capitals. */
const TAIL = 0.3;
/** Each try is written smaller by this. */
const SMALLER = 0.93;

function fitted(drawing: Drawing, letterings: readonly Relaid[]): readonly Lettering[] {
  const placed = letterings.map(({ lettering }) => lettering);
  // Measuring hundreds of figures takes a while: once a drawing, and only where something must be fitted.
  let boxes: Chain<'drawing'>[] | null = null;
  for (const [index, { lettering, roomMm }] of letterings.entries())
    if (roomMm !== null && letteringWidthMm(lettering) > roomMm) {
      boxes ??= placed.map(boxAround);
      const others = boxes.filter((_, other) => other !== index);
      const best = written(lettering, roomMm, [...drawing.lines.map(({ chain }) => chain), ...others]);
      placed[index] = best;
      boxes[index] = boxAround(best);
    }
  return placed;
}

/** A lettering as large as it can stand clear of everything else on the sheet, within its width or beyond it. */
function written(lettering: Lettering, roomMm: number, around: readonly Chain<'drawing'>[]): Lettering {
  const boxes = around.map((chain) => boundsOf(chain));
  const left = Math.min(...boxes.map(({ min }) => min.x));
  const right = Math.max(...boxes.map(({ max }) => max.x));
  let best = lettering;
  while (best.heightMm * SMALLER >= LEAST_MM && letteringWidthMm(best) > roomMm) {
    const box = boxAround(best);
    const { min, max } = boundsOf(box);
    if (min.x >= left && max.x <= right && around.every((chain) => isClear(box, chain))) break;
    best = { ...best, heightMm: best.heightMm * SMALLER };
  }
  return best;
}

function isClear(box: Chain<'drawing'>, chain: Chain<'drawing'>): boolean {
  const [own, other] = [boundsOf(box), boundsOf(chain)];
  if (own.max.x < other.min.x || other.max.x < own.min.x) return true;
  if (own.max.y < other.min.y || other.max.y < own.min.y) return true;
  if (intersections(box, chain).length > 0) return false;
  // Nothing crosses: what lies wholly inside would be written over.
  return !(
    other.min.x >= own.min.x &&
    other.max.x <= own.max.x &&
    other.min.y >= own.min.y &&
    other.max.y <= own.max.y
  );
}

/** The place that a lettering takes up, with what it keeps clear. */
function boxAround(lettering: Lettering): Chain<'drawing'> {
  const width = letteringWidthMm(lettering);
  const from = { start: 0, middle: -width / 2, end: -width }[lettering.anchor];
  const [cosine, sine] = [cos(lettering.turnRad), sin(lettering.turnRad)];
  const [low, high] = [-TAIL * lettering.heightMm - CLEAR_MM / 2, lettering.heightMm + CLEAR_MM / 2];
  const [left, right] = [from - CLEAR_MM, from + width + CLEAR_MM];
  const places = [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ] as const;
  return {
    closed: true,
    vertices: places.map(([x, y]) => ({
      x: lettering.at.x + x * cosine - y * sine,
      y: lettering.at.y + x * sine + y * cosine,
      bulge: 0,
    })),
  };
}
