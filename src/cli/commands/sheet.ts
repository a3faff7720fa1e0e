import type { Command } from 'commander';
import {
  accept,
  type Checked,
  type Fault,
  heightCards,
  LANGUAGES,
  type Language,
  refuse,
  SHEET_PAPERS,
  type SheetPaper,
  sheet,
  sheetNumbers,
} from '../../core/index.ts';
import { writeWhole } from '../../host/index.ts';
import { oneOf } from '../oneOf.ts';
import { makeVoice, reportFaults } from '../report.ts';

interface SheetOptions {
  readonly paper?: string;
  readonly number: string;
  readonly cards: boolean;
  readonly language: string;
  readonly out: string;
  readonly force: boolean;
  readonly json: boolean;
}

export function addSheet(program: Command): void {
  program
    .command('sheet')
    .description('calibration sheet to lie under or round the instrument when photographing it')
    .option('--paper <paper>', `one of ${SHEET_PAPERS.join(', ')} (A3; cards A4)`)
    .option(
      '--number <n>',
      'for a body larger than one sheet: number of the sheet, or several as 1-4, one a page; with --cards the page, 1 or 2',
      '1',
    )
    .option('--cards', 'four small cards instead, to stand level with the edge of the plate', false)
    .option('--language <language>', 'what stands on it: en or de', 'en')
    .requiredOption('--out <file>', 'PDF to write')
    .option('--force', 'replace the file if there is one', false)
    .option('--json', 'say what was made as JSON', false)
    .action(async (options: SheetOptions) => {
      process.exitCode = await run(options);
    });
}

async function run(options: SheetOptions) {
  const voice = makeVoice(options.json);
  const paper = oneOf('--paper', options.paper ?? (options.cards ? 'A4' : 'A3'), SHEET_PAPERS);
  if (!paper.ok) return reportFaults(voice, paper.faults);
  const numbers = numbersOf(options, paper.value);
  if (!numbers.ok) return reportFaults(voice, numbers.faults);
  const language = oneOf('--language', options.language, LANGUAGES);
  if (!language.ok) return reportFaults(voice, language.faults);
  if (!/\.pdf$/i.test(options.out)) return reportFaults(voice, [notPdf(options.out)]);
  const [first = 1] = numbers.value;
  const made = await (options.cards
    ? heightCards(paper.value, first, language.value)
    : sheet(paper.value, numbers.value, language.value));
  if (!made.ok) return reportFaults(voice, made.faults);
  const written = writeWhole(options.out, made.value, { force: options.force });
  if (!written.ok) return reportFaults(voice, written.faults);
  const { cards } = options;
  if (voice.json)
    voice.data(JSON.stringify({ file: options.out, paper: paper.value, numbers: numbers.value, cards }));
  else voice.say(`${options.out}: ${SAID[language.value](cards, paper.value, numbers.value)}`);
  return 0;
}

function notPdf(out: string): Fault {
  return {
    code: 'sheet.name',
    at: '--out',
    found: `"${out}"`,
    need: 'a file name that ends in .pdf',
    remedy: 'name it so',
  };
}

const CARD_PAGES = [1, 2];

/** Numbers that were asked for: one, or a stretch such as 1-4. Fault: `sheet.number`. */
function numbersOf(options: SheetOptions, paper: SheetPaper): Checked<readonly number[]> {
  const allowed = options.cards ? CARD_PAGES : sheetNumbers(paper);
  const match = /^(\d+)(?:-(\d+))?$/.exec(options.number.trim());
  const from = Number(match?.[1]);
  const to = Number(match?.[2] ?? match?.[1]);
  const asked = allowed.filter((number) => number >= from && number <= to);
  const isAll = match !== null && asked.length === to - from + 1 && asked.length > 0;
  if (isAll && !(options.cards && asked.length > 1)) return accept(asked);
  const most = allowed.length;
  return refuse({
    code: 'sheet.number',
    at: '--number',
    found: `"${options.number}"`,
    need: options.cards
      ? `a page of cards, 1 or ${most}`
      : `${most === 1 ? '1' : `1 to ${most}`} on ${paper}`,
    remedy:
      options.cards || most > 1 ? 'give a number in that range' : 'choose A4 or Letter for several sheets',
  });
}

function sheetsSaid(paper: SheetPaper, numbers: readonly number[]): string {
  const several = numbers.length > 1;
  return (
    `calibration sheet${several ? `s ${numbers.join(', ')}` : ''} on ${paper}. Print ${several ? 'them' : 'it'} at 100 % ` +
    '(no fitting to the page), measure both 150 mm bars, and give what they measure to trace with --sheet-bar.' +
    (several ? ' Lay them round the body, flat, in any positions; no two of one number.' : '')
  );
}

function cardsSaid(paper: SheetPaper): string {
  return (
    `four height cards on ${paper}. Print at 100 % (no fitting to the page), cut them out, and glue each on a block ` +
    'that brings it level with the edge of the plate; set two or more round the body when you photograph it.'
  );
}

function saidInGerman(cards: boolean, paper: SheetPaper, numbers: readonly number[]): string {
  const several = numbers.length > 1;
  if (cards)
    return (
      `vier Höhenkarten auf ${paper}. Mit 100 % drucken (nicht an die Seite angepasst), ausschneiden und jede auf einen Klotz ` +
      'kleben, der sie so hoch hebt wie den Rand der Platte; beim Fotografieren zwei oder mehr um den Korpus stellen.'
    );
  return (
    `Messblatt${several ? `er ${numbers.join(', ')}` : ''} auf ${paper}. Mit 100 % drucken (nicht an die Seite angepasst), beide ` +
    'Maßstäbe von 150 mm messen und trace mit --sheet-bar sagen, was sie messen.' +
    (several ? ' Flach um den Korpus legen, wie es kommt; keine zwei von einer Nummer.' : '')
  );
}

const SAID: Readonly<
  Record<Language, (cards: boolean, paper: SheetPaper, numbers: readonly number[]) => string>
> = {
  en: (cards, paper, numbers) => (cards ? cardsSaid(paper) : sheetsSaid(paper, numbers)),
  de: saidInGerman,
};
