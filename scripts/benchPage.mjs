// How quickly the page answers a hand, in Chromium from disk: input to paint while dragging and on release, at full speed and
// with the page's processor slowed four times; first view; memory with a photograph of 12 megapixels. Prints one table.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import sharp from 'sharp';
import { buildPage } from './buildPage.mjs';
import { root } from './prepare.mjs';

const MOVES = { 1: 120, 4: 50 };
const RELEASES = 12;
/** Moves whose processor time is taken from a trace, after those that are timed. */
const TRACED = 60;
/** px that a hand goes to and fro: as far as what it pulls at can be drawn. */
const REACH_PX = { outline: 12, form: 12, arch: 3 };
/** Full speed and slowed: what may take how long, ms. */
const TARGETS = { 1: { drag: 16, release: 100 }, 4: { drag: 100, release: 400 } };
const FIRST_VIEW_MS = 2000;
const MEMORY_MB = 300;
/** What comes by itself later: checks, and the fine light that waits for a rest of its own. */
const LATER = ['check', 'light'];
const PHOTOGRAPH_PX = { width: 4000, height: 3000 };

const address = pathToFileURL(await buildPage()).href;
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
/** The parts to run: named as arguments, or all of them. */
const PARTS = {
  first: firstView,
  drags: async () => {
    for (const slowed of [1, 4]) {
      await drags(slowed, 'outline', 'lower bout', [1, 0]);
      await drags(slowed, 'form', 'waist', [1, 0]);
      await drags(slowed, 'arch', 'fullness of the cross arches, waist', [0, -1]);
    }
  },
  edits: async () => {
    for (const slowed of [1, 4]) await edits(slowed);
  },
  memory,
};
const asked = process.argv.slice(2);
for (const [name, run] of Object.entries(PARTS)) if (asked.length === 0 || asked.includes(name)) await run();
await browser.close();

/** Notes in the page every question to a worker with its answer, and every change of what is drawn with the frame that shows it. */
function watch() {
  const asked = [];
  const painted = { moves: [], hand: [], lines: [], others: [], all: [] };
  const Plain = globalThis.Worker;
  globalThis.Worker = class extends Plain {
    constructor(...words) {
      super(...words);
      this.addEventListener('message', ({ data }) => {
        const question = asked.find(({ id }) => id === data?.id);
        if (question) question.answeredAt = performance.now();
      });
    }
    postMessage(message, ...rest) {
      if (message?.path) asked.push({ id: message.id, what: message.path.join('.'), at: performance.now() });
      super.postMessage(message, ...rest);
    }
  };
  const afterPaint = (tell) =>
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => tell(performance.now());
      port2.postMessage(0);
    });
  const begin = () => {
    new MutationObserver((changes) => {
      const isIn = (words) => changes.some(({ target }) => (target.parentElement ?? target).closest?.(words));
      const isHand = isIn('.dimension') || isIn('.value');
      const isDrawn = (words) =>
        changes.some(({ target, attributeName }) => attributeName === 'd' && target.matches(words));
      const isLines = isDrawn('.line, .gauge-edge');
      const isOthers = isDrawn('.line.purfling, .side, .contour');
      afterPaint((at) => {
        if (isHand) painted.hand.push(at);
        if (isLines) painted.lines.push(at);
        if (isOthers) painted.others.push(at);
        painted.all.push(at);
      });
    }).observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
    for (const kind of ['pointermove', 'pointerup', 'keydown'])
      addEventListener(
        kind,
        (event) => painted.moves.push({ kind, at: event.timeStamp, from: performance.now() }),
        true,
      );
    const put = CanvasRenderingContext2D.prototype.putImageData;
    CanvasRenderingContext2D.prototype.putImageData = function (...words) {
      afterPaint((at) => painted.all.push(at));
      return put.apply(this, words);
    };
  };
  if (document.body) begin();
  else addEventListener('DOMContentLoaded', begin);
  globalThis.watched = { asked, painted };
}

async function opened() {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-GB' });
  const page = await context.newPage();
  await page.addInitScript(watch);
  await page.goto(address);
  return { context, page };
}

