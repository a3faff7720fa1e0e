import { saveDesign } from '../keeping/saveDesign.ts';
import { canDoAgain, doAgain, takeBack, toTakeBack } from '../keeping/takingBack.ts';
import { design, isInFile, keptAt, putInFile, savedAs, stop } from '../store.ts';
import { language, print, speak, words } from '../words/words.ts';
import { stateOf } from './stateOf.ts';
import { STOPS, type Stop } from './stops.ts';

/** The way down the left edge: a strip of purfling with a pin at every stop. */
export function Way() {
  const said = words();
  const named = design.value;
  const last = toTakeBack.value;
  return (
    <nav class="way" aria-label={said.title}>
      <header>
        <p class="name">{named?.name ?? said.title}</p>
        <p class="small">
          {named
            ? `${said.families[named.family]}, ${print(named.values.bodyLength?.value ?? 0, 0)}`
            : said.tagline}
        </p>
      </header>
      <ol class="stops">
        {STOPS.map((name) => (
          <StopPin key={name} name={name} />
        ))}
      </ol>
      <div class="keeping">
        <button type="button" class="take-back" disabled={last === undefined} onClick={takeBack}>
          <svg class="mark" viewBox="0 0 20 20" aria-hidden="true">
            <path d="M7 4L3 8l4 4M3 8h9a4 4 0 0 1 0 8H9" />
          </svg>
          <span>
            {said.takeBack}
            <span class="small">{last ?? said.nothingToTakeBack}</span>
          </span>
        </button>
        {canDoAgain.value && (
          <button type="button" class="linked" onClick={doAgain}>
            {said.doAgain}
          </button>
        )}
        <div class="kept" role="status">
          <b>{isInFile.value ? said.inFile : keptAt.value === false ? said.notKept : said.onlyHere}</b>
          {isInFile.value
            ? savedAs.value && <span class="small">{savedAs.value}</span>
            : named && (
                <button
                  type="button"
                  class="linked"
                  onClick={async () => {
                    const name = await saveDesign(named);
                    if (name !== null) putInFile(name);
                  }}
                >
                  {said.putInFile}
                </button>
              )}
        </div>
        <button
          type="button"
          class="linked small"
          lang={language.value === 'en' ? 'de' : 'en'}
          onClick={() => speak(language.value === 'en' ? 'de' : 'en')}
        >
          {language.value === 'en' ? 'Deutsch' : 'English'}
        </button>
      </div>
    </nav>
  );
}

function StopPin({ name }: { readonly name: Stop }) {
  const said = words();
  const isHere = stop.value === name;
  const { shape, word } = stateOf(name);
  const isOff = design.value === null && name !== 'photograph';
  return (
    <li class={`stop ${shape}${isHere ? ' here' : ''}`}>
      <button
        type="button"
        aria-current={isHere ? 'step' : undefined}
        disabled={isOff}
        onClick={() => {
          stop.value = name;
        }}
      >
        <svg class="pin" viewBox="0 0 20 20" aria-hidden="true">
          {shape === 'questioned' ? (
            <path class="diamond" d="M10 1.5l8.500 8.500-8.500 8.500-8.500-8.500zM10 6v5M10 13.500v.5" />
          ) : (
            <circle cx="10" cy="10" r={shape === 'settled' ? 5.5 : 7} />
          )}
        </svg>
        <span class="stop-name">{said.stops[name]}</span>
        <span class="small">{word}</span>
      </button>
    </li>
  );
}
