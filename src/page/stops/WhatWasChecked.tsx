import type { TakenPack } from '../bench/benchWork.ts';
import { sentenceOf } from '../words/sentences.ts';
import { words } from '../words/words.ts';

/** What was checked of a pack, in counts, and what was noticed on the way. */
export function WhatWasChecked({ pack }: { readonly pack: TakenPack }) {
  const said = words().sheets.checked;
  const { counts, files, findings } = pack;
  const flaws = findings.filter(({ code }) => code.startsWith('preflight.')).length;
  const rows = [
    { count: flaws, says: said.flaws, isCold: true },
    { count: counts.pieces, says: said.pieces },
    { count: counts.contours - flaws, says: said.contours },
    { count: counts.pages, says: said.pages },
    { count: files.length, says: said.files },
  ].filter(({ count }) => count > 0) as readonly {
    readonly count: number;
    readonly says: { readonly name: string; readonly says: string };
    readonly isCold?: boolean;
  }[];
  return (
    <section class="checked" aria-live="polite">
      <h2>{said.title}</h2>
      <dl class="counts">
        {rows.map(({ count, says, isCold }) => (
          <div key={says.says} class={isCold ? 'questioned' : undefined}>
            <dt>
              {count} {says.name}
            </dt>
            <dd>{says.says}</dd>
          </div>
        ))}
      </dl>
      {findings.length > 0 && (
        <details class="noticed">
          <summary>{said.noticed(findings.length)}</summary>
          <ul>
            {findings.map((one) => (
              <li key={one.code + one.at + one.found}>{sentenceOf(one)}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
