import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import type { HintsAbout, PhotographHints } from '../../files/index.ts';
import type { TraceHints } from '../../photo/index.ts';
import { knownNameFaults } from './knownName.ts';
import { knownOfRecord, knownToRecord } from './traceRecord.ts';
import type { TraceRequest } from './traceRequest.ts';

/** What several files of hints say together: places by photograph, and what they say of the instrument. */
export interface GivenHints {
  readonly places: ReadonlyMap<string, TraceHints>;
  readonly about: HintsAbout;
}

/**
 * Hints laid to the photographs that they are for, by name; without a name they are for the only one.
 * Faults: `hints.photograph` where there is no such photograph or its name is missing among several, `hints.differ` where two of
 * them say otherwise of the same instrument, and those of known lengths by their names.
 */
export function givenHints(given: readonly PhotographHints[], names: readonly string[]): Checked<GivenHints> {
  const astray = given.find(({ photograph }) => photograph !== undefined && !names.includes(photograph));
  if (astray) return refuse(hintsAstray(astray.photograph as string));
  if (names.length !== 1 && given.some(({ photograph }) => photograph === undefined))
    return refuse(hintsNameless());
  const misnamed = given.flatMap(({ about }) =>
    (about.known ?? []).flatMap((known) => knownNameFaults(knownOfRecord(known), 'hints')),
  );
  if (misnamed.length > 0) return refuse(...misnamed);
  const places = new Map(given.map(({ photograph, hints }) => [photograph ?? (names[0] as string), hints]));
  const about: { [name: string]: unknown } = {};
  for (const one of given)
    for (const [name, said] of Object.entries(one.about)) {
      if (about[name] !== undefined && JSON.stringify(about[name]) !== JSON.stringify(said))
        return refuse(hintsDiffer(name));
      about[name] = said;
    }
  return accept({ places, about: about as HintsAbout });
}

/** What hints say of the instrument, as part of a request. */
export function wishesOfHints({ known, ...about }: HintsAbout): Partial<Omit<TraceRequest, 'photographs'>> {
  return { ...about, ...(known && { known: known.map(knownOfRecord) }) };
}

/** The same the other way. */
export function aboutOfWishes({
  face,
  known,
  body,
  meant,
}: Pick<TraceRequest, 'face' | 'known' | 'body' | 'meant'>): HintsAbout {
  return {
    face,
    ...(known.length > 0 && { known: known.map(knownToRecord) }),
    ...(body !== undefined && { body }),
    ...(meant && { meant }),
  };
}

function hintsAstray(photograph: string): Fault {
  return {
    code: 'hints.photograph',
    at: '--hints',
    found: `hints for "${photograph}", which is not among the photographs`,
    need: 'the name of one of the photographs that are traced',
    remedy: 'correct the name in the hints, or trace that photograph too',
  };
}

function hintsNameless(): Fault {
  return {
    code: 'hints.photograph',
    at: '--hints',
    found: 'hints that do not say which of the photographs they are for',
    need: 'the name of one of them',
    remedy: 'add "photograph" with its file name to the hints',
  };
}

function hintsDiffer(name: string): Fault {
  return {
    code: 'hints.differ',
    at: '--hints',
    found: `two files of hints that say otherwise of the same instrument (${name})`,
    need: 'the same in both, or said in one of them only',
    remedy: 'see which is right, and take it out of the other',
  };
}
