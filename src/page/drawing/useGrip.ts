import { useRef } from 'preact/hooks';
import { type Design, overrule, type ValueName } from '../../core/index.ts';
import { design, edit, held, touched } from '../store.ts';
import { nameOf, print } from '../words/words.ts';
import { COARSE } from './arrows.ts';
import { holdsFinger } from './holdsFinger.ts';
import { standing } from './standing.ts';

/** px that a handle goes for one more of its number. */
export type GripWay = readonly [xPx: number, yPx: number];

/** How finely a number is pulled: its decimals, and what an arrow key changes it by. */
export interface GripFineness {
  readonly decimals: number;
  readonly step: number;
}

export const TENTHS: GripFineness = { decimals: 1, step: 0.1 };
export const HUNDREDTHS: GripFineness = { decimals: 2, step: 0.01 };

/** A number that a hand can pull at: what it is touched by, where it stands now, the design with another in its place, and how that step is told. */
export interface GripNumber {
  readonly name: string;
  readonly now: (shown: number) => number;
  readonly to: (design: Design, wish: number) => Design;
  readonly says: (wish: string) => string;
}

/** A value of the design, by its name. */
export function gripOfValue(name: ValueName): GripNumber {
  return {
    name,
    now: (shown) => standing(name, shown),
    to: (before, wish) => overrule(before, name, wish),
    says: (wish) => `${nameOf(name)} ${wish}`,
  };
}

/** px the hand must go before a number is pulled and not only touched. */
const PULL_PX = 2;
const ARROWS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
};

interface Pull {
  readonly from: readonly [number, number];
  readonly value: number;
  readonly way: GripWay;
  readonly isPulled: boolean;
}

/**
 * A number under the hand: pulled with mouse, pen or finger, shown at once and put into the design as one step when the hand lets go;
 * nudged by the arrow keys. A touch alone, and a pull that is broken off, change nothing.
 */
export function useGrip({
  of: { name, now, to: change, says: tell },
  value,
  fineness = TENTHS,
  isFixed = false,
}: {
  readonly of: GripNumber;
  /** As it is shown. */
  readonly value: number;
  readonly fineness?: GripFineness;
  /** It can be touched, not changed. */
  readonly isFixed?: boolean;
}) {
  const pull = useRef<Pull | null>(null);
  const made = useRef<{ readonly value: number; readonly as: Design } | null>(null);
  const to = (wish: number): Design | null => {
    const value = Number(wish.toFixed(fineness.decimals));
    // A hand that trembles within a step of its number changes nothing, and lets go what it holds.
    if (made.current?.value === value && made.current.as === held.value) return held.value;
    const as = design.value && change(design.value, value);
    made.current = as && { value, as };
    return as;
  };
  const says = (wish: number) => tell(print(wish, fineness.decimals));
  const wishOf = (event: PointerEvent): number | null => {
    const one = pull.current;
    if (one === null) return null;
    const [x, y] = [event.clientX - one.from[0], event.clientY - one.from[1]];
    if (!one.isPulled && Math.hypot(x, y) < PULL_PX) return null;
    pull.current = { ...one, isPulled: true };
    const [wayX, wayY] = one.way;
    return one.value + (x * wayX + y * wayY) / (wayX ** 2 + wayY ** 2);
  };
  const breakOff = () => {
    pull.current = null;
    held.value = null;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && pull.current !== null) breakOff();
    const arrow = ARROWS[event.key];
    if (arrow === undefined) return;
    event.preventDefault();
    // From the design as it stands, which may be ahead of what is drawn.
    const wish = now(value) + arrow * fineness.step * (event.shiftKey ? COARSE : 1);
    const after = isFixed ? null : to(wish);
    if (after) edit(says(wish), after);
  };
  return {
    slider: {
      role: 'slider',
      tabindex: 0,
      'aria-valuenow': Number(value.toFixed(fineness.decimals)),
      'aria-valuetext': print(value, fineness.decimals),
      ...(isFixed && { 'aria-readonly': true }),
    } as const,
    /** For every handle that pulls at the number: the way it goes for one more of it. */
    handle: (way: GripWay) => ({
      ...holdsFinger,
      onPointerDown: (event: PointerEvent) => {
        touched.value = name;
        if (isFixed || event.button > 0) return;
        (event.currentTarget as Element).setPointerCapture(event.pointerId);
        pull.current = { from: [event.clientX, event.clientY], value, way, isPulled: false };
      },
      onPointerMove: (event: PointerEvent) => {
        const wish = wishOf(event);
        if (wish !== null) held.value = to(wish);
      },
      onPointerUp: (event: PointerEvent) => {
        const wish = wishOf(event);
        const after = wish === null ? null : to(wish);
        pull.current = null;
        if (after && wish !== null) {
          // What it lets go of is what it held last, and stays in sight.
          held.value = after;
          edit(says(wish), after);
        } else breakOff();
      },
      onPointerCancel: breakOff,
      onKeyDown,
      onFocus: () => {
        touched.value = name;
      },
    }),
  };
}
