import { useState } from 'preact/hooks';
import { parseLength } from '../../core/index.ts';
import { BodyDrawing } from '../drawing/BodyDrawing.tsx';
import { bringFiles, draftFrom, trouble } from '../keeping/bring.ts';
import { askForFiles } from '../keeping/files.ts';
import { Leaf } from '../notebook/Leaf.tsx';
import { design, stop } from '../store.ts';
import { sentenceOf } from '../words/sentences.ts';
import { print, words } from '../words/words.ts';
import { HowToShoot } from './HowToShoot.tsx';
import { KeptList } from './KeptList.tsx';
import { OwnPhotograph } from './OwnPhotograph.tsx';

/** What the maker holds comes in here. */
export function PhotographStop() {
  const said = words();
  const chooseFile = () => askForFiles({ accept: '.json,image/*', multiple: true }, bringFiles);
  const shoot = () => askForFiles({ accept: 'image/*', capture: 'environment' }, bringFiles);
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
            : [
                { says: said.bring.choose, give: chooseFile },
                ...(hasCamera() ? [{ says: said.bring.shoot, give: shoot }] : []),
              ]
        }
      >
        {trouble.value.length > 0 && (
          <div class="trouble" role="alert">
            {trouble.value.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </div>
        )}
        {named && <OwnPhotograph design={named} />}
        <UsualSize />
        <KeptList />
      </Leaf>
    </>
  );
}

/** Whether one most likely holds a tablet or a telephone: something with a camera at its back. */
function hasCamera(): boolean {
  return matchMedia('(pointer: coarse)').matches;
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
        {!read.ok && <p class="said">{read.faults.map(sentenceOf).join(' ')}</p>}
      </form>
    </section>
  );
}
