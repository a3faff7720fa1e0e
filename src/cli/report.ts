import { type Fault, type Finding, faultSentence, type Language, speechOf } from '../core/index.ts';

/** How a command ended: 0 done; 1 done, with findings; 2 wrong usage; 3 bad input; 4 could not write. */
export type ExitCode = 0 | 1 | 2 | 3 | 4;

/** Where a command's words go: data to stdout, talk to stderr. */
export interface Voice {
  readonly json: boolean;
  /** Data that other programs may read. */
  readonly data: (text: string) => void;
  /** Sentences for the person at the terminal. */
  readonly say: (text: string) => void;
}

export function makeVoice(json: boolean): Voice {
  return {
    json,
    data: (text) => process.stdout.write(text.endsWith('\n') ? text : `${text}\n`),
    say: (text) => (json ? process.stderr : process.stdout).write(`${text}\n`),
  };
}

/** Progress goes to stderr, and only when a person can watch it. */
export function progress(text: string): void {
  if (process.stderr.isTTY) process.stderr.write(`${text}\n`);
}

/** Tells each stage of a long work once, with the share that is done when it begins. */
export function stageProgress(): (stage: string, share: number) => void {
  let last = '';
  return (stage, share) => {
    if (stage === last) return;
    last = stage;
    progress(`${Math.round(100 * share)} %: ${stage} …`);
  };
}

/** One sentence a fault on stderr (and the same as JSON when asked), and the exit code of their kind. */
export function reportFaults(voice: Voice, faults: readonly Fault[]): ExitCode {
  if (voice.json) voice.data(JSON.stringify({ faults }, null, 2));
  for (const fault of faults) process.stderr.write(`${faultSentence(fault)}\n`);
  if (faults.some((fault) => WRITING.has(fault.code))) return 4;
  return faults.every((fault) => WORDS.has(fault.code)) ? 2 : 3;
}

const WRITING: ReadonlySet<string> = new Set(['file.unwritable', 'file.exists', 'pack.changed']);
/** An option's words that say nothing we know; what is wrong with a number or a file is bad input. */
const WORDS: ReadonlySet<string> = new Set([
  'option.unknown',
  'option.misplaced',
  'map.name',
  'file.twice',
  'built.no-photo',
  'built.not-a-garland',
  'make.kind',
  'make.parts',
  'make.language',
  'make.gauge-feet',
  'make.gauge-edge',
  'sheet.name',
  'sheet.number',
  'make.paper',
  'make.dxf',
  'known.form',
  'known.name',
  'known.taken',
  'scan.both',
  'scan.resolution',
  'scan.bar',
  'meant.follow',
  'meant.stretch',
  'meant.corner-end',
  'profile.station',
  'profile.right-is',
  'profile.ends',
  'profile.one-photograph',
  'picture.interval',
  'picture.lamp',
  'picture.line',
  'picture.pixels',
]);

const MARKS = {
  en: { remark: 'Note', caution: 'Mind', contradiction: 'Contradiction' },
  de: { remark: 'Hinweis', caution: 'Achtung', contradiction: 'Widerspruch' },
} as const;

/** Findings as sentences, the heaviest first; the exit code says whether there were any that ask for a look. */
export function reportFindings(
  voice: Voice,
  findings: readonly Finding[],
  language: Language = 'en',
): ExitCode {
  const order = ['contradiction', 'caution', 'remark'] as const;
  for (const weight of order)
    for (const finding of findings.filter((one) => one.weight === weight))
      voice.say(`${MARKS[language][weight]}: ${sentenceIn(finding, language)}`);
  return findings.some((finding) => finding.weight !== 'remark') ? 1 : 0;
}

/** A finding as a sentence; its place is the name of a number or of a file, as it stands in the design. */
function sentenceIn(finding: Finding, language: Language): string {
  if (language === 'en') return faultSentence(finding);
  const { tell } = speechOf(language);
  const { at, found, need, remedy } = finding;
  const told = tell(remedy);
  return `${at}: ${tell(found)}; braucht ${tell(need)}. ${told.charAt(0).toUpperCase()}${told.slice(1)}.`;
}