async function drawn(stop) {
  const { context, page } = await opened();
  await page.getByRole('button', { name: 'Draw it' }).click();
  await page.locator('.line.edge').waitFor();
  await page.locator('.stop button', { hasText: stop }).click();
  await page.locator('.grip, .gauge').first().waitFor();
  await page.waitForTimeout(2500);
  return { context, page };
}

async function drags(slowed, stop, handle, [alongX, alongY]) {
  const { context, page } = await drawn(stop);
  const session = await context.newCDPSession(page);
  const box = await page.getByRole('slider', { name: handle }).boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const mouse = (type, dx, dy) =>
    session.send('Input.dispatchMouseEvent', {
      type,
      x: x + dx,
      y: y + dy,
      button: 'left',
      buttons: 1,
      clickCount: 1,
    });
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const offset = (step) => REACH_PX[stop] * Math.sin(step / 7);
  await mouse('mousePressed', 0, 0);
  // The first moves make ready what later ones find ready.
  for (let step = 1; step <= 20; step++) {
    await mouse('mouseMoved', offset(step) * alongX, offset(step) * alongY);
    await page.waitForTimeout(20);
  }
  await page.waitForTimeout(300);
  await page.evaluate(() => {
    for (const list of Object.values(globalThis.watched.painted)) list.length = 0;
    globalThis.watched.asked.length = 0;
  });
  // Moves come at no fixed place of a frame, and each after the answer to the one before.
  for (let step = 21; step <= 20 + MOVES[slowed]; step++) {
    await mouse('mouseMoved', offset(step) * alongX, offset(step) * alongY);
    await page.waitForTimeout(40 + ((step * 7) % 17) + 40 * (slowed - 1));
  }
  const { painted, asked } = await page.evaluate(() => globalThis.watched);
  const moves = painted.moves.filter(({ kind }) => kind === 'pointermove');
  const upTo = (list, from) => (move, index) => {
    const next = moves[index + 1]?.from ?? Number.POSITIVE_INFINITY;
    const at = list.find((time) => time > move.from && time < next);
    return at === undefined ? [] : [at - move[from]];
  };
  const times = (list, from) => moves.flatMap(upTo(list, from));
  say(`${stop}, ${handle}, slowed ${slowed} x`, [
    ['the number under the hand, from the event', times(painted.hand, 'from'), TARGETS[slowed].drag],
    ['the lines under it, from the event', times(painted.lines, 'from'), TARGETS[slowed].drag],
    ['the lines under it, with the wait for the frame', times(painted.lines, 'at')],
    ['other lines, from the event', times(painted.others, 'from')],
    ['their worker', asked.filter(({ what }) => /body|roughPlate/.test(what)).flatMap(took)],
  ]);
  const worked = await framesOfMoves(async () => {
    for (let step = 0; step < TRACED; step++) {
      await mouse('mouseMoved', offset(step) * alongX, offset(step) * alongY);
      await page.waitForTimeout(60 * slowed);
    }
  });
  say(`${stop}, ${handle}, slowed ${slowed} x, processor time of the page's own thread`, [
    ['frame in which the hand moves, all of it', worked, TARGETS[slowed].drag],
  ]);
  await mouse('mouseReleased', 0, 0);
  await atRest(page);
  await letsGo(page, session, { slowed, stop, handle, along: [alongX, alongY], restMs: 150 });
  await letsGo(page, session, { slowed, stop, handle, along: [alongX, alongY], restMs: 0 });
  await context.close();
}

/** ms of processor time that each frame with a move in it took of the page's thread, while something is done. */
async function framesOfMoves(act) {
  const events = [];
  const session = await browser.newBrowserCDPSession();
  session.on('Tracing.dataCollected', ({ value }) => events.push(...value));
  const isComplete = new Promise((tell) => session.once('Tracing.tracingComplete', tell));
  const includedCategories = ['devtools.timeline', 'toplevel'];
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories, excludedCategories: ['*'] },
  });
  await act();
  await session.send('Tracing.end');
  await isComplete;
  await session.detach();
  const moves = events.filter(
    ({ name, args }) => name === 'EventDispatch' && args?.data?.type === 'pointermove',
  );
  const isIn = (task) => (move) =>
    move.pid === task.pid && move.tid === task.tid && move.ts >= task.ts && move.ts < task.ts + task.dur;
  return events
    .filter(({ name, ph }) => ph === 'X' && /RunTask$/.test(name))
    .filter((task) => moves.some(isIn(task)))
    .map(({ tdur }) => tdur / 1000);
}

