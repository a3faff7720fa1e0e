import { useEffect, useRef } from 'preact/hooks';
import type { Checked, LampStand, LitPlate } from '../../core/index.ts';
import { viewBench } from '../bench/bench.ts';
import { newestOnly } from '../bench/newestOnly.ts';
import { design, plate } from '../store.ts';
import { woodTone } from './woodTone.ts';

/** mm between two places that are lit, while the lamp is carried and once it rests. */
const CARRIED_MM = 1.6;
const RESTING_MM = 0.55;
/** ms of rest after which the fine picture is asked for. */
const REST_MS = 140;

/** One half of the plate as it looks under the lamp, clipped to it by who shows it. Placed in CSS pixels. */
export function PlateLight({
  lamp,
  width,
  height,
  left,
  top,
  half,
}: {
  readonly lamp: LampStand;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  /** Only the half left of the centre line, or the whole. */
  readonly half: boolean;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const ask = useRef<((stepMm: number) => void) | null>(null);
  const lampNow = useRef(lamp);
  lampNow.current = lamp;
  useEffect(() => {
    const newest = newestOnly(
      async (stepMm: number): Promise<Checked<LitPlate> | null> => {
        const asked = design.value;
        return asked && viewBench().light(asked, plate.value, lampNow.current, stepMm);
      },
      (answer) => {
        if (answer?.ok && canvas.current) paint(canvas.current, answer.value);
      },
    );
    ask.current = newest;
  }, []);
  useEffect(() => {
    ask.current?.(CARRIED_MM);
    const rest = setTimeout(() => ask.current?.(RESTING_MM), REST_MS);
    return () => clearTimeout(rest);
  }, [lamp.fromRad, lamp.heightRad, design.value, plate.value]);
  return (
    <canvas
      ref={canvas}
      class={half ? 'lit half' : 'lit'}
      aria-hidden="true"
      style={{ left: `${left}px`, top: `${top}px`, width: `${width}px`, height: `${height}px` }}
    />
  );
}

function paint(canvas: HTMLCanvasElement, { columns, rows, light, inside }: LitPlate): void {
  canvas.width = columns;
  canvas.height = rows;
  const pen = canvas.getContext('2d');
  if (pen === null) return;
  const picture = pen.createImageData(columns, rows);
  for (let at = 0; at < light.length; at++) {
    if (inside[at] === 0) continue;
    const share = (light[at] as number) / 255;
    for (let channel = 0; channel < 3; channel++)
      picture.data[4 * at + channel] = woodTone(share, channel as 0 | 1 | 2);
    picture.data[4 * at + 3] = 255;
  }
  pen.putImageData(picture, 0, 0);
}
