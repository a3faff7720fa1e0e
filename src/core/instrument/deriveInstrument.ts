import { accept, type Checked, type Finding, refuse } from '../base/index.ts';
import type { HalfOutline } from '../curve/index.ts';
import { type Design, designEntries, halfOf, type ValueName, withNamedThicknesses } from '../design/index.ts';
import { makeRegister, type Register, type RegisterEntry } from '../quantity/index.ts';
import type { PlateArch } from './arching/archedPlate.ts';
import { archRegister } from './arching/archRegister.ts';
import { bothArches } from './arching/bothArches.ts';
import { chosenLongArchRegister } from './arching/chosenLongArch.ts';
import type { PlateGround } from './arching/plateGround.ts';
import { purflingWood } from './arching/purflingWood.ts';
import { boardValueName, type RoughNumbers, roughNumbers } from './arching/roughNumbers.ts';
import { roughRegister } from './arching/roughRegister.ts';
import { type Head, headOfDesign } from './head/headOfDesign.ts';
import { headEntries } from './head/headRegister.ts';
import { leastEntries, leastFindings } from './leastThicknesses.ts';
import { type Neck, neckPart } from './neck/neckPart.ts';
import type { PlanParts } from './plan.ts';
import { planParts } from './planParts.ts';
import {
  type BarAndPost,
  type BoxNumbers,
  boxNumbers,
  type HollowPlate,
  hollowPlates,
} from './plates/index.ts';
import { hasSamePlates, isSharedGround } from './sameParts.ts';
import { type BarShape, barShape } from './setup/barShape.ts';
import { fitEntries } from './setup/fitRegister.ts';
import { type PostShape, postShape } from './setup/postShape.ts';
import type { SetUp } from './setup/setUp.ts';
import { setUpOfDesign } from './setup/setUpOfDesign.ts';
import { setupEntries } from './setup/setupRegister.ts';
import { type FlatHole, flatHole } from './soundHoles/flatHole.ts';
import { flatEntries, flatFindings } from './soundHoles/flatRegister.ts';
import { soundHoleEntries } from './soundHoles/soundHoleRegister.ts';
import { type SoundHoles, soundHolesOfDesign } from './soundHoles/soundHoles.ts';

/** Every part that a design stands for, and every number that it was made from. */
export interface Instrument {
  readonly design: Design;
  readonly half: HalfOutline;
  readonly plan: PlanParts;
  /** What both plates stand on. */
  readonly ground: PlateGround;
  readonly plates: { readonly back: PlateArch; readonly top: PlateArch };
  /** The same plates, hollowed to their thicknesses. */
  readonly hollows: {
    readonly back: HollowPlate;
    readonly top: HollowPlate;
    readonly barAndPost: BarAndPost;
  };
  readonly soundHoles: SoundHoles;
  readonly neck: Neck;
  readonly setUp: SetUp;
  readonly head: Head;
  /** What the plates are roughed out with. */
  readonly roughing: { readonly back: RoughNumbers; readonly top: RoughNumbers };
  readonly register: Register;
  readonly findings: readonly Finding[];
}

/**
 * The instrument of a design. Parts that do not need each other are all tried, so that every fault is seen at once. `before` is
 * one that was derived already: what is dear is taken from it where it is the same, plates and parts in the plane or at least the
 * ground of the plates, to the same result.
 * Faults: those of the outline, the parts in the plane, the arching, the sound holes, the neck, the set-up and the head.
 */
export function deriveInstrument(given: Design, before?: Instrument): Checked<Instrument> {
  const { design, findings: named } = withNamedThicknesses(given);
  const outline = halfOf(design);
  if (!outline.ok) return outline;
  const { half } = outline.value;
  const kept = before && hasSamePlates(before.design, design) ? before : null;
  const stood = before && isSharedGround(before.ground, before.design, design) ? before.ground : null;
  const plan = kept ? accept(kept.plan) : planParts(design, half);
  const { ground, back, top } = kept
    ? { ground: accept(kept.ground), back: accept(kept.plates.back), top: accept(kept.plates.top) }
    : bothArches(design, half, stood);
  if (!plan.ok || !ground.ok || !back.ok || !top.ok)
    return refuse(...[plan, back, top].flatMap((part) => (part.ok ? [] : part.faults)));
  const rough = {
    back: roughNumbers(design.values, back.value),
    top: roughNumbers(design.values, top.value),
  };
  if (!rough.back.ok || !rough.top.ok)
    return refuse(...[rough.back, rough.top].flatMap((part) => (part.ok ? [] : part.faults)));
  const roughing = { back: rough.back.value, top: rough.top.value };
  const plates = { back: back.value, top: top.value };
  const { outline: body, form } = plan.value;
  const hollows = hollowPlates(design, plates, body.chain, form.outline);
  if (!hollows.ok) return hollows;
  const soundHoles = soundHolesOfDesign(design, {
    outline: body,
    blocks: plan.value.blocks,
    linings: plan.value.linings,
    barAndPost: hollows.value.barAndPost,
  });
  if (!soundHoles.ok) return soundHoles;
  const neck = neckPart(design, top.value, {
    outline: body,
    blocks: plan.value.blocks,
    ribs: plan.value.ribs,
  });
  if (!neck.ok) return neck;
  const strung = setUpOfDesign(design, neck.value, top.value);
  if (!strung.ok) return strung;
  const head = headOfDesign(design, neck.value, strung.value);
  if (!head.ok) return head;
  const grooves = [back.value, top.value].map((arch) => purflingWood(design.values, arch));
  const register = makeRegister([
    ...designEntries(design),
    ...plan.value.registerEntries,
    ...archRegister(back.value),
    ...archRegister(top.value),
    ...[back.value, top.value].flatMap((arch) => chosenLongArchRegister(design, arch)),
    ...[back.value, top.value].flatMap((arch) =>
      roughRegister(arch, roughing[arch.plate], design.values[boardValueName(arch)] !== undefined),
    ),
    ...grooves.flatMap(({ entries }) => entries),
    ...soundHoleEntries(soundHoles.value),
    ...neck.value.registerEntries,
    ...setupEntries(strung.value, design.values.afterLength !== undefined),
    ...headEntries(head.value),
    ...outlineEntry(design, plan.value),
  ]);
  if (!register.ok) return register;
  return accept({
    design,
    half,
    plan: plan.value,
    ground: ground.value,
    plates,
    hollows: hollows.value,
    soundHoles: soundHoles.value,
    neck: neck.value,
    setUp: strung.value,
    head: head.value,
    roughing,
    register: register.value,
    findings: [
      ...outline.value.findings,
      ...named,
      ...plan.value.findings,
      ...back.value.findings,
      ...top.value.findings,
      ...grooves.flatMap(({ findings }) => findings),
      ...soundHoles.value.findings,
      ...neck.value.findings,
      ...strung.value.findings,
      ...head.value.findings,
    ],
  });
}

