import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { contentsOf, garland, isSentence, newFolder } from './runGarland.ts';

const folder = newFolder();
const KEPT = 'kept.json';
const HEAD = { format: 'garland-hints', version: 1 };
const hints = (more: object) => JSON.stringify({ ...HEAD, ...more });
const known = (more: object) => hints({ known: [{ name: 'bodyLength', value: 356, ...more }] });

beforeAll(() => {
  copyFileSync(join(import.meta.dirname, 'fiddle-without-sheet.jpg'), join(folder.path, 'fiddle.jpg'));
  mkdirSync(join(folder.path, 'folder.json'));
  writeFileSync(join(folder.path, KEPT), '{"kept": true}\n');
});
afterAll(() => folder.remove());

/** What a file of hints holds (null where there is none), and the sentence that it is refused with. */
const BAD: readonly (readonly [name: string, text: string | null, sentence: RegExp])[] = [
  ['missing', null, /^missing\.json: .*no such file/],
  ['folder', null, /^folder\.json: .*it is a folder/],
  ['empty', '', /^empty\.json: this is not a JSON file .* needs a file of hints/],
  ['half', '{"format":"garland-hints","version":1,"inside":[[5', /^half\.json: this is not a JSON file/],
  ['prose', 'Here is the body.', /^prose\.json: this is not a JSON file/],
  ['list', '[]', /^list\.json, document: a list; needs a garland-hints document/],
  ['trace', '{"format":"garland-trace","version":1}', /^trace\.json, format: "garland-trace"/],
  ['newer', '{"format":"garland-hints","version":9}', /^newer\.json, version: .*newer Garland/],
  ['misspelt', hints({ insde: [[500, 700]] }), /^misspelt\.json, insde: .*such as “inside”/],
  ['unknown', hints({ freckles: [[500, 700]] }), /^unknown\.json, freckles: a name that is not known/],
  ['wish', hints({ meant: { slaw: 'bass' } }), /^wish\.json, meant\.slaw: .*such as “slow”/],
  ['place', hints({ inside: [[500]] }), /^place\.json, inside\[0\]: a list; needs two numbers/],
  ['zero', known({ value: 0 }), /^bodyLength: 0 mm; needs between 170 and 850 mm/],
  ['negative', known({ value: -356 }), /^bodyLength: -356 mm; needs between/],
  ['inches', known({ value: 14 }), /^bodyLength: 14 mm; needs .*looks like inches/],
  ['giant', known({ value: 3560 }), /^bodyLength: 3560 mm; needs between/],
  ['worded', known({ value: 'long' }), /^worded\.json, known\[0\]\.value: "long"; needs a finite number/],
  [
    'sure',
    known({ plusMinus: -1 }),
    /^sure\.json, known\[0\]\.plusMinus: -1; needs a half interval of 0 mm or more/,
  ],
  ['nameless', known({ name: 'bodyLenght' }), /^--hints, known: "bodyLenght" .*such as “bodyLength”/],
  [
    'taken',
    known({ taken: 'purfling' }),
    /^--hints, known bodyLength: "purfling"; needs straight or over-arch/,
  ],
  ['body', hints({ body: 0 }), /^body\.json, body: 0; needs a whole number, 1 or more/],
  ['other', hints({ photograph: 'other.jpg' }), /^--hints: hints for "other\.jpg", which is not among/],
  [
    'beside',
    hints({ inside: [[9000, 700]] }),
    /^fiddle\.jpg: 1 of 1 marks beside the picture, .*1125 × 1500 px/,
  ],
];

describe.concurrent('hints that cannot serve', () => {
  test.each(BAD)('are refused in one sentence, and nothing is lost: %s', async (name, text, sentence) => {
    const file = `${name}.json`;
    if (text !== null) writeFileSync(join(folder.path, file), text);
    const words = ['fiddle.jpg', '--scan', '75', '--hints', file, '--out', KEPT, '--force'];
    const ended = await garland(folder.path, 'trace', ...words);
    expect(ended.err).toMatch(sentence);
    expect(isSentence(ended.err), ended.err).toBe(true);
    expect([ended.code, ended.out]).toEqual([3, '']);
    expect(contentsOf(folder.path)[KEPT]).toBe('{"kept": true}\n');
    if (text !== null) expect(contentsOf(folder.path)[file]).toBe(text);
  });
});

test('a record that cannot serve is refused with the name of its file', async () => {
  writeFileSync(join(folder.path, 'record.json'), '{"format": "garland-trace", "version": 1}');
  const ended = await garland(folder.path, 'trace', 'fiddle.jpg', '--as', 'record.json');
  expect(ended.err).toMatch(/^record\.json, /);
  expect(ended.code).toBe(3);
});
