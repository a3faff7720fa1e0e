import type { Command } from 'commander';
import { SHEET_PAPERS, sheet } from '../../core/index.ts';
import { writeWhole } from '../../host/index.ts';
import { oneOf } from '../oneOf.ts';
import { makeVoice, reportFaults } from '../report.ts';

export function addSheet(program: Command): void {
  program
    .command('sheet')
    .description('calibration sheet to lie under or round the instrument when photographing it')
    .option('--paper <paper>', `one of ${SHEET_PAPERS.join(', ')}`, 'A3')
    .requiredOption('--out <file>', 'PDF to write')
    .option('--force', 'replace the file if there is one', false)
    .option('--json', 'say what was made as JSON', false)
    .action(async (options: { paper: string; out: string; force: boolean; json: boolean }) => {
      process.exitCode = await run(options);
    });
}

async function run(options: { paper: string; out: string; force: boolean; json: boolean }) {
  const voice = makeVoice(options.json);
  const paper = oneOf('--paper', options.paper, SHEET_PAPERS);
  if (!paper.ok) return reportFaults(voice, paper.faults);
  const made = await sheet(paper.value);
  if (!made.ok) return reportFaults(voice, made.faults);
  const written = writeWhole(options.out, made.value, { force: options.force });
  if (!written.ok) return reportFaults(voice, written.faults);
  if (voice.json) voice.data(JSON.stringify({ file: options.out, paper: paper.value }));
  else
    voice.say(
      `${options.out}: calibration sheet on ${paper.value}. Print it at 100 % (no fitting to the page), measure both 150 mm bars, and give what they measure to trace with --sheet-bar.`,
    );
  return 0;
}
