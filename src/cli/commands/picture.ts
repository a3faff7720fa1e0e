import type { Command } from 'commander';
import {
  PICTURE_KINDS,
  type PictureWords,
  parsePicture,
  pictureFile,
  platePicture,
} from '../../core/index.ts';
import { pngOf, pngOfSvg } from '../../host/index.ts';
import { readDesignFile } from '../designFile.ts';
import { makeVoice, progress, reportFaults, reportFindings } from '../report.ts';
import { inTheWay, writeFiles } from '../writeFiles.ts';

interface Words extends PictureWords {
  readonly force: boolean;
  readonly json: boolean;
}

export function addPicture(program: Command): void {
  program
    .command('picture')
    .description(
      'a plate to look at: contours, raking light, curvature, a section, the difference of two designs',
    )
    .argument('<design>', 'design file')
    .requiredOption('--of <what>', PICTURE_KINDS.join(', '))
    .requiredOption('--out <file>', 'picture to write: .svg and .pdf at true size, or .png')
    .option('--plate <plate>', 'back or top', 'back')
    .option('--state <state>', 'finished: edge and channel cut; arched: edge still flat', 'finished')
    .option('--interval <length>', 'between two contours (1 mm)')
    .option('--lamp <height,from>', 'degrees above the plate, and clockwise from the neck end (15,60)')
    .option('--line <places>', 'where to cut: two places x,y such as "0,60 0,300", mm')
    .option('--with <design>', 'design to compare with')
    .option('--paper <paper>', 'paper that contours and sections are printed on (A4)')
    .option('--language <language>', 'what stands on it: en or de', 'en')
    .option('--pixels <number>', 'pixels a millimetre of a .png (3)')
    .option('--force', 'replace the file if there is one', false)
    .option('--json', 'what was written and found, as JSON', false)
    .action(async (path: string, words: Words) => {
      process.exitCode = await run(path, words);
    });
}

async function run(path: string, words: Words) {
  const voice = makeVoice(words.json);
  const request = parsePicture(words);
  if (!request.ok) return reportFaults(voice, request.faults);
  const early = inTheWay([words.out], words);
  if (early.length > 0) return reportFaults(voice, early);
  const design = readDesignFile(path);
  const other = words.with === undefined ? undefined : readDesignFile(words.with);
  if (!design.ok || (other && !other.ok))
    return reportFaults(
      voice,
      [design, other].flatMap((one) => (one && !one.ok ? one.faults : [])),
    );
  progress('Deriving and drawing …');
  const picture = platePicture(
    design.value.design,
    request.value,
    other?.ok ? other.value.design : undefined,
  );
  if (!picture.ok) return reportFaults(voice, picture.faults);
  const file = await pictureFile(picture.value, request.value, words.out, { pngOf, pngOfSvg });
  if (!file.ok) return reportFaults(voice, file.faults);
  const written = writeFiles([{ path: words.out, bytes: file.value.bytes }], words);
  if (!written.ok) return reportFaults(voice, written.faults);
  const { says } = picture.value;
  // What was filled in is said by the commands that work on the numbers; a picture is not worth repeating it.
  const read = [...design.value.findings, ...(other?.ok ? other.value.findings : [])];
  const findings = [
    ...read.filter(({ weight }) => weight !== 'remark'),
    ...picture.value.findings,
    ...file.value.findings,
  ];
  if (voice.json) voice.data(JSON.stringify({ file: words.out, says, findings }, null, 2));
  else for (const line of says) voice.say(line);
  const { language } = request.value;
  if (!voice.json) voice.say(`${language === 'de' ? 'Geschrieben' : 'Written'}: ${words.out}`);
  return reportFindings(voice, findings, language);
}
