import type { MarkKind } from '../keeping/said.ts';

/** A place of a picture, in its own units. */
export type Place = readonly [x: number, y: number];

/** How a picture lies: px of its origin, and px that one of its units has. */
export interface Lie {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

export function pathOf(places: readonly Place[], isClosed: boolean, { x, y, scale }: Lie): string {
  return `M${places.map(([u, v]) => `${x + u * scale} ${y + v * scale}`).join('L')}${isClosed ? 'Z' : ''}`;
}

export function MarkLine({ d, kind }: { readonly d: string; readonly kind: MarkKind | 'bar' }) {
  return (
    <>
      <path class="casing" d={d} />
      <path class={`mark-line ${kind}`} d={d} />
    </>
  );
}

/** Marks as they lie on a picture: a line, a ring, or at one place a sign of its kind. */
export function Marks({
  marks,
  lie,
}: {
  readonly marks: readonly { readonly kind: MarkKind; readonly places: readonly Place[] }[];
  readonly lie: Lie;
}) {
  return (
    <g aria-hidden="true">
      {marks.map(({ kind, places }) => {
        const [first] = places;
        if (first === undefined) return null;
        const key = `${kind} ${first.join(' ')} ${places.length}`;
        if (places.length > 1)
          return <MarkLine key={key} d={pathOf(places, kind === 'excluded', lie)} kind={kind} />;
        const [x, y] = [lie.x + first[0] * lie.scale, lie.y + first[1] * lie.scale];
        return <MarkLine key={key} d={SIGNS[kind](x, y)} kind={kind} />;
      })}
    </g>
  );
}

/** A plus on the body, a cross beside it, a lozenge on the edge, a stroke at an end of a scale bar. */
export const SIGNS: Readonly<Record<MarkKind | 'bar', (x: number, y: number) => string>> = {
  inside: (x, y) => `M${x - 7} ${y}h14M${x} ${y - 7}v14`,
  outside: (x, y) => `M${x - 6} ${y - 6}l12 12M${x - 6} ${y + 6}l12 -12`,
  edge: (x, y) => `M${x} ${y - 7}l7 7l-7 7l-7 -7z`,
  excluded: (x, y) => `M${x - 7} ${y - 7}h14v14h-14z`,
  bar: (x, y) => `M${x - 7} ${y}h14M${x} ${y - 7}v14`,
};
