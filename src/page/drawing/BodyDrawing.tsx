import { useRef } from 'preact/hooks';
import { overrule, type ShownBody, type ShownNote, type ShownWidth } from '../../core/index.ts';
import { beside } from '../keeping/beside.ts';
import { findingAt } from '../notebook/NumberList.tsx';
import { body, design, edit, faults, findings, held, stop, touched } from '../store.ts';
import { nameOf, print, words } from '../words/words.ts';
import { Dimension } from './Dimension.tsx';
import { isLifeSize } from './lifeSize.ts';
import { ScaleBar } from './ScaleBar.tsx';
import { type SheetPlace, sheetPlace } from './sheetPlace.ts';
import { useSize } from './useSize.ts';

/** The body from the side of the top: outline and form share this drawing, the stop decides what is in front. */
export function BodyDrawing() {
  const { ref, size } = useSize<HTMLDivElement>();
  const shown = body.value;
  const place =
    size && shown ? sheetPlace(size, shown.lengthMm, shown.widthMm, size.width < 700 ? 0.46 : 0.45) : null;
  return (
    <div ref={ref} class={isLifeSize.value ? 'sheet life-size' : 'sheet'}>
      {size && shown && place && (
        <svg width={place.width} height={place.height} role="group" aria-label={words().questions.outline}>
          <Lines shown={shown} place={place} />
          <Heights shown={shown} place={place} />
          {shown.widths.map((width) => (
            <Width key={width.name} width={width} shown={shown} place={place} />
          ))}
          {!place.isNarrow && <Notes shown={shown} place={place} right={place.width} />}
        </svg>
      )}
      {place && !place.isNarrow && <ScaleBar pxPerMm={place.pxPerMm} />}
      {faults.value.length > 0 && <p class="still">{words().showing}</p>}
    </div>
  );
}

function Lines({ shown, place }: { readonly shown: ShownBody; readonly place: SheetPlace }) {
  const { centreX, topY, pxPerMm } = place;
  const isForm = stop.value === 'form';
  return (
    <g
      transform={`translate(${centreX} ${topY}) scale(${pxPerMm})`}
      class={isForm ? 'body at-form' : 'body at-outline'}
    >
      <defs>
        <pattern
          id="end-grain"
          width={6 / pxPerMm}
          height={6 / pxPerMm}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-35)"
        >
          <path class="grain" d={`M0 0H${6 / pxPerMm}`} vector-effect="non-scaling-stroke" />
        </pattern>
      </defs>
      {shown.lines.map(({ kind, path, answersTo }, index) => (
        <path
          // Lines come in the same order each time.
          key={index}
          class={`line ${kind}${touched.value !== null && answersTo.includes(touched.value) ? ' lit' : ''}`}
          d={path}
          vector-effect="non-scaling-stroke"
        />
      ))}
      {beside.value && (
        <path class="line beside" d={beside.value.outline.path} vector-effect="non-scaling-stroke" />
      )}
      <path
        class="line centre"
        d={`M0 ${-20 / pxPerMm}V${shown.lengthMm + 20 / pxPerMm}`}
        vector-effect="non-scaling-stroke"
      />
    </g>
  );
}

