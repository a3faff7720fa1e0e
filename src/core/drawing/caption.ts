import type { Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';

/** mm at the usual size. */
const TITLE_MM = 4.5;
const TEXT_MM = 3;
const GAP_MM = 4;

/** Base line to base line, in letter heights. */
const SPACING = 1.7;

/**
 * Lines under a picture that is only printed, from its lower left corner down; the first is larger. A line wider than
 * `mostMm` goes on in the next.
 */
export function captionBelow(
  texts: readonly string[],
  corner: Lettering['at'],
  { scale, mostMm }: { readonly scale: number; readonly mostMm: number },
): readonly Lettering[] {
  const of = { kind: 'caption', texts, corner, scale, mostMm } as const;
  let y = corner.y - GAP_MM * scale;
  return texts.flatMap((text, index) => {
    const heightMm = (index === 0 ? TITLE_MM : TEXT_MM) * scale;
    return broken(text, heightMm, mostMm).map((part): Lettering => {
      y -= heightMm;
      const at = { x: corner.x, y };
      const line: Lettering = { text: part, at, heightMm, turnRad: 0, anchor: 'start', of };
      y -= (SPACING - 1) * heightMm;
      return line;
    });
  });
}

/** A text in as few lines as are not wider than this, broken between words. */
function broken(text: string, heightMm: number, mostMm: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const longer = `${last} ${word}`;
    if (last !== undefined && letteringWidthMm({ text: longer, heightMm }) <= mostMm)
      lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
