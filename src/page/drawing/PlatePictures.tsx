import { signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { makingBench } from '../bench/bench.ts';
import { other } from '../keeping/beside.ts';
import { download, fileNameOf } from '../keeping/files.ts';
import { design, plate } from '../store.ts';
import { sentenceOf, told } from '../words/sentences.ts';
import { language, words } from '../words/words.ts';

type Kind = 'contours' | 'curvature' | 'raking-light' | 'thickness' | 'section' | 'difference';

const KINDS: readonly Kind[] = [
  'contours',
  'curvature',
  'raking-light',
  'thickness',
  'section',
  'difference',
];

const kind = signal<Kind>('curvature');
const intervalMm = signal('0.5');
const line = signal('-90,80 90,80');

/** Pixels of a millimetre in a picture that is kept as pixels; ms that a hand may still be typing. */
const PX_PER_MM = 4;
const TYPING_MS = 350;

/** Pictures of a plate, as the command line draws them: to look at and to keep. */
export function PlatePictures() {
  const said = words().pictures;
  const [address, setAddress] = useState<string | null>(null);
  const [says, setSays] = useState<readonly string[]>([]);
  const [isBusy, setBusy] = useState(false);
  const wished = wordsOf();
  const key = JSON.stringify(wished);
  useEffect(() => {
    let isLeft = false;
    const wait = setTimeout(async () => {
      const file = await drawn('picture.svg');
      if (isLeft || file === null) return;
      if (!file.ok) {
        setSays(file.faults.map(sentenceOf));
        return;
      }
      setSays(file.value.says);
      setAddress(URL.createObjectURL(new Blob([file.value.bytes as BlobPart], { type: 'image/svg+xml' })));
    }, TYPING_MS);
    return () => {
      isLeft = true;
      clearTimeout(wait);
    };
  }, [key, design.value, other.value]);
  useEffect(() => () => void (address && URL.revokeObjectURL(address)), [address]);
  const keep = async (ending: 'svg' | 'pdf' | 'png') => {
    setBusy(true);
    const file = await drawn(ending === 'pdf' ? 'picture.pdf' : 'picture.svg');
    setBusy(false);
    if (file === null || !file.ok) return;
    const name = `${fileNameOf(design.value?.name ?? '')}-${plate.value}-${kind.value}.${ending}`;
    if (ending === 'png' && address) download(name, await pixelsOf(address), 'image/png');
    else download(name, file.value.bytes, ending === 'pdf' ? 'application/pdf' : 'image/svg+xml');
  };
  return (
    <section class="pictures" aria-label={said.title}>
      <div class="pictures-head">
        <label class="field">
          {said.title}
          <select
            value={kind.value}
            onChange={(event) => {
              kind.value = event.currentTarget.value as Kind;
            }}
          >
            {KINDS.filter((one) => one !== 'difference' || other.value !== null).map((one) => (
              <option key={one} value={one}>
                {said.kinds[one]}
              </option>
            ))}
          </select>
        </label>
        {kind.value === 'contours' && (
          <label class="field">
            {said.interval}
            <input
              value={intervalMm.value}
              onInput={(event) => {
                intervalMm.value = event.currentTarget.value;
              }}
            />
          </label>
        )}
        {kind.value === 'section' && (
          <label class="field">
            {said.line}
            <input
              value={line.value}
              onInput={(event) => {
                line.value = event.currentTarget.value;
              }}
            />
          </label>
        )}
      </div>
      {address && <img src={address} alt={said.kinds[kind.value]} />}
      <ul class="pictures-say" aria-live="polite">
        {says.map((sentence) => (
          <li key={sentence}>{told(sentence)}</li>
        ))}
      </ul>
      <p class="pictures-keep">
        {said.keep}
        {(['svg', 'png', 'pdf'] as const).map((ending) => (
          <button
            key={ending}
            type="button"
            class="linked"
            disabled={isBusy}
            onClick={() => void keep(ending)}
          >
            {ending.toUpperCase()}
          </button>
        ))}
      </p>
    </section>
  );
}

function wordsOf() {
  return {
    of: kind.value,
    plate: plate.value,
    state: 'finished',
    language: language.value,
    ...(kind.value === 'contours' && { interval: intervalMm.value }),
    ...(kind.value === 'section' && { line: line.value }),
  };
}

async function drawn(out: string) {
  const asked = design.value;
  const beside = kind.value === 'difference' ? other.value : null;
  return asked && makingBench().picture(asked, { ...wordsOf(), out }, beside);
}

/** A picture that lies at an address of this page, as the bytes of a PNG file. */
async function pixelsOf(address: string): Promise<Uint8Array> {
  const image = new Image();
  image.src = address;
  await image.decode();
  const canvas = document.createElement('canvas');
  const share = (PX_PER_MM * MM_PER_INCH) / CSS_PX_PER_INCH;
  canvas.width = Math.round(image.naturalWidth * share);
  canvas.height = Math.round(image.naturalHeight * share);
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((give) => canvas.toBlob(give, 'image/png'));
  return new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0));
}

const CSS_PX_PER_INCH = 96;
const MM_PER_INCH = 25.4;
