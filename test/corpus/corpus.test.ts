import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { type Checked, draft, faultSentence, readDesign, trace } from '../../src/core/index.ts';

/** An input that once went wrong. `codes` are the faults it has to be refused with; none where it has to be taken. */
interface Case {
  readonly what: string;
  readonly verb: keyof typeof VERBS;
  readonly input: never;
  readonly codes: readonly string[];
}

/** What a case can be put to. A trace's picture is one pixel: these cases are refused before it is looked at. */
const VERBS = {
  draft: (documents: readonly unknown[]): Checked<unknown> =>
    draft(documents.map((json, i) => ({ name: `document ${i + 1}`, json }))),
  readDesign: (json: unknown): Checked<unknown> => readDesign(json),
  trace: (request: object): Checked<unknown> =>
    trace(
      {
        photographs: [{ name: 'dot.png', picture: { widthPx: 1, heightPx: 1, rgb: new Uint8Array(3) } }],
        face: 'top',
        known: [],
        ...request,
      },
      () => [],
    ),
};

const names = readdirSync(import.meta.dirname).filter((name) => name.endsWith('.json'));

test('the corpus holds cases', () => {
  expect(names.length).toBeGreaterThan(0);
});

test.each(names)('%s ends as it has to', (name) => {
  const { what, verb, input, codes }: Case = JSON.parse(
    readFileSync(join(import.meta.dirname, name), 'utf8'),
  );
  const result = VERBS[verb](input);
  expect(result.ok ? [] : result.faults.map(({ code }) => code), what).toEqual(codes);
  for (const fault of result.ok ? [] : result.faults)
    expect(faultSentence(fault)).not.toMatch(/\n|undefined|NaN/);
});
