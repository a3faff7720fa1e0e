/**
 * The gauges that a maker cuts for a whole instrument, as our list of the trade has them: 33 by number, each with the pieces that
 * stand for it. Every pack has them all.
 */
import { expect, test } from 'vitest';
import { drawnInstrument, madePack, type Shown } from './drawnInstruments.ts';

const PLATES = ['back', 'top'] as const;
const PLACES = ['lower-bout', 'lower-corner', 'waist', 'upper-corner', 'upper-bout', 'long'] as const;
const CORNERS = ['lower-corner', 'upper-corner'] as const;

const of = (pattern: string, ...words: readonly (readonly string[])[]): readonly string[] =>
  words.reduce<readonly string[]>(
    (names, options) => names.flatMap((name) => options.map((word) => name.replace('*', word))),
    [pattern],
  );

const GAUGES: Readonly<Record<string, readonly string[]>> = {
  '1 half outline, half inner outline and form': [
    'outline-template-half',
    'inner-template-half',
    'form',
    'form-half-treble',
    'form-half-bass',
  ],
  '2 faces of the corner blocks': of('block-gauge-*-*', CORNERS, ['bout', 'waist']),
  '3 heights and taper of the ribs': ['rib-height-gauge', ...of('rib-*', ['lower', 'waist', 'upper'])],
  '4 cauls': [...of('caul-*-*', CORNERS, ['bout-side', 'waist-side']), 'caul-waist'],
  '5 mortises of the linings': ['lining-gauge'],
  '6 overhang': ['overhang-gauge', 'overhang-marker'],
  '7 arching, across and along': of('arching-gauge-*-*', PLATES, PLACES),
  '8 thickness of the edge, depth of the channel': of('edge-steps-*', PLATES),
  '9 corners': of('corner-template-*', ['lower', 'upper']),
  '10 button': ['button'],
  '11 sound hole in plan and laid flat, drill plate': [
    'sound-hole-plan',
    'sound-hole-flat',
    'sound-hole-eyes',
  ],
  '12 bass bar: glue face, height, place': ['bar-glue-face', 'bar-height', 'bar-place'],
  '13 thicknesses': of('thickness-*', PLATES),
  '14 side of the head with slots': ['head-side'],
  '15 front and back of the head, combs of its widths': [
    'head-front',
    'head-wrap',
    'head-views',
    'head-comb-outer',
    'head-comb-inner',
  ],
  '16 inside of the pegbox, peg holes': ['pegbox-widths', 'pegbox-depth', 'peg-sight'],
  '17 neck from the side and in plan': ['neck-side', 'neck-plan'],
  '18 rounds of the neck': of('neck-round-*', ['nut', 'middle', 'heel']),
  '19 root from its end, mortise in plan and depth': ['neck-root', 'mortise-plan', 'mortise-depth'],
  '20 angle of the root': ['root-angle'],
  '21 set of the neck': ['projection-gauge', 'neck-set'],
  '22 overstand': ['overstand-gauge'],
  '23 height of the end of the board': ['board-end-gauge'],
  '24 neck on the centre line': ['centre-frame'],
  '25 sections and scoop of the board': [...of('board-section-*', ['nut', 'edge', 'end']), 'board-scoop'],
  '26 nut and spacing of the strings': ['nut-front', 'nut-side', 'string-spacing'],
  '27 bridge: blank, thickness, crown, feet': ['bridge', 'bridge-side', 'bridge-crown', 'bridge-feet'],
  '28 strings over the end of the board': ['string-feelers'],
  '29 saddle and its seat': ['saddle-section', 'saddle-seat'],
  '30 after-length': ['after-length'],
  '31 sound post: length and ends, place': ['post-gauge', 'post-place', 'post-wrap'],
  '32 tapers of pegs and end button': ['peg-taper', 'end-button-taper'],
  '33 tailpiece': ['tailpiece-rule'],
};

/** Words that a maker looks for in vain where a note says nothing. */
const LEAST_WORDS = 8;

const SHOWN: readonly Shown[] = ['violin', 'viola', 'cello'];

test('thirty-three gauges are asked for, none by one piece twice but the spacing of the strings', () => {
  expect(Object.keys(GAUGES).map((name) => Number.parseInt(name, 10))).toEqual(
    Array.from({ length: 33 }, (_, index) => index + 1),
  );
  const pieces = Object.values(GAUGES).flat();
  expect(new Set(pieces).size).toBe(pieces.length);
});

test.each(SHOWN)('the pack of a %s holds a piece for every gauge, in its manifest', async (shown) => {
  const files = await madePack(shown, 'A3');
  const text = new TextDecoder().decode(files.get('manifest.json'));
  const manifest = JSON.parse(text) as { files: readonly { parts: readonly string[] }[] };
  const made = new Set(manifest.files.flatMap(({ parts }) => parts));
  const missing = Object.entries(GAUGES).flatMap(([gauge, names]) =>
    names.filter((name) => !made.has(name)).map((name) => `${gauge}: ${name}`),
  );
  expect(missing).toEqual([]);
});

test.each(SHOWN)('every gauge of a %s carries the instrument, what it is and how it is held', (shown) => {
  const drawings = new Map(drawnInstrument(shown).map((drawing) => [drawing.name, drawing]));
  const instrument = drawnInstrument(shown)[0]?.lettering.map(({ text }) => text) ?? [];
  expect(instrument.length).toBeGreaterThan(0);
  const silent: string[] = [];
  for (const name of Object.values(GAUGES).flat()) {
    const drawing = drawings.get(name);
    const said = drawing?.notes.join(' ').split(' ').length ?? 0;
    if (!drawing || said < LEAST_WORDS) silent.push(`${name}: no note`);
    const words = drawing?.lettering.map(({ text }) => text.toLowerCase()).join(' ') ?? '';
    if (!/violin|viola|cello/.test(words)) silent.push(`${name}: no instrument`);
  }
  expect(silent).toEqual([]);
});
