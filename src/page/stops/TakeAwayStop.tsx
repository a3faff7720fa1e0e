import { useState } from 'preact/hooks';
import { LANGUAGES, type Language, type MakeKind, type PiecePart } from '../../core/index.ts';
import { makingBench } from '../bench/bench.ts';
import type { TakenPack } from '../bench/benchWork.ts';
import { DrawingSays } from '../drawing/DrawingSays.tsx';
import { isNothingSound, OutlineAlone } from '../drawing/OutlineAlone.tsx';
import { PieceWall, useDrawings } from '../drawing/PieceWall.tsx';
import { SheetsView } from '../drawing/SheetsView.tsx';
import { useShown } from '../drawing/useShown.ts';
import { keepChoice, keptOneOf } from '../keeping/choices.ts';
import { download, fileNameOf } from '../keeping/files.ts';
import { Leaf } from '../notebook/Leaf.tsx';
import { design, faults, takeAway } from '../store.ts';
import { sentenceOf } from '../words/sentences.ts';
import { language, words } from '../words/words.ts';
import { Contradiction } from './Contradiction.tsx';
import { WhatWasChecked } from './WhatWasChecked.tsx';

const PAPERS = ['A4', 'A3', 'Letter', 'Tabloid', 'A2'] as const;
type Paper = (typeof PAPERS)[number];

