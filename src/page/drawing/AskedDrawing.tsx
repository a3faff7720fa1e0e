import { useEffect, useState } from 'preact/hooks';
import { aim, inHand, liftGlass, moveBarEnd, moveMark, putBar, putMark } from '../keeping/marking.ts';
import { said } from '../keeping/saying.ts';
import { photograph } from '../keeping/tracing.ts';
import { print, words } from '../words/words.ts';
import { AskedGlass } from './AskedGlass.tsx';
import { HandLayer, putWith, type Sight } from './HandLayer.tsx';
import { Marks, type Place } from './markSigns.tsx';
import { useSize } from './useSize.ts';

/** Shares of the picture's width: how far an arrow key carries the cross, and half the ring that one press draws. */
const STEP = 1 / 800;
const RING = 0.025;

/** A photograph as it was taken, before anything is found in it; marks lie on it in its own pixels. */
export function AskedDrawing() {
  const held = photograph.value;
  const { ref, size } = useSize<HTMLDivElement>();
  const [pixels, setPixels] = useState<{ readonly width: number; readonly height: number } | null>(null);
  const [view, setView] = useState<string | null>(null);
  useEffect(() => {
    setPixels(null);
    setView(null);
    if (held === null) return liftGlass;
    // Tells its size and is never shown, so that it is not decoded.
    const whole = new Image();
    let address: string | null = null;
    let isGone = false;
    const show = (small: Blob | null) => {
      if (isGone) return;
      address = small && URL.createObjectURL(small);
      setView(address ?? held.address);
    };
    whole.onload = () => {
      const { naturalWidth: width, naturalHeight: height } = whole;
      setPixels({ width, height });
    };
    void held.view.then(show);
    whole.src = held.address;
    return () => {
      isGone = true;
      if (address) URL.revokeObjectURL(address);
      liftGlass();
    };
  }, [held?.address]);
  if (held === null) return null;
  const scale = size && pixels ? Math.min(size.width / pixels.width, size.height / pixels.height) : 0;
  const sight: Sight | null =
    size && pixels
      ? {
          ...size,
          scale,
          x: (size.width - pixels.width * scale) / 2,
          y: (size.height - pixels.height * scale) / 2,
          start: [pixels.width / 2, pixels.height / 2],
          step: pixels.width * STEP,
          ring: pixels.width * RING,
          tell: ([x, y]) => words().see.hereInPixels(print(x, 0), print(y, 0)),
          put: (kind, places) => (kind === 'bar' ? putBar(places) : putMark(kind, places)),
        }
      : null;
  const { marks, barEnds } = said.value;
  const own = marks.filter(({ on }) => on === held.name);
  const bar = sight && barEnds.map(([x, y]) => `${sight.x + x * scale} ${sight.y + y * scale}`);
  return (
    <div ref={ref} class="sheet photograph">
      {view && <img class="asked" src={view} alt={held.name} />}
      {sight && (
        <svg width={sight.width} height={sight.height} aria-hidden="true">
          <Marks marks={own} lie={sight} />
          {bar && bar.length > 0 && (
            <>
              <path class="casing" d={`M${bar.join('L')}`} />
              <path class="mark-line bar" d={`M${bar.join('L')}`} />
            </>
          )}
        </svg>
      )}
      {sight && <HandLayer sight={sight} />}
      {sight && pixels && inHand.value !== null && aim.value && (
        <AskedGlass
          photograph={held}
          at={aim.value}
          isFar={aim.value[0] < pixels.width / 2 && aim.value[1] > pixels.height / 2}
          marks={[
            ...own.map((mark) => ({
              kind: mark.kind,
              places: mark.places,
              move: (place: number, to: Place) => void moveMark(mark, place, to),
            })),
            ...(barEnds.length > 0 ? [{ kind: 'bar' as const, places: barEnds, move: moveBarEnd }] : []),
          ]}
          put={(kind, at) => putWith(sight, kind, [at])}
        />
      )}
    </div>
  );
}
