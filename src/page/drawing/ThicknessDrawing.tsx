import type { ShownThickness } from '../../core/index.ts';
import { viewBench } from '../bench/bench.ts';
import { plate } from '../store.ts';
import { print, words } from '../words/words.ts';
import { isLifeSize } from './lifeSize.ts';
import { ScaleBar } from './ScaleBar.tsx';
import { type SheetPlace, sheetPlace } from './sheetPlace.ts';
import { useShown } from './useShown.ts';
import { useSize } from './useSize.ts';

/** A plate with its lines of equal thickness and the figures that a calliper must show, cut along and across beside it. */
export function ThicknessDrawing() {
  const { ref, size } = useSize<HTMLDivElement>();
  const shown = useShown(async (asked) => viewBench().thickness(asked, plate.value), plate.value);
  const place =
    size && shown ? sheetPlace(size, shown.lengthMm, shown.widthMm, size.width < 700 ? 0.5 : 0.27) : null;
  return (
    <div ref={ref} class={isLifeSize.value ? 'sheet life-size' : 'sheet'}>
      {size && shown && place && (
        <>
          <svg width={place.width} height={place.height} role="img" aria-label={words().questions.thickness}>
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
        shown.places.map(({ at: [x, y], thicknessMm }) => (
          <g key={`${x} ${y}`} class="thick-place">
            <circle class="dot" cx={centreX + x * pxPerMm} cy={topY + y * pxPerMm} r="1.6" />
            <text class="small" x={centreX + x * pxPerMm} y={topY + y * pxPerMm - 5} text-anchor="middle">
              {print(thicknessMm, decimals)}
            </text>
          </g>
        ))}
    </>
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
