import type { Frame } from '../base/index.ts';
import type { Chain } from '../curve/index.ts';
import { svgPath } from '../files/index.ts';

/**
 * A line ready to be painted: `path` is the `d` of an SVG path in millimetres, y down. `answersTo` names the numbers that a
 * hand on this line is on: touch one and the other lights up.
 */
export interface ShownLine<Kind extends string = string> {
  readonly kind: Kind;
  readonly path: string;
  readonly answersTo: readonly string[];
}

/** A chain with its y turned down from `topMm`. */
export function shownLine<Kind extends string, F extends Frame>(
  kind: Kind,
  chain: Chain<F>,
  topMm: number,
  answersTo: readonly string[] = [],
): ShownLine<Kind> {
  return { kind, path: svgPath(chain, 0, topMm), answersTo };
}
