import { AskedDrawing } from '../drawing/AskedDrawing.tsx';
import { said, say } from '../keeping/saying.ts';
import { look, lookedAt, photographs, putPhotographsAway } from '../keeping/tracing.ts';
import { Leaf } from '../notebook/Leaf.tsx';
import { words } from '../words/words.ts';
import { Choice } from './Asked.tsx';
import { LookingLine } from './LookingLine.tsx';
import { AddPhotograph, PhotographList } from './PhotographList.tsx';
import { Refused } from './Refused.tsx';
import { CornerEnds, KnownLengths, ScaleChoice, ScaleOfScan, ScaleOfSheet } from './ScaleAsked.tsx';
import { ShowWhere } from './ShowWhere.tsx';

const FAMILIES = ['violin', 'viola', 'cello'] as const;
const FACES = ['top', 'back'] as const;

/** What is known about the photographs is asked: no more than their scale needs. */
export function AskingStop() {
  const text = words().see;
  const { families, plates } = words();
  const isLooking = lookedAt.value !== null;
  const { scaleFrom } = said.value;
  const sheets = photographs.value.map(({ sheet }) => sheet);
  const lead = sheets.includes(undefined) ? 'looking' : sheets.includes(null) ? 'none' : 'sheet';
  // Where the sheet is found and nothing else was said, nothing else is asked.
  const isSheetAlone = scaleFrom === 'sheet' && lead !== 'none';
  return (
    <>
      <main class="drawing">
        <AskedDrawing />
        <LookingLine />
      </main>
      <Leaf
        question={text.ask}
        lead={text.askLead[lead]}
        answers={[
          { says: isLooking ? text.working : text.find, isOff: isLooking, give: () => void look() },
          { says: text.another, isOff: isLooking, give: putPhotographsAway },
        ]}
      >
        <Refused />
        <PhotographList />
        <div class="begin">
          <Choice
            legend={text.family}
            names={FAMILIES}
            chosen={said.value.family}
            word={(name) => families[name]}
            choose={(family) => say(text.says.family(families[family]), { family })}
          />
          <Choice
            legend={text.face}
            names={FACES}
            chosen={said.value.face}
            word={(name) => plates[name]}
            choose={(face) => say(text.says.face(plates[face]), { face })}
          />
          {!isSheetAlone && <ScaleChoice />}
          {scaleFrom === 'sheet' && <ScaleOfSheet />}
          {scaleFrom === 'scan' && <ScaleOfScan />}
          {scaleFrom === 'known' && <KnownLengths />}
          {scaleFrom !== 'known' && (
            <details class="more">
              <summary>{isSheetAlone ? text.otherScale : text.byCalliper}</summary>
              <p class="how-to">{text.byCalliperWhy}</p>
              <KnownLengths />
              <CornerEnds />
              {isSheetAlone && <ScaleChoice />}
            </details>
          )}
          {scaleFrom === 'known' && <CornerEnds />}
        </div>
        {scaleFrom === 'sheet' && <AddPhotograph />}
        <ShowWhere />
      </Leaf>
    </>
  );
}
