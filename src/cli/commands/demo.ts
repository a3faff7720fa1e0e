import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Command } from 'commander';
import {
  accept,
  type Checked,
  draft,
  type Finding,
  make,
  type PackFile,
  parseMakeOptions,
  refuse,
  sheet,
} from '../../core/index.ts';
import { readJson, sha256, writePack } from '../../host/index.ts';
import { makeVoice, progress, reportFaults, reportFindings, type Voice } from '../report.ts';
import { traceFiles } from '../tracePhotographs.ts';

/** The demo's photographs and tables, beside the built program. */
const DEMO = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..', '..', 'demo');

/** What the class measured when it photographed the fiddle; see demo/README.md. */
const PHOTOGRAPH = {
  edgeHeight: '36.5',
  sheetBar: '150,150',
  known: ['bodyLength=356.5±0.3', 'lowerBout=206.3±0.3'],
  face: 'top',
  hints: [],
  stretch: [],
} as const;

interface DemoOptions {
  readonly out: string;
  readonly paper: string;
  readonly force: boolean;
  readonly json: boolean;
}

export function addDemo(program: Command): void {
  program
    .command('demo')
    .description('the whole demo job: a worn fiddle from its photograph, and a small viola from a table')
    .option('--out <folder>', 'folder for the packs', join('out', 'demo'))
    .option('--paper <paper>', 'paper of the printer', 'A4')
    .option('--force', 'replace files that are not from an earlier run', false)
    .option('--json', 'what was made as JSON', false)
    .action(async (options: DemoOptions) => {
      process.exitCode = await run(options);
    });
}

async function run(options: DemoOptions) {
  const voice = makeVoice(options.json);
  const jobs = [
    { name: 'fiddle', parts: fiddleParts },
    { name: 'small-viola', parts: async () => accept({ parts: [], findings: [], summary: [] }) },
  ];
  const findings: Finding[] = [];
  const made: { folder: string; files: number }[] = [];
  for (const job of jobs) {
    const pack = await packFor(job, options);
    if (!pack.ok) return reportFaults(voice, pack.faults);
    const folder = join(options.out, job.name);
    const written = writePack(folder, pack.value.files, { force: options.force });
    if (!written.ok) return reportFaults(voice, written.faults);
    made.push({ folder, files: pack.value.files.length });
    findings.push(...pack.value.findings);
    tell(voice, pack.value.summary, folder);
  }
  if (voice.json) voice.data(JSON.stringify({ made, findings }, null, 2));
  else voice.say('Print at 100 %, measure both 150 mm bars on a page, and cut only when they are right.');
  return reportFindings(voice, findings);
}

function tell(voice: Voice, summary: readonly string[], folder: string): void {
  if (voice.json) return;
  for (const line of summary) voice.say(line);
  voice.say(`  in ${folder}`);
  voice.say('');
}

interface JobParts {
  readonly parts: readonly PackFile[];
  readonly findings: readonly Finding[];
  readonly summary: readonly string[];
  readonly trace?: unknown;
}

async function packFor(job: { name: string; parts: () => Promise<Checked<JobParts>> }, options: DemoOptions) {
  progress(`${job.name} …`);
  const table = readJson(join(DEMO, `${job.name}.measurements.json`));
  if (!table.ok) return table;
  const parts = await job.parts();
  if (!parts.ok) return parts;
  const { trace } = parts.value;
  const drafted = draft([
    { name: `${job.name}.measurements.json`, json: table.value },
    ...(trace === undefined ? [] : [{ name: 'trace', json: trace }]),
  ]);
  if (!drafted.ok) return drafted;
  const settings = parseMakeOptions({ paper: options.paper, dxf: 'R2000' });
  if (!settings.ok) return settings;
  const pack = await make(drafted.value.design, { ...settings.value, digest: sha256 }, parts.value.parts);
  if (!pack.ok) return pack;
  return accept({
    ...pack.value,
    summary: [...parts.value.summary, ...pack.value.summary],
    findings: [...parts.value.findings, ...drafted.value.findings, ...pack.value.findings],
  });
}

/** The photograph traced, and the calibration sheet it was taken on, to go along in the pack. */
async function fiddleParts(): Promise<Checked<JobParts>> {
  const paper = await sheet('A3');
  if (!paper.ok) return paper;
  const traced = await traceFiles([join(DEMO, 'photographs', 'fiddle-top.jpg')], PHOTOGRAPH);
  if (!traced.ok) return refuse(...traced.faults);
  const bytes = new TextEncoder().encode(traced.value.text);
  return accept({
    parts: [
      { path: 'calibration-sheet-a3.pdf', kind: 'print', parts: [], bytes: paper.value, sizeMm: [420, 297] },
      { path: 'trace.json', kind: 'data', parts: [], bytes },
    ],
    findings: traced.value.findings,
    summary: traced.value.summary,
    trace: traced.value.document,
  });
}
