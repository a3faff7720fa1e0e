import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Fault } from '../../core/index.ts';
import { sentenceOf } from '../words/sentences.ts';

/** Why something could not be done, in sentences; brought into sight as it comes, for the answer lies at the foot. */
export function TroubleBox({
  faults,
  children,
}: {
  readonly faults: readonly Fault[];
  readonly children?: ComponentChildren;
}) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    box.current?.scrollIntoView({ block: 'nearest' });
  }, [faults.length]);
  return (
    <div ref={box} class="trouble" role="alert">
      {children}
      {faults.map((fault) => (
        <p key={fault.code + fault.at + fault.found}>{sentenceOf(fault)}</p>
      ))}
    </div>
  );
}
