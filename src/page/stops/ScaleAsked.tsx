import { takeInHand } from '../keeping/marking.ts';
import { SCALES } from '../keeping/said.ts';
import { said, say } from '../keeping/saying.ts';
import { photographs } from '../keeping/tracing.ts';
import { nameOf, print, words } from '../words/words.ts';
import { Choice, Typed } from './Asked.tsx';

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

/** Further lengths that a file of hints brought along. */
function AlsoKnown() {
  const text = words().see;
  const { alsoKnown } = said.value;
  return (
    <>
      {alsoKnown.map((known) => {
        const [name = '', length = ''] = known.split('=');
        const says = text.says.known(nameOf(name), length);
        return (
          <div key={known} class="photograph-row">
            <p class="row-name">{says}</p>
            <button
              type="button"
              class="linked small"
              onClick={() => say(text.without(says), { alsoKnown: alsoKnown.filter((one) => one !== known) })}
            >
              {text.takeAwayMark}
            </button>
          </div>
        );
      })}
    </>
  );
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
