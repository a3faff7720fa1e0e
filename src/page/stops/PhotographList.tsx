import { askForFiles } from '../keeping/files.ts';
import {
  type HeldPhotograph,
  holdPhotographs,
  lookAtShot,
  photographs,
  putPhotographAway,
  shot,
  table,
} from '../keeping/tracing.ts';
import { print, words } from '../words/words.ts';

/** The photographs in hand and what is to be seen of the sheet in each. */
export function PhotographList() {
  const text = words().see;
  const held = photographs.value;
  return (
    <section>
      <h2 class="group">{text.photographs}</h2>
      <ul class="rows">
        {held.map((one, place) => (
          <li key={one.address} class={held.length > 1 && place === shot.value ? 'row here' : 'row'}>
            <div class="photograph-row">
              {held.length > 1 ? (
                <button
                  type="button"
                  class="row-name"
                  aria-pressed={place === shot.value}
                  onClick={() => lookAtShot(place)}
                >
                  <b>{one.name}</b>
                  <span class="origin" role="status">
                    {sheetSays(one)}
                  </span>
                </button>
              ) : (
                <p class="row-name">
                  <b>{one.name}</b>
                  <span class="origin" role="status">
                    {sheetSays(one)}
                  </span>
                </p>
              )}
              {held.length > 1 && (
                <button
                  type="button"
                  class="linked small"
                  aria-label={text.putAway(one.name)}
                  onClick={() => putPhotographAway(one.address)}
                >
                  {text.another}
                </button>
              )}
            </div>
          </li>
        ))}
        {table.value && (
          <li class="row">
            <p class="row-name">
              <b>{table.value.name}</b>
              <span class="origin">{text.tableSays}</span>
            </p>
          </li>
        )}
      </ul>
    </section>
  );
}

/** A place for another photograph of the same side. */
export function AddPhotograph() {
  const text = words().see;
  return (
    <div class="begin">
      <button
        type="button"
        class="pale"
        onClick={() => askForFiles({ accept: 'image/*', multiple: true }, holdPhotographs)}
      >
        {text.add}
      </button>
      <p class="how-to">{text.addWhy}</p>
    </div>
  );
}

function sheetSays({ sheet, trouble }: HeldPhotograph): string {
  const text = words().see;
  if (trouble.length > 0) return '';
  if (sheet === undefined) return text.sheetLooking;
  if (sheet === null) return text.noSheet;
  const found = text.sheetFound(print(sheet.found, 0), print(sheet.of, 0));
  return sheet.cards === 0 ? found : `${found}, ${text.cardsFound(sheet.cards)}`;
}
