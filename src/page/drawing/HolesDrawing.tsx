import type { ShownHoles } from '../../core/index.ts';
import { viewBench } from '../bench/bench.ts';
import { touched } from '../store.ts';
import { print, words } from '../words/words.ts';
import { Dimension } from './Dimension.tsx';
import { isLifeSize } from './lifeSize.ts';
import { PieceWall } from './PieceWall.tsx';
import { ScaleBar } from './ScaleBar.tsx';
import { type SheetPlace, sheetPlace } from './sheetPlace.ts';
import { useShown } from './useShown.ts';
import { useSize } from './useSize.ts';

/** The top with its sound holes, bridge, bar and post; the templates of the holes hang beside it. */
export function HolesDrawing() {
  const { ref, size } = useSize<HTMLDivElement>();
  const shown = useShown(async (asked) => viewBench().holes(asked), '');
  const place =
    size && shown ? sheetPlace(size, shown.lengthMm, shown.widthMm, size.width < 700 ? 0.5 : 0.3) : null;
  const wallX = place && shown ? place.centreX + (shown.widthMm / 2) * place.pxPerMm + 20 : 0;
  return (
    <div ref={ref} class={isLifeSize.value ? 'sheet life-size' : 'sheet'}>
      {size && shown && place && (
        <>
          <svg width={place.width} height={place.height} role="img" aria-label={words().questions.soundHoles}>
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

function Top({ shown, place }: { readonly shown: ShownHoles; readonly place: SheetPlace }) {
  const { centreX, topY, pxPerMm } = place;
  const y = (stationMm: number) => topY + (shown.lengthMm - stationMm) * pxPerMm;
  const half = (shown.upperEyesApartMm / 2) * pxPerMm;
  const isEyes = touched.value === 'upperEyesApart';
  const isStop = touched.value === 'stop';
  const stopX = centreX - (shown.widthMm / 2) * pxPerMm - 22;
  return (
    <>
      <g transform={`translate(${centreX} ${topY}) scale(${pxPerMm})`}>
        {shown.lines.map(({ kind, path, answersTo }) => (
          <path
            key={kind + path}
            class={`holes-${kind}${touched.value !== null && answersTo.includes(touched.value) ? ' lit' : ''}`}
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
      <g class="width">
        <Dimension
          from={[centreX - half, y(shown.upperEyesMm)]}
          to={[centreX + half, y(shown.upperEyesMm)]}
          text={print(shown.upperEyesApartMm)}
          tone={isEyes ? 'lit' : ''}
          isBig
        />
      </g>
      <path
        class="extension"
        d={`M${stopX - 5} ${y(shown.bridgeLineMm)}H${centreX - 40 * pxPerMm}M${stopX - 5} ${topY}H${centreX - 20}`}
      />
      <Dimension
        from={[stopX, y(shown.bridgeLineMm)]}
        to={[stopX, topY]}
        text={print(shown.lengthMm - shown.bridgeLineMm)}
        tone={isStop ? 'lit' : ''}
        isUpright
        isBig
      />
    </>
  );
}
