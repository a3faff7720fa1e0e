import { useComputed } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import {
  dependsOn,
  type Finding,
  overrule,
  type RegisterEntry,
  takeProposal,
  VALUES,
  type ValueName,
} from '../../core/index.ts';
import { design, edit, onTable, plate, stop, touched } from '../store.ts';
import { OUTLINE_NUMBERS, placeOfNumber } from '../way/stopNumbers.ts';
import { remarkOf, told } from '../words/sentences.ts';
import { nameOf, words } from '../words/words.ts';
import { carriedBy, type Kin, kin } from './kin.ts';
import { NumberField } from './NumberField.tsx';
import { numberText, spreadText, unitText } from './numberText.ts';
import { OpenRow } from './OpenRow.tsx';
import { OriginMark, QuestionMark } from './OriginMark.tsx';

/** One number of the notebook: its name, where it comes from, what it is; touched, it can be overruled. */
export function NumberRow({
  entry: derived,
  finding,
}: {
  readonly entry: RegisterEntry;
  readonly finding: Finding | null;
}) {
  const isTraced = design.value?.outline.kind === 'traced' && OUTLINE_NUMBERS.has(derived.name);
  const isGiven = derived.name in VALUES && !isTraced;
  // The maker's own numbers are shown as they are given, ahead of what is derived from them.
  const given = useComputed(() => onTable.value?.values[derived.name as ValueName]).value;
  const entry: RegisterEntry = given ? { name: derived.name, ...given } : derived;
  const isTouched = touched.value === entry.name;
  // A number touched in the drawing keeps the focus there; one touched here is going to be typed.
  const [isTouchedHere, setTouchedHere] = useState(false);
  useEffect(() => {
    if (!isTouched) setTouchedHere(false);
  }, [isTouched]);
  const proposal = isGiven ? design.value?.overruled?.[entry.name as ValueName] : undefined;
  const give = (value: number) => {
    if (design.value === null || value === entry.value) return;
    edit(
      `${nameOf(entry.name)} ${numberText({ value, unit: entry.unit })}`,
      overrule(design.value, entry.name as ValueName, value),
    );
  };
  const stands = kin.value.get(entry.name);
  const classes = [finding && 'questioned', stands && `kin ${stands.lies}`, stands?.isNear && 'near'].flatMap(
    (one) => (one ? [one] : []),
  );
  return (
    <OpenRow
      margin={finding ? <QuestionMark /> : <OriginMark kind={entry.origin.kind} />}
      name={nameOf(entry.name)}
      from={
        <>
          <span class="origin">{finding ? words().states.questioned : originWords(entry)}</span>
          {stands && <span class="origin kin-says">{kinWords(stands)}</span>}
        </>
      }
      aside={
        proposal &&
        design.value && (
          <button
            type="button"
            class="struck"
            aria-label={words().proposal(numberText(proposal))}
            title={words().proposal(numberText(proposal))}
            onClick={() =>
              design.value &&
              edit(
                `${nameOf(entry.name)} ${numberText(proposal)}`,
                takeProposal(design.value, entry.name as ValueName),
              )
            }
          >
            <s>{numberText(proposal)}</s>
          </button>
        )
      }
      value={numberText(entry)}
      beside={entry.plusMinus ? spreadText(entry.plusMinus) : unitText(entry.unit)}
      isOpen={isTouched}
      turn={() => {
        setTouchedHere(true);
        touched.value = isTouched ? null : entry.name;
      }}
      classes={classes}
      more={
        <div class="row-more">
          <p class="origin">{moreWords(entry)}</p>
          <KinNames lies="beneath" names={dependsOn(entry)} />
          <KinNames lies="above" names={carriedBy(entry.name)} />
          {isTraced && <p class="origin">{words().tracedNumber}</p>}
          {isGiven && (
            <NumberField
              entry={entry}
              takesFocus={isTouchedHere}
              give={give}
              leave={() => {
                touched.value = null;
              }}
            />
          )}
        </div>
      }
    >
      {finding && <p class="sentence">{remarkOf(finding)}</p>}
    </OpenRow>
  );
}

function originWords({ origin }: RegisterEntry): string {
  const said = words().origins;
  if (origin.kind === 'chosen' && origin.why?.startsWith('by us')) return said.chosenByUs;
  if (origin.kind === 'measured') return said.measured + words().fromWhere(told(origin.from));
  return said[origin.kind];
}

function moreWords({ origin }: RegisterEntry): string {
  const from =
    origin.kind === 'published'
      ? origin.source
      : origin.kind === 'common-practice' || origin.kind === 'from-memory'
        ? (origin.note ?? '')
        : origin.kind === 'chosen'
          ? (origin.why?.replace(/^by us: /, '') ?? '')
          : origin.kind === 'derived'
            ? (origin.how ?? '')
            : origin.from;
  return told(from);
}

/** How it stands to the number that the hand is on. */
function kinWords({ lies, isNear }: Kin): string {
  return words().kin[lies][isNear ? 'near' : 'far'](nameOf(touched.value ?? ''));
}

/** So many are named until one asks for all. */
const NAMED = 5;

/** What a number rests on, or what rests on it, by name: touch one, and the hand is on that one, at its own stop. */
function KinNames({ lies, names }: { readonly lies: Kin['lies']; readonly names: readonly string[] }) {
  const [isAll, setAll] = useState(false);
  const said = words().kin;
  if (names.length === 0) return lies === 'above' ? <p class="origin">{words().carries(0)}</p> : null;
  const shown = isAll ? names : names.slice(0, NAMED);
  return (
    <p class="origin kin-names">
      {lies === 'beneath' ? said.restsOn : words().carries(names.length)}{' '}
      {shown.map((name) => {
        const at = placeOfNumber(name, stop.value);
        return at === null ? (
          <span key={name}>{nameOf(name)}</span>
        ) : (
          <button
            key={name}
            type="button"
            class="linked"
            onClick={() => {
              stop.value = at.stop;
              plate.value = at.plate ?? plate.value;
              touched.value = name;
            }}
          >
            {nameOf(name)}
          </button>
        );
      })}
      {shown.length < names.length && (
        <button type="button" class="linked" onClick={() => setAll(true)}>
          {said.all(names.length - shown.length)}
        </button>
      )}
    </p>
  );
}
