import { boundsOf } from '../curve/index.ts';
import type { Drawing, PiecePart } from '../drawing/index.ts';
import { type ShownLine, shownLine } from './shownLine.ts';

/** A piece to make, as it looks: millimetres, y down from its upper edge, x from its left. */
export interface ShownDrawing {
  readonly name: string;
  readonly title: string;
  readonly part: PiecePart;
  readonly count: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly lines: readonly ShownLine<'cut' | 'cut-inside' | 'score' | 'draw' | 'centre'>[];
  readonly lettering: readonly {
    readonly text: string;
    readonly at: readonly [number, number];
    readonly heightMm: number;
    readonly turnRad: number;
    readonly anchor: 'start' | 'middle' | 'end';
  }[];
  readonly notes: readonly string[];
  readonly routes: readonly string[];
}

/** A drawing to be looked at. */
export function shownDrawing(drawing: Drawing): ShownDrawing {
  const boxes = drawing.lines
    .filter(({ chain }) => chain.vertices.length > 1)
    .map(({ chain }) => boundsOf(chain));
  const left = Math.min(...boxes.map(({ min }) => min.x));
  const right = Math.max(...boxes.map(({ max }) => max.x));
  const bottom = Math.min(...boxes.map(({ min }) => min.y));
  const top = Math.max(...boxes.map(({ max }) => max.y));
  return {
    name: drawing.name,
    title: drawing.title,
    part: drawing.part,
    count: drawing.count,
    widthMm: right - left,
    heightMm: top - bottom,
    lines: drawing.lines.map(({ meaning, chain, centreLine }) => {
      const moved = {
        ...chain,
        vertices: chain.vertices.map((vertex) => ({ ...vertex, x: vertex.x - left })),
      };
      return shownLine(centreLine ? 'centre' : meaning, moved, top);
    }),
    lettering: drawing.lettering.map(({ text, at, heightMm, turnRad, anchor }) => ({
      text,
      at: [at.x - left, top - at.y] as const,
      heightMm,
      turnRad,
      anchor,
    })),
    notes: drawing.notes,
    routes: drawing.routes,
  };
}
