import { accept, type Box, type Checked, refuse } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import { type Drawing, letteringStrokes } from '../drawing/index.ts';
import { finiteDrawing } from './millimetres.ts';

/** What a tool does along a path; also the name of the layer or group in every cut file. */
export type ToolMeaning = 'text' | 'score' | 'cut-inside' | 'cut';

/**
 * The order a tool works in: marks while the sheet is whole, then holes, and the outer edge last, so that nothing
 * drops before it is done.
 */
export const TOOL_ORDER: readonly ToolMeaning[] = ['text', 'score', 'cut-inside', 'cut'];

export interface ToolPaths {
  readonly paths: readonly { readonly meaning: ToolMeaning; readonly chain: Chain<'drawing'> }[];
  readonly box: Box<'drawing'>;
}

/**
 * What a tool follows in a drawing, in working order: no reference lines, no notes, lettering as strokes.
 * Faults: `file.not-finite`, `file.nothing-to-cut`.
 */
export function toolPaths(drawing: Drawing): Checked<ToolPaths> {
  const finite = finiteDrawing(drawing);
  if (!finite.ok) return finite;
  const strokes = drawing.lettering.flatMap(letteringStrokes);
  const paths = TOOL_ORDER.flatMap((meaning) =>
    (meaning === 'text'
      ? strokes
      : drawing.lines.filter((line) => line.meaning === meaning).map((l) => l.chain)
    )
      .filter((chain) => chain.vertices.length > 1)
      .map((chain) => ({ meaning, chain })),
  );
  if (!paths.some((path) => path.meaning !== 'text'))
    return refuse({
      code: 'file.nothing-to-cut',
      at: drawing.title,
      found: 'no line to cut or score',
      need: 'at least one',
      remedy: 'leave this piece out of the cut files',
    });
  const boxes = paths.map((path) => boundsOf(path.chain));
  return accept({
    paths,
    box: {
      min: { x: Math.min(...boxes.map((b) => b.min.x)), y: Math.min(...boxes.map((b) => b.min.y)) },
      max: { x: Math.max(...boxes.map((b) => b.max.x)), y: Math.max(...boxes.map((b) => b.max.y)) },
    },
  });
}
