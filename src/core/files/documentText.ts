import { Bug } from '../base/index.ts';

/**
 * A document as JSON text: two spaces an indent, lists of plain numbers or words on one line, entries in the order
 * given, one line end at the end. Numbers are written in full, so that reading gives the same value back.
 */
export function documentText(value: unknown): string {
  return `${written(value, '')}\n`;
}

function written(value: unknown, indent: string): string {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Bug(`a document holds ${value}`);
  if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null';
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    if (value.every(isPlain)) return `[${value.map((item) => written(item, inner)).join(', ')}]`;
    return `[\n${value.map((item) => inner + written(item, inner)).join(',\n')}\n${indent}]`;
  }
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  if (entries.length === 0) return '{}';
  const lines = entries.map(([key, item]) => `${inner}${JSON.stringify(key)}: ${written(item, inner)}`);
  return `{\n${lines.join(',\n')}\n${indent}}`;
}

function isPlain(value: unknown): boolean {
  return value === null || typeof value !== 'object';
}
