import { useEffect, useRef, useState } from 'preact/hooks';
import type { ShownTrace, SquareOn } from '../../core/index.ts';
import { seeingBench } from '../bench/bench.ts';
import { newestOnly } from '../bench/newestOnly.ts';
import { aim } from '../keeping/marking.ts';
import { touched } from '../store.ts';
import { print, words } from '../words/words.ts';
import { Cased } from './Cased.tsx';
import { GLASS_RADIUS, Glass, type GlassMark } from './Glass.tsx';
import type { Place } from './markSigns.tsx';
import { wearName } from './wearName.ts';

/** Times larger than life the glass shows. */
const TIMES = 7;
const PX_PER_CSS_MM = 96 / 25.4;
const PX_PER_MM = TIMES * PX_PER_CSS_MM;
const RADIUS_MM = GLASS_RADIUS / PX_PER_MM;

/** A glass over what the hand is on, or over the touched piece of wear: the photograph, both edges and the wood between. */
export function ShownGlass({
  shown,
  isInHand,
  marks,
  put,
}: {
  readonly shown: ShownTrace;
  readonly isInHand: boolean;
  readonly marks: readonly GlassMark[];
  readonly put: Parameters<typeof Glass>[0]['put'];
}) {
  const wear = shown.wear.find((one) => wearName(one) === touched.value);
  const at = isInHand ? aim.value : wear?.at;
  const picture = useCloseUp(shown, at ?? null);
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen || picture === null) return;
    const { rgba, widthPx, heightPx } = picture;
    pen.putImageData(new ImageData(rgba as Uint8ClampedArray<ArrayBuffer>, widthPx, heightPx), 0, 0);
  }, [picture]);
  if (!at) return null;
  // Where the picture has not come yet it lies off by what the glass was moved.
  const shift: Place = picture
    ? [picture.leftMm + RADIUS_MM - at[0], picture.topMm + RADIUS_MM - at[1]]
    : [0, 0];
  return (
    <Glass
      at={at}
      pxPerUnit={PX_PER_MM}
      canvas={canvas}
      shift={shift}
      isFar={shown.lengthMm - at[1] < shown.lengthMm / 2 && at[0] < 0}
      marks={marks}
      put={put}
      caption={
        isInHand || !wear
          ? words().see.times(print(TIMES, 0))
          : words().see.wearTimes(print(wear.depthMm), print(TIMES, 0))
      }
    >
      {wear && <path class="put-back-wood" d={wear.path} />}
      {shown.asFound.map((path) => (
        <Cased key={path} d={path} kind="found" />
      ))}
      {shown.unsure.map(({ path, state }) => (
        <Cased key={path} d={path} kind={state} />
      ))}
      <Cased d={shown.restored.path} kind={isInHand ? 'meant' : 'put-back'} />
    </Glass>
  );
}

/** The photograph round a place, as sharp as it is; the last one until the next is there. */
function useCloseUp(shown: ShownTrace, at: readonly [number, number] | null): SquareOn | null {
  const [picture, setPicture] = useState<SquareOn | null>(null);
  const [ask] = useState(() =>
    newestOnly(
      async ({ shot, place }: { readonly shot: number; readonly place: readonly [number, number] }) =>
        seeingBench().closeUp(shot, {
          leftMm: place[0] - RADIUS_MM,
          topMm: place[1] - RADIUS_MM,
          widthMm: 2 * RADIUS_MM,
          heightMm: 2 * RADIUS_MM,
          pxPerMm: PX_PER_MM,
        }),
      (answer) => {
        if (answer !== null) setPicture(answer);
      },
    ),
  );
  useEffect(() => {
    if (at !== null) ask({ shot: shown.shot, place: at });
  }, [at?.[0], at?.[1], shown]);
  return picture;
}
