import type { Design } from '../../core/index.ts';
import { slowBench } from '../bench/bench.ts';
import { download, fileNameOf } from './files.ts';

interface SavePicker {
  showSaveFilePicker?: (wish: {
    suggestedName: string;
    types: { description: string; accept: Record<string, string[]> }[];
  }) => Promise<{
    readonly name: string;
    createWritable: () => Promise<{ write: (text: string) => Promise<void>; close: () => Promise<void> }>;
  }>;
}

/** Puts the design in a file: where the browser lets one choose, there; else among the downloads. Null where the maker thought better of it. */
export async function saveDesign(design: Design): Promise<string | null> {
  const text = await slowBench().text(design);
  const suggestedName = `${fileNameOf(design.name)}.garland.json`;
  const { showSaveFilePicker } = globalThis as SavePicker;
  if (showSaveFilePicker === undefined) {
    download(suggestedName, new TextEncoder().encode(text), 'application/json');
    return suggestedName;
  }
  try {
    const file = await showSaveFilePicker({
      suggestedName,
      types: [{ description: 'Garland', accept: { 'application/json': ['.json'] } }],
    });
    const writer = await file.createWritable();
    await writer.write(text);
    await writer.close();
    return file.name;
  } catch (trouble) {
    if (trouble instanceof DOMException && trouble.name === 'AbortError') return null;
    download(suggestedName, new TextEncoder().encode(text), 'application/json');
    return suggestedName;
  }
}
