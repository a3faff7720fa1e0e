import { useRef, useState } from 'preact/hooks';
import { aim, type InHand, inHand, takeInHand } from '../keeping/marking.ts';
import type { MarkKind } from '../keeping/said.ts';
import { words } from '../words/words.ts';

type Place = readonly [number, number];
type Mark = Exclude<InHand, 'glass' | null>;

/** How a picture lies under the hand. */
export interface Sight {
  readonly width: number;
  readonly height: number;
  /** px of the picture's origin, and px that one of its units has. */
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  /** Where the glass stands first; how far an arrow key carries it; half the ring that one press draws. */
  readonly start: Place;
  readonly step: number;
  readonly ring: number;
  readonly tell: (at: Place) => string;
  readonly put: (kind: Mark, places: readonly Place[]) => void;
}

/** px that a hand moves between two places of a line. */
const APART = 4;

/**
 * What lies over a picture while the hand holds the glass or a mark: drawing with mouse, pen or finger; with the keys, arrows
 * carry the cross and Enter puts the mark down.
 */
export function HandLayer({ sight }: { readonly sight: Sight }) {
  const [line, setLine] = useState<readonly Place[]>([]);
  const [told, setTold] = useState('');
  const isDown = useRef(false);
  const held = inHand.value;
  if (held === null) return null;
  const { x, y, scale, step } = sight;
  const placeOf = (event: PointerEvent): Place => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    return [(event.clientX - box.left - x) / scale, (event.clientY - box.top - y) / scale];
  };
  const at = aim.value ?? sight.start;
  const put = (places: readonly Place[]) => {
    const last = places.at(-1);
    if (last === undefined || held === 'glass') return;
    if (held === 'edge') sight.put(held, [last]);
    else if (held === 'excluded' && places.length < 3) sight.put(held, ringRound(last, sight.ring));
    else sight.put(held, places);
  };
  return (
    <div
      class="hand-layer"
      role="application"
      tabIndex={0}
      aria-label={words().see.layer[held]}
      onKeyDown={(event) => {
        const way = ARROWS[event.key];
        if (way) {
          event.preventDefault();
          const far = step * (event.shiftKey ? 10 : 1);
          const next: Place = [at[0] + far * way[0], at[1] + far * way[1]];
          aim.value = next;
          setTold(sight.tell(next));
        } else if (event.key === 'Enter' || event.key === ' ') {
          event.preventDefault();
          put([at]);
        } else if (event.key === 'Escape') takeInHand(null);
      }}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        isDown.current = true;
        const place = placeOf(event);
        aim.value = place;
        setLine([place]);
      }}
      onPointerMove={(event) => {
        if (!isDown.current && event.pointerType !== 'mouse') return;
        const place = placeOf(event);
        aim.value = place;
        if (!isDown.current) return;
        const last = line.at(-1);
        const isFar = !last || Math.hypot(place[0] - last[0], place[1] - last[1]) * scale >= APART;
        if (isFar) setLine([...line, place]);
      }}
      onPointerUp={() => {
        if (!isDown.current) return;
        isDown.current = false;
        put(line);
        setLine([]);
      }}
      onPointerCancel={() => {
        isDown.current = false;
        setLine([]);
      }}
    >
      <svg width={sight.width} height={sight.height} aria-hidden="true">
        {held !== 'glass' && line.length > 1 && (
          <MarkLine d={pathOf(line, held === 'excluded', sight)} kind={held} />
        )}
        <path
          class="aim"
          d={`M${x + at[0] * scale - 12} ${y + at[1] * scale}h8m8 0h8M${x + at[0] * scale} ${y + at[1] * scale - 12}v8m0 8v8`}
        />
      </svg>
      <span class="unseen" role="status">
        {told}
      </span>
    </div>
  );
}

const ARROWS: Readonly<Record<string, Place>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Corners of the ring that stands for a stretch round one place. */
const CORNERS = 16;

function ringRound([x, y]: Place, radius: number): readonly Place[] {
  return Array.from({ length: CORNERS }, (_, corner): Place => {
    const turn = (2 * Math.PI * corner) / CORNERS;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
}

type Lie = Pick<Sight, 'x' | 'y' | 'scale'>;

function pathOf(places: readonly Place[], isClosed: boolean, { x, y, scale }: Lie): string {
  return `M${places.map(([u, v]) => `${x + u * scale} ${y + v * scale}`).join('L')}${isClosed ? 'Z' : ''}`;
}

function MarkLine({ d, kind }: { readonly d: string; readonly kind: Mark }) {
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

/** A plus on the body, a cross beside it, a lozenge on the edge. */
const SIGNS: Readonly<Record<MarkKind, (x: number, y: number) => string>> = {
  inside: (x, y) => `M${x - 7} ${y}h14M${x} ${y - 7}v14`,
  outside: (x, y) => `M${x - 6} ${y - 6}l12 12M${x - 6} ${y + 6}l12 -12`,
  edge: (x, y) => `M${x} ${y - 7}l7 7l-7 7l-7 -7z`,
  excluded: (x, y) => `M${x - 7} ${y - 7}h14v14h-14z`,
};
