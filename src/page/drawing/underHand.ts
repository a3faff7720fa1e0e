import { computed, effect, signal } from '@preact/signals';
import {
  type BodyUnderHand,
  type Design,
  type KeptGround,
  type ShownStation,
  showBodyUnderHand,
  showGaugesUnderHand,
  standsOn,
  VALUES,
  type ValueName,
} from '../../core/index.ts';
import { quickBench, viewBench } from '../bench/bench.ts';
import { makeReady } from '../bench/idle.ts';
import { body, bodyOf, design, held, onTable, plate, stop, touched } from '../store.ts';

/*
 * A bench answers in the next frame at best: a browser tells where the pointer is just before it paints. So the few lines that a
 * hand holds are reckoned here, on the page's own thread and in the frame of the move, by the same functions and to the same
 * result as on the bench, which draws all the others; its answer then takes their place and changes nothing of them.
 */

/** What the hand held last: it lies there yet until the bench has drawn it. Other edits wait for the bench, and show their number the sooner. */
const heldLast = signal<Design | null>(null);
effect(() => {
  if (held.value !== null) heldLast.value = held.value;
});

const bodyOnTable = computed((): BodyUnderHand | null => {
  if (onTable.value === null) return null;
  const shown = showBodyUnderHand(onTable.value);
  return shown.ok ? shown.value : null;
});

/** Outline, form and measures of what the hand holds, or has just let go of; null where the body in sight is its own, or where the last one could not be drawn. */
export const bodyInHand = computed((): BodyUnderHand | null => {
  if (bodyOf.value === null || bodyOf.value === onTable.value) return null;
  return heldLast.value === onTable.value ? bodyOnTable.value : null;
});

/** After so many the program is nearly as quick as it becomes. */
const READY_BODIES = 12;
const READY_GAUGES = 6;

const isBodySeen = computed(() => body.value !== null);
effect(() => {
  const on = isBodySeen.value ? design.peek() : null;
  if (on !== null)
    makeReady(
      READY_BODIES,
      () => held.peek() === null,
      () => showBodyUnderHand(on),
    );
});

/** What the plates stand on, from the bench: laying it out takes longer than a frame. */
const ground = signal<KeptGround | null>(null);

/** ms after which what is seen first of a plate is there. */
const SEEN_FIRST_MS = 1500;
const REHEARSALS = 4;

function makePlatesReady(on: Design, laid: KeptGround): void {
  const isWanted = () => held.peek() === null && onTable.peek() === on && stop.peek() === 'arch';
  makeReady(READY_GAUGES, isWanted, () => showGaugesUnderHand(on, plate.peek(), 'fullnessWaist', laid));
  setTimeout(
    () => makeReady(REHEARSALS, isWanted, () => viewBench().rehearse(on, plate.peek())),
    SEEN_FIRST_MS,
  );
}

let isAsking = false;
/** Asked for as soon as plates are looked at, so that it is here before a hand comes. */
effect(() => {
  const on = design.value;
  if (stop.value === 'arch' && on !== null && held.value === null) void layGround(on);
});

async function layGround(on: Design): Promise<void> {
  const kept = ground.peek();
  if (isAsking || (kept !== null && standsOn(on, kept))) return;
  isAsking = true;
  try {
    const answer = await quickBench().ground(on);
    const laid = answer.ok ? answer.value : null;
    if (kept === null && laid !== null) makePlatesReady(on, laid);
    ground.value = laid;
  } finally {
    isAsking = false;
  }
  // Another may have come to the bench meanwhile.
  const now = design.peek();
  if (stop.peek() === 'arch' && now !== null && now !== on) await layGround(now);
}

const gaugesOnTable = computed((): readonly ShownStation[] => {
  const [on, name, kept] = [onTable.value, touched.value, ground.value];
  if (on === null || name === null || !(name in VALUES) || kept === null || !standsOn(on, kept)) return [];
  const shown = showGaugesUnderHand(on, plate.value, name as ValueName, kept);
  return shown.ok ? shown.value : [];
});

/** A gauge as it is with what the hand holds, or has just let go of, where the hand is on its fullness; else as it was drawn, for `of`. */
export function gaugeInHand(drawn: ShownStation, of: Design): ShownStation {
  const isHeld = heldLast.value === onTable.value && of !== onTable.value;
  if (drawn.fullnessFrom !== touched.value || !isHeld) return drawn;
  return gaugesOnTable.value.find(({ name }) => name === drawn.name) ?? drawn;
}
