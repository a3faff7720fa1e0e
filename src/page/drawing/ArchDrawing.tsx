import { signal } from '@preact/signals';
import type { Design, LampStand, ShownPlate, ShownStation } from '../../core/index.ts';
import { quickBench, viewBench } from '../bench/bench.ts';
import { beside } from '../keeping/beside.ts';
import { plate } from '../store.ts';
import { nameOf, print, words } from '../words/words.ts';
import { InHand, turnOver } from './InHand.tsx';
import { Lamp } from './Lamp.tsx';
import { isLifeSize } from './lifeSize.ts';
import { looking } from './looking.ts';
import { PlateLight } from './PlateLight.tsx';
import { PlatePictures } from './PlatePictures.tsx';
import { ScaleBar } from './ScaleBar.tsx';
import { type SheetPlace, sheetPlace } from './sheetPlace.ts';
import { standing } from './standing.ts';
import { lineTone } from './tone.ts';
import { gaugeInHand } from './underHand.ts';
import { gripOfValue, HUNDREDTHS, useGrip } from './useGrip.ts';
import { useShownOf } from './useShown.ts';
import { useSize } from './useSize.ts';

const lamp = signal<LampStand>({ fromRad: -0.7, heightRad: 0.3 });

/** One plate from outside: one half lit, one half drawn, its long arch and its gauges at their stations beside it. */
export function ArchDrawing() {
  const { ref, size } = useSize<HTMLDivElement>();
  const answer = useShownOf(
    async (asked) => viewBench().plate(asked, plate.value),
    plate.value,
    async (asked) => quickBench().roughPlate(asked, plate.value),
  );
  const shown = answer?.shown ?? null;
  const place = size && shown ? placeOf(size, shown) : null;
  return (
    <div ref={ref} class={isLifeSize.value ? 'sheet life-size' : 'sheet'}>
      {size && looking.value === 'hand' && (
        <>
          <InHand lamp={lamp.value} size={size} />
          <div class="lamp-place beside">
            <HeldLamp />
          </div>
        </>
      )}
      {looking.value === 'picture' && <PlatePictures />}
      <Ways />
      {size && answer && shown && place && looking.value === 'paper' && (
        <>
          <PlateLight
            lamp={lamp.value}
            half={false}
            left={place.centreX - litHalfMm(shown) * place.pxPerMm}
            top={place.topY}
            width={2 * litHalfMm(shown) * place.pxPerMm}
            height={shown.lengthMm * place.pxPerMm}
          />
          <svg width={place.width} height={place.height} role="group" aria-label={words().questions.arch}>
            <PlateLines shown={shown} place={place} />
            <Stations shown={shown} of={answer.of} place={place} width={place.width} />
          </svg>
          {!place.isNarrow && (
            <div
              class="lamp-place"
              style={{ left: `${place.centreX + (shown.widthMm / 2 + 34) * place.pxPerMm}px` }}
            >
              <HeldLamp />
            </div>
          )}
          {!place.isNarrow && <ScaleBar pxPerMm={place.pxPerMm} />}
        </>
      )}
    </div>
  );
}

/** px. On a phone the ways of looking stand below the plate, not on it. */
const WAYS_HEIGHT = 30;

function placeOf(size: { readonly width: number; readonly height: number }, shown: ShownPlate): SheetPlace {
  if (size.width >= 700) return sheetPlace(size, shown.lengthMm, shown.widthMm, 0.27);
  return sheetPlace({ ...size, height: size.height - WAYS_HEIGHT }, shown.lengthMm, shown.widthMm, 0.4);
}

/** The lamp that lights whatever is looked at. */
function HeldLamp() {
  return (
    <Lamp
      lamp={lamp.value}
      set={(next) => {
        lamp.value = next;
      }}
    />
  );
}

/** From one way of looking to the others. */
function Ways() {
  const said = words().views;
  const to = (way: typeof looking.value, says: string) => (
    <button
      type="button"
      onClick={() => {
        looking.value = way;
      }}
    >
      {says}
    </button>
  );
  return (
    <p class="ways">
      {looking.value === 'hand' && (
        <button type="button" onClick={turnOver}>
          {said.turnOver}
        </button>
      )}
      {looking.value !== 'paper' && to('paper', said.layDown)}
      {looking.value === 'paper' && to('picture', words().pictures.open)}
      {looking.value !== 'hand' && to('hand', said.takeInHand)}
    </p>
  );
}

/** mm from the centre line to the edge of the lit picture: whole steps of its grid. */
function litHalfMm({ widthMm }: ShownPlate): number {
  return widthMm / 2 + 0.3;
}

