import { faultSentence } from '../../core/index.ts';
import type { Seen } from '../bench/benchWork.ts';
import { PhotographDrawing, wearName } from '../drawing/PhotographDrawing.tsx';
import {
  type HeldPhotograph,
  look,
  lookedAt,
  photograph,
  putPhotographAway,
  ruleStretch,
  said,
  seeingTrouble,
  seen,
  settleOutline,
} from '../keeping/tracing.ts';
import { Leaf } from '../notebook/Leaf.tsx';
import { OriginMark } from '../notebook/OriginMark.tsx';
import { touched } from '../store.ts';
import { print, words } from '../words/words.ts';

/** A photograph in hand: what is known about it is asked; then what was found in it. */
export function SeeingStop() {
  const held = photograph.value;
  if (held === null) return null;
  return seen.value ? <Found seen={seen.value} /> : <Asking held={held} />;
}

const FAMILIES = ['violin', 'viola', 'cello'] as const;
const FACES = ['top', 'back'] as const;

function Asking({ held }: { readonly held: HeldPhotograph }) {
  const text = words().see;
  const isLooking = lookedAt.value !== null;
  return (
    <>
      <main class="drawing photograph-asked">
        <img src={held.address} alt={held.name} />
        {isLooking && (
          <p class="looking" role="status">
            {text.working} {text.stages(print(100 * (lookedAt.value ?? 0), 0))}
          </p>
        )}
      </main>
      <Leaf
        question={text.ask}
        lead={text.askLead}
        answers={[
          { says: isLooking ? text.working : text.find, isOff: isLooking, give: () => void look() },
          { says: text.another, isOff: isLooking, give: putPhotographAway },
        ]}
      >
        <Trouble />
        <div class="begin">
          <Choice
            legend={text.family}
            names={FAMILIES}
            chosen={said.value.family}
            word={(name) => words().families[name]}
            choose={(family) => {
              said.value = { ...said.value, family };
            }}
          />
          <Choice
            legend={text.face}
            names={FACES}
            chosen={said.value.face}
            word={(name) => words().plates[name]}
            choose={(face) => {
              said.value = { ...said.value, face };
            }}
          />
          <Said name="sheetBar" label={text.sheetBar} example="150" />
          <Said name="edgeHeight" label={text.edgeHeight} example="36.5" />
          <Said name="bodyLength" label={text.calliper} example="356" />
          <Said name="lowerBout" label={text.calliperWidth} example="206" />
        </div>
      </Leaf>
    </>
  );
}

function Choice<Name extends string>({
  legend,
  names,
  chosen,
  word,
  choose,
}: {
  readonly legend: string;
  readonly names: readonly Name[];
  readonly chosen: Name;
  readonly word: (name: Name) => string;
  readonly choose: (name: Name) => void;
}) {
  return (
    <fieldset>
      <legend class="origin">{legend}</legend>
      {names.map((name) => (
        <label key={name} class="choice">
          <input type="radio" name={legend} checked={chosen === name} onChange={() => choose(name)} />
          {word(name)}
        </label>
      ))}
    </fieldset>
  );
}

function Said({
  name,
  label,
  example,
}: {
  readonly name: 'sheetBar' | 'edgeHeight' | 'bodyLength' | 'lowerBout';
  readonly label: string;
  readonly example: string;
}) {
  return (
    <label class="field">
      {label}
      <input
        value={said.value[name]}
        inputMode="decimal"
        placeholder={example}
        onInput={(event) => {
          said.value = { ...said.value, [name]: event.currentTarget.value };
        }}
      />
    </label>
  );
}

