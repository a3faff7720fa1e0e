import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import {
  accept,
  type Design,
  type Fault,
  refuse,
  type ShownBody,
  type ShownNumbers,
} from '../../core/index.ts';
import { tableAnswers } from './tableAnswers.ts';

/** A table with benches that answer when they are let to: what is asked waits under its name. */
function table() {
  const [design, held, sitting] = [signal<Design | null>(null), signal<Design | null>(null), signal('one')];
  const waiting: { readonly says: string; readonly tell: (answer: never) => void }[] = [];
  const asked = (kind: string) => (one: Design) =>
    new Promise<never>((tell) => waiting.push({ says: `${kind} ${one.name}`, tell }));
  const answers = tableAnswers(
    { design, held, sitting },
    {
      body: asked('body'),
      numbers: asked('numbers'),
      allNumbers: asked('all'),
      findings: asked('findings'),
    },
  );
  const answer = async (says: string, told: unknown) => {
    const at = waiting.findIndex((one) => one.says === says);
    if (at < 0)
      throw new Error(`nobody asked for ${says}, but for: ${waiting.map((one) => one.says).join(', ')}`);
    for (const { tell } of waiting.splice(at, 1)) tell(told as never);
    await new Promise((done) => setTimeout(done));
  };
  return { design, held, sitting, answers, answer, unanswered: () => waiting.map(({ says }) => says) };
}

const named = (name: string) => ({ name }) as Design;
const bodyOf = (name: string) => accept({ measures: name } as unknown as ShownBody);
const numbersOf = (...names: readonly string[]) =>
  accept({ register: names.map((name) => ({ name })) } as unknown as ShownNumbers);
const fault: Fault = { code: 'X.1', at: 'values.waist', found: '9 mm', need: 'more' } as Fault;
const said = (faults: readonly Fault[]) => faults.map(({ found }) => found);

test('an answer that comes while the hand holds another design is known when it lets go unchanged', async () => {
  const { design, held, answers, answer } = table();
  design.value = named('contradicts');
  answers.askBody(design.value);
  await answer('body contradicts', refuse(fault));
  expect(said(answers.faults.value)).toEqual(['9 mm']);

  design.value = named('taken back');
  answers.askBody(design.value);
  answers.askNumbers(design.value);
  held.value = named('held');
  await answer('body taken back', bodyOf('its body'));
  await answer('numbers taken back', numbersOf('waist'));
  held.value = null;
  expect(answers.faults.value).toEqual([]);
  expect(answers.body.value).toEqual({ measures: 'its body' });
});

test('what is refused to the hand is not said of the design, and goes with what it held', async () => {
  const { design, held, answers, answer } = table();
  design.value = named('sound');
  answers.askBody(design.value);
  await answer('body sound', bodyOf('sound'));
  held.value = named('pulled too far');
  answers.askBody(held.value);
  await answer('body pulled too far', refuse(fault));
  expect([said(answers.heldFaults.value), answers.faults.value]).toEqual([['9 mm'], []]);
  expect([answers.bodyOf.value, answers.body.value]).toEqual([null, { measures: 'sound' }]);
  held.value = null;
  expect(answers.heldFaults.value).toEqual([]);
  expect(answers.bodyOf.value).toBe(design.value);
  // Let go where it is refused, it is known at once why.
  const refused = named('let go');
  held.value = refused;
  answers.keepView(refused, refuse(fault));
  answers.askBody(refused);
  await answer('body let go', refuse(fault));
  held.value = null;
  design.value = refused;
  expect(said(answers.faults.value)).toEqual(['9 mm']);
});

test('a late answer for what no longer lies there changes nothing of what does', async () => {
  const { design, held, answers, answer, unanswered } = table();
  design.value = named('first');
  answers.askBody(design.value);
  await answer('body first', bodyOf('first'));
  const [first, second] = [design.value, named('second')];
  held.value = second;
  answers.askBody(second);
  held.value = null;
  answers.askBody(first);
  expect(unanswered()).toEqual(['body second']);
  await answer('body second', bodyOf('second'));
  expect([answers.body.value, answers.bodyOf.value]).toEqual([{ measures: 'first' }, first]);
});

test('a hand that drags without rest sees what comes, and a fault stays until more is known', async () => {
  const { design, held, answers, answer } = table();
  design.value = named('contradicts');
  answers.askNumbers(design.value);
  await answer('numbers contradicts', refuse(fault));
  held.value = named('one');
  answers.askBody(held.value);
  held.value = named('two');
  answers.askBody(held.value);
  await answer('body one', bodyOf('one'));
  expect(answers.body.value).toEqual({ measures: 'one' });
  design.value = held.value;
  held.value = null;
  await answer('body two', bodyOf('two'));
  // A body that can be drawn does not yet tell of the whole.
  expect(said(answers.faults.value)).toEqual(['9 mm']);
  answers.askNumbers(design.value);
  await answer('numbers two', numbersOf('waist'));
  expect(answers.faults.value).toEqual([]);
  expect(answers.sound.value).toBe(design.value);
});

test('numbers come step by step, dear ones as they were until known anew, and none is asked for twice', async () => {
  const { design, held, answers, answer, unanswered } = table();
  const names = () => answers.whole.value?.register.map(({ name }) => name);
  design.value = named('a');
  answers.askNumbers(design.value);
  await answer('numbers a', numbersOf('waist'));
  expect(answers.whole.value).toBeNull();
  await answer('all a', numbersOf('waist', 'tap tone'));
  expect(names()).toEqual(['waist', 'tap tone']);
  await answer('findings a', [{ at: 'waist' }]);
  expect(answers.findings.value).toEqual([{ at: 'waist' }]);

  const b = named('b');
  held.value = b;
  answers.askNumbers(b);
  design.value = b;
  held.value = null;
  answers.askNumbers(b);
  await answer('numbers b', numbersOf('waist'));
  expect(names()).toEqual(['waist', 'tap tone']);
  await answer('all b', numbersOf('waist', 'tap tone', 'mass'));
  expect(names()).toEqual(['waist', 'tap tone', 'mass']);
  expect(unanswered()).toEqual(['findings b']);
});

test('another instrument on the table sees nothing of the one before, not even what comes late', async () => {
  const { design, sitting, answers, answer } = table();
  design.value = named('old');
  answers.askBody(design.value);
  answers.askNumbers(design.value);
  await answer('numbers old', refuse(fault));
  sitting.value = 'two';
  answers.forget();
  design.value = named('new');
  await answer('body old', bodyOf('old'));
  expect([answers.body.value, answers.sound.value, answers.faults.value]).toEqual([null, null, []]);
});