function PlateLines({ shown, place }: { readonly shown: ShownPlate; readonly place: SheetPlace }) {
  const { centreX, topY, pxPerMm } = place;
  return (
    <g transform={`translate(${centreX} ${topY}) scale(${pxPerMm})`}>
      <clipPath id="drawn-half">
        <rect x="0" y="-5" width={shown.widthMm} height={shown.lengthMm + 10} />
      </clipPath>
      <g clip-path="url(#drawn-half)">
        <path class="drawn-ground" d={shown.outline.path} />
        {shown.contours.map(({ path, everyFifth }, index) => (
          <path
            key={index}
            class={everyFifth ? 'contour fifth' : 'contour'}
            d={path}
            vector-effect="non-scaling-stroke"
          />
        ))}
      </g>
      <path class="line edge" d={shown.outline.path} vector-effect="non-scaling-stroke" />
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

/** mm from the widest bout to the side view, and between side view and gauges; px between a gauge and its words. */
const SIDE_OFF_MM = 14;
const GAUGE_MM = 10;

/** Numbers of a whole plate, which its long arch shows. */
function plateNames(of: 'back' | 'top'): readonly string[] {
  const named = of === 'back' ? 'Back' : 'Top';
  return [`archHeight${named}`, `edgeHeight${named}`, `scoopDepth${named}`, `${of}.channelZ`, `${of}.rise`];
}

function Stations({
  shown,
  of,
  place,
  width,
}: {
  readonly shown: ShownPlate;
  readonly of: Design;
  readonly place: SheetPlace;
  readonly width: number;
}) {
  const { centreX, topY, pxPerMm, isNarrow } = place;
  const y = (stationMm: number) => topY + (shown.lengthMm - stationMm) * pxPerMm;
  const sideX = centreX + (shown.widthMm / 2 + SIDE_OFF_MM) * pxPerMm;
  const room = width - sideX - 40;
  const gaugeScale = Math.min(pxPerMm, room / (shown.widthMm + 40));
  const gaugeX = sideX + 30 + room / 2;
  return (
    <g>
      <text class="small" x={sideX} y={topY - 14} text-anchor="middle">
        {words().longArch}
      </text>
      <path
        class={`side ${lineTone(plateNames(shown.plate))}`}
        d={`${shown.longArch.path}L0 0V${shown.lengthMm}Z`.replace(
          /L0 0V[\d.]+Z$/,
          `L0 0L0 ${shown.lengthMm}Z`,
        )}
        transform={`translate(${sideX} ${topY}) scale(${pxPerMm})`}
        vector-effect="non-scaling-stroke"
      />
      {shown.stations.map((station) => {
        const tone = lineTone([station.fullnessFrom, `${shown.plate}.${station.name}.steepest`]);
        const half = station.edgeHalfWidthMm * pxPerMm;
        const at = y(station.stationMm);
        return (
          <g key={station.name} class={`station ${tone}`}>
            <path class="station-across" d={`M${centreX - half - 6} ${at}H${centreX + half + 6}`} />
            {!isNarrow && (
              <>
                <path
                  class="leader"
                  d={`M${centreX + half + 6} ${at}H${gaugeX - station.edgeHalfWidthMm * gaugeScale}`}
                />
                <circle class="dot" cx={sideX + station.heightMm * pxPerMm} cy={at} r="2.6" />
                <Gauge drawn={station} of={of} x={gaugeX} y={at} scale={gaugeScale} />
              </>
            )}
          </g>
        );
      })}
    </g>
  );
}

/** The gauge of a station at its own level: pale wood over the arch. Pulled up or down, the arch becomes fuller or leaner. */
function Gauge({
  drawn,
  of,
  x,
  y,
  scale,
}: {
  readonly drawn: ShownStation;
  readonly of: Design;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}) {
  const station = gaugeInHand(drawn, of);
  const name = station.fullnessFrom;
  const { slider, handle } = useGrip({
    of: gripOfValue(name),
    value: standing(name, station.fullness),
    fineness: HUNDREDTHS,
  });
  const half = station.edgeHalfWidthMm;
  const above = station.heightMm + GAUGE_MM;
  const said = words();
  const baseY = y + station.edgeHeightMm * scale;
  return (
    <g
      class="gauge"
      {...slider}
      aria-label={`${said.groups.fullness}, ${nameOf(name)}`}
      aria-orientation="vertical"
      // Half way up, fullness lifts an arch by its share of the rise.
      {...handle([0, -scale * station.riseMm])}
    >
      <g transform={`translate(${x} ${baseY}) scale(${scale})`}>
        <path
          class="gauge-wood"
          d={`${station.path}L${half} ${-above}L${-half} ${-above}Z`}
          vector-effect="non-scaling-stroke"
        />
        <path class="gauge-edge" d={station.path} vector-effect="non-scaling-stroke" />
        <path class="leader" d={`M0 ${-above}v3`} vector-effect="non-scaling-stroke" />
      </g>
      <text x={x} y={baseY + 18} text-anchor="middle">
        {said.stations[station.name] ?? station.name}
      </text>
      <text class="small" x={x} y={baseY + 35} text-anchor="middle">
        {said.stationSays(print(station.heightMm), print(station.stationMm))}
      </text>
    </g>
  );
}
