import { accept, type Checked } from '../base/index.ts';
import type { HalfOutline } from '../curve/index.ts';
import { type Design, halfOf } from '../design/index.ts';
import type { Drawing } from '../drawing/index.ts';
import {
  archOnGround,
  deriveInstrument,
  type Instrument,
  isGroundOf,
  type PlateGround,
  planParts,
  plateGround,
  weighed,
} from '../instrument/index.ts';
import type { RegisterEntry } from '../quantity/index.ts';
import {
  roughPlate,
  type ShownBody,
  type ShownPages,
  type ShownPlate,
  shownBody,
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

/** What a plate stands on, kept from one look at it to the next: it changes only with the outline and the channel. */
export interface KeptGround {
  readonly half: HalfOutline;
  readonly ground: PlateGround;
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
  const outline = halfOf(design);
  if (!outline.ok) return outline;
  const { half } = outline.value;
  const isKept = kept !== null && isSameHalf(kept.half, half) && isGroundOf(kept.ground, design.values);
  const ground = isKept ? accept(kept.ground) : plateGround(design.values, half);
  if (!ground.ok) return ground;
  const arch = archOnGround(design, plate, ground.value);
  if (!arch.ok) return arch;
  return accept({ shown: roughPlate(arch.value, half, 'finished'), kept: { half, ground: ground.value } });
}

function isSameHalf(one: HalfOutline, other: HalfOutline): boolean {
  return (['lowerBout', 'cBout', 'upperBout'] as const).every(
    (name) =>
      one[name].vertices.length === other[name].vertices.length &&
      one[name].vertices.every((a, index) => {
        const b = other[name].vertices[index];
        return b !== undefined && a.x === b.x && a.y === b.y && a.bulge === b.bulge;
      }),
  );
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