/** Stations on one common line from the lower end, and the whole length beside them. */
function Heights({ shown, place }: { readonly shown: ShownBody; readonly place: SheetPlace }) {
  const { centreX, topY, pxPerMm, isNarrow } = place;
  const y = (stationMm: number) => topY + (shown.lengthMm - stationMm) * pxPerMm;
  const left = centreX - (shown.widthMm / 2) * pxPerMm;
  const lengthX = left - (isNarrow ? 46 : 140);
  const stationX = left - 80;
  const halfAt: Readonly<Record<string, number>> = Object.fromEntries(
    shown.widths.map(({ name, widthMm }) => [name, widthMm / 2]),
  );
  const rows = [
    ...shown.widths.map(({ name, stationMm }) => ({
      stationMm,
      half: halfAt[name] ?? 0,
      tone: toneOf(name),
    })),
    { stationMm: shown.cornersMm.upper, half: halfAt.upperBout ?? 0, tone: '' },
    { stationMm: shown.cornersMm.lower, half: halfAt.lowerBout ?? 0, tone: '' },
  ];
  return (
    <g>
      <path
        class="extension"
        d={`M${lengthX - 6} ${topY}H${centreX - 20}M${lengthX - 6} ${y(0)}H${centreX - 20}`}
      />
      <Dimension
        from={[lengthX, y(0)]}
        to={[lengthX, topY]}
        text={print(shown.lengthMm)}
        tone={toneOf('bodyLength')}
        isUpright
        isBig
      />
      {!isNarrow && (
        <>
          <path
            class="station-line"
            d={`M${stationX} ${y(0)}V${Math.min(...rows.map((row) => y(row.stationMm)))}`}
          />
          <circle class="dot" cx={stationX} cy={y(0)} r="3" />
          {rows.map(({ stationMm, half, tone }) => (
            <g key={stationMm} class={`dimension ${tone}`}>
              <path
                class="extension"
                d={`M${stationX - 6} ${y(stationMm)}H${centreX - half * pxPerMm - 4}`}
              />
              <path class="arrow" d={`M${stationX} ${y(stationMm)}l-1.700 9h3.400z`} />
              <text x={stationX - 12} y={y(stationMm) - 6} text-anchor="end">
                {print(stationMm)}
              </text>
            </g>
          ))}
        </>
      )}
    </g>
  );
}

/** A width across the body: a dimension that can be dragged at both ends, or moved with the arrow keys. */
function Width({
  width,
  shown,
  place,
}: {
  readonly width: ShownWidth;
  readonly shown: ShownBody;
  readonly place: SheetPlace;
}) {
  const { name, stationMm } = width;
  // The maker's own number stands at once where the hand is; the lines follow as soon as they are drawn.
  const isTraced = design.value?.outline.kind === 'traced';
  const given = isTraced ? undefined : (held.value ?? design.value)?.values[name]?.value;
  const widthMm = given ?? width.widthMm;
  const grip = useRef<{ readonly from: number; readonly mm: number; readonly side: number } | null>(null);
  const { centreX, topY, pxPerMm, isNarrow } = place;
  const y = topY + (shown.lengthMm - stationMm) * pxPerMm;
  const half = (widthMm / 2) * pxPerMm;
  const to = (mm: number) =>
    design.value === null ? null : overrule(design.value, name, Number(mm.toFixed(1)));
  const says = (mm: number) => `${nameOf(name)} ${print(mm)}`;
  const pull = (event: PointerEvent, side: number) => {
    if (isTraced) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    grip.current = { from: event.clientX, mm: widthMm, side };
    touched.value = name;
  };
  const wishOf = (event: PointerEvent): number | null => {
    const held = grip.current;
    return held && held.mm + (2 * held.side * (event.clientX - held.from)) / pxPerMm;
  };
  const drag = (event: PointerEvent) => {
    const mm = wishOf(event);
    const from = grip.current?.mm;
    if (mm !== null && Math.abs(mm) > 1 && (held.value !== null || mm !== from)) held.value = to(mm);
  };
  const letGo = (event: PointerEvent) => {
    const mm = wishOf(event);
    grip.current = null;
    const after = mm === null ? null : to(mm);
    // A touch alone changes nothing.
    if (held.value !== null && after && mm !== null) edit(says(mm), after);
    held.value = null;
  };
  const nudge = (event: KeyboardEvent) => {
    const way = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 }[event.key];
    if (way === undefined) return;
    event.preventDefault();
    // From the design as it stands, which may be ahead of what is drawn.
    const standing = design.value?.values[name]?.value ?? widthMm;
    const mm = (isTraced ? widthMm : standing) + way * (event.shiftKey ? 1 : 0.1);
    const after = to(mm);
    if (after) edit(says(mm), after);
  };
  return (
    <g class="width">
      <Dimension
        from={[centreX - half, y]}
        to={[centreX + half, y]}
        text={isNarrow ? '' : print(widthMm)}
        tone={toneOf(name)}
        share={name === 'waist' ? 0.5 : 0.36}
        isBig
      />
      {isNarrow && (
        <g class={`dimension ${toneOf(name)}`}>
          <path
            class="leader dotted"
            d={`M${centreX + half} ${y}H${centreX + (shown.widthMm / 2) * pxPerMm + 22}`}
          />
          <text class="big" x={centreX + (shown.widthMm / 2) * pxPerMm + 26} y={y} dy="0.34em">
            {print(widthMm)}
          </text>
        </g>
      )}
      {([-1, 1] as const).map((side) => (
        <rect
          key={side}
          class="grip"
          x={centreX + side * half - 22}
          y={y - 22}
          width="44"
          height="44"
          {...(side === 1
            ? {
                tabindex: 0,
                role: 'slider',
                'aria-label': nameOf(name),
                'aria-valuenow': widthMm,
                'aria-valuetext': `${print(widthMm)} mm`,
              }
            : { 'aria-hidden': true, tabindex: -1 })}
          onPointerDown={(event) => pull(event, side)}
          onPointerMove={drag}
          onPointerUp={letGo}
          onPointerCancel={letGo}
          onKeyDown={nudge}
          onFocus={() => {
            touched.value = name;
          }}
        />
      ))}
    </g>
  );
}

