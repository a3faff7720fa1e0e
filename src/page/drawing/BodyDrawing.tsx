import type { ShownBody, ShownNote, ShownWidth } from '../../core/index.ts';
import { beside } from '../keeping/beside.ts';
import { body, design, stop } from '../store.ts';
import { print, words } from '../words/words.ts';
import { Dimension } from './Dimension.tsx';
import { Grip } from './Grip.tsx';
import { isLifeSize } from './lifeSize.ts';
import { isNothingSound, OutlineAlone } from './OutlineAlone.tsx';
import { ScaleBar } from './ScaleBar.tsx';
import { type SheetPlace, sheetPlace } from './sheetPlace.ts';
import { standing } from './standing.ts';
import { lineTone, toneOf } from './tone.ts';
import { bodyInHand } from './underHand.ts';
import { useSize } from './useSize.ts';

/**
 * The body from the side of the top: outline and form share this drawing, the stop decides what is in front. Where its parts
 * contradict each other, the outline alone.
 */
export function BodyDrawing() {
  return body.value === null && isNothingSound() ? <OutlineAlone /> : <WholeBody />;
}

function WholeBody() {
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
          {shown.widths.map(({ name }) => (
            <Width key={name} name={name} shown={shown} place={place} />
          ))}
          {!place.isNarrow && <Notes shown={shown} place={place} right={place.width} />}
        </svg>
      )}
      {place && !place.isNarrow && <ScaleBar pxPerMm={place.pxPerMm} />}
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
      {shown.lines.map((line, index) => (
        // Lines come in the same order each time.
        <BodyLine key={index} {...line} />
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

/** A line of the body; those that a hand holds go with it at once. */
function BodyLine({ kind, path, answersTo }: ShownBody['lines'][number]) {
  const inHand = kind === 'edge' || kind === 'form' ? bodyInHand.value?.[kind] : undefined;
  return (
    <path
      class={`line ${kind} ${lineTone(answersTo)}`}
      d={inHand?.path ?? path}
      vector-effect="non-scaling-stroke"
    />
  );
}

/** px from the way to the length of the body. */
const LENGTH_CLEAR = 20;

/** Stations on one common line from the lower end, and the whole length beside them. */
function Heights({ shown: drawn, place }: { readonly shown: ShownBody; readonly place: SheetPlace }) {
  const shown = bodyInHand.value ?? drawn;
  const { centreX, topY, pxPerMm, isNarrow } = place;
  const y = (stationMm: number) => topY + (shown.lengthMm - stationMm) * pxPerMm;
  const left = centreX - (shown.widthMm / 2) * pxPerMm;
  const lengthX = isNarrow ? left - 46 : Math.max(left - 140, LENGTH_CLEAR);
  const stationX = left - 80;
  const halfAt: Readonly<Record<string, number>> = Object.fromEntries(
    shown.widths.map(({ name, widthMm }) => [name, widthMm / 2]),
  );
  const rows = [
    ...shown.widths.map(({ name, stationMm }) => ({
      of: name,
      stationMm,
      half: halfAt[name] ?? 0,
      tone: toneOf(name),
    })),
    { of: 'upperCorner', stationMm: shown.cornersMm.upper, half: halfAt.upperBout ?? 0, tone: '' },
    { of: 'lowerCorner', stationMm: shown.cornersMm.lower, half: halfAt.lowerBout ?? 0, tone: '' },
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
          {rows.map(({ of, stationMm, half, tone }) => (
            <g key={of} class={`dimension ${tone}`}>
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
  name,
  shown: drawn,
  place,
}: {
  readonly name: ShownWidth['name'];
  readonly shown: ShownBody;
  readonly place: SheetPlace;
}) {
  const shown = bodyInHand.value ?? drawn;
  const width = shown.widths.find((one) => one.name === name);
  if (width === undefined) return null;
  const { stationMm } = width;
  const isTraced = design.value?.outline.kind === 'traced';
  // The maker's own number stands at once where the hand is; the lines follow as soon as they are drawn.
  const widthMm = isTraced ? width.widthMm : standing(name, width.widthMm);
  const { centreX, topY, pxPerMm, isNarrow } = place;
  const y = topY + (shown.lengthMm - stationMm) * pxPerMm;
  const half = (widthMm / 2) * pxPerMm;
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
        <g class={`dimension aside ${toneOf(name)}`}>
          <path
            class="leader dotted"
            d={`M${centreX + half} ${y}H${centreX + (shown.widthMm / 2) * pxPerMm + 22}`}
          />
          <text class="big" x={centreX + (shown.widthMm / 2) * pxPerMm + 26} y={y} dy="0.34em">
            {print(widthMm)}
          </text>
        </g>
      )}
      <Grip
        name={name}
        value={widthMm}
        isFixed={isTraced}
        places={[1, -1].map((side) => ({ at: [centreX + side * half, y], way: [(side * pxPerMm) / 2, 0] }))}
      />
    </g>
  );
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
