import type { ComponentChildren } from 'preact';

/** An answer at the foot of the notebook: it names its result. */
export interface Answer {
  readonly says: string;
  readonly give: () => void;
  readonly isOff?: boolean;
}

/** A leaf of the notebook: the question of the stop, what belongs to it, and at most two answers, the dark one first. */
export function Leaf({
  question,
  lead,
  answers,
  children,
}: {
  readonly question: string;
  readonly lead: string;
  readonly answers: readonly Answer[];
  readonly children?: ComponentChildren;
}) {
  return (
    <aside class="leaf" aria-labelledby="question">
      <div class="leaf-body">
        <h1 id="question">{question}</h1>
        <p class="lead">{lead}</p>
        {children}
      </div>
      <footer class="answers">
        {answers.map(({ says, give, isOff }, place) => (
          <button
            key={says}
            type="button"
            class={place === 0 ? 'dark' : 'pale'}
            disabled={isOff === true}
            onClick={give}
          >
            {says}
          </button>
        ))}
      </footer>
    </aside>
  );
}
