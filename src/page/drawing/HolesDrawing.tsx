import type { ShownHoles, ValueName } from '../../core/index.ts';
import { quickBench, viewBench } from '../bench/bench.ts';
import { print, words } from '../words/words.ts';
import { Dimension } from './Dimension.tsx';
import { finely, Grip } from './Grip.tsx';
import { isLifeSize } from './lifeSize.ts';
import { PieceWall } from './PieceWall.tsx';
import { ScaleBar } from './ScaleBar.tsx';
import { type SheetPlace, sheetPlace } from './sheetPlace.ts';
import { standing } from './standing.ts';
import { lineTone, toneOf } from './tone.ts';
import type { GripWay } from './useGrip.ts';
import { useShown } from './useShown.ts';
import { useSize } from './useSize.ts';

/** The top with its sound holes, bridge, bar and post; the templates of the holes hang beside it. */
export function HolesDrawing() {
  const { ref, size } = useSize<HTMLDivElement>();
  const shown = useShown(
    async (asked) => viewBench().holes(asked),
    '',
    async (asked) => quickBench().holes(asked),
  );
  const place =
    size && shown ? sheetPlace(size, shown.lengthMm, shown.widthMm, size.width < 700 ? 0.5 : 0.32) : null;
  const wallX = place && shown ? place.centreX + (shown.widthMm / 2) * place.pxPerMm + 64 : 0;
  return (
    <div ref={ref} class={isLifeSize.value ? 'sheet life-size' : 'sheet'}>
      {size && shown && place && (
        <>
          <svg
            width={place.width}
            height={place.height}
            role="group"
            aria-label={words().questions.soundHoles}
          >
            <Top shown={shown} place={place} />
          </svg>
          {!place.isNarrow && !isLifeSize.value && (
            <div class="holes-wall" style={{ left: `${wallX}px` }}>
              <PieceWall parts={['soundHoles']} />
            </div>
          )}
          {!place.isNarrow && <ScaleBar pxPerMm={place.pxPerMm} />}
        </>
      )}
    </div>
  );
}

/** px from the body: where dimensions stand beside it. */
const BESIDE = 22;
const NEAR = 40;

function Top({ shown, place }: { readonly shown: ShownHoles; readonly place: SheetPlace }) {
  const { centreX, topY, pxPerMm } = place;
  return (
    <>
      <g transform={`translate(${centreX} ${topY}) scale(${pxPerMm})`}>
        {shown.lines.map(({ kind, path, answersTo }) => (
          <path
            key={kind + path}
            class={`holes-${kind} ${lineTone(answersTo)}`}
            d={path}
            vector-effect="non-scaling-stroke"
          />
        ))}
        <path
          class="line centre"
          d={`M0 ${-20 / pxPerMm}V${shown.lengthMm + 20 / pxPerMm}`}
          vector-effect="non-scaling-stroke"
        />
      </g>
      <Spans shown={shown} place={place} />
    </>
  );
}

/** What can be pulled at: each length with its handles, spread over both holes so that no two are in each other's way. */
function Spans({ shown, place }: { readonly shown: ShownHoles; readonly place: SheetPlace }) {
  const { centreX, topY, pxPerMm } = place;
  const named = new Map(shown.spans.map((span) => [span.name, span]));
  const at = ([x, y]: readonly [number, number]) => [centreX + x * pxPerMm, topY + y * pxPerMm] as const;
  const besideX = (shown.widthMm / 2) * pxPerMm;
  const nick = named.get('nickAboveStop');
  const [eyes, stop, length, toEdge] = (
    ['upperEyesApart', 'stop', 'holeLength', 'lowerEyeToEdge'] as const
  ).map((name) => named.get(name));
  return (
    <>
      {eyes && <Eyes mm={standing('upperEyesApart', eyes.valueMm)} y={at(eyes.to)[1]} place={place} />}
      {stop && (
        <Upright
          name="stop"
          mm={standing('stop', stop.valueMm)}
          x={centreX - besideX - BESIDE}
          fromX={[centreX - 20, centreX - 40 * pxPerMm]}
          ends={[topY, at(stop.to)[1]]}
          ways={[null, [0, pxPerMm]]}
        />
      )}
      {length && nick && (
        <Upright
          name="holeLength"
          mm={standing('holeLength', length.valueMm)}
          x={centreX + besideX + BESIDE + 8}
          fromX={[at(length.to)[0] - 4, at(length.from)[0] + 4]}
          ends={[at(length.to)[1], at(length.from)[1]]}
          // The nick stays where it is: both ends move, each by its share.
          ways={waysAbout(length.to[1], length.from[1], nick.to[1], pxPerMm)}
        />
      )}
      {nick && (
        <Aside
          name="nickAboveStop"
          mm={standing('nickAboveStop', nick.valueMm)}
          from={at(nick.to)}
          to={[centreX + shown.waistHalfMm * pxPerMm + NEAR, at(nick.to)[1]]}
          way={finely([0, -pxPerMm])}
          isOver
        />
      )}
      {toEdge && (
        <Aside
          name="lowerEyeToEdge"
          mm={standing('lowerEyeToEdge', toEdge.valueMm)}
          from={mirrored(at(toEdge.to), centreX)}
          along={mirrored(at(toEdge.from), centreX)}
          to={[centreX - besideX - BESIDE, at(toEdge.from)[1]]}
          way={finely([pxPerMm, 0])}
        />
      )}
    </>
  );
}

