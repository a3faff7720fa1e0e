import type { Command } from 'commander';
import { designText } from '../../core/index.ts';
import { servePage } from '../../host/index.ts';
import { readDesignFile } from '../designFile.ts';
import { makeVoice, reportFaults } from '../report.ts';

export function addPage(program: Command): void {
  program
    .command('page')
    .description('serve the page on this machine, with a design on its bench if one is given')
    .argument('[design]', 'a design that was saved')
    .option('--port <n>', 'port on this machine; any that is free if left out', '0')
    .option('--json', 'the address as JSON', false)
    .action(async (path: string | undefined, options: { readonly port: string; readonly json: boolean }) => {
      process.exitCode = await run(path, options);
    });
}

const HIGHEST_PORT = 65535;

async function run(path: string | undefined, options: { readonly port: string; readonly json: boolean }) {
  const voice = makeVoice(options.json);
  const port = Number(options.port);
  if (!Number.isInteger(port) || port < 0 || port > HIGHEST_PORT || options.port.trim() === '')
    return reportFaults(voice, [
      {
        code: 'option.unknown',
        at: '--port',
        found: `"${options.port}"`,
        need: `a whole number from 0 to ${HIGHEST_PORT}`,
        remedy: 'give one such as 8080, or leave it out',
      },
    ]);
  const design = path === undefined ? undefined : readDesignFile(path);
  if (design && !design.ok) return reportFaults(voice, design.faults);
  const served = await servePage(port, design && designText(design.value.design));
  if (!served.ok) return reportFaults(voice, served.faults);
  const { address, close } = served.value;
  if (voice.json) voice.data(JSON.stringify({ address }));
  else voice.say(`The page is at ${address} (this machine only). Control-C ends it.`);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, close);
  return 0;
}
