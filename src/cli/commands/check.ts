import { basename } from 'node:path';
import type { Command } from 'commander';
import {
  BUILT_PARTS,
  builtOutcome,
  type Checked,
  type CheckedBuilt,
  check,
  checkBuilt,
  checkWishes,
  type Design,
  designText,
  type Finding,
  mapFile,
  markerFinder,
  missWords,
  outlineFromGarland,
  parseBuiltOptions,
  refuse,
} from '../../core/index.ts';
import { readPicture } from '../../host/index.ts';
import { readDesignFile } from '../designFile.ts';
import { oneOf } from '../oneOf.ts';
import { makeVoice, progress, reportFaults, reportFindings, type Voice } from '../report.ts';
import { type FileToWrite, inTheWay, writeFiles } from '../writeFiles.ts';

interface CheckOptions {
  readonly photo?: string;
  readonly part?: string;
  readonly face: string;
  readonly thickness?: string;
  readonly tolerance?: string;
  readonly sheetBar?: string;
  readonly map?: string;
  readonly takeOutline?: string;
  readonly force: boolean;
  readonly json: boolean;
}

export function addCheck(program: Command): void {
  program
    .command('check')
    .description('contradictions in a design; with a photograph, what was built against it')
    .argument('<design>', 'design file')
    .option('--photo <file>', 'photograph of what was made, lying or standing on the calibration sheet')
    .option('--part <part>', `what lies there: ${BUILT_PARTS.join(', ')}`)
    .option(
      '--thickness <length>',
      'height of its upper edge over the sheet; lower/upper end where it slopes',
    )
    .option('--sheet-bar <x[,y]>', 'what the 150 mm bars of the printed sheet measure, along and across')
    .option('--face <face>', 'which face of the body looks up: top or back', 'top')
    .option('--tolerance <length>', 'what it may be off (0.3 mm)')
    .option('--map <file>', 'drawing of the deviations to write, .svg or .pdf')
    .option('--take-outline <file>', 'design to write whose outline follows the garland as built')
    .option('--force', 'replace files if there are any', false)
    .option('--json', 'findings, or all that was measured, as JSON', false)
    .action(async (path: string, options: CheckOptions) => {
      process.exitCode = await run(path, options);
    });
}

async function run(path: string, options: CheckOptions) {
  const voice = makeVoice(options.json);
  const early =
    options.photo === undefined ? needPhoto(options) : inTheWay([options.map, options.takeOutline], options);
  if (early.length > 0) return reportFaults(voice, early);
  const design = readDesignFile(path);
  if (!design.ok) return reportFaults(voice, design.faults);
  if (options.photo !== undefined)
    return runBuilt(voice, design.value.design, options.photo, options, design.value.findings);
  const findings = [...design.value.findings, ...check(design.value.design)];
  if (voice.json) {
    voice.data(JSON.stringify({ findings }, null, 2));
    return findings.some((finding) => finding.weight !== 'remark') ? 1 : 0;
  }
  if (findings.length === 0) voice.say('Nothing found: the numbers of this design agree with each other.');
  return reportFindings(voice, findings);
}

/** Options that say something of a photograph where none is given. */
function needPhoto(options: CheckOptions) {
  const given = (['part', 'thickness', 'tolerance', 'sheetBar', 'map', 'takeOutline'] as const).find(
    (name) => options[name] !== undefined,
  );
  if (given === undefined) return [];
  return [
    {
      code: 'built.no-photo',
      at: `--${given.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`,
      found: 'no photograph that it could be about',
      need: '--photo with a picture of what was made',
      remedy: 'give --photo and --part, or leave this out to check the design alone',
    },
  ];
}

async function runBuilt(
  voice: Voice,
  design: Design,
  photo: string,
  options: CheckOptions,
  readFindings: readonly Finding[],
) {
  const built = await checkPhotograph(design, photo, options);
  if (!built.ok) return reportFaults(voice, built.faults);
  const outcome = builtOutcome(built.value);
  const files: FileToWrite[] = [];
  if (options.map !== undefined) {
    const bytes = await mapFile(outcome.map, options.map, '--map');
    if (!bytes.ok) return reportFaults(voice, bytes.faults);
    files.push({ path: options.map, bytes: bytes.value });
  }
  const taken = options.takeOutline === undefined ? undefined : outlineFromGarland(design, built.value);
  if (taken && !taken.ok) return reportFaults(voice, taken.faults);
  if (taken && options.takeOutline !== undefined)
    files.push({
      path: options.takeOutline,
      bytes: new TextEncoder().encode(designText(taken.value.design)),
    });
  const written = writeFiles(files, options);
  if (!written.ok) return reportFaults(voice, written.faults);
  if (voice.json) voice.data(outcome.text);
  else for (const line of outcome.summary) voice.say(line);
  if (taken) {
    const { movedMostMm, movedMostAtMm, movedRmsMm } = taken.value;
    voice.say(
      `  outline from the garland: ${missWords(movedMostMm)} of the old one at most, ` +
        `${movedMostAtMm.toFixed(0)} mm from the lower end; ${movedRmsMm.toFixed(2)} mm rms`,
    );
  }
  for (const { path } of files) voice.say(`Written: ${path}`);
  return reportFindings(voice, [...readFindings, ...built.value.findings, ...(taken?.value.findings ?? [])]);
}

async function checkPhotograph(
  design: Design,
  photo: string,
  options: CheckOptions,
): Promise<Checked<CheckedBuilt>> {
  const part = options.part === undefined ? refuse(noPart()) : oneOf('--part', options.part, BUILT_PARTS);
  const face = oneOf('--face', options.face, ['top', 'back'] as const);
  const settings = parseBuiltOptions(options);
  const wishes = checkWishes(options.part, options.map, options.takeOutline);
  if (!part.ok || !face.ok || !settings.ok || wishes.length > 0)
    return refuse(...[part, face, settings].flatMap((one) => (one.ok ? [] : one.faults)), ...wishes);
  progress(`Reading ${photo} …`);
  const picture = await readPicture(photo);
  if (!picture.ok) return picture;
  progress('Looking for the calibration sheet and what lies on it …');
  return checkBuilt(
    design,
    {
      name: basename(photo),
      picture: picture.value,
      part: part.value,
      face: face.value,
      ...settings.value,
    },
    markerFinder(),
  );
}

function noPart() {
  return {
    code: 'option.unknown',
    at: '--part',
    found: 'nothing that says what was photographed',
    need: `one of ${BUILT_PARTS.join(', ')}`,
    remedy: 'give --part',
  };
}
