import { Bug } from '../base/index.ts';
import { canonicalJson, type Json } from './canonicalJson.ts';

/** A document of ours as the text of its file, every digit kept, so that reading gives the same value back. */
export function documentText(document: object): string {
  const text = canonicalJson(document as Json, 'exact');
  if (!text.ok) throw new Bug(`a document holds no number at ${text.faults.map(({ at }) => at).join(', ')}`);
  return text.value;
}
