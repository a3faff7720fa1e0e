import { useLayoutEffect, useState } from 'preact/hooks';
import { FURTHER_LENGTHS, knownWords, type TypedKnown, typedKnown } from '../keeping/alsoKnown.ts';
import { takeInHand } from '../keeping/marking.ts';
import { SCALES } from '../keeping/said.ts';
import { said, say } from '../keeping/saying.ts';
import { photographs } from '../keeping/tracing.ts';
import { nameOf, print, words } from '../words/words.ts';
import { Choice, Typed, TypedLength } from './Asked.tsx';

/** What gives the scale: asked where no sheet was found, and for those who have another. */
export function ScaleChoice() {
  const text = words().see;
  return (
    <Choice
      legend={text.scaleFrom}
      names={SCALES}
      chosen={said.value.scaleFrom}
      word={(name) => text.scales[name]}
      choose={(scaleFrom) => say(text.says.scale(text.scales[scaleFrom]), { scaleFrom })}
      isUpright
    />
  );
}

/** The printed sheet: what its bars read, and the height of the edge where nothing else tells it. */
export function ScaleOfSheet() {
  const text = words().see;
  const held = photographs.value;
  const hasCard = held.some(({ sheet }) => (sheet?.cards ?? 0) > 0);
  const how = hasCard ? 'card' : held.length > 1 ? 'several' : 'one';
  return (
    <>
      <Typed
        name="sheetBar"
        label={text.sheetBar}
        how={text.sheetBarHow}
        example="150"
        says={text.says.bars}
      />
      <Typed
        name="edgeHeight"
        label={text.edgeHeight}
        how={text.edgeHeightHow[how]}
        example={print(36.5)}
        says={text.says.height}
      />
    </>
  );
}

/** A scan or a life-size print: its resolution, or a scale bar in it. */
export function ScaleOfScan() {
  const text = words().see;
  const isMarked = said.value.barEnds.length === 2;
  return (
    <>
      <Typed
        name="resolution"
        label={text.resolution}
        how={text.resolutionHow}
        example="300"
        says={text.says.resolution}
      />
      <button type="button" class="pale" onClick={() => takeInHand('bar')}>
        {text.markBar}
      </button>
      <p class="how-to" role="status">
        {isMarked ? text.barMarked : text.barHow}
      </p>
      {isMarked && (
        <Typed
          name="barLength"
          label={text.barLength}
          example="100"
          says={(length) => `${text.says.bar} ${length}`}
        />
      )}
    </>
  );
}

const BODY_TAKEN = ['straight', 'over-arch'] as const;
const WIDTH_TAKEN = ['edge', 'purfling'] as const;

/** Lengths that were measured on the instrument, and how: asked only where a length is given. */
export function KnownLengths() {
  const text = words().see;
  const { bodyLength, bodyLengthTaken, lowerBout, lowerBoutTaken } = said.value;
  return (
    <>
      {said.value.scaleFrom === 'known' && <p class="how-to">{text.knownHow}</p>}
      <Typed
        name="bodyLength"
        label={text.calliper}
        how={text.calliperHow}
        example="356"
        says={(length) => text.says.known(text.calliper, length)}
      />
      {bodyLength.trim() !== '' && (
        <Choice
          legend={text.takenHow.bodyLength}
          names={BODY_TAKEN}
          chosen={bodyLengthTaken}
          word={(way) => text.taken[way]}
          choose={(way) => say(text.taken[way], { bodyLengthTaken: way })}
        />
      )}
      <Typed
        name="lowerBout"
        label={text.calliperWidth}
        example="206"
        says={(length) => text.says.known(text.calliperWidth, length)}
      />
      {lowerBout.trim() !== '' && (
        <Choice
          legend={text.takenHow.lowerBout}
          names={WIDTH_TAKEN}
          chosen={lowerBoutTaken}
          word={(way) => text.taken[way]}
          choose={(way) => say(text.taken[way], { lowerBoutTaken: way })}
        />
      )}
      <AlsoKnown />
    </>
  );
}

/** Further lengths: those that the maker adds, and those that a file of hints brought along. */
function AlsoKnown() {
  const text = words().see;
  const [added, setAdded] = useState<string | null>(null);
  const { alsoKnown } = said.value;
  const known = alsoKnown.map(typedKnown);
  const missing = FURTHER_LENGTHS.filter((name) => known.every((one) => one.name !== name));
  const put = (place: number, one: TypedKnown) =>
    say(
      text.says.known(lengthName(one.name), one.length),
      { alsoKnown: alsoKnown.toSpliced(place, 1, knownWords(one)) },
      `known ${one.name}`,
    );
  return (
    <>
      {known.map((one, place) => (
        <KnownLength
          key={one.name}
          known={one}
          takesFocus={added === one.name}
          put={(next) => put(place, next)}
          drop={() =>
            say(text.without(text.says.known(lengthName(one.name), one.length)), {
              alsoKnown: alsoKnown.toSpliced(place, 1),
            })
          }
        />
      ))}
      {missing.length > 0 && (
        <div class="more-lengths" role="group" aria-label={text.moreLengths}>
          <span class="origin">{text.moreLengths}</span>
          {missing.map((name) => (
            <button
              key={name}
              type="button"
              class="linked"
              onClick={() => {
                setAdded(name);
                put(alsoKnown.length, { name, length: '', taken: 'edge' });
              }}
            >
              {lengthName(name)}
            </button>
          ))}
        </div>
      )}
    </>
  );
}

function KnownLength({
  known,
  takesFocus,
  put,
  drop,
}: {
  readonly known: TypedKnown;
  /** It was just asked for. */
  readonly takesFocus: boolean;
  readonly put: (known: TypedKnown) => void;
  readonly drop: () => void;
}) {
  const text = words().see;
  const { name, length, taken } = known;
  const label = lengthName(name);
  const id = `said-known-${name}`;
  // At once: later, the first key would go elsewhere.
  useLayoutEffect(() => {
    if (takesFocus) document.getElementById(id)?.focus();
  }, []);
  return (
    <div class="known-length">
      <TypedLength
        id={id}
        label={label}
        example={print(EXAMPLES[name] ?? 0, 0)}
        value={length}
        say={(next) => put({ ...known, length: next })}
      />
      <button type="button" class="linked small" aria-label={`${text.takeAwayMark}: ${label}`} onClick={drop}>
        {text.takeAwayMark}
      </button>
      {(taken === 'edge' || taken === 'purfling') && length.trim() !== '' && (
        <Choice
          legend={text.takenHow.further(label)}
          names={WIDTH_TAKEN}
          chosen={taken}
          word={(way) => text.taken[way]}
          choose={(way) => put({ ...known, taken: way })}
        />
      )}
    </div>
  );
}

/** Sizes of a violin, to show what is meant. */
const EXAMPLES: Readonly<Record<string, number>> = { upperBout: 168, waist: 112 };

function lengthName(name: string): string {
  return words().see.lengths[name] ?? nameOf(name);
}

/** How wide the corners end: they wear most, and a picture alone may not tell what they were. */
export function CornerEnds() {
  const text = words().see;
  return (
    <>
      <Typed
        name="lowerCorner"
        label={text.lowerCorner}
        how={text.cornerHow}
        example="7"
        says={(width) => text.says.known(text.lowerCorner, width)}
      />
      <Typed
        name="upperCorner"
        label={text.upperCorner}
        example="7"
        says={(width) => text.says.known(text.upperCorner, width)}
      />
    </>
  );
}
