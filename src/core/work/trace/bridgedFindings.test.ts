import { expect, test } from 'vitest';
import { bridgedFindings } from './bridgedFindings.ts';

const edge = [{ along: 0 }, { along: 480 }] as never;
const stretch = (side: 'bass' | 'treble', fromAlong: number, toAlong: number) =>
  ({ name: `lower C, ${side}`, side, section: 'cBout', fromAlong, toAlong, state: 'bridged' }) as const;

const codes = (...unseen: ReturnType<typeof stretch>[]) =>
  bridgedFindings({ unseen, edge }).map(({ code, found }) => [code, /over (\d+) mm/.exec(found)?.[1]]);

test('a stretch that neither side shows is asked about, as long as both miss it', () => {
  expect(codes(stretch('bass', 180, 210), stretch('treble', 195, 240))).toEqual([
    ['trace.bridged-both', '15'],
  ]);
});

test('one side bridged, short gaps, and the ends under neck and button are left alone', () => {
  expect(codes(stretch('bass', 180, 210))).toEqual([]);
  expect(codes(stretch('bass', 180, 210), stretch('treble', 215, 240))).toEqual([]);
  expect(codes(stretch('bass', 180, 190), stretch('treble', 180, 190))).toEqual([]);
  expect(codes(stretch('bass', 0, 20), stretch('treble', 0, 20))).toEqual([]);
  expect(codes(stretch('bass', 450, 480), stretch('treble', 450, 480))).toEqual([]);
});
