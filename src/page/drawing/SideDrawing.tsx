import { useRef } from 'preact/hooks';
import type { ShownSide, ShownSpan, ValueName } from '../../core/index.ts';
import { quickBench, viewBench } from '../bench/bench.ts';
import { held } from '../store.ts';
import { nameOf, print, words } from '../words/words.ts';
import { Dimension } from './Dimension.tsx';
import { finely, Grip } from './Grip.tsx';
import { PieceWall } from './PieceWall.tsx';
import { standing } from './standing.ts';
import { lineTone, toneOf } from './tone.ts';
import type { GripWay } from './useGrip.ts';
import { useShown } from './useShown.ts';
import { useSize } from './useSize.ts';

/** px: over the strings, where their dimension stands, below the back, and at both sides. */
const ABOVE = 100;
const BELOW = 66;
const BESIDE = 28;
/** px: narrower drawings have their angles below, where there is room for words. */
const NARROW = 560;
const WORDS = 26;
/** px between two handles whose names stand towards each other. */
const NAMES_APART = 270;

/** The instrument from its bass side, with what hangs on the length of the strings; its templates hang below. */
export function SideDrawing({ parts }: { readonly parts: readonly string[] }) {
  const { ref, size } = useSize<HTMLDivElement>();
  const shown = useShown(
    async (asked) => viewBench().side(asked),
    '',
    async (asked) => quickBench().side(asked),
  );
  const frame = useFrame(shown);
  const scale = size && frame ? (size.width - 2 * BESIDE) / (frame.rightMm - frame.leftMm) : null;
  return (
    <div class="scrolls whole">
      <div ref={ref} class="side-place">
        {size && shown && frame && scale && (
          <Side shown={shown} frame={frame} scale={scale} width={size.width} />
        )}
      </div>
      <PieceWall parts={parts} />
    </div>
  );
}

/** Where the view lies, and how large. */
type Frame = Pick<ShownSide, 'leftMm' | 'rightMm' | 'topMm' | 'bottomMm'>;

/** The frame of what is shown; while a hand pulls it stays as it was, or what is pulled would slip away under the hand. */
function useFrame(shown: ShownSide | null): Frame | null {
  const kept = useRef<Frame | null>(null);
  if (kept.current === null || held.value === null) kept.current = shown;
  return kept.current;
}

function Side({
  shown,
  frame,
  scale,
  width,
}: {
  readonly shown: ShownSide;
  readonly frame: Frame;
  readonly scale: number;
  readonly width: number;
}) {
  const x = (mm: number) => BESIDE + (mm - frame.leftMm) * scale;
  const y = (mm: number) => ABOVE + (mm - frame.topMm) * scale;
  const span = (name: string) => shown.spans.find((one) => one.name === name);
  const at = ([mmX, mmY]: readonly [number, number]): readonly [number, number] => [x(mmX), y(mmY)];
  const isNarrow = width < NARROW;
  const height = ABOVE + BELOW + (isNarrow ? WORDS : 0) + (frame.bottomMm - frame.topMm) * scale;
  const overStrings = y(frame.topMm) - 62;
  const row = y(frame.topMm) - 26;
  const underBack = y(frame.bottomMm) + 34;
  const said = words();
  const [raised, far] = [span('overstand'), span('projection')];
  const isTight = isNarrow || !raised || !far || x(far.from[0]) - x(raised.from[0]) < NAMES_APART;
  return (
    <svg width={width} height={height} role="group" aria-label={said.questions.neck}>
      <g transform={`translate(${x(0)} ${y(0)}) scale(${scale})`}>
        {shown.lines.map(({ kind, path, answersTo }) => (
          <path
            key={kind}
            class={`side-${kind} ${lineTone(answersTo)}`}
            d={path}
            vector-effect="non-scaling-stroke"
          />
        ))}
      </g>
      <Level one={span('stringLength')} at={at} y={overStrings} />
      <Level one={span('neckStop')} at={at} y={underBack} pulls={['neckStop', 'from', [-scale, 0]]} />
      <Level one={span('stop')} at={at} y={underBack} pulls={['stop', 'to', [scale, 0]]} />
      <Raised name="overstand" one={raised} at={at} y={row} isNarrow={isTight} side="right" />
      <Raised name="projection" one={far} at={at} y={row} isNarrow={isTight} side="left" />
      <BoardEnd one={span('boardLength')} at={at} scale={scale} isNarrow={isNarrow} />
      <text
        class="small"
        x={isNarrow ? BESIDE : x(0) - 26}
        y={isNarrow ? height - 6 : row + 5}
        text-anchor={isNarrow ? 'start' : 'end'}
      >
        {said.side.neckAngle(print((shown.neckAngleRad * 180) / Math.PI))}
      </text>
      <text
        class="small"
        x={isNarrow ? width - BESIDE : x(span('bridgeHeight')?.to[0] ?? 0) + 26}
        y={isNarrow ? height - 6 : row + 5}
        text-anchor={isNarrow ? 'end' : 'start'}
      >
        {said.side.breakAngle(print((shown.breakAngleRad * 180) / Math.PI))}
      </text>
    </svg>
  );
}

