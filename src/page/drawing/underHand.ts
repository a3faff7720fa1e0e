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
import { quickBench } from '../bench/bench.ts';
import { body, bodyAnswer, design, held, onTable, plate, stop, touched } from '../store.ts';

/*
 * A bench answers in the next frame at best: a browser tells where the pointer is just before it paints. So the few lines that a
 * hand holds are reckoned here, on the page's own thread and in the frame of the move, by the same functions and to the same
 * result as on the bench, which draws all the others; its answer then takes their place and changes nothing of them.
 */

/** ms that a browser may wait for an idle moment before it must see to it. */
const IDLE_MS = 2000;

/** The first of its kind takes ten times as long, since its program is only then made ready: before a hand comes, and in an idle moment. */
function makeReady(once: () => unknown): void {
  // Not every browser tells of idle moments.
  if ('requestIdleCallback' in window) requestIdleCallback(once, { timeout: IDLE_MS });
  else setTimeout(once, IDLE_MS);
}

const bodyOnTable = computed((): BodyUnderHand | null => {
  if (onTable.value === null) return null;
  const shown = showBodyUnderHand(onTable.value);
  return shown.ok ? shown.value : null;
});

/** Outline, form and measures of what is on the table; null where the body in sight is its own, or where the last one could not be drawn. */
export const bodyInHand = computed((): BodyUnderHand | null => {
  const answer = bodyAnswer.value;
  if (body.value === null || answer === null || !answer.isSound || answer.of === onTable.value) return null;
  return bodyOnTable.value;
});

const isBodySeen = computed(() => body.value !== null);
effect(() => {
  const on = isBodySeen.value ? design.peek() : null;
  if (on !== null) makeReady(() => showBodyUnderHand(on));
});

/** What the plates stand on, from the bench: laying it out takes longer than a frame. */
const ground = signal<KeptGround | null>(null);

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
    if (kept === null && laid !== null)
      makeReady(() => showGaugesUnderHand(on, plate.peek(), 'fullnessWaist', laid));
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

/** A gauge as it is with what is on the table, where the hand is on its fullness; else as it was drawn, for `of`. */
export function gaugeInHand(drawn: ShownStation, of: Design): ShownStation {
  if (drawn.fullnessFrom !== touched.value || of === onTable.value) return drawn;
  return gaugesOnTable.value.find(({ name }) => name === drawn.name) ?? drawn;
}
