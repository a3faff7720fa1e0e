/** One group of a DXF file: its code and its value. */
export type DxfGroup = readonly [code: number, value: string | number];

/**
 * Groups as the text of a file: code and value on lines of their own. A value can hold no line break, whatever
 * name it came from, so no value can begin a group; what is not plain ASCII is written as `\U+XXXX`.
 */
export function dxfText(groups: readonly DxfGroup[]): string {
  return groups.map(([code, value]) => `${String(code).padStart(3)}\r\n${safeValue(value)}\r\n`).join('');
}

/** Hands out handles in order; the same calls give the same handles. */
export function dxfHandles(first: number): () => string {
  let next = first;
  return () => (next++).toString(16).toUpperCase();
}

function safeValue(value: string | number): string {
  return String(value)
    .replace(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ')
    .replace(/[^ -~]/gu, (character) =>
      [...Array(character.length).keys()]
        .map((at) => `\\U+${character.charCodeAt(at).toString(16).toUpperCase().padStart(4, '0')}`)
        .join(''),
    );
}
