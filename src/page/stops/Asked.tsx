import { said, say } from '../keeping/saying.ts';

/** One of a few, all in sight. */
export function Choice<Name extends string>({
  legend,
  names,
  chosen,
  word,
  choose,
  isUpright,
  isNamedAbove,
}: {
  readonly legend: string;
  readonly names: readonly Name[];
  readonly chosen: Name;
  readonly word: (name: Name) => string;
  readonly choose: (name: Name) => void;
  /** One below the other: words that are long. */
  readonly isUpright?: boolean;
  /** A heading above says already what is chosen. */
  readonly isNamedAbove?: boolean;
}) {
  return (
    <fieldset class={isUpright ? 'upright' : undefined}>
      <legend class={isNamedAbove ? 'unseen' : 'origin'}>{legend}</legend>
      {names.map((name) => (
        <label key={name} class="choice">
          <input type="radio" name={legend} checked={chosen === name} onChange={() => choose(name)} />
          {word(name)}
        </label>
      ))}
    </fieldset>
  );
}

type Said =
  | 'sheetBar'
  | 'edgeHeight'
  | 'resolution'
  | 'barLength'
  | 'bodyLength'
  | 'lowerBout'
  | 'lowerCorner'
  | 'upperCorner';

/** A length that is said of photographs. */
export function Typed({
  name,
  says,
  ...asked
}: {
  readonly name: Said;
  readonly label: string;
  readonly how?: string;
  readonly example: string;
  readonly says: (text: string) => string;
}) {
  return (
    <TypedLength
      id={`said-${name}`}
      {...asked}
      value={said.value[name]}
      say={(text) => say(says(text), { [name]: text }, name)}
    />
  );
}

/** A length to be typed, with what it is and how it is measured in place. */
export function TypedLength({
  id,
  label,
  how,
  example,
  value,
  say: tell,
}: {
  readonly id: string;
  readonly label: string;
  readonly how?: string;
  readonly example: string;
  readonly value: string;
  readonly say: (text: string) => void;
}) {
  return (
    <div class="asked-length">
      <label class="field">
        {label}
        <input
          id={id}
          value={value}
          placeholder={example}
          aria-describedby={how === undefined ? undefined : `${id}-how`}
          onInput={(event) => tell(event.currentTarget.value)}
        />
      </label>
      {how !== undefined && (
        <p id={`${id}-how`} class="how-to">
          {how}
        </p>
      )}
    </div>
  );
}