/**
 * The instrument with what its plates weigh and hold added to register and findings: dear, so that only those who show the
 * numbers ask for it.
 */
export function weighed(instrument: Instrument): Checked<Instrument & { readonly box: BoxNumbers }> {
  const { design, plan, hollows } = instrument;
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const box = boxNumbers(design, hollows, plan.outline.chain, {
    innerFace: plan.form.outline,
    ribHeightTailMm: plan.ribs.heightTailMm,
    ribHeightNeckMm: plan.ribs.heightNeckMm,
    liningThicknessMm: value('liningThickness'),
    liningWidthMm: value('liningWidth'),
  });
  const flat = holeLaidFlat(instrument);
  const register = makeRegister([
    ...instrument.register.entries,
    ...box.registerEntries,
    ...fitEntries(fittedBar(instrument), fittedPost(instrument)),
    ...leastEntries(design),
    ...flatEntries(flat, instrument.plates.top),
  ]);
  if (!register.ok) return register;
  return accept({
    ...instrument,
    box,
    register: register.value,
    findings: [
      ...instrument.findings,
      ...box.findings,
      ...flatFindings(flat),
      ...leastFindings(design, plan.outline, { back: box.back.survey, top: box.top.survey }),
    ],
  });
}

/** Holes already laid flat: sheets, register and file ask for the same. */
const FLAT = new WeakMap<SoundHoles, FlatHole | null>();

/** The treble sound hole laid flat from the arch; null where it lies too near to the edge. Dear, and done once an instrument. */
export function holeLaidFlat({ plates, plan, soundHoles }: Instrument): FlatHole | null {
  const known = FLAT.get(soundHoles);
  if (known !== undefined) return known;
  const flat = flatHole(plates.top, plan.outline.chain, soundHoles);
  FLAT.set(soundHoles, flat);
  return flat;
}

/** The bass bar as it is fitted to the inside of the top: dear, so that only those who draw it or show its numbers ask. */
export function fittedBar({ design, plates, hollows }: Instrument): BarShape {
  const bridgeMm = plates.top.bodyLengthMm - (design.values.stop?.value ?? Number.NaN);
  return barShape(hollows.barAndPost, hollows.top, bridgeMm, design.values.barSpring?.value ?? 0);
}

/** The sound post as it is fitted between both plates. */
export function fittedPost({ plan, hollows }: Instrument): PostShape {
  const { heightTailMm: ribHeightTailMm, heightNeckMm: ribHeightNeckMm } = plan.ribs;
  return postShape(hollows.barAndPost.post, { ...hollows, ribHeightTailMm, ribHeightNeckMm });
}

/** The outline as one line of the register, standing for its shape: its perimeter, and what decided it. */
function outlineEntry(design: Design, plan: PlanParts): readonly RegisterEntry[] {
  const value = plan.outline.perimeterMm;
  if (design.outline.kind === 'traced') {
    const origin = { kind: 'measured', from: 'the traced outline' } as const;
    return [{ name: 'outline', value, unit: 'mm', origin, plusMinus: design.outline.plusMinusMm }];
  }
  const shape = OUTLINE_VALUES.filter((name) => design.values[name] !== undefined);
  const how = 'perimeter; the shape is solved from these with the habit of the family';
  return [{ name: 'outline', value, unit: 'mm', origin: { kind: 'derived', from: shape, how } }];
}

const OUTLINE_VALUES = [
  'bodyLength',
  'upperBout',
  'waist',
  'lowerBout',
  'upperBoutStation',
  'waistStation',
  'lowerBoutStation',
  'upperCornerStation',
  'lowerCornerStation',
  'upperCorners',
  'lowerCorners',
  'upperCornerEnd',
  'lowerCornerEnd',
] as const;
