import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseAst } from 'vite';
import { describe, expect, test } from 'vitest';
import {
  cardsDrawing,
  letteringWidthMm,
  PAPERS,
  sheetDrawing,
  spokenDrawing,
} from '../src/core/drawing/index.ts';
import {
  type Checked,
  check,
  type Design,
  type Drawing,
  derive,
  draft,
  GERMAN,
  germanNameOf,
  make,
  overrule,
  PICTURE_KINDS,
  parseLength,
  parseMakeOptions,
  parsePicture,
  piecesOf,
  platePicture,
  SHEET_PAPERS,
  shortNames,
  speechOf,
  VALUES,
} from '../src/core/index.ts';
import { calibrationSheet, sheetNumbers } from '../src/core/photo/index.ts';
import { catalogues } from '../src/core/words/german/catalogues.ts';
import { drawInstrument } from '../src/core/work/make/drawInstrument.ts';
import type { GaugeChoices } from '../src/core/work/make/gaugeChoices.ts';
import { germanOf } from '../src/page/words/told.ts';

const CORE = join(import.meta.dirname, '..', 'src', 'core');
const SENTENCES: Readonly<Record<string, string | undefined>> = GERMAN;

/** Rooms whose sentences the page does not show: what only the command line asks for, and what a maker cannot bring about. */
const NOT_SHOWN = [
  'solid/',
  'files/',
  'judging/',
  'checks/built',
  'curve/fit',
  'curve/parallel',
  'instrument/arching/drill',
  'photo/shape/',
  'work/built/',
  'work/make/',
  'work/picture/',
];
const SAID = new Set(['found', 'need', 'remedy']);

/** Every sentence that the rooms of core put together for a fault or finding, with `{}` where something is put in. */
function sentencesOfCore(): readonly string[] {
  const files = readdirSync(CORE, { recursive: true, encoding: 'utf8' }).filter(
    (name) =>
      name.endsWith('.ts') && !name.endsWith('.test.ts') && !NOT_SHOWN.some((room) => name.startsWith(room)),
  );
  const found = new Set<string>();
  for (const name of files)
    gather(parseAst(readFileSync(join(CORE, name), 'utf8'), { lang: 'ts' }), false, found);
  return [...found];
}

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

function gather(node: unknown, isSaid: boolean, found: Set<string>): void {
  if (Array.isArray(node)) for (const each of node) gather(each, isSaid, found);
  if (!isNode(node)) return;
  const text = isSaid ? textOf(node) : null;
  // A single word in English is the name of a number, an option, or stands in the gap of a sentence.
  if (text !== null && / .*[a-z]{2}|[a-z]{2}.* /.test(text.replace(/\{\}/g, ''))) found.add(text);
  const isValue = node.type === 'Property' && SAID.has(nameOfKey(node.key));
  for (const [key, child] of Object.entries(node))
    if (!key.startsWith('type') && key !== 'returnType')
      gather(
        child,
        isValue || (isSaid && !['BinaryExpression', 'MemberExpression'].includes(node.type)),
        found,
      );
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value;
}

function nameOfKey(key: unknown): string {
  return isNode(key) && typeof key.name === 'string' ? key.name : '';
}

function textOf(node: Node): string | null {
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node.type !== 'TemplateLiteral') return null;
  const quasis = node.quasis as readonly { readonly value: { readonly cooked: string } }[];
  return quasis.map(({ value }) => value.cooked).join('{}');
}

test('every sentence of a fault or finding that the page may show has its German', () => {
  const sentences = sentencesOfCore();
  expect(sentences.length).toBeGreaterThan(800);
  expect(sentences.filter((text) => SENTENCES[text] === undefined && germanOf(text) === null)).toEqual([]);
});

test('a text stands in one catalogue only', () => {
  const all = Object.values(catalogues).flatMap((catalogue) => Object.keys(catalogue));
  expect(all.filter((text, place) => all.indexOf(text) !== place)).toEqual([]);
});

test('a sentence has as many gaps in German as in English', () => {
  const gaps = (text: string) => text.split('{}').length;
  expect(
    Object.entries(SENTENCES).filter(([english, german]) => gaps(english) !== gaps(german ?? '')),
  ).toEqual([]);
});

/** Words that are English and never German, in what was told. */
const ENGLISH =
  /(?:^|[\s(,;:“])(?:the|of|and|with|from|to|is|are|than|this|which|its|mm wide|above)(?:$|[\s),.;:”])/;

/** Titles, notes and lettering of pieces that have no German, once each. */
function untoldOf(drawings: Checked<readonly Drawing[]>, name: string): readonly string[] {
  if (!drawings.ok) throw new Error(drawings.faults[0]?.found);
  const { say } = speechOf('de', [name]);
  const texts = drawings.value.flatMap(({ title, notes, lettering }) => [
    title,
    ...notes,
    ...lettering.flatMap(({ text, of }) => (of === undefined ? [text] : 'text' in of ? [of.text] : of.texts)),
  ]);
  return [...new Set(texts.filter((text) => ENGLISH.test(say(text) ?? 'the ')))];
}

