import { useRef, useState } from 'preact/hooks';
import { aim, type InHand, inHand, isLaid, takeInHand } from '../keeping/marking.ts';
import { words } from '../words/words.ts';
import { ARROWS, COARSE } from './arrows.ts';
import { holdsFinger } from './holdsFinger.ts';
import { MarkLine, type Place, pathOf } from './markSigns.tsx';

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
  // A quick press is over before anything is drawn anew.
  const drawn = useRef<readonly Place[]>([]);
  const draw = (places: readonly Place[]) => {
    drawn.current = places;
    setLine(places);
  };
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
          const far = step * (event.shiftKey ? COARSE : 1);
          const next: Place = [at[0] + far * way[0], at[1] + far * way[1]];
          aim.value = next;
          setTold(sight.tell(next));
        } else if (event.key === 'Enter' || event.key === ' ') {
          event.preventDefault();
          putWith(sight, held, [at]);
        } else if (event.key === 'Escape') takeInHand(null);
      }}
      {...holdsFinger}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        isDown.current = true;
        isLaid.value = true;
        const place = placeOf(event);
        aim.value = place;
        draw([place]);
      }}
      onPointerMove={(event) => {
        // A glass that was laid somewhere stays there, so that the hand can go to work in it.
        if (!isDown.current && (event.pointerType !== 'mouse' || isLaid.value)) return;
        const place = placeOf(event);
        aim.value = place;
        if (!isDown.current) return;
        const last = drawn.current.at(-1);
        const isFar = !last || Math.hypot(place[0] - last[0], place[1] - last[1]) * scale >= APART;
        if (isFar) draw([...drawn.current, place]);
      }}
      onPointerUp={() => {
        if (!isDown.current) return;
        isDown.current = false;
        putWith(sight, held, drawn.current);
        draw([]);
      }}
      onPointerCancel={() => {
        isDown.current = false;
        draw([]);
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

/** Puts what is in hand on a picture: of the edge the last place, round one place a ring of what is not to be believed. */
export function putWith(sight: Pick<Sight, 'put' | 'ring'>, held: InHand, places: readonly Place[]): void {
  const last = places.at(-1);
  if (last === undefined || held === 'glass' || held === null) return;
  if (held === 'edge') sight.put(held, [last]);
  else if (held === 'excluded' && places.length < 3) sight.put(held, ringRound(last, sight.ring));
  else sight.put(held, places);
}

/** Corners of the ring that stands for a stretch round one place. */
const CORNERS = 16;

function ringRound([x, y]: Place, radius: number): readonly Place[] {
  return Array.from({ length: CORNERS }, (_, corner): Place => {
    const turn = (2 * Math.PI * corner) / CORNERS;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
}
