import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { ShownTrace, ShownWear } from '../../core/index.ts';
import { DIFFERENCE_TIMES } from '../../core/index.ts';
import { inHand, inShown, liftGlass, moveMarkShown, putMarkShown, showMarks } from '../keeping/marking.ts';
import { said } from '../keeping/saying.ts';
import { photograph } from '../keeping/tracing.ts';
import { touched } from '../store.ts';
import { print, words } from '../words/words.ts';
import { Cased } from './Cased.tsx';
import { HandLayer, putWith, type Sight } from './HandLayer.tsx';
import { Marks } from './markSigns.tsx';
import { ShownGlass } from './ShownGlass.tsx';
import { useSize } from './useSize.ts';
import { wearName } from './wearName.ts';

/** Whether the edge as found is drawn ten times as far from the restored one. */
export const isTenfold = signal(false);

/** Share of the drawing's width at which as found turns into restored. */
const line = signal(0.66);

/** px round the body where it stands in the photograph. */
const ABOVE = { wide: 78, narrow: 26 } as const;
const BELOW = { wide: 92, narrow: 74 } as const;
const NARROW = 560;
/** Of the lower bout: beside the waist, where the names of the sides find room. */
const SIDE_SHARE = 0.41;
/** mm. Half the stretch that one press with "do not believe this" takes out. */
const RING_MM = 8;

