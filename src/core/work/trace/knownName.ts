import type { Fault } from '../../base/index.ts';
import { nearestName, VALUES } from '../../design/index.ts';
import type { KnownLength, LengthTaken } from './traceRequest.ts';

/** Where a known length was given: typed with the command, or written in a file of hints. */
export type KnownGiven = 'known' | 'hints';

const AT: Readonly<Record<KnownGiven, string>> = { known: '--known', hints: '--hints, known' };

/**
 * Why a known length can be none by its name, or by how it is said to be taken: a body length straight or over the arch, a width
 * at the edge or at the purfling. Faults: `known.name`, `known.taken`, or the same of `hints`.
 */
export function knownNameFaults(
  { name, taken }: Pick<KnownLength, 'name' | 'taken'>,
  given: KnownGiven,
): readonly Fault[] {
  if (!Object.hasOwn(VALUES, name)) return [unknownName(name, given)];
  const isLength = name === 'bodyLength';
  return taken === undefined || isLength === (taken === 'straight' || taken === 'over-arch')
    ? []
    : [wrongTaken(name, taken, given)];
}

function unknownName(name: string, given: KnownGiven): Fault {
  const meant = nearestName(name, Object.keys(VALUES));
  return {
    code: `${given}.name`,
    at: AT[given],
    found: `"${name}" is no measurement that Garland knows`,
    need:
      meant === undefined
        ? 'a name such as bodyLength, lowerBout, waist or upperBout'
        : `a known name, such as “${meant}”`,
    remedy: meant === undefined ? 'use one of these names' : `write ${meant}, or remove it`,
  };
}

function wrongTaken(name: string, taken: LengthTaken, given: KnownGiven): Fault {
  return {
    code: `${given}.taken`,
    at: `${AT[given]} ${name}`,
    found: `"${taken}"`,
    need:
      name === 'bodyLength' ? 'straight or over-arch for the body length' : 'edge or purfling for a width',
    remedy: 'say how this length was taken',
  };
}
