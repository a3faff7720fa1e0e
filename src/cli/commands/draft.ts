import type { Command } from 'commander';
import { type Design, designText, draft } from '../../core/index.ts';
import { readJson, writeWhole } from '../../host/index.ts';
import { makeVoice, reportFaults, reportFindings } from '../report.ts';

interface DraftOptions {
  readonly out: string;
  readonly force: boolean;
  readonly json: boolean;
}

export function addDraft(program: Command): void {
  program
    .command('draft')
    .description(
      'a design from a table of measurements, from a trace, or from both; traced arches and the side of a head beside them',
    )
    .argument('<file...>', 'MEASUREMENTS.json and/or TRACE.json; profiles traced with trace --of')
    .requiredOption('--out <file>', 'design to write, such as fiddle.garland.json')
    .option('--force', 'replace the file if there is one', false)
    .option('--json', 'print the design as JSON', false)
    .action(async (files: string[], options: DraftOptions) => {
      process.exitCode = run(files, options);
    });
}

function run(files: readonly string[], options: DraftOptions) {
  const voice = makeVoice(options.json);
  const inputs = files.map((path) => ({ path, read: readJson(path) }));
  const faults = inputs.flatMap(({ read }) => (read.ok ? [] : read.faults));
  if (faults.length > 0) return reportFaults(voice, faults);
  const drafted = draft(
    inputs.flatMap(({ path, read }) => (read.ok ? [{ name: path, json: read.value }] : [])),
  );
  if (!drafted.ok) return reportFaults(voice, drafted.faults);
  const text = designText(drafted.value.design);
  const written = writeWhole(options.out, new TextEncoder().encode(text), { force: options.force });
  if (!written.ok) return reportFaults(voice, written.faults);
  if (voice.json) voice.data(text);
  else {
    voice.say(`Written: ${options.out}`);
    voice.say(`  ${filledWords(drafted.value.design)}`);
  }
  return reportFindings(voice, drafted.value.findings);
}

/** How much of a design the maker gave, and how much the habits of the family filled. */
function filledWords({ values, family }: Design): string {
  const origins = Object.values(values).map(({ origin }) => origin.kind);
  const measured = origins.filter((kind) => kind === 'measured').length;
  return `${measured} value${measured === 1 ? '' : 's'} as measured, ${origins.length - measured} filled from the habits of the ${family}; garland derive lists each with its source`;
}
