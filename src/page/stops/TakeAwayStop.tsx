import { useState } from 'preact/hooks';
import { faultSentence, type MakeKind } from '../../core/index.ts';
import { makingBench } from '../bench/bench.ts';
import type { TakenPack } from '../bench/benchWork.ts';
import { PieceWall } from '../drawing/PieceWall.tsx';
import { download, fileNameOf } from '../keeping/files.ts';
import { Leaf } from '../notebook/Leaf.tsx';
import { design, faults, takenDesign, takenOn } from '../store.ts';
import { language, words } from '../words/words.ts';

const PAPERS = ['A4', 'A3', 'Letter', 'Tabloid', 'A2'] as const;

/** What leaves, and for which machine. */
export function TakeAwayStop() {
  const said = words().take;
  const groups = words().groups;
  const [kinds, setKinds] = useState<readonly MakeKind[]>(['print', 'laser']);
  const [paper, setPaper] = useState<string>('A4');
  const [bars, setBars] = useState('');
  const [pack, setPack] = useState<TakenPack | null>(null);
  const [isBusy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<readonly string[]>([]);
  const toggle = (kind: MakeKind) =>
    setKinds(kinds.includes(kind) ? kinds.filter((one) => one !== kind) : [...kinds, kind]);
  const take = async () => {
    const asked = design.value;
    if (asked === null) return;
    setBusy(true);
    setTrouble([]);
    const answer = await makingBench().take(asked, {
      kinds,
      paper,
      ...(bars.trim() && { printerBars: bars.replace(';', ',') }),
    });
    setBusy(false);
    if (!answer.ok) {
      setTrouble(answer.faults.map(faultSentence));
      return;
    }
    setPack(answer.value);
    takenDesign.value = asked;
    takenOn.value = new Date().toLocaleDateString(language.value, { day: 'numeric', month: 'long' });
    download(`${fileNameOf(asked.name)}.zip`, answer.value.zip, 'application/zip');
  };
  const rows: readonly { readonly kind: MakeKind; readonly name: string; readonly says: string }[] = [
    { kind: 'print', name: said.print, says: said.saysPrint(paper) },
    { kind: 'laser', name: said.laser, says: said.saysLaser },
    { kind: 'solid', name: said.solid, says: said.saysSolid },
  ];
  return (
    <>
      <main class="drawing scrolls">
        {pack && (
          <section class="checked" aria-live="polite">
            <h2>{said.checked}</h2>
            <ul>
              <li>{said.done(pack.files.length)}</li>
              {pack.summary.map((line) => (
                <li key={line}>{line}</li>
              ))}
              {pack.findings.slice(0, 6).map((one) => (
                <li key={one.code + one.at}>{faultSentence(one)}</li>
              ))}
            </ul>
          </section>
        )}
        <PieceWall parts={null} />
      </main>
      <Leaf
        question={words().questions.takeAway}
        lead={words().leads.takeAway}
        answers={[
          {
            says: isBusy ? said.working : said.go,
            isOff: isBusy || kinds.length === 0 || faults.value.length > 0,
            give: () => void take(),
          },
        ]}
      >
        {trouble.length > 0 && (
          <div class="trouble" role="alert">
            {trouble.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </div>
        )}
        <h2 class="group">{groups.takeAlong}</h2>
        <ul class="rows">
          {rows.map(({ kind, name, says }) => (
            <li key={kind} class="row">
              <label class="take-row">
                <input type="checkbox" checked={kinds.includes(kind)} onChange={() => toggle(kind)} />
                <span>
                  <b>{name}</b>
                  <span class="origin">{says}</span>
                </span>
              </label>
            </li>
          ))}
        </ul>
        <div class="begin">
          <label class="field">
            {said.paper}
            <select value={paper} onChange={(event) => setPaper(event.currentTarget.value)}>
              {PAPERS.map((name) => (
                <option key={name}>{name}</option>
              ))}
            </select>
          </label>
          <label class="field">
            {said.bars}
            <input
              value={bars}
              placeholder={said.barsExample}
              onInput={(event) => setBars(event.currentTarget.value)}
            />
          </label>
          <p class="origin">{said.barsHow}</p>
        </div>
        <section class="plain">
          <h2 class="group">{groups.beforeYouCut}</h2>
          {said.cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
        </section>
      </Leaf>
    </>
  );
}