describe.each([
  ['violin', 355],
  ['violin', 335],
  ['viola', 408],
  ['cello', 755],
] as const)('a %s of %d mm in German', (family, bodyLength) => {
  const drafted = draft([
    {
      name: 'x',
      json: { format: 'garland-measurements', version: 1, family, name: 'x', values: { bodyLength } },
    },
  ]);
  if (!drafted.ok) throw new Error(drafted.faults[0]?.found);
  const { design } = drafted.value;
  const derived = derive(design);
  if (!derived.ok) throw new Error(derived.faults[0]?.found);
  const instrument = derived.value;

  test('every number has a name, and where it comes from is said', () => {
    const { entries } = instrument.register;
    expect(
      entries.map(({ name }) => name).filter((name) => !shortNames[name] && germanNameOf(name) === null),
    ).toEqual([]);
    const froms = entries.flatMap(({ origin }) => {
      if (origin.kind === 'derived') return origin.how ?? [];
      if (origin.kind === 'chosen') return origin.why?.replace(/^by us: /, '') ?? [];
      if (origin.kind === 'common-practice' || origin.kind === 'from-memory') return origin.note ?? [];
      return [];
    });
    // Titles of what was printed stay as they are.
    const untold = froms.filter((text) => {
      const german = germanOf(text);
      return german === null || ENGLISH.test(german.replace(/“[^”]*”(?: \([^)]*\))?/g, ''));
    });
    expect(untold.filter((text) => /[a-z]{3}/.test(text))).toEqual([]);
  });

  test('every title, note and lettering of its pieces is told', () => {
    expect(untoldOf(piecesOf(instrument), design.name)).toEqual([]);
  });

  test.runIf(bodyLength === 355 || family === 'cello')('every piece has a title', () => {
    const drawings = piecesOf(instrument);
    if (!drawings.ok) throw new Error(drawings.faults[0]?.found);
    expect(
      drawings.value.map(({ title }) => title).filter((title) => ENGLISH.test(germanOf(title) ?? 'the ')),
    ).toEqual([]);
  });
});

test.each<[string, string, object, object, GaugeChoices]>([
  [
    'a left-handed cello, mitred ribs in one piece, kerfed linings',
    'cello',
    { bodyLength: 755 },
    {
      leftHanded: true,
      ribs: {
        joint: 'mitred',
        corners: 'parallel',
        lowerRib: 'one-piece',
        upperRib: 'one-piece',
        linings: 'kerfed',
      },
    },
    {},
  ],
  [
    'a left-handed violin, waist ribs over the others, gauges from the bench',
    'violin',
    { bodyLength: 355, tuningA: 415, tailpieceLength: 98 },
    { leftHanded: true, ribs: { joint: 'waist-over', corners: 'parallel', liningsLetIn: 'all' } },
    { feet: 'bench' },
  ],
  [
    'a viola with gauges of its own heights, their edges square',
    'viola',
    { bodyLength: 408, barSpring: 0, formThickness: 20, ribHeightNeck: 33, scrollTurns: 2 },
    {},
    { workingEdge: 'square', atMm: [95, 150] },
  ],
])('every piece of %s is told in German', (_what, family, values, chosen, gauges) => {
  const drafted = draft([
    {
      name: 'x',
      json: { format: 'garland-measurements', version: 1, family, name: 'x', values, ...chosen },
    },
  ]);
  if (!drafted.ok) throw new Error(drafted.faults[0]?.found);
  const derived = derive(drafted.value.design);
  if (!derived.ok) throw new Error(derived.faults[0]?.found);
  expect(untoldOf(drawInstrument(derived.value, gauges), 'x')).toEqual([]);
});

test('what is found in odd designs, and at the input, is told whole', () => {
  const drafted = draft([
    {
      name: 'x',
      json: {
        format: 'garland-measurements',
        version: 1,
        family: 'violin',
        name: 'x',
        values: { bodyLength: 355 },
      },
    },
  ]);
  if (!drafted.ok) throw new Error(drafted.faults[0]?.found);
  const { design } = drafted.value;
  const odd = (
    [
      'lowerBout',
      'waist',
      'archHeightTop',
      'channelAtWaist',
      'holeLength',
      'projection',
      'cornerOverhang',
      'scoopDepthTop',
    ] as const
  )
    .flatMap((name) =>
      [0.5, 1.6].map((share) =>
        overrule(design, name, VALUES[name] ? (design.values[name]?.value ?? 1) * share : 0),
      ),
    )
    .flatMap((one) => check(one));
  const typed = ['', 'abc', '1,234', "5'", '14 1/0 in', '14 1/8', '3.3.3', '12 foo'].flatMap((text) => {
    const read = parseLength(text);
    return read.ok ? [] : read.faults;
  });
  expect(odd.length).toBeGreaterThan(20);
  const untold = [...odd, ...typed].flatMap(({ found, need, remedy }) =>
    [found, need, remedy].filter((text) => {
      const german = germanOf(text);
      return german === null || ENGLISH.test(german.replace(/“[^”]*”(?: \([^)]*\))?/g, ''));
    }),
  );
  expect([...new Set(untold)]).toEqual([]);
});

