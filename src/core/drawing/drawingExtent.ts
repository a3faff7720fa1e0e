import type { Box } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import type { Drawing } from './drawing.ts';
import { letteringStrokes } from './lettering.ts';

/** Every chain that a drawing prints: its lines, the strokes of its lettering and its filled areas. */
export function printedChains(drawing: Drawing): Chain<'drawing'>[] {
  return [
    ...drawing.lines.map((line) => line.chain),
    ...drawing.lettering.flatMap(letteringStrokes),
    ...(drawing.filled ?? []),
  ].filter((chain) => chain.vertices.length > 0);
}

/** The upright box around chains of one frame; null when there is none. */
export function boxAround<F extends 'drawing' | 'page'>(chains: readonly Chain<F>[]): Box<F> | null {
  if (chains.length === 0) return null;
  const boxes = chains.map((chain) => boundsOf(chain));
  return {
    min: { x: Math.min(...boxes.map((box) => box.min.x)), y: Math.min(...boxes.map((box) => box.min.y)) },
    max: { x: Math.max(...boxes.map((box) => box.max.x)), y: Math.max(...boxes.map((box) => box.max.y)) },
  };
}

/**
 * Width and height of the finished piece, in millimetres: of what is cut, or of everything printed where
 * nothing is.
 */
export function pieceSizeMm(drawing: Drawing): { readonly widthMm: number; readonly heightMm: number } {
  const cut = drawing.lines.filter((line) => line.meaning === 'cut').map((line) => line.chain);
  const box = boxAround(cut.length > 0 ? cut : printedChains(drawing));
  if (box === null) return { widthMm: 0, heightMm: 0 };
  return { widthMm: box.max.x - box.min.x, heightMm: box.max.y - box.min.y };
}
