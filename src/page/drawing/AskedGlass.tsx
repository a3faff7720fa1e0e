import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { print, words } from '../words/words.ts';
import { GLASS_RADIUS, Glass, type GlassMark } from './Glass.tsx';
import type { Place } from './markSigns.tsx';

/** px of the glass that a pixel of the photograph has. */
const PX_PER_PIXEL = 6;

/** A glass over a photograph as it was taken: its own pixels, each large enough to work within it. */
export function AskedGlass({
  image,
  at,
  isFar,
  marks,
  put,
}: {
  readonly image: RefObject<HTMLImageElement | null>;
  readonly at: Place;
  readonly isFar: boolean;
  readonly marks: readonly GlassMark[];
  readonly put: Parameters<typeof Glass>[0]['put'];
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen || !image.current) return;
    const across = (2 * GLASS_RADIUS) / PX_PER_PIXEL;
    pen.imageSmoothingEnabled = false;
    pen.clearRect(0, 0, 2 * GLASS_RADIUS, 2 * GLASS_RADIUS);
    pen.drawImage(
      image.current,
      at[0] - across / 2,
      at[1] - across / 2,
      across,
      across,
      0,
      0,
      2 * GLASS_RADIUS,
      2 * GLASS_RADIUS,
    );
  }, [at[0], at[1]]);
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
