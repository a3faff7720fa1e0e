import { useEffect, useState } from 'preact/hooks';
import { faultSentence, parseLength } from '../../core/index.ts';
import { BodyDrawing } from '../drawing/BodyDrawing.tsx';
import { bringFiles, draftFrom, trouble } from '../keeping/bring.ts';
import { dropSitting, keptSittings, type Sitting } from '../keeping/session.ts';
import { Leaf } from '../notebook/Leaf.tsx';
import { bringIn, design, stop } from '../store.ts';
import { print, words } from '../words/words.ts';
import { HowToShoot } from './HowToShoot.tsx';

/** What the maker holds comes in here. */
export function PhotographStop() {
  const said = words();
  const chooseFile = () => {
    const field = document.createElement('input');
    field.type = 'file';
    field.multiple = true;
    field.accept = '.json,image/*';
    field.onchange = () => void bringFiles([...(field.files ?? [])]);
    field.click();
  };
  const named = design.value;
  return (
    <>
      <main class="drawing">{named === null ? <HowToShoot /> : <BodyDrawing />}</main>
      <Leaf
        question={said.questions.photograph}
        lead={named ? said.bring.here(named.name) : said.leads.photograph}
        answers={
          named
            ? [
                {
                  says: said.onTo(said.stops.outline),
                  give: () => {
                    stop.value = 'outline';
                  },
                },
                { says: said.bring.another, give: chooseFile },
              ]
            : [{ says: said.bring.choose, give: chooseFile }]
        }
      >
        {trouble.value.length > 0 && (
          <div class="trouble" role="alert">
            {trouble.value.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </div>
        )}
        <UsualSize />
        <Kept />
      </Leaf>
    </>
  );
}

const FAMILIES = ['violin', 'viola', 'cello'] as const;
const USUAL_MM = { violin: 355, viola: 408, cello: 755 } as const;

function UsualSize() {
  const said = words();
  const [family, setFamily] = useState<(typeof FAMILIES)[number]>('violin');
  const [length, setLength] = useState(print(USUAL_MM.violin));
  const read = parseLength(length);
  const draw = () => {
    if (!read.ok) return;
    const name = `${said.families[family]} ${print(read.value.mm, 0)}`;
    const values = { bodyLength: read.value.mm };
    void draftFrom([{ name, json: { format: 'garland-measurements', version: 1, family, name, values } }]);
  };
  return (
    <section>
      <h2 class="group">{said.groups.begin}</h2>
      <form
        class="begin"
        onSubmit={(event) => {
          event.preventDefault();
          draw();
        }}
      >
        <fieldset>
          <legend class="unseen">{said.bring.family}</legend>
          {FAMILIES.map((name) => (
            <label key={name} class="choice">
              <input
                type="radio"
                name="family"
                checked={family === name}
                onChange={() => {
                  setFamily(name);
                  setLength(print(USUAL_MM[name]));
                }}
              />
              {said.families[name]}
            </label>
          ))}
        </fieldset>
        <label class="field">
          {said.bring.length}
          <input
            value={length}
            inputMode="decimal"
            aria-invalid={!read.ok}
            onInput={(event) => setLength(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="pale" disabled={!read.ok}>
          {said.bring.draft}
        </button>
        {!read.ok && <p class="said">{read.faults.map(faultSentence).join(' ')}</p>}
      </form>
    </section>
  );
}

/** Sittings that the browser kept, to go on with. */
function Kept() {
  const said = words();
  const [sittings, setSittings] = useState<readonly Sitting[]>([]);
  const look = () => keptSittings().then(setSittings, () => setSittings([]));
  useEffect(() => {
    void look();
  }, [design.value === null]);
  if (sittings.length === 0) return null;
  return (
    <section>
      <h2 class="group">{said.groups.kept}</h2>
      <ul class="rows">
        {sittings.map((sitting) => (
          <li key={sitting.id} class="row kept-row">
            <button
              type="button"
              class="row-name"
              onClick={() => {
                void bringIn(sitting.design, sitting).then(() => {
                  stop.value = 'outline';
                });
              }}
            >
              <b>{said.bring.goOn(sitting.design.name)}</b>
              <span class="origin">{said.ago(Math.floor((Date.now() - sitting.touchedAt) / 60_000))}</span>
            </button>
            <button
              type="button"
              class="linked small"
              onClick={() => void dropSitting(sitting.id).then(look)}
            >
              {said.bring.forget}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
