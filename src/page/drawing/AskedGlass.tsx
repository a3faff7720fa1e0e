import { useEffect, useRef, useState } from 'preact/hooks';
import type { PixelSquare } from '../../host/browser/index.ts';
import { seeingBench } from '../bench/bench.ts';
import type { PhotographFile } from '../bench/keptPictures.ts';
import { newestOnly } from '../bench/newestOnly.ts';
import { print, words } from '../words/words.ts';
import { GLASS_RADIUS, Glass, type GlassMark } from './Glass.tsx';
import type { Place } from './markSigns.tsx';

/** px of the glass that a pixel of the photograph has. */
const PX_PER_PIXEL = 6;
/** px of the photograph that are seen across the glass. */
const ACROSS = (2 * GLASS_RADIUS) / PX_PER_PIXEL;
/** px of the photograph that are fetched at once, so that a hand can move a good way before more are needed. */
const SIDE_PX = 256;

/** A glass over a photograph as it was taken: its own pixels, each large enough to work within it. */
export function AskedGlass({
  photograph,
  at,
  isFar,
  marks,
  put,
}: {
  readonly photograph: PhotographFile;
  readonly at: Place;
  readonly isFar: boolean;
  readonly marks: readonly GlassMark[];
  readonly put: Parameters<typeof Glass>[0]['put'];
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const square = useSquare(photograph, at);
  useEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen) return;
    pen.imageSmoothingEnabled = false;
    pen.clearRect(0, 0, 2 * GLASS_RADIUS, 2 * GLASS_RADIUS);
    if (square === null) return;
    const [left, top] = [at[0] - ACROSS / 2 - square.left, at[1] - ACROSS / 2 - square.top];
    const whole = 2 * GLASS_RADIUS;
    pen.drawImage(square.picture, left, top, ACROSS, ACROSS, 0, 0, whole, whole);
  }, [square, at[0], at[1]]);
  return (
    <Glass
      at={at}
      pxPerUnit={PX_PER_PIXEL}
      canvas={canvas}
      isFar={isFar}
      marks={marks}
      put={put}
      caption={words().see.timesPixels(print(PX_PER_PIXEL, 0))}
    />
  );
}

interface FetchedSquare extends PixelSquare {
  readonly of: string;
  readonly picture: OffscreenCanvas;
}

/** The part of the photograph round a place: the last one as long as it holds all that the glass shows. */
function useSquare(photograph: PhotographFile, at: Place): FetchedSquare | null {
  const [square, setSquare] = useState<FetchedSquare | null>(null);
  const [ask] = useState(() =>
    newestOnly(
      async ({ file, part }: { readonly file: PhotographFile; readonly part: PixelSquare }) => ({
        rgba: await seeingBench().pixels(file, part),
        of: file.address,
        part,
      }),
      ({ rgba, of, part }) => {
        if (rgba !== null) setSquare({ ...part, of, picture: drawnSquare(rgba, part) });
      },
    ),
  );
  const { name, file, address } = photograph;
  const isIn = square?.of === address && holds(square, at);
  useEffect(() => {
    if (isIn) return;
    const [left, top] = [Math.round(at[0] - SIDE_PX / 2), Math.round(at[1] - SIDE_PX / 2)];
    ask({ file: { name, file, address }, part: { left, top, sidePx: SIDE_PX } });
  }, [isIn, at[0], at[1], address]);
  return square?.of === address ? square : null;
}

function holds({ left, top, sidePx }: PixelSquare, [x, y]: Place): boolean {
  const [fromX, fromY] = [x - ACROSS / 2 - left, y - ACROSS / 2 - top];
  return Math.min(fromX, fromY) >= 0 && Math.max(fromX, fromY) + ACROSS <= sidePx;
}

function drawnSquare(rgba: Uint8ClampedArray<ArrayBuffer>, { sidePx }: PixelSquare): OffscreenCanvas {
  const canvas = new OffscreenCanvas(sidePx, sidePx);
  canvas.getContext('2d')?.putImageData(new ImageData(rgba, sidePx, sidePx), 0, 0);
  return canvas;
}
