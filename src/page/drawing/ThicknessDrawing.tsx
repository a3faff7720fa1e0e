import { useRef } from 'preact/hooks';
import type { ShownFigure, ShownThickness, ShownZone, ValueName } from '../../core/index.ts';
import { quickBench, viewBench } from '../bench/bench.ts';
import { held, plate, touched } from '../store.ts';
import { nameOf, print, words } from '../words/words.ts';
import { Grip } from './Grip.tsx';
import { gripOfPlace } from './gripOfPlace.ts';
import { isLifeSize } from './lifeSize.ts';
import { ScaleBar } from './ScaleBar.tsx';
import { type SheetPlace, sheetPlace } from './sheetPlace.ts';
import { standing } from './standing.ts';
import { toneOf } from './tone.ts';
import { type GripFineness, type GripNumber, gripOfValue } from './useGrip.ts';
import { useShown } from './useShown.ts';
import { useSize } from './useSize.ts';

/** A plate with its lines of equal thickness and the figures that a calliper must show, cut along and across beside it. */
export function ThicknessDrawing() {
  const { ref, size } = useSize<HTMLDivElement>();
  const shown = useShown(
    async (asked) => viewBench().thickness(asked, plate.value, false),
    plate.value,
    async (asked) => quickBench().thickness(asked, plate.value, true),
  );
  const place =
    size && shown ? sheetPlace(size, shown.lengthMm, shown.widthMm, size.width < 700 ? 0.5 : 0.27) : null;
  return (
    <div ref={ref} class={isLifeSize.value ? 'sheet life-size' : 'sheet'}>
      {size && shown && place && (
        <>
          <svg
            width={place.width}
            height={place.height}
            role="group"
            aria-label={words().questions.thickness}
          >
            <Plan shown={shown} place={place} />
            {!place.isNarrow && <Cuts shown={shown} place={place} width={place.width} />}
          </svg>
          {!place.isNarrow && <ScaleBar pxPerMm={place.pxPerMm} />}
        </>
      )}
    </div>
  );
}

function Plan({ shown, place }: { readonly shown: ShownThickness; readonly place: SheetPlace }) {
  const { centreX, topY, pxPerMm, isNarrow } = place;
  const decimals = shown.intervalMm < 0.1 ? 2 : 1;
  return (
    <>
      <g transform={`translate(${centreX} ${topY}) scale(${pxPerMm})`}>
        {shown.lines.map(({ kind, path }) => (
          <path key={path} class={`thick-${kind}`} d={path} vector-effect="non-scaling-stroke" />
        ))}
        {shown.levels.map(({ path }) => (
          <path key={path} class="contour" d={path} vector-effect="non-scaling-stroke" />
        ))}
        <path
          class="line centre"
          d={`M0 ${-20 / pxPerMm}V${shown.lengthMm + 20 / pxPerMm}`}
          vector-effect="non-scaling-stroke"
        />
      </g>
      {!isNarrow &&
        shown.places
          .filter(isClearOf([...shown.zones, ...bothSides(shown.asked)]))
          .map(({ at: [x, y], thicknessMm }) => (
            <g key={`${x} ${y}`} class="thick-place">
              <circle class="dot" cx={centreX + x * pxPerMm} cy={topY + y * pxPerMm} r="1.6" />
              <text class="small" x={centreX + x * pxPerMm} y={topY + y * pxPerMm - 5} text-anchor="middle">
                {print(thicknessMm, decimals)}
              </text>
            </g>
          ))}
      {shown.zones.map((zone) => (
        <Zone key={zone.name} zone={zone} place={place} />
      ))}
      {shown.asked.map((one, index) => (
        <Asked key={index} asked={one} index={index} place={place} shown={shown} />
      ))}
    </>
  );
}

/** mm about a handle and the number at its right where no other figure stands. */
const CLEAR_MM = { left: 10, right: 30, up: 12 };

function bothSides(asked: readonly ShownFigure[]): readonly Pick<ShownFigure, 'at'>[] {
  return asked.flatMap(({ at: [x, y] }) => [{ at: [x, y] }, { at: [-x, y] }] as const);
}

function isClearOf(zones: readonly Pick<ShownZone, 'at'>[]) {
  return ({ at: [x, y] }: ShownFigure) =>
    zones.every(
      ({ at }) =>
        x < at[0] - CLEAR_MM.left || x > at[0] + CLEAR_MM.right || Math.abs(at[1] - y) > CLEAR_MM.up,
    );
}

