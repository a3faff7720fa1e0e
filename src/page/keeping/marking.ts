import { signal } from '@preact/signals';
import { seeingBench } from '../bench/bench.ts';
import { words } from '../words/words.ts';
import type { HandMark, MarkKind } from './said.ts';
import { said, say } from './saying.ts';
import { photograph, shot } from './tracing.ts';

/** What the hand holds over the picture: the glass, a mark, or the end of a line along a scale bar; null where it only points. */
export type InHand = MarkKind | 'glass' | 'bar' | null;
export const inHand = signal<InHand>(null);
/** Where the glass stands, in the units of what is shown; null before it is first moved. */
export const aim = signal<readonly [number, number] | null>(null);
/** Whether the glass was laid where it stands: then it no longer goes with the mouse. */
export const isLaid = signal(false);
/** Where marks lie on the restored picture, in its millimetres, as far as that is known. */
export const inShown = signal<ReadonlyMap<HandMark, HandMark['places']>>(new Map());

/** Takes something in hand; the glass stays where it stands. */
export function takeInHand(what: InHand): void {
  inHand.value = what;
  if (what === null) liftGlass();
}

/** The glass begins anew: pictures differ in their units. */
export function liftGlass(): void {
  aim.value = null;
  isLaid.value = false;
}

/** Puts a mark on the photograph in hand: one step. Places in pixels of the photograph. */
export function putMark(kind: MarkKind, places: HandMark['places']): HandMark | null {
  const on = photograph.value?.name;
  if (on === undefined || places.length === 0) return null;
  const mark = { kind, on, places };
  say(words().see.marks[kind], { marks: [...said.value.marks, mark] });
  return mark;
}

/** The same from the restored picture: places in its millimetres are carried back to the photograph. */
export async function putMarkShown(kind: MarkKind, places: HandMark['places']): Promise<void> {
  const inPhotograph = await seeingBench().inPhotograph(shot.value, places);
  const mark = inPhotograph && putMark(kind, inPhotograph);
  if (mark) inShown.value = new Map([...inShown.value, [mark, places]]);
}

/** Moves one place of a mark: one step. In pixels of its photograph. */
export function moveMark(mark: HandMark, place: number, to: HandMark['places'][number]): HandMark | null {
  const { marks } = said.value;
  if (!marks.includes(mark)) return null;
  const moved = { ...mark, places: mark.places.with(place, to) };
  say(words().see.moved(words().see.marks[mark.kind]), {
    marks: marks.map((one) => (one === mark ? moved : one)),
  });
  return moved;
}

/** The same on the restored picture, in its millimetres. */
export async function moveMarkShown(
  mark: HandMark,
  place: number,
  to: HandMark['places'][number],
): Promise<void> {
  const before = inShown.value.get(mark);
  if (before === undefined) return;
  const inPhotograph = await seeingBench().inPhotograph(shot.value, [to]);
  const moved = inPhotograph?.[0] && moveMark(mark, place, inPhotograph[0]);
  if (moved) inShown.value = new Map([...inShown.value, [moved, before.with(place, to)]]);
}

/** Finds where marks lie on the restored picture. */
export async function showMarks(number: number, marks: readonly HandMark[]): Promise<void> {
  const found = await seeingBench().onShown(
    number,
    marks.map(({ places }) => places),
  );
  if (found !== null)
    inShown.value = new Map([
      ...inShown.value,
      ...marks.map((mark, place) => [mark, found[place] ?? []] as const),
    ]);
}

/** Moves an end of the scale bar: one step. */
export function moveBarEnd(place: number, to: HandMark['places'][number]): void {
  say(words().see.says.bar, { barEnds: said.value.barEnds.with(place, to) });
}

/** Ends of a scale bar: the two places of a line, or one after the other. */
export function putBar(places: HandMark['places']): void {
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined) return;
  const { barEnds } = said.value;
  const ends = places.length > 1 ? [first, last] : barEnds.length === 1 ? [...barEnds, first] : [first];
  say(words().see.says.bar, { barEnds: ends });
  if (ends.length === 2) takeInHand(null);
}

/** Takes one mark away again: one step as well. */
export function dropMark(mark: HandMark): void {
  const says = words().see.without(words().see.marks[mark.kind]);
  say(says, { marks: said.value.marks.filter((one) => one !== mark) });
}
