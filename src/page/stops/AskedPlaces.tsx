import { useState } from 'preact/hooks';
import {
  type AskedThickness,
  askedThicknesses,
  askThickness,
  dropThickness,
  parseLength,
} from '../../core/index.ts';
import { placeName } from '../drawing/gripOfPlace.ts';
import { NumberField } from '../notebook/NumberField.tsx';
import { OpenRow } from '../notebook/OpenRow.tsx';
import { OriginMark } from '../notebook/OriginMark.tsx';
import { design, edit, held, plate, touched } from '../store.ts';
import { remarkOf } from '../words/sentences.ts';
import { print, words } from '../words/words.ts';

/** Single places of the plate that a thickness is asked for, each to be changed and dropped; and a form to ask for another. */
export function AskedPlaces() {
  const said = words().askedPlaces;
  const on = held.value ?? design.value;
  if (on === null) return null;
  const asked = askedThicknesses(on, plate.value);
  return (
    <section>
      <h2 class="group">{said.title}</h2>
      {asked.length === 0 && (
        <div class="begin">
          <p class="how-to">{said.none}</p>
        </div>
      )}
      <ul class="rows">
        {asked.map((one, index) => (
          <PlaceRow key={index} asked={one} index={index} />
        ))}
      </ul>
      <AskForm count={asked.length} />
    </section>
  );
}

function PlaceRow({ asked: [x, y, mm], index }: { readonly asked: AskedThickness; readonly index: number }) {
  const said = words().askedPlaces;
  const name = placeName(plate.value, index);
  const isTouched = touched.value === name;
  const stands = { across: Math.abs(x), up: y, thickness: mm };
  const give = (field: (typeof FIELDS)[number], value: number) => {
    const wish: typeof stands = { ...stands, [field]: value };
    const { across, up, thickness } = wish;
    if (design.value === null || value === stands[field]) return;
    edit(
      field === 'thickness'
        ? said.says(index + 1, print(thickness, 2))
        : `${said.name(index + 1)}: ${said.where(print(across), print(up))}`,
      askThickness(design.value, plate.value, index, [x < 0 ? -across : across, up, thickness]),
    );
  };
  return (
    <OpenRow
      margin={<OriginMark kind="chosen" />}
      name={said.name(index + 1)}
      from={<span class="origin">{said.where(print(Math.abs(x)), print(y))}</span>}
      value={print(mm, 2)}
      beside=""
      isOpen={isTouched}
      turn={() => {
        touched.value = isTouched ? null : name;
      }}
      more={
        <div class="row-more">
          <div class="place-fields">
            {FIELDS.map((field) => (
              <div key={field}>
                <span class="origin" aria-hidden="true">
                  {said.fields[field]}
                </span>
                <NumberField
                  entry={{
                    name: `${said.name(index + 1)}, ${said.fields[field]}`,
                    value: stands[field],
                    unit: 'mm',
                    origin: { kind: 'chosen' },
                  }}
                  takesFocus={false}
                  give={(value) => give(field, value)}
                  leave={() => {
                    touched.value = null;
                  }}
                />
              </div>
            ))}
          </div>
          <button
            type="button"
            class="linked"
            onClick={() => {
              if (design.value === null) return;
              touched.value = null;
              edit(said.without(index + 1), dropThickness(design.value, plate.value, index));
            }}
          >
            {said.drop}
          </button>
        </div>
      }
    />
  );
}

const FIELDS = ['across', 'up', 'thickness'] as const;
const EXAMPLES = { across: 40, up: 120, thickness: 3.2 } as const;
const NOTHING = { across: '', up: '', thickness: '' };

/** Where, and how thick; both halves have it. */
function AskForm({ count }: { readonly count: number }) {
  const said = words().askedPlaces;
  const [typed, setTyped] = useState(NOTHING);
  const [faults, setFaults] = useState<readonly string[]>([]);
  const ask = () => {
    const read = FIELDS.map((name) => parseLength(typed[name]));
    const wrong = read.flatMap((one, place) =>
      one.ok
        ? []
        : one.faults.map((fault) => `${said.fields[FIELDS[place] ?? 'up']}: ${remarkOf(fault, 'within')}`),
    );
    setFaults(wrong);
    const [x, y, mm] = read.flatMap((one) => (one.ok ? [one.value.mm] : []));
    if (wrong.length > 0 || x === undefined || y === undefined || mm === undefined || design.value === null)
      return;
    edit(said.says(count + 1, print(mm, 2)), askThickness(design.value, plate.value, count, [x, y, mm]));
    setTyped(NOTHING);
  };
  return (
    <form
      class="begin asked-place"
      onSubmit={(event) => {
        event.preventDefault();
        ask();
      }}
    >
      {FIELDS.map((name) => (
        <label key={name} class="field">
          {said.fields[name]}
          <input
            value={typed[name]}
            placeholder={print(EXAMPLES[name], name === 'thickness' ? 1 : 0)}
            inputMode="decimal"
            autocomplete="off"
            onInput={(event) => setTyped({ ...typed, [name]: event.currentTarget.value })}
          />
        </label>
      ))}
      <button type="submit" class="pale">
        {said.ask}
      </button>
      {faults.map((sentence) => (
        <p key={sentence} class="said" role="alert">
          {sentence}
        </p>
      ))}
    </form>
  );
}