/** What leaves, and for which machine. */
export function TakeAwayStop() {
  const said = words().take;
  const sheets = words().sheets;
  const groups = words().groups;
  const [kinds, setKinds] = useState<readonly MakeKind[]>(['print', 'laser']);
  const [near, setNear] = useState<MakeKind>('print');
  const [left, setLeft] = useState<readonly PiecePart[]>([]);
  const [paper, setPaper] = useState<Paper>(keptOneOf('pack-paper', PAPERS) ?? 'A4');
  const [bars, setBars] = useState('');
  const [chosenLanguage, setLanguage] = useState(keptOneOf('pack-language', LANGUAGES));
  // The pack speaks as the page does, unless it is asked to speak otherwise.
  const spokenIn = chosenLanguage ?? language.value;
  const [pack, setPack] = useState<TakenPack | null>(null);
  const [isBusy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<readonly string[]>([]);
  const printerBars = bars.trim() === '' ? {} : { printerBars: bars.replace(';', ',') };
  const drawings = useDrawings(spokenIn);
  const all = [...new Set(drawings?.map(({ part }) => part))];
  const parts = left.length === 0 ? {} : { parts: all.filter((part) => !left.includes(part)) };
  // Bars that are half typed leave the last pages in sight.
  const pages = useShown(
    async (asked) => makingBench().pages(asked, { paper, language: spokenIn, ...parts, ...printerBars }),
    [paper, bars, spokenIn, ...left].join(),
  );
  const choosePaper = (chosen: Paper) => {
    setPaper(chosen);
    keepChoice('pack-paper', chosen);
  };
  // Asked to speak as the page does it goes on doing so, whatever the page speaks later.
  const chooseLanguage = (chosen: Language) => {
    const own = chosen === language.value ? null : chosen;
    setLanguage(own);
    keepChoice('pack-language', own);
  };
  const toggle = (kind: MakeKind) =>
    setKinds(kinds.includes(kind) ? kinds.filter((one) => one !== kind) : [...kinds, kind]);
  const take = async (chosen: readonly MakeKind[]) => {
    const asked = design.value;
    if (asked === null) return;
    setBusy(true);
    setTrouble([]);
    const answer = await makingBench().take(asked, {
      kinds: chosen,
      paper,
      language: spokenIn,
      ...parts,
      ...printerBars,
    });
    setBusy(false);
    if (!answer.ok) {
      setTrouble(answer.faults.map(sentenceOf));
      return;
    }
    setPack(answer.value);
    takeAway(asked);
    download(`${fileNameOf(asked.name)}.zip`, answer.value.zip, 'application/zip');
  };
  const cut = drawings?.filter(({ routes, part }) => routes.includes('laser') && !left.includes(part)).length;
  const rows: readonly Row[] = [
    {
      kind: 'print',
      name: said.print,
      says: said.saysPrint(paper),
      count: pages && sheets.pageCount(pages.pages.length),
    },
    {
      kind: 'laser',
      name: said.laser,
      says: said.saysLaser,
      count: cut === undefined ? null : sheets.pieceCount(cut),
    },
    { kind: 'solid', name: said.solid, says: said.saysSolid, count: null },
  ];
  const isOff = isBusy || faults.value.length > 0;
  const nearName = rows.find(({ kind }) => kind === near)?.name ?? '';
  return (
    <>
      <main class="drawing scrolls">
        {pack && <WhatWasChecked pack={pack} />}
        <DrawingSays isInFlow />
        {isNothingSound() && <OutlineAlone />}
        {near === 'print' &&
          !isNothingSound() &&
          (pages ? <SheetsView shown={pages} /> : <p class="wall-still">{sheets.drawing}</p>)}
        {near === 'laser' && !isNothingSound() && (
          <section class="sheets" aria-label={sheets.laserHead}>
            <header class="sheets-head">
              <h2>{sheets.laserHead}</h2>
              <p>{sheets.laserSays(cut ?? 0)}</p>
            </header>
            <PieceWall parts={all.filter((part) => !left.includes(part))} route="laser" spokenIn={spokenIn} />
          </section>
        )}
        {near === 'solid' && (
          <section class="sheets" aria-label={sheets.solidHead}>
            <header class="sheets-head">
              <h2>{sheets.solidHead}</h2>
              <p>{sheets.solidSays}</p>
            </header>
          </section>
        )}
      </main>
      <Leaf
        question={words().questions.takeAway}
        lead={words().leads.takeAway}
        answers={[
          {
            says: isBusy ? said.working : said.go,
            isOff: isOff || kinds.length === 0 || (all.length > 0 && left.length === all.length),
            give: () => void take(kinds),
          },
          { says: sheets.only(nearName), isOff, give: () => void take([near]) },
        ]}
      >
        <Contradiction />
        {trouble.length > 0 && (
          <div class="trouble" role="alert">
            {trouble.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </div>
        )}
        <h2 class="group">{groups.takeAlong}</h2>
        <ul class="rows">
          {rows.map(({ kind, name, says, count }) => (
            <li key={kind} class={near === kind ? 'row touched' : 'row'}>
              <div class="take-row">
                <input
                  type="checkbox"
                  aria-label={`${groups.takeAlong}: ${name}`}
                  checked={kinds.includes(kind)}
                  onChange={() => toggle(kind)}
                />
                <button
                  type="button"
                  class="take-near"
                  aria-pressed={near === kind}
                  onClick={() => setNear(kind)}
                >
                  <span class="row-name">
                    <b>{name}</b>
                    <span class="origin">{says}</span>
                  </span>
                  {count && <span class="take-count">{count}</span>}
                </button>
              </div>
            </li>
          ))}
        </ul>
        <details class="plain which">
          <summary>{sheets.which(all.length - left.length, all.length)}</summary>
          <ul>
            {all.map((part) => (
              <li key={part}>
                <label class="choice">
                  <input
                    type="checkbox"
                    checked={!left.includes(part)}
                    onChange={() =>
                      setLeft(left.includes(part) ? left.filter((one) => one !== part) : [...left, part])
                    }
                  />
                  {sheets.parts[part]}
                </label>
              </li>
            ))}
          </ul>
        </details>
        <div class="begin">
          <label class="field">
            {said.paper}
            <select value={paper} onChange={(event) => choosePaper(event.currentTarget.value as Paper)}>
              {PAPERS.map((name) => (
                <option key={name}>{name}</option>
              ))}
            </select>
          </label>
          <label class="field">
            {said.language}
            <select
              class="wide"
              value={spokenIn}
              onChange={(event) => chooseLanguage(event.currentTarget.value as Language)}
            >
              {LANGUAGES.map((name) => (
                <option key={name} value={name}>
                  {said.languages[name]}
                </option>
              ))}
            </select>
          </label>
          <label class="field">
            {said.bars}
            <input
              class="wide"
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

interface Row {
  readonly kind: MakeKind;
  readonly name: string;
  readonly says: string;
  readonly count: string | null;
}
