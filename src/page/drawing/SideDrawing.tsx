import type { ShownSide, ShownSpan } from '../../core/index.ts';
import { viewBench } from '../bench/bench.ts';
import { touched } from '../store.ts';
import { print, words } from '../words/words.ts';
import { Dimension } from './Dimension.tsx';
import { PieceWall } from './PieceWall.tsx';
import { useShown } from './useShown.ts';
import { useSize } from './useSize.ts';

/** px: over the strings, where their dimension stands, below the back, and at both sides. */
const ABOVE = 84;
const BELOW = 66;
const BESIDE = 28;
/** px: narrower drawings have their angles below, where there is room for words. */
const NARROW = 560;
const WORDS = 26;

/** The instrument from its bass side, with what hangs on the length of the strings; its templates hang below. */
export function SideDrawing({ parts }: { readonly parts: readonly string[] }) {
  const { ref, size } = useSize<HTMLDivElement>();
  const shown = useShown(async (asked) => viewBench().side(asked), '');
  const scale = size && shown ? (size.width - 2 * BESIDE) / (shown.rightMm - shown.leftMm) : null;
  return (
    <div class="scrolls whole">
      <div ref={ref} class="side-place">
        {size && shown && scale && <Side shown={shown} scale={scale} width={size.width} />}
      </div>
      <PieceWall parts={parts} />
    </div>
  );
}

function Side({
  shown,
  scale,
  width,
}: {
  readonly shown: ShownSide;
  readonly scale: number;
  readonly width: number;
}) {
  const x = (mm: number) => BESIDE + (mm - shown.leftMm) * scale;
  const y = (mm: number) => ABOVE + (mm - shown.topMm) * scale;
  const span = (name: string) => shown.spans.find((one) => one.name === name);
  const at = ([mmX, mmY]: readonly [number, number]): readonly [number, number] => [x(mmX), y(mmY)];
  const isNarrow = width < NARROW;
  const height = ABOVE + BELOW + (isNarrow ? WORDS : 0) + (shown.bottomMm - shown.topMm) * scale;
  const overStrings = y(shown.topMm) - 40;
  const underBack = y(shown.bottomMm) + 34;
  const said = words();
  return (
    <svg width={width} height={height} role="img" aria-label={said.questions.neck}>
      <g transform={`translate(${x(0)} ${y(0)}) scale(${scale})`}>
        {shown.lines.map(({ kind, path, answersTo }) => (
          <path
            key={kind}
            class={`side-${kind}${touched.value !== null && answersTo.includes(touched.value) ? ' lit' : ''}`}
            d={path}
            vector-effect="non-scaling-stroke"
          />
        ))}
      </g>
      <Level one={span('stringLength')} at={at} y={overStrings} />
      <Level one={span('neckStop')} at={at} y={underBack} />
      <Level one={span('stop')} at={at} y={underBack} />
      <text
        class="small"
        x={isNarrow ? BESIDE : x(0) - 8}
        y={isNarrow ? height - 6 : y(0) - 64}
        text-anchor={isNarrow ? 'start' : 'end'}
      >
        {said.side.neckAngle(print((shown.neckAngleRad * 180) / Math.PI))}
      </text>
      <text
        class="small"
        x={isNarrow ? width - BESIDE : x(span('bridgeHeight')?.to[0] ?? 0) + 14}
        y={isNarrow ? height - 6 : y(shown.topMm) - 6}
        text-anchor={isNarrow ? 'end' : 'start'}
      >
        {said.side.breakAngle(print((shown.breakAngleRad * 180) / Math.PI))}
      </text>
    </svg>
  );
}

/** A length measured level, with its ends carried to where it stands. */
function Level({
  one,
  at,
  y,
}: {
  readonly one: ShownSpan | undefined;
  readonly at: (place: readonly [number, number]) => readonly [number, number];
  readonly y: number;
}) {
  if (one === undefined) return null;
  const [from, to] = [at(one.from), at(one.to)];
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
        text={print(one.valueMm)}
        tone={touched.value === one.name ? 'lit' : ''}
        isBig
      />
    </g>
  );
}
