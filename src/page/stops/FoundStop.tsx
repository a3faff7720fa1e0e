import type { Seen } from '../bench/seeingWork.ts';
import { isTenfold, PhotographDrawing } from '../drawing/PhotographDrawing.tsx';
import { takeInHand } from '../keeping/marking.ts';
import { say } from '../keeping/saying.ts';
import { lookedAt, seen, settleOutline } from '../keeping/tracing.ts';
import { Leaf } from '../notebook/Leaf.tsx';
import { sentenceOf } from '../words/sentences.ts';
import { print, words } from '../words/words.ts';
import { LookingLine } from './LookingLine.tsx';
import { AddPhotograph, PhotographList } from './PhotographList.tsx';
import { Refused } from './Refused.tsx';
import { ScaleRows } from './ScaleRows.tsx';
import { ShowWhere } from './ShowWhere.tsx';
import { Told } from './Told.tsx';
import { Halves, WearList } from './WearList.tsx';

/** What was found in the photographs: the scale, what was put back, what is unsure; and the means to set it right. */
export function FoundStop({ seen: { shown, findings, bodies } }: { readonly seen: Seen }) {
  const text = words().see;
  const isLooking = lookedAt.value !== null;
  const told = findings.filter(({ code }) => code !== 'trace.several-bodies');
  return (
    <>
      <main class="drawing">
        <PhotographDrawing shown={shown} />
        <LookingLine />
      </main>
      <Leaf
        question={text.question}
        lead={text.lead[shown.face]}
        answers={[
          {
            says: isLooking ? text.working : text.settle,
            isOff: isLooking,
            give: () => {
              takeInHand(null);
              void settleOutline();
            },
          },
          {
            says: text.again,
            isOff: isLooking,
            give: () => {
              takeInHand(null);
              seen.value = null;
            },
          },
        ]}
      >
        <Refused />
        {bodies.length > 1 && <WhichBody bodies={bodies} />}
        <ScaleRows shown={shown} />
        <WearList shown={shown} />
        <h2 class="group">{text.movedIn}</h2>
        <ul class="rows">
          <Told kind="derived" name={text.lean} value={print(shown.leanMm)} beside="mm" />
        </ul>
        <Halves />
        <div class="begin">
          <button
            type="button"
            class="pale"
            aria-pressed={isTenfold.value}
            onClick={() => {
              isTenfold.value = !isTenfold.value;
            }}
          >
            {isTenfold.value ? text.showTrue : text.showTenfold}
          </button>
        </div>
        <Unsure shown={shown} />
        {told.length > 0 && (
          <section class="plain">
            <h2 class="group">{words().groups.found}</h2>
            {told.map((one) => (
              <p key={one.code + one.at + one.found} class={one.weight === 'remark' ? '' : 'said'}>
                {sentenceOf(one)}
              </p>
            ))}
          </section>
        )}
        <ShowWhere />
        <PhotographList />
        <AddPhotograph />
      </Leaf>
    </>
  );
}

/** Stretches of the edge that were seen badly or not at all, each with its line as it is drawn. */
function Unsure({ shown }: { readonly shown: Seen['shown'] }) {
  const text = words().see;
  if (shown.unsure.length === 0) return null;
  const named = new Map(shown.unsure.map((one) => [`${one.side} ${one.section} ${one.state}`, one]));
  return (
    <section>
      <h2 class="group">{text.unsure}</h2>
      <ul class="rows">
        {[...named].map(([key, { side, section, state }]) => (
          <li key={key} class="row">
            <svg class="margin line-sample" viewBox="0 0 34 20" aria-hidden="true">
              <path class={`sample ${state}`} d="M2 10H32" />
            </svg>
            <p class="row-name">
              <b>{`${text.sides[side]}, ${text.sections[section] ?? section}`}</b>
              <span class="origin">{text.unsureStates[state]}</span>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Several bodies lie in the picture: one is chosen. */
function WhichBody({ bodies }: { readonly bodies: Seen['bodies'] }) {
  const text = words().see;
  return (
    <section class="plain which-body">
      <h2 class="group">{text.bodies}</h2>
      <p>{text.bodiesWhy}</p>
      <div class="begin">
        {bodies.map(({ number, face, isThis }) => (
          <button
            key={number}
            type="button"
            class="pale"
            aria-pressed={isThis}
            disabled={lookedAt.value !== null}
            onClick={() => say(text.says.body(number), { body: number })}
          >
            {text.bodyName(number, face)}
          </button>
        ))}
      </div>
    </section>
  );
}