/** px. Half of a number with an arrow at its side: closer, it stands over its line. */
const NUMBER_HALF = 34;

function mirrored([x, y]: readonly [number, number], centreX: number): readonly [number, number] {
  return [2 * centreX - x, y];
}

/** How both ends of an upright length go for one more of it, where a place between them stays. */
function waysAbout(top: number, bottom: number, still: number, pxPerMm: number): readonly [GripWay, GripWay] {
  const above = (still - top) / (bottom - top);
  return [
    [0, -above * pxPerMm],
    [0, (1 - above) * pxPerMm],
  ];
}

function Eyes({ mm, y, place }: { readonly mm: number; readonly y: number; readonly place: SheetPlace }) {
  const { centreX, pxPerMm } = place;
  const half = (mm / 2) * pxPerMm;
  const isTight = half < NUMBER_HALF;
  return (
    <g class="width">
      {isTight && (
        <g class={`dimension ${toneOf('upperEyesApart')}`}>
          <text class="big" x={centreX} y={y - 9} text-anchor="middle">
            {print(mm)}
          </text>
        </g>
      )}
      <Dimension
        from={[centreX - half, y]}
        to={[centreX + half, y]}
        text={isTight ? '' : print(mm)}
        tone={toneOf('upperEyesApart')}
        isBig
      />
      <Grip
        name="upperEyesApart"
        value={mm}
        places={[1, -1].map((side) => ({ at: [centreX + side * half, y], way: [(side * pxPerMm) / 2, 0] }))}
      />
    </g>
  );
}

/** An upright dimension beside the body, with a handle at each end that can be pulled. */
function Upright({
  name,
  mm,
  x,
  fromX,
  ends,
  ways,
}: {
  readonly name: ValueName;
  readonly mm: number;
  readonly x: number;
  /** Where what it measures ends, above and below. */
  readonly fromX: readonly [number, number];
  readonly ends: readonly [number, number];
  readonly ways: readonly [GripWay | null, GripWay | null];
}) {
  const over = x < fromX[0] ? -5 : 5;
  return (
    <g>
      <path class="extension" d={`M${x + over} ${ends[0]}H${fromX[0]}M${x + over} ${ends[1]}H${fromX[1]}`} />
      <Dimension from={[x, ends[1]]} to={[x, ends[0]]} text={print(mm)} tone={toneOf(name)} isUpright isBig />
      <Grip
        name={name}
        value={mm}
        places={ways.flatMap((way, end) => (way ? [{ at: [x, ends[end] as number] as const, way }] : []))}
      />
    </g>
  );
}

/** A small length told beside the body, with a leader to where it lies and a knob to pull at. */
function Aside({
  name,
  mm,
  from,
  along = from,
  to,
  way,
  isOver = false,
}: {
  readonly name: ValueName;
  readonly mm: number;
  readonly from: readonly [number, number];
  /** The other end of the length itself. */
  readonly along?: readonly [number, number];
  readonly to: readonly [number, number];
  readonly way: GripWay;
  /** The number stands over the knob, not under it. */
  readonly isOver?: boolean;
}) {
  return (
    <g class={`dimension ${toneOf(name)}`}>
      <path class="dimension-line" d={`M${along.join(' ')}L${from.join(' ')}`} />
      <path class="leader" d={`M${from.join(' ')}L${to.join(' ')}`} />
      <circle class="dot" cx={from[0]} cy={from[1]} r="2" />
      <text class="big" x={to[0]} y={to[1] + (isOver ? -13 : 26)} text-anchor="middle">
        {print(mm)}
      </text>
      <Grip name={name} value={mm} places={[{ at: to, way }]} hasKnob />
    </g>
  );
}
