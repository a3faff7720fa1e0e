import type { Chain } from '../curve/index.ts';

/** A board of even thickness: closed lines of exact arcs, holes among them, from one height to another, mm. */
export interface Board {
  readonly outer: Chain<'body'>;
  readonly holes: readonly Chain<'body'>[];
  readonly fromZMm: number;
  readonly toZMm: number;
}
