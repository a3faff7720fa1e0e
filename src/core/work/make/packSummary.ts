import type { Drawing } from '../../drawing/index.ts';
import type { Instrument } from '../../instrument/index.ts';
import { spreadDecimals } from '../../quantity/index.ts';
import { type Language, speechOf } from '../../words/index.ts';
import { originWords } from './originWords.ts';

/** The lengths that a maker looks for first. */
const KEY_VALUES = [
  'bodyLength',
  'upperBout',
  'waist',
  'lowerBout',
  'stop',
  'ribHeightNeck',
  'ribHeightTail',
  'overhang',
  'ribThickness',
  'archHeightBack',
  'archHeightTop',
] as const;

/** What they are called in German, where both plates stand in one list. */
const GERMAN_KEYS: Readonly<Record<(typeof KEY_VALUES)[number], string>> = {
  bodyLength: 'Korpuslänge',
  upperBout: 'Oberbügel',
  waist: 'Mittelbügel',
  lowerBout: 'Unterbügel',
  stop: 'Korpusmensur',
  ribHeightNeck: 'Zargenhöhe am Hals',
  ribHeightTail: 'Zargenhöhe unten',
  overhang: 'Randüberstand',
  ribThickness: 'Zargenstärke',
  archHeightBack: 'Wölbungshöhe, Boden',
  archHeightTop: 'Wölbungshöhe, Decke',
};

const PARTS: Readonly<Record<Drawing['part'], readonly [string, string]>> = {
  form: ['form sheet', 'form sheets'],
  outline: ['outline template', 'outline templates'],
  blocks: ['block pattern', 'block patterns'],
  roughing: ['roughing chart', 'roughing charts'],
  arching: ['arching gauge', 'arching gauges'],
  hollowing: ['hollowing sheet', 'hollowing sheets'],
  edge: ['edge gauge or plan', 'edge gauges and plans'],
  sheet: ['sheet', 'sheets'],
  ribs: ['rib pattern', 'rib patterns'],
  neck: ['neck or board gauge', 'neck and board gauges'],
  head: ['head template or gauge', 'head templates and gauges'],
  bar: ['bar or post template', 'bar and post templates'],
  soundHoles: ['sound hole template', 'sound hole templates'],
  setup: ['set-up gauge', 'set-up gauges'],
};

/** What a pack holds and its key lengths with their origin, line by line, in a language. */
export function packSummary(
  { design, plan }: Instrument,
  drawings: readonly Drawing[],
  fileCount: number,
  language: Language = 'en',
): readonly string[] {
  const { tell } = speechOf(language, [design.name]);
  const figure = (value: number, decimals?: number): string => {
    const text = decimals === undefined ? String(value) : value.toFixed(decimals);
    return language === 'de' ? text.replace('.', ',') : text;
  };
  const nameOf = (name: (typeof KEY_VALUES)[number]): string =>
    language === 'en' ? name : GERMAN_KEYS[name];
  const room = language === 'en' ? NAME_ROOM : GERMAN_ROOM;
  const counts = new Map<Drawing['part'], number>();
  for (const { part } of drawings) counts.set(part, (counts.get(part) ?? 0) + 1);
  const drawn = [...counts].map(([part, count]) => `${count} ${tell(PARTS[part][count === 1 ? 0 : 1])}`);
  const { lengthMm, widthMm, thicknessMm, clampHoles } = plan.form;
  return [
    `${design.name} (${tell(design.family)})`,
    ...KEY_VALUES.flatMap((name) => {
      const quantity = design.values[name];
      if (!quantity) return [];
      const { value, plusMinus } = quantity;
      const decimals = plusMinus ? spreadDecimals(plusMinus) : 1;
      const spread = plusMinus ? ` ± ${figure(plusMinus, decimals)}` : '      ';
      const length = figure(value, decimals).padStart(6);
      return [
        `  ${nameOf(name).padEnd(room)} ${length} mm${spread}  ${originWords(quantity.origin, language)}`,
      ];
    }),
    `  ${(language === 'en' ? 'form' : 'Form').padEnd(room)} ${figure(lengthMm, 1)} × ${figure(widthMm, 1)} × ${figure(thicknessMm)} mm, ${clampHoles.length} ${tell('clamp holes')}`,
    `  ${drawn.length > 0 ? `${tell('drawn')}: ${drawn.join(', ')}; ` : ''}${fileCount} ${tell('files')}`,
  ];
}

/** Columns that names have. */
const NAME_ROOM = 15;
const GERMAN_ROOM = 20;