/** The photograph square on, the edge as found left of a line and as meant right of it, and the wood that was put back. */
export function PhotographDrawing({ shown }: { readonly shown: ShownTrace }) {
  const { ref, size } = useSize<HTMLDivElement>();
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const { widthPx, heightPx, rgba } = shown.picture;
    const pen = canvas.current?.getContext('2d');
    if (pen) pen.putImageData(new ImageData(rgba as Uint8ClampedArray<ArrayBuffer>, widthPx, heightPx), 0, 0);
  }, [shown]);
  useEffect(() => liftGlass, []);
  const own = said.value.marks.filter(({ on }) => on === photograph.value?.name);
  useEffect(() => {
    if (own.length > 0) void showMarks(shown.shot, own);
  }, [shown, own.length]);
  const marks = own.flatMap((mark) => {
    const places = inShown.value.get(mark);
    return places ? [{ mark, kind: mark.kind, places }] : [];
  });
  const { picture } = shown;
  const room = size && size.width < NARROW ? 'narrow' : 'wide';
  const scale = size ? Math.max(0.1, (size.height - ABOVE[room] - BELOW[room]) / shown.lengthMm) : 1;
  const [centreX, topY] = [(size?.width ?? 0) / 2, ABOVE[room]];
  const divide = line.value * (size?.width ?? 0);
  const text = words().see;
  const lie = { x: centreX, y: topY, scale };
  const sight: Sight | null = size && {
    ...size,
    ...lie,
    start: [0, shown.lengthMm / 2],
    step: 0.5,
    ring: RING_MM,
    tell: ([x, y]) => text.here(print(Math.abs(x)), x < 0 ? 'left' : 'right', print(shown.lengthMm - y)),
    put: (kind, places) => {
      if (kind !== 'bar') void putMarkShown(kind, places);
    },
  };
  const sides =
    shown.face === 'top'
      ? [text.sideNames.bass, text.sideNames.treble]
      : [text.sideNames.treble, text.sideNames.bass];
  return (
    <div ref={ref} class="sheet photograph">
      <canvas
        ref={canvas}
        width={picture.widthPx}
        height={picture.heightPx}
        style={{
          left: `${centreX + picture.leftMm * scale}px`,
          top: `${topY + picture.topMm * scale}px`,
          width: `${(picture.widthPx / picture.pxPerMm) * scale}px`,
          height: `${(picture.heightPx / picture.pxPerMm) * scale}px`,
        }}
      />
      {size && (
        <svg width={size.width} height={size.height} role="group" aria-label={text.question}>
          <clipPath id="found-side">
            <rect x="0" y="0" width={divide} height={size.height} />
          </clipPath>
          <clipPath id="restored-side">
            <rect x={divide} y="0" width={size.width} height={size.height} />
          </clipPath>
          <g clip-path={isTenfold.value ? undefined : 'url(#found-side)'}>
            <g transform={`translate(${centreX} ${topY}) scale(${scale})`}>
              {(isTenfold.value ? shown.tenfold : shown.asFound).map((path) => (
                <Cased key={path} d={path} kind="found" />
              ))}
            </g>
          </g>
          <g transform={`translate(${centreX} ${topY}) scale(${scale})`}>
            {shown.wear.map((wear) => (
              <path
                key={wearName(wear)}
                class={touched.value === wearName(wear) ? 'wear-wood touched' : 'wear-wood'}
                d={wear.path}
                vector-effect="non-scaling-stroke"
              />
            ))}
            {shown.unsure.map(({ path, state }) => (
              <Cased key={path} d={path} kind={state} />
            ))}
          </g>
          <g clip-path={isTenfold.value ? undefined : 'url(#restored-side)'}>
            <g transform={`translate(${centreX} ${topY}) scale(${scale})`}>
              <Cased d={shown.restored.path} kind="meant" />
            </g>
          </g>
          <Marks marks={marks} lie={lie} />
          {shown.wear.map((wear) => (
            <circle
              key={wearName(wear)}
              class="wear-room"
              aria-hidden="true"
              cx={centreX + wear.at[0] * scale}
              cy={topY + wear.at[1] * scale}
              r="22"
              onClick={() => {
                touched.value = wearName(wear);
              }}
            />
          ))}
          {shown.wear.map((wear) => (
            <Wear
              key={wearName(wear)}
              wear={wear}
              x={centreX + wear.at[0] * scale}
              y={topY + wear.at[1] * scale}
            />
          ))}
          <path class="cased-line divide" d={`M${divide} 0V${size.height}`} />
          {room === 'wide' && (
            <>
              <SideName
                text={sides[0] ?? ''}
                x={centreX - shown.widthMm * SIDE_SHARE * scale}
                y={topY + 0.42 * shown.lengthMm * scale}
              />
              <SideName
                text={sides[1] ?? ''}
                x={centreX + shown.widthMm * SIDE_SHARE * scale}
                y={topY + 0.42 * shown.lengthMm * scale}
              />
            </>
          )}
        </svg>
      )}
      {sight && <HandLayer sight={sight} />}
      {sight && (
        <ShownGlass
          shown={shown}
          isInHand={inHand.value !== null}
          marks={marks.map(({ mark, kind, places }) => ({
            kind,
            places,
            move: (place, to) => void moveMarkShown(mark, place, to),
          }))}
          put={(kind, at) => putWith(sight, kind, [at])}
        />
      )}
      {isTenfold.value && <p class="tag tenfold">{text.tenfold(DIFFERENCE_TIMES)}</p>}
      <div class="divider" style={{ '--divide': `${100 * line.value}%` }}>
        <span class="tag before">{text.asFound}</span>
        <span class="tag after">{text.restored}</span>
        <input
          type="range"
          min="0"
          max="100"
          step="1"
          aria-label={text.slider}
          value={Math.round(100 * line.value)}
          onInput={(event) => {
            line.value = Number(event.currentTarget.value) / 100;
          }}
        />
      </div>
    </div>
  );
}

function Wear({ wear, x, y }: { readonly wear: ShownWear; readonly x: number; readonly y: number }) {
  const name = wearName(wear);
  const isTouched = touched.value === name;
  return (
    <g
      class={isTouched ? 'wear touched' : 'wear'}
      role="button"
      tabindex={0}
      aria-label={`${words().see.sides[wear.side]}, ${words().see.sections[wear.section] ?? wear.section}, ${print(wear.depthMm)} mm`}
      onClick={() => {
        touched.value = isTouched ? null : name;
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter' || event.key === ' ') touched.value = isTouched ? null : name;
      }}
    >
      <circle class="wear-ring" cx={x} cy={y} r="13" />
    </g>
  );
}

function SideName({ text, x, y }: { readonly text: string; readonly x: number; readonly y: number }) {
  return (
    <text class="side-name" x={x} y={y} text-anchor="middle">
      {text}
    </text>
  );
}