function Trouble() {
  if (seeingTrouble.value.length === 0) return null;
  return (
    <div class="trouble" role="alert">
      {seeingTrouble.value.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}

function Found({ seen: { shown, findings } }: { readonly seen: Seen }) {
  const text = words().see;
  const isLooking = lookedAt.value !== null;
  return (
    <>
      <main class="drawing">
        <PhotographDrawing shown={shown} />
      </main>
      <Leaf
        question={text.question}
        lead={text.lead[shown.face]}
        answers={[
          {
            says: isLooking ? text.working : text.settle,
            isOff: isLooking,
            give: () => void settleOutline(),
          },
          {
            says: text.again,
            isOff: isLooking,
            give: () => {
              seen.value = null;
            },
          },
        ]}
      >
        <Trouble />
        <h2 class="group">{text.scale}</h2>
        <ul class="rows">
          <Told
            kind="measured"
            name={text.length}
            value={print(shown.lengthMm)}
            beside={`± ${print(shown.lengthPlusMinusMm)}`}
          />
          <Told kind="derived" name={text.fit} value={print(shown.fitRmsMm, 2)} beside="mm" />
          <Told kind="derived" name={text.arcs} value={print(shown.arcs, 0)} beside="" />
        </ul>
        <h2 class="group">{text.putBack}</h2>
        {shown.wear.length === 0 && <p>{text.nothingPutBack}</p>}
        <ul class="rows">
          {shown.wear.map((wear) => (
            <WearRow key={wearName(wear)} wear={wear} isLooking={isLooking} />
          ))}
          {said.value.stretches.map((stretch) => (
            <li key={stretch} class="row">
              <s>{stretch}</s>
              <p>
                <button
                  type="button"
                  class="linked"
                  disabled={isLooking}
                  onClick={() => void ruleStretch(stretch)}
                >
                  {text.putItBack}
                </button>
              </p>
            </li>
          ))}
        </ul>
        <h2 class="group">{text.movedIn}</h2>
        <ul class="rows">
          <Told kind="derived" name={text.lean} value={print(shown.leanMm)} beside="mm" />
        </ul>
        {shown.bridged.length > 0 && (
          <section class="plain">
            <h2 class="group">{text.bridged}</h2>
            {shown.bridged.map((name) => (
              <p key={name}>{name}</p>
            ))}
          </section>
        )}
        {findings.length > 0 && (
          <section class="plain">
            <h2 class="group">{words().groups.found}</h2>
            {findings.map((one) => (
              <p key={one.code + one.at} class={one.weight === 'remark' ? '' : 'said'}>
                {faultSentence(one)}
              </p>
            ))}
          </section>
        )}
      </Leaf>
    </>
  );
}

function Told({
  kind,
  name,
  value,
  beside,
}: {
  readonly kind: 'measured' | 'derived';
  readonly name: string;
  readonly value: string;
  readonly beside: string;
}) {
  return (
    <li class="row">
      <span class="margin">
        <OriginMark kind={kind} />
      </span>
      <div class="row-head">
        <span class="row-name">
          <b>{name}</b>
          <span class="origin">{words().origins[kind]}</span>
        </span>
        <span />
        <span class="value">{value}</span>
        <span class="beside">{beside}</span>
      </div>
    </li>
  );
}

function WearRow({
  wear,
  isLooking,
}: {
  readonly wear: Seen['shown']['wear'][number];
  readonly isLooking: boolean;
}) {
  const text = words().see;
  const name = wearName(wear);
  const isTouched = touched.value === name;
  const half = wear.extentMm / 2;
  const stretch = `${wear.side} ${Math.max(0, Math.floor(wear.stationMm - half))}-${Math.ceil(wear.stationMm + half)} as-found`;
  return (
    <li class={isTouched ? 'row touched' : 'row'}>
      <span class="margin">
        <OriginMark kind="derived" />
      </span>
      <div class="row-head">
        <button
          type="button"
          class="row-name"
          aria-expanded={isTouched}
          onClick={() => {
            touched.value = isTouched ? null : name;
          }}
        >
          <b>{`${text.sides[wear.side]}, ${text.sections[wear.section] ?? wear.section}`}</b>
          <span class="origin">{`${text.from[wear.from] ?? wear.from}, ${text.at(print(wear.stationMm, 0))}`}</span>
        </button>
        <span />
        <span class="value">{print(wear.depthMm)}</span>
        <span class="beside">mm</span>
      </div>
      {isTouched && (
        <p>
          <button type="button" class="linked" disabled={isLooking} onClick={() => void ruleStretch(stretch)}>
            {text.leaveWorn}
          </button>
        </p>
      )}
    </li>
  );
}
