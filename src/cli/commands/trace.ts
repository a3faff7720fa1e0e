import type { Command } from 'commander';
import type { TraceOutcome } from '../../core/index.ts';
import { writeWhole } from '../../host/index.ts';
import { makeVoice, reportFaults, reportFindings, type Voice } from '../report.ts';
import { DEFAULT_FACE, type TraceWords, traceFiles } from '../tracePhotographs.ts';

interface TraceOptions extends TraceWords {
  readonly out?: string;
  readonly force: boolean;
  readonly json: boolean;
}

export function addTrace(program: Command): void {
  program
    .command('trace')
    .description('find the body in photographs and restore its true, symmetric, unworn outline')
    .argument('<photo...>', 'photographs of one face, JPEG or PNG; several are put together by their sheet')
    .option(
      '--edge-height <length>',
      "height of the near plate's edge above the calibration sheet, such as 36.5 or 36.5±0.3",
    )
    .option('--sheet-bar <x[,y]>', 'what the 150 mm bars of the printed sheet measure, along and across')
    .option(
      '--known <name=length>',
      'a length as measured, such as bodyLength=354, lowerBout=206±0.3, "bodyLength=357 over-arch"',
      collect,
      [],
    )
    .option('--scan <resolution>', 'a flatbed scan or life-size print: its pixels an inch, such as 300')
    .option('--scan-bar <places=length>', 'a scale bar in it, in pixels, such as "120,80 1320,80 = 100 mm"')
    .option('--face <face>', 'which side is photographed: top or back', DEFAULT_FACE)
    .option('--body <number>', 'which of several bodies in the picture')
    .option('--hints <file>', 'places marked by hand, one file for each photograph', collect, [])
    .option('--follow <side>', 'where the halves differ slowly: average them, or follow bass or treble')
    .option('--keep-asymmetry', 'keep both halves as they are, each unworn')
    .option('--corner-end <width[,upper]>', 'width of the corner ends, lower and upper')
    .option(
      '--stretch <ruling>',
      'overrule a stretch of wear, such as "bass 120-150 as-found" (outer, as-found, other, mean)',
      collect,
      [],
    )
    .option('--as <file>', 'trace as an earlier TRACE.json or design says; what is given here goes before it')
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

/** The few lines a maker reads first. */
export function describe(voice: Voice, traced: TraceOutcome, out: string | undefined): void {
  for (const line of traced.summary) voice.say(line);
  if (out !== undefined) voice.say(`Written: ${out}`);
}
