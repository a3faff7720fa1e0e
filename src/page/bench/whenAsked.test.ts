import { expect, test } from 'vitest';
import { whenAsked } from './whenAsked.ts';

/** Workers that answer when they are let to, and what became of them. */
function workers() {
  const ended: boolean[] = [];
  const answers: (() => void)[] = [];
  const begin = () => {
    const own = ended.push(false) - 1;
    const ask = (word: string) =>
      new Promise<string>((tell) => answers.push(() => tell(`${own} says ${word}`)));
    return {
      work: { ask, fail: () => Promise.reject(new Error('no answer')) },
      end: () => {
        ended[own] = true;
      },
    };
  };
  return { ended, answers, bench: whenAsked(begin) };
}

test('nobody is there before one is asked, and then always the same', async () => {
  const { ended, answers, bench } = workers();
  expect(ended).toEqual([]);
  const [one, two] = [bench().ask('a'), bench().ask('b')];
  for (const answer of answers) answer();
  expect([await one, await two]).toEqual(['0 says a', '0 says b']);
  expect(ended).toEqual([false]);
});

test('one that rests is ended, and whoever asks then asks another', async () => {
  const { ended, answers, bench } = workers();
  bench.rest();
  const first = bench().ask('a');
  answers[0]?.();
  await first;
  bench.rest();
  expect(ended).toEqual([true]);
  bench.rest();
  const second = bench().ask('b');
  answers[1]?.();
  expect(await second).toBe('1 says b');
  expect(ended).toEqual([true, false]);
});

test('what was asked before a rest is answered before it is ended, failures too', async () => {
  const { ended, answers, bench } = workers();
  const slow = bench().ask('slow');
  const failed = bench().fail();
  bench.rest();
  const next = bench().ask('next');
  await expect(failed).rejects.toThrow('no answer');
  expect(ended).toEqual([false, false]);
  answers[0]?.();
  expect(await slow).toBe('0 says slow');
  await Promise.resolve();
  expect(ended).toEqual([true, false]);
  answers[1]?.();
  expect(await next).toBe('1 says next');
});