const VIOLIN = draft([
  {
    name: 'x',
    json: {
      format: 'garland-measurements',
      version: 1,
      family: 'violin',
      name: 'X',
      values: { bodyLength: 355 },
    },
  },
]);

function violin(): Design {
  if (!VIOLIN.ok) throw new Error(VIOLIN.faults[0]?.found);
  return VIOLIN.value.design;
}

/** English texts that have no German, once each; the name that somebody gave may stand before a colon. */
function notTold(texts: readonly string[]): readonly string[] {
  const { say } = speechOf('de', ['X']);
  return [...new Set(texts)]
    .filter((text) => /[a-z]{3}/i.test(text))
    .filter((text) => ENGLISH.test(say(text.replace(/^X: /, '')) ?? 'the '));
}

test('sheets and cards for the photograph are lettered in German, within their paper', () => {
  const drawings = [
    ...SHEET_PAPERS.flatMap((paper) =>
      sheetNumbers(paper).map((number) => [paper, sheetDrawing(calibrationSheet(paper, number))] as const),
    ),
    ['A4', cardsDrawing('A4', 1)] as const,
  ];
  for (const [paper, drawing] of drawings) {
    const spoken = spokenDrawing(drawing, speechOf('de'));
    expect(notTold([drawing.title, ...drawing.lettering.map(({ text }) => text)])).toEqual([]);
    const right = (one: Drawing) =>
      Math.max(...one.lettering.map((each) => each.at.x + (each.turnRad === 0 ? letteringWidthMm(each) : 0)));
    // What a home printer leaves blank at the border (common practice).
    const { widthMm, heightMm } = PAPERS[paper];
    expect(right(spoken)).toBeLessThanOrEqual(Math.max(right(drawing), Math.max(widthMm, heightMm) - 9));
  }
});

test('pictures of a plate are lettered in German, within their sheet', () => {
  const other = overrule(violin(), 'waist', 113);
  const drawn = (of: string, language: string) => {
    const request = parsePicture({
      of,
      plate: 'top',
      state: 'finished',
      out: 'x.svg',
      language,
      ...(of === 'section' && { line: '-90,80 90,80' }),
      ...(of === 'difference' && { with: 'x' }),
    });
    if (!request.ok) throw new Error(request.faults[0]?.found);
    const picture = platePicture(violin(), request.value, of === 'difference' ? other : undefined);
    if (!picture.ok) throw new Error(picture.faults[0]?.found);
    return picture.value;
  };
  const texts = PICTURE_KINDS.flatMap((of) => {
    const { sheet, drawing, says } = drawn(of, 'en');
    return [
      ...says,
      ...(sheet ? [sheet.title, ...sheet.lettering.map(({ lettering }) => lettering.text)] : []),
      ...(drawing ? [drawing.title, ...drawing.notes, ...drawing.lettering.map(({ text }) => text)] : []),
    ];
  });
  expect(notTold(texts)).toEqual([]);
  for (const of of PICTURE_KINDS)
    for (const { sheet } of [drawn(of, 'de')])
      for (const { lettering } of sheet?.lettering ?? []) {
        if (lettering.turnRad !== 0 || lettering.anchor !== 'middle') continue;
        const box = sheet?.box;
        const half = letteringWidthMm(lettering) / 2;
        expect(lettering.at.x - half).toBeGreaterThan(box?.min.x ?? 0);
        expect(lettering.at.x + half).toBeLessThan(box?.max.x ?? 0);
      }
});

test('the summary of a pack speaks its language', async () => {
  const options = parseMakeOptions({ only: 'print', paper: 'A4', dxf: 'R2000', language: 'de' });
  if (!options.ok) throw new Error(options.faults[0]?.found);
  const pack = await make(violin(), { ...options.value, digest: () => 'x' });
  if (!pack.ok) throw new Error(pack.faults[0]?.found);
  const { summary } = pack.value;
  expect(summary[0]).toBe('X (Geige)');
  expect(summary[1]).toMatch(/^ {2}Korpuslänge +355,0 mm/);
  expect(summary.filter((line) => ENGLISH.test(line.replace(/“[^”]*”/g, '')))).toEqual([]);
});

test('where a number was measured is told with the name of its photograph', () => {
  const { say } = speechOf('de');
  for (const name of ['fiddle-top.jpg', 'my violin (2).jpeg', 'Scan 3.TIF', 'back.webp'])
    expect(say(`trace of ${name}`)).toBe(`Abnahme von ${name}`);
  expect(say('bass sound hole of the trace of my violin (2).jpeg')).toBe(
    'F-Loch (Bass) der Abnahme von my violin (2).jpeg',
  );
});
