import { markerFinder, trace, traceOutcome } from '../../../src/core/index.ts';
import { decodePictureHere } from '../../../src/host/browser/index.ts';

/** What the test sends: a picture file and the request without it. */
interface Asked {
  readonly bytes: Uint8Array;
  readonly name: string;
  readonly request: Omit<Parameters<typeof trace>[0], 'photographs'>;
}

self.onmessage = async ({ data }: MessageEvent<Asked>) => {
  const picture = await decodePictureHere(data.bytes, data.name);
  if (!picture.ok) {
    self.postMessage({ faults: picture.faults });
    return;
  }
  const begun = performance.now();
  const traced = trace(
    { ...data.request, photographs: [{ name: data.name, picture: picture.value }] },
    markerFinder(),
  );
  const ms = performance.now() - begun;
  self.postMessage(traced.ok ? { text: traceOutcome(traced.value).text, ms } : { faults: traced.faults, ms });
};