/** px that a strip of wood beside the handle has for a millimetre of it. */
const STRIP_PX_PER_MM = 20;
const STRIP = 12;
/** A calliper shows no finer step. */
const TWENTIETHS: GripFineness = { decimals: 2, step: 0.05 };

/** One of the plate's few numbers at the place where it alone decides; under the hand it stands as a strip of wood. */
function Zone({ zone, place }: { readonly zone: ShownZone; readonly place: SheetPlace }) {
  const name = zone.name as ValueName;
  return (
    <Strip
      of={gripOfValue(name)}
      label={`${words().groups.thicknesses}, ${nameOf(name)}`}
      mm={standing(name, zone.valueMm)}
      at={[place.centreX + zone.at[0] * place.pxPerMm, place.topY + zone.at[1] * place.pxPerMm]}
    />
  );
}

/** A thickness that is asked for at a single place: pulled like the others, with a ring where the other half has it too. */
function Asked({
  asked,
  index,
  place,
  shown,
}: {
  readonly asked: ShownFigure;
  readonly index: number;
  readonly place: SheetPlace;
  readonly shown: ShownThickness;
}) {
  const { centreX, topY, pxPerMm } = place;
  const of = gripOfPlace(shown.plate, index);
  const [xMm, yMm] = asked.at;
  const y = topY + yMm * pxPerMm;
  return (
    <g>
      <circle class="asked-ring" cx={centreX - xMm * pxPerMm} cy={y} r="4" />
      <Strip
        of={of}
        label={words().askedPlaces.label(index + 1, print(Math.abs(xMm)), print(shown.lengthMm - yMm))}
        mm={of.now(asked.thicknessMm)}
        at={[centreX + xMm * pxPerMm, y]}
      />
    </g>
  );
}

/** A thickness under the hand: a knob with its number, over a strip of wood as thick. */
function Strip({
  of,
  label,
  mm,
  at: [x, y],
}: {
  readonly of: GripNumber;
  readonly label: string;
  readonly mm: number;
  readonly at: readonly [xPx: number, yPx: number];
}) {
  const { name } = of;
  const started = useRef(mm);
  if (held.value === null) started.current = mm;
  const handY = y - (mm - started.current) * STRIP_PX_PER_MM;
  const isLit = touched.value === name;
  return (
    <g class={`dimension zone ${toneOf(name)}`}>
      {isLit && (
        <rect
          class="zone-strip"
          x={x - STRIP / 2}
          y={handY}
          width={STRIP}
          height={Math.max(0, mm * STRIP_PX_PER_MM)}
        />
      )}
      <text class="big" x={x + STRIP} y={handY - 6} text-anchor="start">
        {print(mm, Math.round(mm * 100) % 10 === 0 ? 1 : 2)}
      </text>
      <Grip
        name={name}
        of={of}
        label={label}
        value={mm}
        fineness={TWENTIETHS}
        places={[{ at: [x, handY], way: [0, -STRIP_PX_PER_MM] }]}
        hasKnob
      />
    </g>
  );
}

/** mm from the widest bout to the cut along the body. */
const SIDE_OFF_MM = 14;

function Cuts({
  shown,
  place,
  width,
}: {
  readonly shown: ShownThickness;
  readonly place: SheetPlace;
  readonly width: number;
}) {
  const { centreX, topY, pxPerMm } = place;
  const sideX = centreX + (shown.widthMm / 2 + SIDE_OFF_MM) * pxPerMm;
  const room = width - sideX - 40;
  const scale = Math.min(pxPerMm, room / (shown.widthMm + 40));
  const cutX = sideX + 30 + room / 2;
  const said = words();
  return (
    <g>
      <text class="small" x={sideX} y={topY - 14} text-anchor="middle">
        {said.cutAlong}
      </text>
      <path
        class="cut-wood"
        d={shown.longCut}
        transform={`translate(${sideX} ${topY}) scale(${pxPerMm})`}
        vector-effect="non-scaling-stroke"
      />
      {shown.cuts.map(({ name, stationMm, middleMm, path }) => {
        const y = topY + (shown.lengthMm - stationMm) * pxPerMm;
        return (
          <g key={name}>
            <path
              class="cut-wood"
              d={path}
              transform={`translate(${cutX} ${y}) scale(${scale})`}
              vector-effect="non-scaling-stroke"
            />
            <text x={cutX} y={y + 20} text-anchor="middle">
              {said.stations[name] ?? name}
            </text>
            <text class="small" x={cutX} y={y + 37} text-anchor="middle">
              {said.thickInMiddle(print(middleMm), print(stationMm))}
            </text>
          </g>
        );
      })}
    </g>
  );
}
