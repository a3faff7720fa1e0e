import { signal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import {
  type Checked,
  HAND_STUFF,
  type HandHold,
  type HandPicture,
  type LampStand,
  seesTop,
} from '../../core/index.ts';
import { viewBench } from '../bench/bench.ts';
import { newestOnly } from '../bench/newestOnly.ts';
import { design, plate } from '../store.ts';
import { words } from '../words/words.ts';
import { holdsFinger } from './holdsFinger.ts';
import { woodTone } from './woodTone.ts';

const hold = signal<HandHold>({ turnRad: -0.5, tiltRad: -0.5 });

/** rad a pixel, and an arrow key, turns it by; it is never tilted over its end. */
const PER_PX = 0.008;
const NUDGE = Math.PI / 36;
const FARTHEST = Math.PI / 2;
/** Pixels of the picture for one of the screen, and mm between lit places: while it moves, and at rest. */
const MOVING = { share: 0.6, stepMm: 1.6 };
const RESTING = { share: 2, stepMm: 0.55 };
const REST_MS = 160;
/** At most, so that an old machine keeps up. */
const MOST_PX = 1900;
/** How dark purfling and the inside behind a sound hole are. */
const PURFLING = 0.42;
const INSIDE = 0.16;

/** The body in the hand under the lamp: turned by hand, by finger or with the arrow keys. */
export function InHand({
  lamp,
  size,
}: {
  readonly lamp: LampStand;
  readonly size: { readonly width: number; readonly height: number };
}) {
  const said = words().views;
  const canvas = useRef<HTMLCanvasElement>(null);
  const grip = useRef<{ readonly x: number; readonly y: number; readonly from: HandHold } | null>(null);
  const now = useRef({ lamp, size });
  now.current = { lamp, size };
  const [ask] = useState(() =>
    newestOnly(
      async ({ share, stepMm }: typeof MOVING): Promise<Checked<HandPicture> | null> => {
        const asked = design.value;
        const { width, height } = now.current.size;
        const fit = Math.min(share, MOST_PX / Math.max(width, height));
        const px = [Math.round(width * fit), Math.round(height * fit)] as const;
        return asked && viewBench().inHand(asked, hold.value, now.current.lamp, px, stepMm);
      },
      (answer) => {
        if (answer?.ok && canvas.current) paint(canvas.current, answer.value);
      },
    ),
  );
  // The notebook speaks of one plate: that one looks at the eye.
  useEffect(() => {
    if (seesTop(hold.value) !== (plate.value === 'top')) turnOver();
  }, [plate.value]);
  useEffect(() => {
    ask(MOVING);
    const rest = setTimeout(() => ask(RESTING), REST_MS);
    return () => clearTimeout(rest);
  }, [hold.value, lamp.fromRad, lamp.heightRad, design.value, size.width, size.height]);
  const move = (event: PointerEvent) => {
    const from = grip.current;
    if (from === null) return;
    hold.value = held(from.from, (event.clientX - from.x) * PER_PX, (event.clientY - from.y) * PER_PX);
  };
  const nudge = (event: KeyboardEvent) => {
    const turn = { ArrowRight: NUDGE, ArrowLeft: -NUDGE }[event.key] ?? 0;
    const tilt = { ArrowDown: NUDGE, ArrowUp: -NUDGE }[event.key] ?? 0;
    if (turn === 0 && tilt === 0) return;
    event.preventDefault();
    hold.value = held(hold.value, turn, tilt);
  };
  return (
    <canvas
      ref={canvas}
      class="in-hand"
      style={{ width: `${size.width}px`, height: `${size.height}px` }}
      role="slider"
      tabIndex={0}
      aria-label={said.inHand}
      aria-valuenow={degrees(hold.value.turnRad)}
      aria-valuetext={said.held(degrees(hold.value.turnRad), degrees(hold.value.tiltRad))}
      {...holdsFinger}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        grip.current = { x: event.clientX, y: event.clientY, from: hold.value };
      }}
      onPointerMove={move}
      onPointerUp={() => {
        grip.current = null;
      }}
      onPointerCancel={() => {
        grip.current = null;
      }}
      onKeyDown={nudge}
    />
  );
}

/** Turns the body over, so that its other side is seen. */
export function turnOver(): void {
  hold.value = held(hold.value, Math.PI, 0);
}

function held({ turnRad, tiltRad }: HandHold, turn: number, tilt: number): HandHold {
  return {
    turnRad: Math.atan2(Math.sin(turnRad + turn), Math.cos(turnRad + turn)),
    tiltRad: Math.min(FARTHEST, Math.max(-FARTHEST, tiltRad + tilt)),
  };
}

function degrees(rad: number): number {
  return Math.round((rad * 180) / Math.PI);
}

function paint(canvas: HTMLCanvasElement, { width, height, light, stuff }: HandPicture): void {
  canvas.width = width;
  canvas.height = height;
  const pen = canvas.getContext('2d');
  if (pen === null) return;
  const picture = pen.createImageData(width, height);
  for (let at = 0; at < light.length; at++) {
    const what = stuff[at];
    if (what === HAND_STUFF.nothing) continue;
    const share = (light[at] as number) / 255;
    const dim = what === HAND_STUFF.hole ? INSIDE : what === HAND_STUFF.purfling ? PURFLING : 1;
    for (let channel = 0; channel < 3; channel++)
      picture.data[4 * at + channel] = dim * woodTone(share, channel as 0 | 1 | 2);
    picture.data[4 * at + 3] = 255;
  }
  pen.putImageData(picture, 0, 0);
}
