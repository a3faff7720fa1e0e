import type { Box, Point } from '../base/index.ts';
import type { Chain } from '../curve/index.ts';

/** What a line is for. `draw` is reference only: no tool follows it. */
export type Meaning = 'cut' | 'cut-inside' | 'score' | 'draw';

export interface DrawnLine {
  readonly meaning: Meaning;
  readonly chain: Chain<'drawing'>;
  /** Long-dash-dot, for centre lines; tools ignore it. */
  readonly centreLine?: boolean;
}

/** Lettering, cut or printed in strokes. `at` is the left end, middle or right end of its base line. */
export interface Lettering {
  readonly text: string;
  readonly at: Point<'drawing'>;
  readonly heightMm: number;
  readonly turnRad: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** What it is a line of: all lines of one text or block name the same one, so that it can be laid anew in other words. */
  readonly of?: LetteringBlock;
}

/** Texts that are broken into lines, and the room that they are laid in. */
export type LetteringBlock =
  /** Under a picture that is only printed. */
  | {
      readonly kind: 'caption';
      readonly texts: readonly string[];
      readonly corner: Point<'drawing'>;
      readonly scale: number;
      readonly mostMm: number;
    }
  /** From the top left of a room down. */
  | {
      readonly kind: 'stack';
      readonly texts: readonly string[];
      readonly room: Box<'drawing'>;
      readonly mostMm: number;
    }
  /** One text over the places of its lines. */
  | { readonly kind: 'lines'; readonly text: string };

/** Families of pieces, in the order in which a maker needs them; `sheet` is the calibration sheet and what is measured on it. */
export const PIECE_PARTS = [
  'form',
  'outline',
  'blocks',
  'ribs',
  'edge',
  'roughing',
  'arching',
  'hollowing',
  'soundHoles',
  'neck',
  'head',
  'bar',
  'setup',
  'sheet',
] as const;
export type PiecePart = (typeof PIECE_PARTS)[number];

/**
 * One piece to make, at true size: a template, gauge or form. Lines of meaning `cut` are its outer edges
 * (closed, anticlockwise), `cut-inside` its holes (closed, clockwise); nothing is drawn twice.
 */
export interface Drawing {
  /** File-safe and unique in a pack: lower case letters, digits and hyphens. */
  readonly name: string;
  /** What a maker calls it, as it stands on the sheet. */
  readonly title: string;
  /** The family of pieces it belongs to. */
  readonly part: PiecePart;
  readonly lines: readonly DrawnLine[];
  readonly lettering: readonly Lettering[];
  /** Closed areas filled with black: only on the calibration sheet. */
  readonly filled?: readonly Chain<'drawing'>[];
  /** Sentences for the sheet's margin, not for the piece. */
  readonly notes: readonly string[];
  /** How many to make. */
  readonly count: number;
  /** Whether the piece is cut by laser or router from the files (a form by router too), or only printed. */
  readonly routes: readonly ('print' | 'laser' | 'router')[];
  /** Millimetres that the finished piece must measure, checked on what is written. */
  readonly checks: readonly { readonly name: string; readonly valueMm: number }[];
}
