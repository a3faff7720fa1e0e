import { signal } from '@preact/signals';
import { useState } from 'preact/hooks';
import type { Language, ShownDrawing } from '../../core/index.ts';
import { makingBench } from '../bench/bench.ts';
import { told } from '../words/sentences.ts';
import { language, print, words } from '../words/words.ts';
import { isNothingSound } from './OutlineAlone.tsx';
import { useShown } from './useShown.ts';

/** The pieces of an instrument, lettered in a language, drawn anew once it has changed; null while they are drawn for the first time. */
export function useDrawings(spokenIn: Language): readonly ShownDrawing[] | null {
  return useShown(async (asked) => makingBench().drawings(asked, spokenIn), spokenIn);
}

/** Every piece of some parts, hung on a wall beside each other, each at the same scale, with its name below. */
export function PieceWall({
  parts,
  lead,
  route,
  spokenIn = language.value,
}: {
  readonly parts: readonly string[] | null;
  /** Only pieces that are made this way. */
  readonly route?: 'print' | 'laser' | 'router';
  /** Name of a piece that hangs large beside the others. */
  readonly lead?: string;
  /** What their lettering speaks: as the page does unless said. */
  readonly spokenIn?: Language;
}) {
  const drawings = useDrawings(spokenIn);
  const [held, hold] = useState<string | null>(null);
  if (drawings === null)
    return <p class="wall-still">{isNothingSound() ? words().noPieces : words().take.working}</p>;
  const shown = drawings.filter(
    ({ part, routes }) =>
      (parts === null || parts.includes(part)) && (route === undefined || routes.includes(route)),
  );
  const near = shown.find(({ name }) => name === held) ?? null;
  const first = lead === undefined ? undefined : shown.find(({ name }) => name === lead);
  if (first && !near)
    return (
      <div class="wall with-lead">
        <Piece drawing={first} size="large" onTouch={() => hold(first.name)} />
        <div class="wall-rest">
          {shown
            .filter((drawing) => drawing !== first)
            .map((drawing) => (
              <Piece key={drawing.name} drawing={drawing} size="small" onTouch={() => hold(drawing.name)} />
            ))}
        </div>
      </div>
    );
  return (
    <div class="wall">
      {near && <Piece drawing={near} size="near" onTouch={() => hold(null)} />}
      {!near &&
        shown.map((drawing) => (
          <Piece key={drawing.name} drawing={drawing} size="small" onTouch={() => hold(drawing.name)} />
        ))}
    </div>
  );
}

/** mm around a piece; px a millimetre has on the wall at most. */
const MARGIN_MM = 3;
const WALL_WIDTH = 760;
/** px of a window on which pieces hang at the sizes below, and how much larger they hang at most on a large one. */
const USUAL_WINDOW = { width: 1440, height: 900 };
const MOST_ROOM = 2;
/** How much larger pieces hang than on a usual window. */
const room = signal(roomOf());
globalThis.addEventListener?.('resize', () => {
  room.value = roomOf();
});

function roomOf(): number {
  const { innerWidth = 0, innerHeight = 0 } = globalThis;
  const share = Math.min(innerWidth / USUAL_WINDOW.width, innerHeight / USUAL_WINDOW.height);
  return Math.min(MOST_ROOM, Math.max(1, share));
}

/** At most: px a millimetre has, px across, px high. */
const SIZES = {
  small: [1.25, WALL_WIDTH, 420],
  large: [8, 380, 680],
  near: [8, WALL_WIDTH, 620],
} as const;

function Piece({
  drawing,
  size,
  onTouch,
}: {
  readonly drawing: ShownDrawing;
  readonly size: 'small' | 'large' | 'near';
  readonly onTouch: () => void;
}) {
  const { widthMm, heightMm, title, lines, lettering, notes, count } = drawing;
  const [wide, tall] = [widthMm + 2 * MARGIN_MM, heightMm + 2 * MARGIN_MM];
  const isNear = size === 'near';
  const more = room.value;
  const scale = Math.min(
    ...SIZES[size].map((most, place) => (most * more) / ([1, wide, tall][place] as number)),
  );
  return (
    <figure class={isNear ? 'piece near' : 'piece'}>
      <button
        type="button"
        class="piece-touch"
        aria-label={told(title)}
        aria-expanded={isNear}
        onClick={onTouch}
      >
        <svg
          width={wide * scale}
          height={tall * scale}
          viewBox={`${-MARGIN_MM} ${-MARGIN_MM} ${wide} ${tall}`}
          aria-hidden="true"
        >
          {lines.map(({ kind, path }, index) => (
            <path key={index} class={`piece-line ${kind}`} d={path} vector-effect="non-scaling-stroke" />
          ))}
          {isNear &&
            lettering.map(({ text, at, heightMm: high, turnRad, anchor }, index) => (
              <text
                key={index}
                class="lettering"
                x={at[0]}
                y={at[1]}
                font-size={high * 1.4}
                text-anchor={anchor}
                transform={`rotate(${(-turnRad * 180) / Math.PI} ${at[0]} ${at[1]})`}
              >
                {text}
              </text>
            ))}
        </svg>
      </button>
      <figcaption>
        {told(title)}
        <span class="small">
          {`${print(widthMm)} × ${print(heightMm)}${count > 1 ? `, ${words().take.asSheet(count)}` : ''}`}
        </span>
        {isNear &&
          notes.map((note) => (
            <p key={note} class="small">
              {told(note)}
            </p>
          ))}
      </figcaption>
    </figure>
  );
}
