import { accept, type Checked } from '../base/index.ts';
import type { HalfOutline } from '../curve/index.ts';
import { type Design, halfOf, type ValueName } from '../design/index.ts';
import type { Drawing } from '../drawing/index.ts';
import {
  archOnGround,
  bodyOutline,
  deriveInstrument,
  type Instrument,
  isSharedGround,
  outlineAndForm,
  type PlateGround,
  planParts,
  plateGround,
  weighed,
} from '../instrument/index.ts';
import type { RegisterEntry } from '../quantity/index.ts';
import {
  type BodyUnderHand,
  bodyUnderHand,
  gaugesUnderHand,
  roughPlate,
  type ShownBody,
  type ShownOutline,
  type ShownPages,
  type ShownPlate,
  type ShownStation,
  shownBody,
  shownOutline,
  shownPages,
} from '../showing/index.ts';
import { drawInstrument } from './make/drawInstrument.ts';
import type { MakeOptions } from './make/makeOptions.ts';
import { chosen, printedPieces, printPages } from './make/printPages.ts';
import { spokenPieces } from './make/spokenPieces.ts';

/** The numbers of a whole instrument, once a hand rests. */
export interface ShownNumbers {
  readonly register: readonly RegisterEntry[];
  /** Whether those are among them that are dear: what plates weigh and hold, fits of bar and post, holes laid flat. */
  readonly isAll: boolean;
}

/** The body alone: quick enough to follow a hand that drags. Faults: those of the outline and of the parts in the plane. */
export function showBody(design: Design): Checked<ShownBody> {
  const half = halfOf(design);
  if (!half.ok) return half;
  const plan = planParts(design, half.value.half);
  return plan.ok ? accept(shownBody(plan.value)) : plan;
}

/**
 * Of the body what a hand holds that pulls at its widths, the same to the bit as in {@link showBody}: quick enough for the frame
 * in which the hand moves. Faults: those of the outline, the ribs and the blocks.
 */
export function showBodyUnderHand(design: Design): Checked<BodyUnderHand> {
  const half = halfOf(design);
  if (!half.ok) return half;
  const plan = outlineAndForm(design, half.value.half);
  return plan.ok ? accept(bodyUnderHand(plan.value.outline, plan.value.formEdge)) : plan;
}

/** The outline alone, for a design whose parts cannot all be made. Faults: those of the outline. */
export function showOutline(design: Design): Checked<ShownOutline> {
  const half = halfOf(design);
  if (!half.ok) return half;
  const outline = bodyOutline(half.value.half);
  return outline.ok ? accept(shownOutline(outline.value)) : outline;
}

/** What a plate stands on, kept from one look at it to the next: it changes only with the outline and the channel. Plain data. */
export interface KeptGround {
  /** What it was laid out for. */
  readonly of: Design;
  readonly half: HalfOutline;
  readonly ground: PlateGround;
}

/** The ground that a design stands on: the one kept, where it is the same. Faults: those of the outline and the ground. */
export function keptGround(design: Design, kept: KeptGround | null): Checked<KeptGround> {
  if (kept !== null && standsOn(design, kept)) return accept(kept);
  const half = halfOf(design);
  if (!half.ok) return half;
  const ground = plateGround(design.values, half.value.half);
  return ground.ok ? accept({ of: design, half: half.value.half, ground: ground.value }) : ground;
}

/** Whether a ground that was kept is this design's as well. */
export function standsOn(design: Design, { of, ground }: KeptGround): boolean {
  return isSharedGround(ground, of, design);
}

/**
 * One plate alone, drawn roughly: quick enough to follow a hand that drags at heights and fullness. The ground of the last look
 * is taken again where it is the same. Faults: those of the outline, the ground and the arch.
 */
export function showPlateRoughly(
  design: Design,
  plate: 'back' | 'top',
  kept: KeptGround | null,
): Checked<{ readonly shown: ShownPlate; readonly kept: KeptGround }> {
  const on = keptGround(design, kept);
  if (!on.ok) return on;
  const arch = archOnGround(design, plate, on.value.ground);
  if (!arch.ok) return arch;
  return accept({ shown: roughPlate(arch.value, on.value.half, 'finished'), kept: on.value });
}

/**
 * The gauges of a plate that a hand holds which pulls at one number of fullness, the same to the bit as in {@link showPlateRoughly}:
 * quick enough for the frame in which the hand moves. Promises a design that stands on this ground. Faults: those of the arch.
 */
export function showGaugesUnderHand(
  design: Design,
  plate: 'back' | 'top',
  fullness: ValueName,
  { ground }: KeptGround,
): Checked<readonly ShownStation[]> {
  const arch = archOnGround(design, plate, ground);
  return arch.ok ? accept(gaugesUnderHand(arch.value, 'finished', fullness)) : arch;
}

/**
 * The instrument as far as the pictures of it need it: without what its plates weigh. One that was derived `before` makes it
 * quicker. Faults: those of the parts.
 */
export function showable(design: Design, before?: Instrument): Checked<Instrument> {
  return deriveInstrument(design, before);
}

/** The numbers that an instrument has without being weighed. */
export function showNumbers({ register }: Instrument): ShownNumbers {
  return { register: register.entries, isAll: false };
}

/** All its numbers. Faults: those of weighing. */
export function showAllNumbers(instrument: Instrument): Checked<ShownNumbers> {
  const all = weighed(instrument);
  return all.ok ? accept({ register: all.value.register.entries, isAll: true }) : all;
}

/** Every piece to be made. Faults: those of {@link drawInstrument}. */
export function piecesOf(instrument: Instrument): Checked<readonly Drawing[]> {
  return drawInstrument(instrument);
}

/** Every page as it will print, of the pieces chosen. Faults: those of laying the pages out. */
export function showPages(
  design: Design,
  drawings: readonly Drawing[],
  options: Pick<MakeOptions, 'paper' | 'printer' | 'parts' | 'language'>,
): Checked<ShownPages> {
  const pieces = spokenPieces(design, printedPieces(chosen(drawings, options)), options.language);
  const pages = printPages(pieces, design, options);
  return pages.ok ? accept(shownPages(pages.value)) : pages;
}
