import type { ValueName } from '../../core/index.ts';
import { touched } from '../store.ts';
import { nameOf } from '../words/words.ts';
import { type GripFineness, type GripNumber, type GripWay, gripOfValue, useGrip } from './useGrip.ts';

/** px. A place that is easy to hit with a finger, and the knob that shows where it is. */
const ROOM = 44;
const KNOB = 5.5;

/** A place of a number to pull at, and the way it goes for one more of it. */
export interface GripPlace {
  readonly at: readonly [xPx: number, yPx: number];
  readonly way: GripWay;
}

/** Handles of one number in a drawing: the first is there for keys and readers, the others for the hand alone. */
export function Grip({
  name,
  of = gripOfValue(name as ValueName),
  value,
  places,
  unit = 'mm',
  label,
  fineness,
  isFixed = false,
  hasKnob = false,
}: {
  /** A value of the design, or the name of what `of` changes. */
  readonly name: string;
  readonly of?: GripNumber;
  readonly value: number;
  readonly places: readonly GripPlace[];
  readonly unit?: string;
  /** Where its name alone would not tell it from others. */
  readonly label?: string;
  readonly fineness?: GripFineness;
  readonly isFixed?: boolean;
  readonly hasKnob?: boolean;
}) {
  const { slider, handle } = useGrip({ of, value, isFixed, ...(fineness && { fineness }) });
  return (
    <g class={touched.value === name ? 'grips lit' : 'grips'}>
      {places.map(({ at: [x, y], way }, place) => (
        <g key={place}>
          {hasKnob && <circle class="knob" cx={x} cy={y} r={KNOB} />}
          <rect
            class={Math.abs(way[0]) > Math.abs(way[1]) ? 'grip' : 'grip upright'}
            x={x - ROOM / 2}
            y={y - ROOM / 2}
            width={ROOM}
            height={ROOM}
            {...(place === 0
              ? {
                  ...slider,
                  'aria-label': label ?? nameOf(name),
                  'aria-valuetext': `${slider['aria-valuetext']} ${unit}`,
                  'aria-orientation': Math.abs(way[0]) > Math.abs(way[1]) ? 'horizontal' : 'vertical',
                }
              : { 'aria-hidden': true, tabindex: -1 })}
            {...handle(way)}
          />
        </g>
      ))}
    </g>
  );
}

/** px for a millimetre at least, so that a hand can pull at tenths of small lengths. */
const FINE_PX_PER_MM = 8;

/** The way of a handle that leads some other way than the line it changes: fine enough for small lengths. */
export function finely([x, y]: GripWay): GripWay {
  const far = Math.hypot(x, y);
  const times = Math.max(1, FINE_PX_PER_MM / far);
  return [x * times, y * times];
}