type At = (place: readonly [number, number]) => readonly [number, number];

/** A small height told over the strings, with a leader down to where it lies and a knob that is pulled up or down. */
function Raised({
  name,
  one,
  at,
  y,
  isNarrow,
  side,
}: {
  readonly name: ValueName;
  readonly one: ShownSpan | undefined;
  readonly at: At;
  readonly y: number;
  readonly isNarrow: boolean;
  readonly side: 'left' | 'right';
}) {
  if (one === undefined) return null;
  const [x, bottom] = at(one.from);
  const top = at(one.to)[1];
  const mm = standing(name, one.valueMm);
  const away = side === 'left' ? -12 : 12;
  return (
    <g class={`dimension ${toneOf(name, `neck.${name}`)}`}>
      <path class="dimension-line" d={`M${x} ${bottom}V${top}`} />
      <path class="leader" d={`M${x} ${top}V${y}`} />
      <circle class="dot" cx={x} cy={top} r="2" />
      <text x={x + away} y={y} dy="0.34em" text-anchor={side === 'left' ? 'end' : 'start'}>
        {isNarrow ? print(mm) : `${nameOf(name)} ${print(mm)}`}
      </text>
      <Grip name={name} value={mm} places={[{ at: [x, y], way: finely([0, -1]) }]} hasKnob />
    </g>
  );
}

/** The end of the fingerboard, pulled along it. */
function BoardEnd({
  one,
  at,
  scale,
  isNarrow,
}: {
  readonly one: ShownSpan | undefined;
  readonly at: At;
  readonly scale: number;
  readonly isNarrow: boolean;
}) {
  if (one === undefined) return null;
  const [x, y] = at(one.to);
  const mm = standing('boardLength', one.valueMm);
  return (
    <g class={`dimension ${toneOf('boardLength')}`}>
      {!isNarrow && (
        <text x={x + 12} y={y} dy="0.34em">
          {print(mm)}
        </text>
      )}
      <Grip
        name="boardLength"
        label={`${words().groups.board}, ${nameOf('boardLength')}`}
        value={mm}
        places={[{ at: [x, y], way: [scale, 0] }]}
        hasKnob
      />
    </g>
  );
}

/** A length measured level, with its ends carried to where it stands. */
function Level({
  one,
  at,
  y,
  pulls,
}: {
  readonly one: ShownSpan | undefined;
  readonly at: At;
  readonly y: number;
  /** The number that is pulled at one of its ends, and the way that goes. */
  readonly pulls?: readonly [name: ValueName, end: 'from' | 'to', way: GripWay];
}) {
  if (one === undefined) return null;
  const [from, to] = [at(one.from), at(one.to)];
  const mm = pulls ? standing(pulls[0], one.valueMm) : one.valueMm;
  const away = y > from[1] ? 1 : -1;
  return (
    <g>
      <path
        class="extension"
        d={`M${from[0]} ${from[1] + 6 * away}V${y + 5 * away}M${to[0]} ${to[1] + 6 * away}V${y + 5 * away}`}
      />
      <Dimension
        from={[from[0], y]}
        to={[to[0], y]}
        text={print(mm)}
        tone={toneOf(one.name, `neck.${one.name}`)}
        isBig
      />
      {pulls && (
        <Grip
          name={pulls[0]}
          value={mm}
          places={[{ at: [pulls[1] === 'from' ? from[0] : to[0], y], way: pulls[2] }]}
        />
      )}
    </g>
  );
}
