import type * as z from 'zod';
import type { Fault } from '../base/index.ts';
import { nearestName } from './nearestName.ts';

/**
 * What a schema has against a document, one fault a place, named by its path (`values.waist.origin`).
 * `names` are the keys that a misspelt one is compared with.
 */
export function schemaFaults(
  error: z.ZodError,
  json: unknown,
  codePrefix: string,
  names: readonly string[],
): readonly Fault[] {
  return error.issues.flatMap((issue) => {
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => unknownKey([...issue.path, key], key, codePrefix, names));
    const found = shown(valueAt(json, issue.path));
    return [
      {
        code: found === 'nothing' ? `${codePrefix}.missing` : `${codePrefix}.wrong`,
        at: pathText(issue.path),
        found,
        need: neededBy(issue),
        remedy: found === 'nothing' ? 'add it' : 'correct it',
      },
    ];
  });
}

/** A document that a later Garland wrote, or one that is not of this kind at all. */
export function kindFaults(json: unknown, format: string, newest: number): readonly Fault[] {
  if (!isRecord(json))
    return [fault('file.kind', 'document', shown(json), `a ${format} document`, 'choose another file')];
  if (json.format !== undefined && json.format !== format)
    return [fault('file.kind', 'format', shown(json.format), `“${format}”`, 'choose another file')];
  if (typeof json.version === 'number' && json.version > newest)
    return [
      fault(
        'file.newer',
        'version',
        `version ${json.version}, made by a newer Garland`,
        `version ${newest} or older`,
        'open it with the Garland that made it, or a newer one; the file is left as it is',
      ),
    ];
  return [];
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function unknownKey(
  path: readonly PropertyKey[],
  key: string,
  codePrefix: string,
  names: readonly string[],
): Fault {
  const meant = nearestName(key, names);
  return {
    code: `${codePrefix}.unknown-name`,
    at: pathText(path),
    found: `a name that is not known, “${key}”`,
    need: meant === undefined ? 'one of the known names' : `a known name, such as “${meant}”`,
    remedy:
      meant === undefined ? 'remove it, or look the name up in the schema' : `write ${meant}, or remove it`,
  };
}

/** A value of a document in few words. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  if (typeof value === 'number') return String(value);
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

function neededBy(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      // What a schema says in its own words goes before what the library would say.
      if (!issue.message.startsWith('Invalid input')) return issue.message;
      return issue.expected === 'number' ? 'a finite number' : `a value of type ${issue.expected}`;
    case 'invalid_value':
      return `one of ${issue.values.map((value) => JSON.stringify(value)).join(', ')}`;
    case 'invalid_union':
      return issue.message === 'Invalid input' ? 'one of the forms that the schema gives' : issue.message;
    default:
      return issue.message;
  }
}

function valueAt(json: unknown, path: readonly PropertyKey[]): unknown {
  let value = json;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

function pathText(path: readonly PropertyKey[]): string {
  if (path.length === 0) return 'document';
  return path.reduce<string>(
    (text, key) =>
      typeof key === 'number' ? `${text}[${key}]` : text === '' ? String(key) : `${text}.${String(key)}`,
    '',
  );
}

function fault(code: string, at: string, found: string, need: string, remedy: string): Fault {
  return { code, at, found, need, remedy };
}
