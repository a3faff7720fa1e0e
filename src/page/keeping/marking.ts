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
/** Marks over the restored picture that the tracing has not taken in yet, in its millimetres. */
export const pending = signal<readonly Omit<HandMark, 'on'>[]>([]);

/** Takes something in hand; the cross begins anew, for pictures differ in their units. */
export function takeInHand(what: InHand): void {
  inHand.value = what;
  aim.value = null;
}

/** Puts a mark on the photograph in hand: one step. Places in pixels of the photograph. */
export function putMark(kind: MarkKind, places: HandMark['places']): void {
  const on = photograph.value?.name;
  if (on === undefined || places.length === 0) return;
  say(words().see.marks[kind], { marks: [...said.value.marks, { kind, on, places }] });
}

/** The same from the restored picture: places in its millimetres are carried back to the photograph. */
export async function putMarkShown(kind: MarkKind, places: HandMark['places']): Promise<void> {
  pending.value = [...pending.value, { kind, places }];
  const inPhotograph = await seeingBench().inPhotograph(shot.value, places);
  if (inPhotograph !== null) putMark(kind, inPhotograph);
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
