/** The rules of the house, read from ARCHITECTURE.md and held against the source. */

export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

const LONGEST_FILE = 350;
const IMPURE =
  /\b(Date\.now|new Date|Math\.random|console\.|process\.|navigator\.|fetch\(|performance\.|setTimeout|globalThis)/;
/** A row of many digits is a constant of mathematics, no tolerance. */
const BARE_TOLERANCE = /(?<![\w.])\d(?:\.\d{1,8})?e-\d+/i;
/** What the language leaves to the engine to round; `x ** 2` is x·x in all of them. */
const ENGINES_OWN =
  /\bMath\.(a?(?:sin|cos|tan)h?|atan2|exp|expm1|log|log10|log1p|log2|pow|hypot|cbrt)\b|\*\* (?!2\b(?!\.))/;

export function architectureFaults(files: readonly SourceFile[], table: string): string[] {
  const rows = importTable(table);
  const shipped = files.filter((file) => !file.path.endsWith('.test.ts'));
  return [
    ...shipped.flatMap((file) => roomFaults(file, rows)),
    ...shipped.flatMap((file) => importFaults(file, rows)),
    ...shipped.flatMap((file) => innerFaults(file, innerTable(table))),
    ...cycles(shipped),
    ...shipped.flatMap(bodyFaults),
  ];
}

function importTable(text: string): Map<string, ReadonlySet<string>> {
  const rows = new Map<string, ReadonlySet<string>>();
  for (const line of text.split('\n')) {
    const match = /^\|\s*((?:core|host|cli|page|demo|bench)[\w/]*)\s*\|([^|]*)\|\s*$/.exec(line);
    if (match) rows.set(match[1] as string, new Set((match[2] as string).split(/\s+/).filter(Boolean)));
  }
  return rows;
}

/** `src/core/curve/offset.ts` is in `core/curve`, `src/core/index.ts` in `core`, `src/cli/main.ts` in `cli`. */
function roomOf(path: string): string {
  const parts = path.replace(/^src\//, '').split('/');
  return parts[0] === 'core' && parts.length > 2 ? `core/${parts[1]}` : (parts[0] as string);
}

function roomFaults(file: SourceFile, rows: ReadonlyMap<string, unknown>): string[] {
  const room = roomOf(file.path);
  return rows.has(room) ? [] : [`${file.path}: room ${room} is not in the table of ARCHITECTURE.md`];
}

/** Inner rooms and what each may import of its neighbours, by the short names of the table's last column. */
function innerTable(text: string): Map<string, ReadonlySet<string>> {
  const rows = new Map<string, ReadonlySet<string>>();
  for (const line of text.split('\n')) {
    const match = /^\|\s*(core\/\w+\/\w+)\s*\|[^|]*\|([^|]*)\|\s*$/.exec(line);
    if (match) rows.set(match[1] as string, new Set((match[2] as string).split(/\s+/).filter(Boolean)));
  }
  return rows;
}

/** `src/core/photo/edge/edgeLine.ts` is in the inner room `core/photo/edge`; a file on a room's own floor is in none. */
function innerRoomOf(path: string): string | null {
  const parts = path.replace(/^src\//, '').split('/');
  return parts[0] === 'core' && parts.length > 3 ? parts.slice(0, 3).join('/') : null;
}

function innerFaults(file: SourceFile, rows: ReadonlyMap<string, ReadonlySet<string>>): string[] {
  const inner = innerRoomOf(file.path);
  const isDivided = [...rows.keys()].some((name) => name.startsWith(`${roomOf(file.path)}/`));
  if (inner === null || !isDivided) return [];
  const allowed = rows.get(inner);
  if (!allowed) return [`${file.path}: inner room ${inner} is not in the table of ARCHITECTURE.md`];
  return importsOf(file).flatMap((target) => {
    const other = innerRoomOf(target);
    if (other === null || other === inner || roomOf(target) !== roomOf(file.path)) return [];
    return allowed.has(other.split('/')[2] as string)
      ? []
      : [`${file.path}: ${inner} may not import ${other}`];
  });
}

function importsOf(file: SourceFile): string[] {
  const found = file.text.matchAll(/(?:from|import)\s*\(?\s*'(\.[^']+)'/g);
  return [...found].map((match) => resolvePath(file.path, match[1] as string));
}

function resolvePath(from: string, to: string): string {
  const parts = from.split('/').slice(0, -1);
  for (const step of to.split('/')) {
    if (step === '..') parts.pop();
    else if (step !== '.') parts.push(step);
  }
  return parts.join('/');
}

function importFaults(file: SourceFile, rows: ReadonlyMap<string, ReadonlySet<string>>): string[] {
  const room = roomOf(file.path);
  return importsOf(file).flatMap((target) => {
    const other = roomOf(target);
    if (other === room) return [];
    if (!target.startsWith('src/') && !rows.has(other))
      return [`${file.path} imports ${target}, outside every room`];
    const faults: string[] = [];
    if (!rows.get(room)?.has(other)) faults.push(`${file.path}: ${room} may not import ${other}`);
    if (other.startsWith('core') && !target.endsWith('/index.ts'))
      faults.push(`${file.path} imports ${target} past the door of ${other}`);
    return faults;
  });
}

function cycles(files: readonly SourceFile[]): string[] {
  const graph = new Map(files.map((file) => [file.path, importsOf(file)]));
  const state = new Map<string, 'open' | 'done'>();
  const faults: string[] = [];
  const visit = (path: string, route: readonly string[]): void => {
    if (state.get(path) === 'done') return;
    if (state.get(path) === 'open') {
      faults.push(`cycle: ${[...route.slice(route.indexOf(path)), path].join(' -> ')}`);
      return;
    }
    state.set(path, 'open');
    for (const next of graph.get(path) ?? []) visit(next, [...route, path]);
    state.set(path, 'done');
  };
  for (const path of graph.keys()) visit(path, []);
  return faults;
}

function bodyFaults(file: SourceFile): string[] {
  const faults: string[] = [];
  const lines = file.text.split('\n');
  if (
    file.path.startsWith('src/') &&
    !file.path.startsWith('src/core/knowledge/') &&
    lines.length > LONGEST_FILE
  )
    faults.push(`${file.path}: ${lines.length} lines, more than ${LONGEST_FILE}`);
  if (!file.path.startsWith('src/core/')) return faults;
  lines.forEach((line, index) => {
    const code = line.replace(/^\s*(\/\*\*|\*|\/\/).*$/, '').replace(/\/\/.*$/, '');
    const impure = IMPURE.exec(code);
    const own = ENGINES_OWN.exec(code);
    if (own)
      faults.push(`${file.path}:${index + 1}: ${own[0]} is rounded by the engine; core/base has its own`);
    if (impure) faults.push(`${file.path}:${index + 1}: core calls ${impure[0]}`);
    if (!file.path.startsWith('src/core/base/tolerance') && BARE_TOLERANCE.test(code))
      faults.push(`${file.path}:${index + 1}: bare tolerance ${BARE_TOLERANCE.exec(code)?.[0]}`);
  });
  return faults;
}
