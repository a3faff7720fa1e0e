import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { ShownTrace, ShownWear } from '../../core/index.ts';
import { touched } from '../store.ts';
import { print, words } from '../words/words.ts';
import { useSize } from './useSize.ts';

/** Share of the drawing's width at which as found turns into restored. */
const line = signal(0.66);

/** px round the body where it stands in the photograph. */
const ABOVE = { wide: 78, narrow: 26 } as const;
const BELOW = { wide: 92, narrow: 74 } as const;
const NARROW = 560;
/** Of the lower bout: beside the waist, where the names of the sides find room. */
const SIDE_SHARE = 0.41;

/** The photograph square on, the edge as found left of a line and as meant right of it, and the wood that was put back. */
export function PhotographDrawing({ shown }: { readonly shown: ShownTrace }) {
  const { ref, size } = useSize<HTMLDivElement>();
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const { widthPx, heightPx, rgba } = shown.picture;
    const pen = canvas.current?.getContext('2d');
    if (pen) pen.putImageData(new ImageData(new Uint8ClampedArray(rgba), widthPx, heightPx), 0, 0);
  }, [shown]);
  const { picture } = shown;
  const room = size && size.width < NARROW ? 'narrow' : 'wide';
  const scale = size ? Math.max(0.1, (size.height - ABOVE[room] - BELOW[room]) / shown.lengthMm) : 1;
  const [centreX, topY] = [(size?.width ?? 0) / 2, ABOVE[room]];
  const divide = line.value * (size?.width ?? 0);
  const said = words().see;
  const sides =
    shown.face === 'top' ? [said.sides.bass, said.sides.treble] : [said.sides.treble, said.sides.bass];
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
        <svg width={size.width} height={size.height} role="img" aria-label={said.question}>
          <clipPath id="found-side">
            <rect x="0" y="0" width={divide} height={size.height} />
          </clipPath>
          <clipPath id="restored-side">
            <rect x={divide} y="0" width={size.width} height={size.height} />
          </clipPath>
          <g clip-path="url(#found-side)">
            <g transform={`translate(${centreX} ${topY}) scale(${scale})`}>
              {shown.asFound.map((path) => (
                <Cased key={path} d={path} kind="found" />
              ))}
            </g>
          </g>
          <g clip-path="url(#restored-side)">
            <g transform={`translate(${centreX} ${topY}) scale(${scale})`}>
              <Cased d={shown.restored.path} kind="meant" />
            </g>
          </g>
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
        </svg>
      )}
      <Glass shown={shown} />
      <div class="divider" style={{ '--divide': `${100 * line.value}%` }}>
        <span class="tag before">{said.asFound}</span>
        <span class="tag after">{said.restored}</span>
        <input
          type="range"
          min="0"
          max="100"
          step="1"
          aria-label={said.slider}
          value={Math.round(100 * line.value)}
          onInput={(event) => {
            line.value = Number(event.currentTarget.value) / 100;
          }}
        />
      </div>
    </div>
  );
}

/** A pale line on a dark casing: no colour of the paper can be trusted on a photograph. */
function Cased({ d, kind }: { readonly d: string; readonly kind: 'found' | 'meant' }) {
  return (
    <>
      <path class="casing" d={d} vector-effect="non-scaling-stroke" />
      <path class={`cased-line ${kind}`} d={d} vector-effect="non-scaling-stroke" />
    </>
  );
}

export function wearName({ side, section, stationMm }: ShownWear): string {
  return `wear.${side}.${section}.${Math.round(stationMm)}`;
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

/** Times larger than life the glass shows; its radius in px. */
const GLASS = 7;
const RADIUS = 98;
const PX_PER_CSS_MM = 96 / 25.4;

/** A glass over the touched piece of wear: the photograph, both edges and the wood between. */
function Glass({ shown }: { readonly shown: ShownTrace }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const wear = shown.wear.find((one) => wearName(one) === touched.value);
  const scale = GLASS * PX_PER_CSS_MM * 0.55;
  useEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen || !wear) return;
    const { picture } = shown;
    const sheet = new OffscreenCanvas(picture.widthPx, picture.heightPx);
    sheet
      .getContext('2d')
      ?.putImageData(
        new ImageData(new Uint8ClampedArray(picture.rgba), picture.widthPx, picture.heightPx),
        0,
        0,
      );
    pen.setTransform(1, 0, 0, 1, 0, 0);
    pen.clearRect(0, 0, 2 * RADIUS, 2 * RADIUS);
    pen.setTransform(scale, 0, 0, scale, RADIUS - wear.at[0] * scale, RADIUS - wear.at[1] * scale);
    pen.drawImage(
      sheet,
      picture.leftMm,
      picture.topMm,
      picture.widthPx / picture.pxPerMm,
      picture.heightPx / picture.pxPerMm,
    );
  }, [wear, shown]);
  if (!wear) return null;
  return (
    <figure class="glass">
      <canvas ref={canvas} width={2 * RADIUS} height={2 * RADIUS} />
      <svg width={2 * RADIUS} height={2 * RADIUS} aria-hidden="true">
        <clipPath id="glass">
          <circle cx={RADIUS} cy={RADIUS} r={RADIUS - 2} />
        </clipPath>
        <g clip-path="url(#glass)">
          <g
            transform={`translate(${RADIUS - wear.at[0] * scale} ${RADIUS - wear.at[1] * scale}) scale(${scale})`}
          >
            {shown.asFound.map((path) => (
              <Cased key={path} d={path} kind="found" />
            ))}
            <path class="casing" d={shown.restored.path} vector-effect="non-scaling-stroke" />
            <path class="cased-line put-back" d={shown.restored.path} vector-effect="non-scaling-stroke" />
          </g>
        </g>
        <circle class="glass-rim" cx={RADIUS} cy={RADIUS} r={RADIUS - 2} />
      </svg>
      <figcaption class="tag">{`${print(wear.depthMm)} mm, ${print(scale / PX_PER_CSS_MM, 0)} ×`}</figcaption>
    </figure>
  );
}