function toneOf(name: string): string {
  if (touched.value === name) return 'lit';
  return findingAt(findings.value, name) ? 'cold' : '';
}

/** px between the body and the notes, and the least from one note to the next. */
const NOTES_OFF = 44;
const NOTE_STEP = 48;

function Notes({
  shown,
  place,
  right,
}: {
  readonly shown: ShownBody;
  readonly place: SheetPlace;
  readonly right: number;
}) {
  const { centreX, topY, pxPerMm } = place;
  const x = centreX + (shown.widthMm / 2) * pxPerMm + NOTES_OFF;
  if (right - x < 150) return null;
  const sorted = shown.notes.toSorted((a, b) => a.at[1] - b.at[1]);
  let lowest = Number.NEGATIVE_INFINITY;
  return (
    <g>
      {sorted.map((note) => {
        const [ax, ay] = [centreX + note.at[0] * pxPerMm, topY + note.at[1] * pxPerMm];
        const y = Math.max(ay, lowest + NOTE_STEP);
        lowest = y;
        const { name, size } = noteWords(note);
        return (
          <g key={note.what} class="note">
            <circle class="dot" cx={ax} cy={ay} r="2" />
            <path class="leader" d={`M${ax} ${ay}L${x - 34} ${y}H${x - 6}`} />
            <text x={x} y={y} dy="0.1em">
              {name}
            </text>
            <text class="small" x={x} y={y} dy="1.4em">
              {size}
            </text>
          </g>
        );
      })}
    </g>
  );
}

function noteWords({ what, sizesMm }: ShownNote): { readonly name: string; readonly size: string } {
  const [a = 0, b = 0, c = 0] = sizesMm;
  const said = words().notes;
  const tenth = (mm: number) => print(mm, Number.isInteger(Number(mm.toFixed(1))) ? 0 : 1);
  if (what === 'clampHole') return said.clampHole(tenth(a), print(b, 0), tenth(c));
  if (what === 'pin') return said.pin(tenth(a), tenth(b), tenth(c));
  if (what === 'form') return said.form(tenth(a));
  if (what === 'ribEnds') return said.ribEnds(tenth(a), tenth(b));
  return said[what](tenth(a), tenth(b));
}
