/** A pale line on a dark casing: no colour of the paper can be trusted on a photograph. */
export function Cased({
  d,
  kind,
}: {
  readonly d: string;
  readonly kind: 'found' | 'meant' | 'doubtful' | 'bridged' | 'put-back';
}) {
  return (
    <>
      <path class="casing" d={d} vector-effect="non-scaling-stroke" />
      <path class={`cased-line ${kind}`} d={d} vector-effect="non-scaling-stroke" />
    </>
  );
}
