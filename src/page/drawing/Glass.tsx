import type { ComponentChildren, RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { aim, type InHand, inHand, isLaid } from '../keeping/marking.ts';
import type { MarkKind } from '../keeping/said.ts';
import { words } from '../words/words.ts';
import { ARROWS, COARSE } from './arrows.ts';
import { holdsFinger } from './holdsFinger.ts';
import { MarkLine, type Place, pathOf, SIGNS } from './markSigns.tsx';

/** px of the glass; it is drawn smaller or larger by the page's style. */
export const GLASS_RADIUS = 98;
/** px about a mark where a hand takes hold of it. */
const REACH = 22;
/** px that a hand must go before a mark is moved and not only touched. */
const PULL_PX = 1.5;
/** ms that the keys must rest before a mark is put where they carried it: one step for all of them. */
const REST_MS = 500;
/** px of the glass that an arrow key carries a mark. */
const KEY_PX = 1;

/** A mark that can be taken hold of in the glass. */
export interface GlassMark {
  readonly kind: MarkKind | 'bar';
  readonly places: readonly Place[];
  readonly move: (place: number, to: Place) => void;
}

interface Held {
  readonly mark: number;
  readonly place: number;
  readonly to: Place;
}

type Pulled =
  | {
      readonly what: 'mark';
      readonly from: Place;
      readonly was: Place;
      readonly mark: number;
      readonly place: number;
    }
  | { readonly what: 'glass'; readonly from: Place; readonly was: Place }
  | { readonly what: 'new'; readonly from: Place };

/**
 * A glass over the picture in which the hand works as finely as it sees: marks are put and moved in it, and with nothing but the
 * glass in hand the picture is moved under it.
 */
export function Glass({
  at,
  pxPerUnit,
  canvas,
  shift = [0, 0],
  marks,
  put,
  caption,
  isFar,
  children,
}: {
  /** What stands in its middle, in the units of the picture. */
  readonly at: Place;
  readonly pxPerUnit: number;
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  /** Where its picture has not come yet: how far that lies off, in units. */
  readonly shift?: Place;
  readonly marks: readonly GlassMark[];
  readonly put: (kind: Exclude<InHand, 'glass' | null>, at: Place) => void;
  readonly caption: string;
  /** It stands at the right of the picture. */
  readonly isFar: boolean;
  /** Lines in the units of the picture. */
  readonly children?: ComponentChildren;
}) {
  const kind = inHand.value;
  const [held, showHeld] = useState<Held | null>(null);
  const [fresh, showFresh] = useState<Place | null>(null);
  // A quick hand is done before anything is drawn anew.
  const now = useRef<{ held: Held | null; fresh: Place | null }>({ held: null, fresh: null });
  const hold = (one: Held | null) => {
    now.current.held = one;
    showHeld(one);
  };
  const setFresh = (place: Place | null) => {
    now.current.fresh = place;
    showFresh(place);
  };
  const pulled = useRef<Pulled | null>(null);
  const svg = useRef<SVGSVGElement>(null);
  const resting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => () => clearTimeout(resting.current), []);
  // A mark that was let go of is where the record says it is, once that is so.
  useEffect(() => hold(null), [marks.map(({ places }) => places.join(' ')).join()]);
  const text = words().see;
  const lie = { x: GLASS_RADIUS - at[0] * pxPerUnit, y: GLASS_RADIUS - at[1] * pxPerUnit, scale: pxPerUnit };
  const placesOf = (mark: number): readonly Place[] =>
    (marks[mark]?.places ?? []).map((place, n) =>
      held?.mark === mark && held.place === n ? held.to : place,
    );
  const inPx = ([x, y]: Place): Place => [lie.x + x * pxPerUnit, lie.y + y * pxPerUnit];
  const isInside = (place: Place) => {
    const [x, y] = inPx(place);
    return Math.hypot(x - GLASS_RADIUS, y - GLASS_RADIUS) < GLASS_RADIUS;
  };
  /** Px of the glass, whatever its size on the page. */
  const pxOf = (event: PointerEvent): Place => {
    const box = svg.current?.getBoundingClientRect();
    if (!box) return [0, 0];
    const times = (2 * GLASS_RADIUS) / box.width;
    return [(event.clientX - box.left) * times, (event.clientY - box.top) * times];
  };
  const placeAt = ([x, y]: Place): Place => [(x - lie.x) / pxPerUnit, (y - lie.y) / pxPerUnit];
  const nearest = (px: Place) => {
    const near = marks
      .flatMap(({ places }, mark) =>
        places.map((place, n) => ({ mark, place: n, was: place, px: inPx(place) })),
      )
      .map((one) => ({ ...one, far: Math.hypot(one.px[0] - px[0], one.px[1] - px[1]) }))
      .toSorted((a, b) => a.far - b.far)[0];
    return near && near.far < REACH ? near : null;
  };
  const down = (event: PointerEvent) => {
    if (kind === null || event.button > 0) return;
    svg.current?.setPointerCapture(event.pointerId);
    isLaid.value = true;
    const from = pxOf(event);
    const near = nearest(from);
    if (near) pulled.current = { what: 'mark', from, ...near };
    else if (kind === 'glass') pulled.current = { what: 'glass', from, was: at };
    else {
      pulled.current = { what: 'new', from };
      setFresh(placeAt(from));
    }
  };
  const move = (event: PointerEvent) => {
    const one = pulled.current;
    if (one === null) return;
    const px = pxOf(event);
    const [x, y] = [(px[0] - one.from[0]) / pxPerUnit, (px[1] - one.from[1]) / pxPerUnit];
    if (one.what === 'new') setFresh(placeAt(px));
    else if (one.what === 'glass') aim.value = [one.was[0] - x, one.was[1] - y];
    else if (now.current.held || Math.hypot(x, y) * pxPerUnit > PULL_PX)
      hold({ mark: one.mark, place: one.place, to: [one.was[0] + x, one.was[1] + y] });
  };
  const up = () => {
    const one = pulled.current;
    pulled.current = null;
    const { held: moved, fresh: placed } = now.current;
    if (one?.what === 'new' && placed && kind !== null && kind !== 'glass') put(kind, placed);
    if (one?.what === 'mark' && moved) marks[moved.mark]?.move(moved.place, moved.to);
    setFresh(null);
  };
  const nudge = (event: KeyboardEvent, mark: number, place: number) => {
    const way = ARROWS[event.key];
    const last = now.current.held;
    const isSame = last?.mark === mark && last.place === place;
    const was = isSame ? last.to : marks[mark]?.places[place];
    if (way === undefined || was === undefined) return;
    event.preventDefault();
    const far = (KEY_PX * (event.shiftKey ? COARSE : 1)) / pxPerUnit;
    const to: Place = [was[0] + way[0] * far, was[1] + way[1] * far];
    hold({ mark, place, to });
    clearTimeout(resting.current);
    resting.current = setTimeout(() => marks[mark]?.move(place, to), REST_MS);
  };
  return (
    <figure class={['glass', isFar && 'at-right', kind && 'at-work'].filter(Boolean).join(' ')}>
      <div class="glass-round">
        <canvas
          ref={canvas}
          width={2 * GLASS_RADIUS}
          height={2 * GLASS_RADIUS}
          style={{
            transform: `translate(${(50 * shift[0] * pxPerUnit) / GLASS_RADIUS}%, ${(50 * shift[1] * pxPerUnit) / GLASS_RADIUS}%)`,
          }}
        />
      </div>
      <svg
        ref={svg}
        viewBox={`0 0 ${2 * GLASS_RADIUS} ${2 * GLASS_RADIUS}`}
        role="group"
        aria-label={text.glass}
        {...(kind && holdsFinger)}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={() => {
          pulled.current = null;
          setFresh(null);
          hold(null);
        }}
      >
        <clipPath id="glass">
          <circle cx={GLASS_RADIUS} cy={GLASS_RADIUS} r={GLASS_RADIUS - 2} />
        </clipPath>
        <g clip-path="url(#glass)">
          <g transform={`translate(${lie.x} ${lie.y}) scale(${pxPerUnit})`}>{children}</g>
          {marks.map((mark, number) => {
            const places = placesOf(number);
            return (
              <g key={number}>
                {places.length > 1 && (
                  <MarkLine d={pathOf(places, mark.kind === 'excluded', lie)} kind={mark.kind} />
                )}
                {places.map((place, n) => {
                  if (!isInside(place)) return null;
                  const [x, y] = inPx(place);
                  return (
                    <g
                      key={n}
                      class="glass-mark"
                      {...(kind !== null && {
                        role: 'button',
                        tabindex: 0,
                        'aria-label': text.moveMark(
                          mark.kind === 'bar' ? text.says.bar : text.marks[mark.kind],
                        ),
                      })}
                      onKeyDown={(event) => nudge(event, number, n)}
                    >
                      <rect x={x - REACH} y={y - REACH} width={2 * REACH} height={2 * REACH} />
                      {places.length > 1 ? (
                        <circle class="glass-place" cx={x} cy={y} r="4" />
                      ) : (
                        <MarkLine d={SIGNS[mark.kind](x, y)} kind={mark.kind} />
                      )}
                    </g>
                  );
                })}
              </g>
            );
          })}
          {fresh && kind !== null && kind !== 'glass' && (
            <MarkLine d={SIGNS[kind](...inPx(fresh))} kind={kind} />
          )}
          {kind !== null && (
            <path
              class="aim"
              d={`M${GLASS_RADIUS - 16} ${GLASS_RADIUS}h12m8 0h12M${GLASS_RADIUS} ${GLASS_RADIUS - 16}v12m0 8v12`}
            />
          )}
        </g>
        <circle class="glass-rim" cx={GLASS_RADIUS} cy={GLASS_RADIUS} r={GLASS_RADIUS - 2} />
      </svg>
      <figcaption class="tag">
        {caption}
        {kind !== null && isLaid.value && (
          <button
            type="button"
            class="linked"
            onClick={() => {
              isLaid.value = false;
            }}
          >
            {text.takeGlassUp}
          </button>
        )}
      </figcaption>
    </figure>
  );
}
