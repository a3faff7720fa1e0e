import type { Command } from 'commander';
import { type Language, make, parseMakeOptions } from '../../core/index.ts';
import { sha256, writePack } from '../../host/index.ts';
import { readDesignFile } from '../designFile.ts';
import { makeVoice, progress, reportFaults, reportFindings } from '../report.ts';

interface MakeWords {
  readonly out: string;
  readonly only?: string;
  readonly parts?: string;
  readonly paper: string;
  readonly printerBars?: string;
  readonly language: string;
  readonly dxf: string;
  readonly gaugeAt?: string;
  readonly gaugeFeet?: string;
  readonly gaugeEdge?: string;
  readonly force: boolean;
  readonly json: boolean;
}

export function addMake(program: Command): void {
  program
    .command('make')
    .description(
      'templates, form and gauges as files: true-size PDF, and SVG and DXF for a laser cutter; solids for a router or printer when asked',
    )
    .argument('<design>', 'design file')
    .requiredOption('--out <folder>', 'folder for the pack')
    .option('--only <kinds>', 'print, laser, solid; more than one with commas; print and laser unless said')
    .option(
      '--parts <families>',
      'only pieces of these families: form, outline, blocks, ribs, edge, roughing, arching, hollowing, soundHoles, neck, head, bar, setup',
    )
    .option('--paper <paper>', 'paper of the printer: A4, A3, A2, Letter or Tabloid', 'A4')
    .option('--printer-bars <x,y>', 'what the 150 mm bars of an earlier print measure, across and up')
    .option('--language <language>', 'what drawings and print speak: en or de', 'en')
    .option('--dxf <release>', 'R2000 or R12', 'R2000')
    .option(
      '--gauge-at <heights>',
      'further cross gauges at these heights above the lower end, such as 95,150',
    )
    .option('--gauge-feet <where>', 'edge: gauges rest on the plate; bench: they stand beside it')
    .option('--gauge-edge <form>', 'bevelled: the section itself; square: cleared over the whole thickness')
    .option('--force', 'replace files that are not from an earlier pack', false)
    .option('--json', 'the manifest as JSON', false)
    .action(async (path: string, words: MakeWords) => {
      process.exitCode = await run(path, words);
    });
}

const WRITTEN: Readonly<Record<Language, (count: number, folder: string) => string>> = {
  en: (count, folder) => `Written: ${count} files in ${folder}`,
  de: (count, folder) => `Geschrieben: ${count} Dateien in ${folder}`,
};

async function run(path: string, words: MakeWords) {
  const voice = makeVoice(words.json);
  const options = parseMakeOptions(words);
  if (!options.ok) return reportFaults(voice, options.faults);
  const design = readDesignFile(path);
  if (!design.ok) return reportFaults(voice, design.faults);
  progress('Deriving and drawing …');
  const pack = await make(design.value.design, { ...options.value, digest: sha256 });
  if (!pack.ok) return reportFaults(voice, pack.faults);
  const written = writePack(words.out, pack.value.files, { force: words.force });
  if (!written.ok) return reportFaults(voice, written.faults);
  if (voice.json) voice.data(pack.value.manifestText);
  else for (const line of pack.value.summary) voice.say(line);
  const speaker = options.value.language ?? 'en';
  if (!voice.json) voice.say(WRITTEN[speaker](pack.value.files.length, words.out));
  return reportFindings(voice, [...design.value.findings, ...pack.value.findings], speaker);
}