/** How long a hand waits for everything when it lets go, having rested or still moving. */
async function letsGo(page, session, { slowed, stop, handle, along: [alongX, alongY], restMs }) {
  const far = REACH_PX[stop] / 6;
  const released = [];
  const all = [];
  const checked = [];
  for (let step = 1; step <= RELEASES; step++) {
    const at = await page.getByRole('slider', { name: handle }).boundingBox();
    const press = (type, d) =>
      session.send('Input.dispatchMouseEvent', {
        type,
        x: at.x + at.width / 2 + d * alongX,
        y: at.y + at.height / 2 + d * alongY,
        button: 'left',
        buttons: 1,
        clickCount: 1,
      });
    await press('mousePressed', 0);
    const way = step % 2 === 0 ? far : -far;
    for (let move = 1; move <= 4; move++) {
      await press('mouseMoved', move * way);
      await page.waitForTimeout(30);
    }
    await page.waitForTimeout(restMs);
    await page.evaluate(() => {
      for (const list of Object.values(globalThis.watched.painted)) list.length = 0;
      globalThis.watched.asked.length = 0;
    });
    if (restMs === 0) await press('mouseMoved', 5 * way);
    await press('mouseReleased', (restMs === 0 ? 6 : 4) * way);
    await atRest(page);
    const now = await page.evaluate(() => globalThis.watched);
    const up = now.painted.moves.find(({ kind }) => kind === 'pointerup');
    if (!up) continue;
    const drawn = paintedAfter(now, ({ what }) => !LATER.includes(what) && what !== 'allNumbers');
    const every = paintedAfter(now, ({ what }) => !LATER.includes(what));
    released.push((drawn ?? firstAfter(now, up)) - up.from);
    all.push((every ?? firstAfter(now, up)) - up.from);
    checked.push(lastAnswer(now.asked.filter(({ what }) => what === 'check')) - up.from);
  }
  say(`${stop}, let go ${restMs > 0 ? `after ${restMs} ms of rest` : 'while moving'}, slowed ${slowed} x`, [
    ['everything drawn, with its numbers', released, TARGETS[slowed].release],
    ['every number, weights and fits too', all],
    ['checked', checked.filter((time) => !Number.isNaN(time))],
  ]);
}

function lastAnswer(asked) {
  return Math.max(...asked.map(({ answeredAt }) => answeredAt ?? Number.NaN));
}

/** The frame that shows the last of the answers; none where one was not answered, or nothing was drawn after it. */
function paintedAfter({ asked, painted }, isMeant) {
  const last = lastAnswer(asked.filter(isMeant));
  return painted.all.find((time) => time >= last);
}

/** The frame that shows that the hand let go: all there is to wait for where everything was known before. */
function firstAfter({ painted }, { from }) {
  return painted.all.find((time) => time > from) ?? Number.NaN;
}

/** Until every question is answered and nothing was painted for a while. */
async function atRest(page) {
  await page.waitForTimeout(150);
  await page
    .waitForFunction(
      () => {
        const { asked, painted } = globalThis.watched;
        const isAnswered = asked.every(({ answeredAt }) => answeredAt !== undefined);
        return isAnswered && performance.now() - (painted.all.at(-1) ?? 0) > 300;
      },
      undefined,
      { polling: 50, timeout: 8000 },
    )
    .catch(() => undefined);
}

/** A number nudged in the notebook. */
async function edits(slowed) {
  const { context, page } = await drawn('outline');
  const session = await context.newCDPSession(page);
  await page.locator('.row-name', { hasText: 'lower bout' }).click();
  const field = page.getByLabel('lower bout, a new number');
  await field.focus();
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const shown = [];
  const settled = [];
  const every = [];
  for (let step = 0; step < RELEASES; step++) {
    await atRest(page);
    await page.evaluate(() => {
      for (const list of Object.values(globalThis.watched.painted)) list.length = 0;
      globalThis.watched.asked.length = 0;
    });
    await page.keyboard.press(step % 2 === 0 ? 'ArrowUp' : 'ArrowDown');
    await atRest(page);
    const now = await page.evaluate(() => globalThis.watched);
    const { painted } = now;
    const down = painted.moves.find(({ kind }) => kind === 'keydown');
    const hand = painted.hand.find((time) => time > down.from);
    const drawn = paintedAfter(now, ({ what }) => !LATER.includes(what) && what !== 'allNumbers');
    const all = paintedAfter(now, ({ what }) => !LATER.includes(what));
    if (hand !== undefined) shown.push(hand - down.from);
    if (drawn !== undefined) settled.push(drawn - down.from);
    if (all !== undefined) every.push(all - down.from);
  }
  say(`a number nudged, slowed ${slowed} x`, [
    ['shown', shown, TARGETS[slowed].drag],
    ['everything drawn, with its numbers', settled, TARGETS[slowed].release],
    ['every number, weights and fits too', every],
  ]);
  await context.close();
}

