import type { Command } from 'commander';
import { derive, instrumentText, registerText } from '../../core/index.ts';
import { readDesignFile } from '../designFile.ts';
import { makeVoice, reportFaults, reportFindings } from '../report.ts';

export function addDerive(program: Command): void {
  program
    .command('derive')
    .description('every derived dimension of a design, with its source')
    .argument('<design>', 'design file')
    .option('--json', 'the whole instrument as JSON', false)
    .action((path: string, options: { json: boolean }) => {
      process.exitCode = run(path, options);
    });
}

function run(path: string, options: { json: boolean }) {
  const voice = makeVoice(options.json);
  const design = readDesignFile(path);
  if (!design.ok) return reportFaults(voice, design.faults);
  const instrument = derive(design.value.design);
  if (!instrument.ok) return reportFaults(voice, instrument.faults);
  voice.data(voice.json ? instrumentText(instrument.value) : registerText(instrument.value.register));
  return reportFindings(voice, [...design.value.findings, ...instrument.value.findings]);
}
