#!/usr/bin/env node
import { Command, CommanderError } from 'commander';
import { Bug, GARLAND_VERSION } from '../core/index.ts';
import { addCheck } from './commands/check.ts';
import { addDemo } from './commands/demo.ts';
import { addDerive } from './commands/derive.ts';
import { addDraft } from './commands/draft.ts';
import { addMake } from './commands/make.ts';
import { addPage } from './commands/page.ts';
import { addPicture } from './commands/picture.ts';
import { addSheet } from './commands/sheet.ts';
import { addTrace } from './commands/trace.ts';
import { makeVoice, reportFaults } from './report.ts';
import { wrongWords } from './wrongWords.ts';

/** What programs end with when the fault is their own (sysexits, 4.2BSD). */
const SOFTWARE_ERROR = 70;

const program = new Command('garland')
  .description('From a worn violin, viola or cello to true templates, form and gauges.')
  .version(GARLAND_VERSION)
  .exitOverride()
  .showSuggestionAfterError()
  // What it would not take is told as every other fault is, below.
  .configureOutput({ outputError: () => {} })
  .addHelpText(
    'after',
    `
Examples:
  garland demo                                     the whole job on our own example
  garland sheet --paper A3 --out sheet.pdf         print it, measure its bars, lay the instrument on it
  garland trace fiddle.jpg --edge-height 36.5 --known bodyLength=356.5 --out trace.json
  garland draft trace.json --out fiddle.garland.json
  garland picture fiddle.garland.json --of raking-light --out back.png
  garland make fiddle.garland.json --out pack
  garland page fiddle.garland.json                 the same design in a browser

Exit codes: 0 done; 1 done, with findings; 2 wrong usage; 3 bad input; 4 could not write.`,
  );

for (const add of [addDemo, addSheet, addTrace, addDraft, addDerive, addMake, addPicture, addCheck, addPage])
  add(program);

/** Who reads us may stop early, as `head` does: then we are done, with nothing left to say. */
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit();
    throw error;
  });

try {
  await program.parseAsync();
} catch (error) {
  if (error instanceof CommanderError) {
    const words = process.argv.slice(2);
    const wrong = wrongWords(error, program, words);
    if (wrong) reportFaults(makeVoice(words.includes('--json')), [wrong]);
    process.exitCode = error.exitCode === 0 ? 0 : 2;
  } else {
    const words = error instanceof Error ? error.message : String(error);
    process.stderr.write(`Something in Garland itself is wrong, not your input: ${words}\n`);
    if (!(error instanceof Bug) && error instanceof Error && error.stack)
      process.stderr.write(`${error.stack}\n`);
    process.exitCode = SOFTWARE_ERROR;
  }
}
