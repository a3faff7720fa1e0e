import { type Chain, circleChain } from '../curve/index.ts';
import type { Head, Neck, PlanParts } from '../instrument/index.ts';
import { cutCard, type OnCard } from './cutCard.ts';
import type { Drawing, DrawnLine } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { straightChain } from './neckPiece.ts';
import { drawnLine } from './outlineDrawingsMarks.ts';

/** What the pieces of the head are drawn from. */
export interface HeadPlan {
  readonly plan: PlanParts;
  readonly head: Head;
  readonly neck: Neck;
}

/** Stands wherever a head is cut to a template. */
const HEAD_CAUTION =
  'Saws, gouges, chisels and knives cut: clamp the neck block, keep both hands behind the edge, cut away from yourself. Drill and reamer: clamp the head, wear eye protection, follow the manual. Laser and router: follow the manual of the machine, never leave a laser alone.';

/** mm. Length of head that sizes on templates are laid out for. */
const LAID_OUT_FOR_MM = 107;
const LEAST_SCALE = 0.72;

/** Size of a head against the usual one, for lettering and marks. */
export function headScale({ profile }: Head): number {
  return Math.max(LEAST_SCALE, profile.sizes.lengthMm / LAID_OUT_FOR_MM);
}

/** The frame of a sheet that is only looked at. */
export function sheetBorder(left: number, low: number, right: number, high: number): DrawnLine {
  const frame = straightChain(true, [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ]);
  return drawnLine('draw', frame);
}

/** A card of the head. */
export function headPiece(name: string, title: string, body: Chain<'drawing'>, on: OnCard): Drawing {
  return cutCard({ name, title, part: 'head' }, body, on, HEAD_CAUTION);
}

/** A round hole. */
export function holeAt(at: { readonly x: number; readonly y: number }, diameterMm: number): Chain<'drawing'> {
  return circleChain<'drawing'>({ x: at.x, y: at.y }, diameterMm / 2, true);
}

/** No unit. A text may be written smaller by this before the name in it is shortened. */
const LEAST_SHRINK = 0.75;

/** A text with the instrument's name in it, the name cut short where the whole would be written too small to read. */
export function withName(
  name: string,
  letterMm: number,
  roomMm: number,
  words: { readonly before?: string; readonly after?: string } = {},
): string {
  const { before = '', after = '' } = words;
  const fits = (text: string): boolean =>
    LEAST_SHRINK * letteringWidthMm({ text, heightMm: letterMm }) <= roomMm;
  if (fits(before + name + after)) return before + name + after;
  for (let length = name.length - 1; length > 0; length--) {
    const text = `${before}${name.slice(0, length).trim()}...${after}`;
    if (fits(text)) return text;
  }
  return `${before}${after}`.replace(/^[ ·]+|[ ·]+$/g, '');
}
