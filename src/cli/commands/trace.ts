import type { Command } from 'commander';
import { documentText, mapFile, mapNameFaults, STATION_NAMES } from '../../core/index.ts';
import { oneOf } from '../oneOf.ts';
import { makeVoice, reportFaults, reportFindings, type Voice } from '../report.ts';
import { DEFAULT_FACE, type TraceWords, traceFiles } from '../tracePhotographs.ts';
import { PROFILES, type ProfileWords, profileLines, traceProfileFile } from '../traceProfiles.ts';
import { type FileToWrite, inTheWay, writeFiles } from '../writeFiles.ts';
import { wrongForSubject } from '../wrongForSubject.ts';

interface TraceOptions extends TraceWords, ProfileWords {
  readonly of: string;
  readonly wearMap?: string;
  readonly out?: string;
  readonly force: boolean;
  readonly json: boolean;
}

export function addTrace(program: Command): void {
  const command = program
    .command('trace')
    .description('find the body in photographs and restore its true, symmetric, unworn outline')
    .argument('<photo...>', 'photographs of one face, JPEG or PNG; several are put together by their sheet');
  addScaleOptions(command);
  addBodyOptions(command);
  addMeantOptions(command);
  addProfileOptions(command);
  command
    .optionsGroup('What is written:')
    .option('--out <file>', 'trace to write, such as trace.json')
    .option('--wear-map <file>', 'drawing to write of what was restored, .svg or .pdf')
    .option('--as <file>', 'trace as an earlier trace or design says; what is given here goes before it')
    .option('--force', 'replace files if there are any', false)
    .option('--json', 'print the trace as JSON', false)
    .addHelpText('after', EXAMPLES)
    .action(async (photos: string[], options: Omit<TraceOptions, keyof typeof NONE>) => {
      process.exitCode = await run(photos, { ...NONE, ...options });
    });
}

const NONE = { known: [], hints: [], stretch: [] } as const;

const EXAMPLES = `
Examples:
  garland trace top.jpg --edge-height 36.5 --sheet-bar 149.6,149.8 --out trace.json
  garland trace square.jpg tilted.jpg --sheet-bar 149.6,149.8    the height of the edge is found from the two
  garland trace plate.png --scan 300                             a plate alone on a flatbed
  garland trace print.jpg --known "bodyLength=357 over-arch" --known "lowerBout=199 purfling"
  garland trace card.jpg --of cross-arch --station waist --edge-height 1 --out waist.json`;

function addScaleOptions(command: Command): void {
  command
    .optionsGroup('How large it is:')
    .option(
      '--edge-height <length>',
      "height of the middle of the near plate's edge above the sheet, such as 36.5 or 36.5±0.3; not needed with height cards or with a second, tilted photograph",
    )
    .option('--sheet-bar <x[,y]>', 'what the 150 mm bars of the printed sheet measure, along and across')
    .option(
      '--known <name=length>',
      'a length as measured, such as bodyLength=354, lowerBout=206±0.3, "bodyLength=357 over-arch"; once for each',
      collect,
    )
    .option('--scan <resolution>', 'a flatbed scan or life-size print: its pixels an inch, such as 300')
    .option('--scan-bar <places=length>', 'a scale bar in it, in pixels, such as "120,80 1320,80 = 100 mm"');
}

function addBodyOptions(command: Command): void {
  command
    .optionsGroup('What is in the picture:')
    .option('--of <what>', `what is photographed: ${SUBJECTS.join(', ')}`, SUBJECTS[0])
    .option('--face <face>', 'which side is photographed: top or back', DEFAULT_FACE)
    .option('--body <number>', 'which of several bodies in the picture, from the left or from above')
    .option('--hints <file>', 'places marked by hand, one file for each photograph', collect);
}

function addMeantOptions(command: Command): void {
  command
    .optionsGroup('The outline as meant:')
    .option(
      '--follow <side>',
      'where the halves differ slowly: average, or the half to follow, bass or treble',
    )
    .option('--keep-asymmetry', 'keep both halves as they are, each unworn')
    .option('--corner-end <width[,upper]>', 'width of the corner ends, lower and upper')
    .option(
      '--stretch <ruling>',
      'overrule a stretch of wear, mm from the lower end, such as "bass 120-150 as-found" (outer, as-found, other, mean); once for each',
      collect,
    );
}

function addProfileOptions(command: Command): void {
  command
    .optionsGroup('Of an arch:')
    .option('--station <name>', `where on the plate a cross arch was taken: ${STATION_NAMES.join(', ')}`)
    .option('--right-is <side>', 'what lies at its right, treble or bass; of a long arch neck or lower-end')
    .option('--drawn', 'it is a line drawn on paper, not the edge of a card')
    .option('--from-ends', 'heights count from end to end, not from the straight edge of the card')
    .option('--ends <places>', 'its ends in the photograph, in pixels, such as "120,80 1320,84"')
    .option('--leave-out', 'leave out of the fit what post, bar or load have moved');
}

function collect(value: string, before: readonly string[] = []): readonly string[] {
  return [...before, value];
}

const SUBJECTS = ['outline', ...PROFILES] as const;

async function run(photos: readonly string[], options: TraceOptions) {
  const voice = makeVoice(options.json);
  const of = oneOf('--of', options.of, SUBJECTS);
  if (!of.ok) return reportFaults(voice, of.faults);
  const { out, wearMap } = options;
  const early = [
    ...wrongForSubject(of.value, { ...options }),
    ...mapNameFaults(wearMap, '--wear-map'),
    ...inTheWay([out, wearMap], options),
  ];
  if (early.length > 0) return reportFaults(voice, early);
  return of.value === 'outline'
    ? await runOutline(voice, photos, options)
    : await runProfile(voice, of.value, photos, options);
}

async function runOutline(voice: Voice, photos: readonly string[], options: TraceOptions) {
  const { out, wearMap } = options;
  const traced = await traceFiles(photos, options);
  if (!traced.ok) return reportFaults(voice, traced.faults);
  const { text } = traced.value;
  const files: FileToWrite[] = out === undefined ? [] : [textFile(out, text)];
  if (wearMap !== undefined) {
    const bytes = await mapFile(traced.value.wearMap, wearMap, '--wear-map');
    if (!bytes.ok) return reportFaults(voice, bytes.faults);
    files.push({ path: wearMap, bytes: bytes.value });
  }
  const written = writeFiles(files, options);
  if (!written.ok) return reportFaults(voice, written.faults);
  if (voice.json) voice.data(text);
  else for (const line of [...traced.value.summary, ...written.value.map(writtenLine)]) voice.say(line);
  return reportFindings(voice, traced.value.findings);
}

async function runProfile(
  voice: Voice,
  of: (typeof PROFILES)[number],
  photos: readonly string[],
  options: TraceOptions,
) {
  const traced = await traceProfileFile(of, photos, options);
  if (!traced.ok) return reportFaults(voice, traced.faults);
  const text = documentText(traced.value.document);
  const written = writeFiles(options.out === undefined ? [] : [textFile(options.out, text)], options);
  if (!written.ok) return reportFaults(voice, written.faults);
  if (voice.json) voice.data(text);
  else for (const line of [...profileLines(traced.value), ...written.value.map(writtenLine)]) voice.say(line);
  return reportFindings(voice, traced.value.findings);
}

function textFile(path: string, text: string): FileToWrite {
  return { path, bytes: new TextEncoder().encode(text) };
}

function writtenLine(path: string): string {
  return `Written: ${path}`;
}
