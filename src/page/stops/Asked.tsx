import { said, say } from '../keeping/saying.ts';

/** One of a few, all in sight. */
export function Choice<Name extends string>({
  legend,
  names,
  chosen,
  word,
  choose,
  isUpright,
}: {
  readonly legend: string;
  readonly names: readonly Name[];
  readonly chosen: Name;
  readonly word: (name: Name) => string;
  readonly choose: (name: Name) => void;
  /** One below the other: words that are long. */
  readonly isUpright?: boolean;
}) {
  return (
    <fieldset class={isUpright ? 'upright' : undefined}>
      <legend class="origin">{legend}</legend>
      {names.map((name) => (
        <label key={name} class="choice">
          <input type="radio" name={legend} checked={chosen === name} onChange={() => choose(name)} />
          {word(name)}
        </label>
      ))}
    </fieldset>
  );
}

type Typed = 'sheetBar' | 'edgeHeight' | 'resolution' | 'barLength' | 'bodyLength' | 'lowerBout';

/** A length to be typed, with what it is and how it is measured in place. */
export function Typed({
  name,
  label,
  how,
  example,
  says,
}: {
  readonly name: Typed;
  readonly label: string;
  readonly how?: string;
  readonly example: string;
  readonly says: (text: string) => string;
}) {
  return (
    <div class="asked-length">
      <label class="field">
        {label}
        <input
          id={`said-${name}`}
          value={said.value[name]}
          placeholder={example}
          aria-describedby={how === undefined ? undefined : `said-${name}-how`}
          onInput={(event) =>
            say(says(event.currentTarget.value), { [name]: event.currentTarget.value }, name)
          }
        />
      </label>
      {how !== undefined && (
        <p id={`said-${name}-how`} class="how-to">
          {how}
        </p>
      )}
    </div>
  );
}
