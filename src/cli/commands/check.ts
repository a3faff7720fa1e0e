import type { Command } from 'commander';
import { check } from '../../core/index.ts';
import { readDesignFile } from '../designFile.ts';
import { makeVoice, reportFaults, reportFindings } from '../report.ts';

export function addCheck(program: Command): void {
  program
    .command('check')
    .description('contradictions in a design, and what lies outside the habits of the trade')
    .argument('<design>', 'design file')
    .option('--json', 'findings as JSON', false)
    .action((path: string, options: { json: boolean }) => {
      process.exitCode = run(path, options);
    });
}

function run(path: string, options: { json: boolean }) {
  const voice = makeVoice(options.json);
  const design = readDesignFile(path);
  if (!design.ok) return reportFaults(voice, design.faults);
  const findings = [...design.value.findings, ...check(design.value.design)];
  if (voice.json) {
    voice.data(JSON.stringify({ findings }, null, 2));
    return findings.some((finding) => finding.weight !== 'remark') ? 1 : 0;
  }
  if (findings.length === 0) voice.say('Nothing found: the numbers of this design agree with each other.');
  return reportFindings(voice, findings);
}
