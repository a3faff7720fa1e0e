import { basename } from 'node:path';
import type { Command } from 'commander';
import {
  accept,
  type Checked,
  type KnownLength,
  parseKnownLength,
  parseSheetBar,
  readHints,
  refuse,
  type TraceHints,
  type TraceOutcome,
  trace,
  traceOutcome,
} from '../../core/index.ts';
import { openMarkerFinder, readJson, readPicture, writeWhole } from '../../host/index.ts';
import { oneOf } from '../oneOf.ts';
import { makeVoice, progress, reportFaults, reportFindings, type Voice } from '../report.ts';

export interface TraceOptions {
  readonly edgeHeight?: string;
  readonly sheetBar?: string;
  readonly known: readonly string[];
  readonly hints?: string;
  readonly face: string;
  readonly out?: string;
  readonly force: boolean;
  readonly json: boolean;
}

export function addTrace(program: Command): void {
  program
    .command('trace')
    .description('find the body in a photograph and restore its true, symmetric, unworn outline')
    .argument('<photo...>', 'photograph, JPEG or PNG')
    .option('--edge-height <length>', "height of the near plate's edge above the calibration sheet")
    .option('--sheet-bar <x[,y]>', 'what the 150 mm bars of the printed sheet measure, along and across')
    .option(
      '--known <name=length>',
      'a length of the instrument as measured, such as bodyLength=354 or lowerBout=206±0.3',
      collect,
      [],
    )
    .option('--face <face>', 'which side is photographed: top or back', 'top')
    .option('--hints <file>', 'places marked by hand')
    .option('--out <file>', 'trace to write')
    .option('--force', 'replace the file if there is one', false)
    .option('--json', 'print the trace as JSON', false)
    .action(async (photos: string[], options: TraceOptions) => {
      process.exitCode = await run(photos, options);
    });
}

function collect(value: string, before: readonly string[]): readonly string[] {
  return [...before, value];
}

async function run(photos: readonly string[], options: TraceOptions) {
  const voice = makeVoice(options.json);
  const traced = await traceFiles(photos, options);
  if (!traced.ok) return reportFaults(voice, traced.faults);
  const text = traced.value.text;
  if (options.out !== undefined) {
    const written = writeWhole(options.out, new TextEncoder().encode(text), { force: options.force });
    if (!written.ok) return reportFaults(voice, written.faults);
  }
  if (voice.json) voice.data(text);
  else describe(voice, traced.value, options.out);
  return reportFindings(voice, traced.value.findings);
}

/** The photographs that the words of a command name, traced. */
export async function traceFiles(
  photos: readonly string[],
  options: Pick<TraceOptions, 'edgeHeight' | 'sheetBar' | 'known' | 'hints' | 'face'>,
): Promise<Checked<TraceOutcome>> {
  const known = all(options.known.map(parseKnownLength));
  if (!known.ok) return known;
  const settings = parseSheetBar(options.sheetBar, options.edgeHeight);
  if (!settings.ok) return settings;
  if (photos.length > 1)
    return refuse({
      code: 'trace.one-photograph',
      at: photos[1] as string,
      found: `${photos.length} photographs`,
      need: 'one photograph at a time in this version',
      remedy: 'trace each alone and compare the traces',
    });
  const face = oneOf('--face', options.face, FACES);
  if (!face.ok) return face;
  const hints = options.hints === undefined ? accept(undefined) : readHintsFile(options.hints);
  if (!hints.ok) return hints;
  const path = photos[0] as string;
  progress(`Reading ${path} …`);
  const picture = await readPicture(path);
  if (!picture.ok) return picture;
  progress('Looking for the calibration sheet and the body …');
  const traced = trace(
    {
      photographs: [{ name: basename(path), picture: picture.value }],
      face: face.value,
      known: known.value,
      ...(hints.value && { hints: hints.value }),
      ...settings.value,
    },
    await openMarkerFinder(),
  );
  return traced.ok ? accept(traceOutcome(traced.value)) : traced;
}

const FACES = ['top', 'back'] as const;

function readHintsFile(path: string): Checked<TraceHints> {
  const json = readJson(path);
  return json.ok ? readHints(json.value) : json;
}

function all(list: readonly Checked<KnownLength>[]): Checked<readonly KnownLength[]> {
  const faults = list.flatMap((one) => (one.ok ? [] : one.faults));
  return faults.length > 0 ? refuse(...faults) : accept(list.flatMap((one) => (one.ok ? [one.value] : [])));
}

/** The few lines a maker reads first. */
export function describe(voice: Voice, traced: TraceOutcome, out: string | undefined): void {
  for (const line of traced.summary) voice.say(line);
  if (out !== undefined) voice.say(`Written: ${out}`);
}