async function firstView() {
  const times = [];
  for (let turn = 0; turn < 7; turn++) {
    const { context, page } = await opened();
    await page.locator('.leaf h1').waitFor();
    times.push(
      await page.evaluate(
        () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? performance.now(),
      ),
    );
    await context.close();
  }
  say('first view from disk', [['painted', times, FIRST_VIEW_MS]]);
}

/** What the page's process holds for itself alone. */
async function memory() {
  const folder = mkdtempSync(join(tmpdir(), 'garland-bench-'));
  const photograph = join(folder, 'fiddle.jpg');
  await sharp(join(root, 'demo', 'photographs', 'fiddle-top.jpg'))
    .resize({ ...PHOTOGRAPH_PX, fit: 'fill' })
    .jpeg({ quality: 92 })
    .toFile(photograph);
  const { context, page } = await opened();
  const system = await (await browser.newBrowserCDPSession()).send('SystemInfo.getProcessInfo');
  const pids = system.processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
  const held = () => Math.max(...pids.map(ownMb));
  const empty = held();
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose a file' }).click();
  // By its path, as a hand chooses it: bytes that a test hands over would lie in the page as a text.
  await (await chooser).setFiles(photograph);
  await page.getByLabel('edge above the sheet').fill('36.5');
  let most = 0;
  const looking = setInterval(() => {
    most = Math.max(most, held());
  }, 50);
  await page.getByRole('button', { name: 'Find the edge' }).click();
  await page.locator('.wear').first().waitFor({ timeout: 180_000 });
  clearInterval(looking);
  await page.waitForTimeout(3000);
  const after = held();
  const atMark = await marked(page, held);
  console.log(
    `memory of the page's process, MB: empty ${empty.toFixed(0)}, at most while the edge is looked for ${most.toFixed(0)}, with what was found ${after.toFixed(0)}, at most at a mark ${atMark.toFixed(0)} (target ${MEMORY_MB})`,
  );
  await context.close();
  rmSync(folder, { recursive: true });
}

/** The most that is held while the edge is looked for again after a mark. */
async function marked(page, held) {
  let most = held();
  const looking = setInterval(() => {
    most = Math.max(most, held());
  }, 50);
  await page.getByLabel('the edge runs here').check();
  const layer = await page.locator('.hand-layer').boundingBox();
  await page.mouse.click(layer.x + layer.width / 2 + 110, layer.y + layer.height / 2 - 60);
  await page.locator('.looking').waitFor();
  await page.locator('.looking').waitFor({ state: 'detached', timeout: 180_000 });
  clearInterval(looking);
  return most;
}

function ownMb(pid) {
  try {
    const text = readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8');
    const kb = [...text.matchAll(/^Private_(?:Clean|Dirty):\s+(\d+) kB/gm)].map(([, size]) => Number(size));
    return kb.reduce((sum, size) => sum + size, 0) / 1024;
  } catch {
    return 0;
  }
}

function took({ at, answeredAt }) {
  return answeredAt === undefined ? [] : [answeredAt - at];
}

function say(title, rows) {
  console.log(title);
  for (const [what, times, target] of rows) {
    const sorted = times.toSorted((a, b) => a - b);
    const share = (part) =>
      sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))]?.toFixed(1) ?? '-';
    console.log(
      `  ${what.padEnd(44)} median ${share(0.5).padStart(7)}  p95 ${share(0.95).padStart(7)}  p99 ${share(0.99).padStart(7)} ms  n ${sorted.length}${target ? `  (target ${target})` : ''}`,
    );
  }
}
