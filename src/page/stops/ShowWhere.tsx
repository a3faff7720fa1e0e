import { bringFiles } from '../keeping/bring.ts';
import { askForFiles } from '../keeping/files.ts';
import { putHintsInFile } from '../keeping/hints.ts';
import { dropMark, inHand, takeInHand } from '../keeping/marking.ts';
import { MARK_KINDS } from '../keeping/said.ts';
import { said } from '../keeping/saying.ts';
import { photographs } from '../keeping/tracing.ts';
import { words } from '../words/words.ts';
import { Choice } from './Asked.tsx';

/** What the hand takes up to show something in the picture, and everything that was shown. */
export function ShowWhere() {
  const text = words().see;
  const held = inHand.value;
  const { marks } = said.value;
  const names = ['none', 'glass', ...MARK_KINDS] as const;
  const chosen = held === null || held === 'bar' ? 'none' : held;
  return (
    <section>
      <h2 class="group">{text.show}</h2>
      <div class="begin">
        <p class="how-to">{text.showWhy}</p>
        <Choice
          legend={text.show}
          names={names}
          chosen={chosen}
          word={(name) =>
            name === 'none' ? text.nothingInHand : name === 'glass' ? text.glass : text.marks[name]
          }
          choose={(name) => takeInHand(name === 'none' ? null : name)}
          isUpright
          isNamedAbove
        />
        {chosen !== 'none' && (
          <div class="how-to" role="status">
            <p>{text.marksHow[chosen]}</p>
            <p>{text.keysHow}</p>
            <button
              type="button"
              class="linked"
              onClick={() => document.querySelector<HTMLElement>('.hand-layer')?.focus()}
            >
              {text.withKeys}
            </button>
          </div>
        )}
      </div>
      <HintsFile />
      {marks.length > 0 && (
        <>
          <h2 class="group">{text.shown}</h2>
          <ul class="rows">
            {marks.map((mark) => (
              <li key={`${mark.kind} ${mark.on} ${mark.places.join(' ')}`} class="row">
                <div class="photograph-row">
                  <p class="row-name">
                    <b>{text.marks[mark.kind]}</b>
                    {photographs.value.length > 1 && <span class="origin">{text.onPhotograph(mark.on)}</span>}
                  </p>
                  <button type="button" class="linked small" onClick={() => dropMark(mark)}>
                    {text.takeAwayMark}
                  </button>
                </div>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** What was said and shown, from a file and into one: as the command line takes it. */
function HintsFile() {
  const text = words().see;
  return (
    <div class="begin">
      <div class="two-buttons">
        <button
          type="button"
          class="pale"
          onClick={() => askForFiles({ accept: '.json,application/json', multiple: true }, bringFiles)}
        >
          {text.takeHints}
        </button>
        <button type="button" class="pale" onClick={() => void putHintsInFile()}>
          {text.putHints}
        </button>
      </div>
      <p class="how-to">{text.hintsWhy}</p>
    </div>
  );
}
