import * as z from 'zod';
import { type Frame, WRITE_MM } from '../base/index.ts';
import type { Chain } from '../curve/index.ts';

/** A chain as documents hold it: vertices `[x, y, bulge]`, millimetres. */
export const chainDocument = z
  .looseObject({
    closed: z.boolean(),
    vertices: z
      .array(z.tuple([z.number(), z.number(), z.number()]))
      .min(2, { error: 'two vertices or more' }),
  })
  .meta({ id: 'Chain' });

export type ChainDocument = z.infer<typeof chainDocument>;

export function chainToDocument<F extends Frame>(chain: Chain<F>): ChainDocument {
  return { closed: chain.closed, vertices: chain.vertices.map(({ x, y, bulge }) => [x, y, bulge]) };
}

export function chainFromDocument<F extends Frame>({ closed, vertices }: ChainDocument): Chain<F> {
  return { closed, vertices: vertices.map(([x, y, bulge]) => ({ x, y, bulge })) };
}

/** Points as `[x, y]`, rounded to what files hold. */
export function pointsToDocument(
  points: readonly { readonly x: number; readonly y: number }[],
): [number, number][] {
  return points.map(({ x, y }) => [toFile(x), toFile(y)]);
}

/** A length rounded to the step of files. */
export function toFile(mm: number): number {
  const steps = Math.round(1 / WRITE_MM);
  return Math.round(mm * steps) / steps;
}
