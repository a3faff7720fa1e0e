import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer, { type Browser, type BrowserContext, type ElementHandle, type Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { FIREFOX, pageFolder } from './pageFolder.ts';

/** ms that a job may take on a busy machine. */
const WAIT_MS = 90_000;
/** Tabs after which what is looked for cannot be reached by them. */
const MOST_TABS = 200;

/** What runs in the page: the focused thing by name and role. */
const FOCUSED = `(() => {
  const on = document.activeElement;
  const label = on.getAttribute('aria-label') ?? on.closest('label')?.textContent ?? on.textContent ?? '';
  return { label: label.trim(), role: on.getAttribute('role') ?? '' };
})()`;

/** A window of Firefox on the page, and hands that work in it. */
export interface FirefoxWindow {
  readonly page: Page;
  /** The button of this name, as soon as there is one that can be pressed; a field by what stands over it. */
  readonly button: (name: string) => Promise<ElementHandle>;
  readonly field: (label: string) => Promise<ElementHandle>;
  readonly press: (name: string) => Promise<void>;
  readonly tap: (name: string) => Promise<void>;
  readonly tapField: (label: string) => Promise<void>;
  /**
   * Presses Tab until the focus is on something of this name, as a maker without a mouse does, with shift to go back. Past the end
   * of the page lie the browser's own buttons, where this driver's keys go astray: what lies before is gone back to.
   */
  readonly tabTo: (
    name: string,
    how?: { readonly role?: string; readonly isBack?: boolean },
  ) => Promise<void>;
  readonly textOf: (selector: string) => Promise<string>;
  readonly tookBack: (says: string) => Promise<void>;
  /** Hands over a file when the page asks for one. */
  readonly handOver: (path: string, ask: () => Promise<void>) => Promise<void>;
  /** The newest file of this kind in the folder for downloads, once it is whole. */
  readonly downloaded: (ending: string) => Promise<Uint8Array>;
}

/** The page in Firefox for the tests of one file. */
export interface InFirefox {
  /** A window with storage of its own; nothing of an earlier one is left in the folder for downloads. */
  readonly open: (given?: {
    readonly width?: number;
    readonly height?: number;
    readonly isOffline?: boolean;
    readonly address?: string;
  }) => Promise<FirefoxWindow>;
  readonly folder: () => string;
  /** Addresses that the page has asked for since it was opened, and what went wrong in it: nothing may, in any test. */
  readonly asked: string[];
  readonly troubles: string[];
}

/**
 * Sees to it that the page is built and the browser started before the tests of a file, and gone after them. What this driver
 * cannot: make Firefox a phone. Fingers are fingers (touch and pointer events, as on one), but the window says that it has a mouse.
 */
export function inFirefox(): InFirefox {
  const asked: string[] = [];
  const troubles: string[] = [];
  let opened: Awaited<ReturnType<typeof pageFolder>>;
  let downloads: string;
  let browser: Browser;
  let context: BrowserContext | undefined;
  beforeAll(async () => {
    opened = await pageFolder();
    downloads = mkdtempSync(join(tmpdir(), 'garland-downloads-'));
    browser = await puppeteer.launch({
      browser: 'firefox',
      executablePath: FIREFOX,
      headless: true,
      extraPrefsFirefox: {
        'browser.download.folderList': 2,
        'browser.download.dir': downloads,
        'browser.download.useDownloadDir': true,
        'browser.download.alwaysOpenPanel': false,
        'browser.helperApps.neverAsk.saveToDisk': 'application/zip,application/json',
        'intl.accept_languages': 'en-GB, en',
        'network.proxy.type': 0,
        'dom.w3c_touch_events.enabled': 1,
      },
    });
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    opened?.remove();
    rmSync(downloads, { recursive: true, force: true });
  });
  const open: InFirefox['open'] = async ({ width = 1440, height = 900, isOffline = false, address } = {}) => {
    await context?.close();
    for (const name of readdirSync(downloads)) rmSync(join(downloads, name));
    asked.length = 0;
    troubles.length = 0;
    context = await browser.createBrowserContext();
    const page = await context.newPage();
    await page.setViewport({ width, height });
    page.on('request', (request) => asked.push(request.url()));
    // What drives the browser evaluates text in the page, which the page's policy rightly refuses.
    page.on('pageerror', (error) => {
      if (!String(error).includes('blocked a JavaScript eval')) troubles.push(String(error));
    });
    page.on('console', (message) => {
      if (message.type() === 'error') troubles.push(message.text());
    });
    if (isOffline) await page.setOfflineMode(true);
    await page.goto(address ?? opened.address);
    return windowOn(page, downloads);
  };
  return { open, folder: () => opened.folder, asked, troubles };
}

function windowOn(page: Page, downloads: string): FirefoxWindow {
  const found = async (path: string) => {
    const one = await page.waitForSelector(`::-p-xpath(${path})`, { timeout: WAIT_MS });
    if (one === null) throw new Error(`nothing at ${path}`);
    return one;
  };
  const button = (name: string) =>
    found(`//button[starts-with(normalize-space(.), "${name}")][not(@disabled)]`);
  const field = (label: string) => found(`//label[starts-with(normalize-space(.), "${label}")]//input`);
  /** A page that is still drawing itself may take the thing away from under the finger: then it is sought again. */
  const tapOn = async (seek: () => Promise<ElementHandle>): Promise<void> => {
    for (const until = Date.now() + WAIT_MS; ; ) {
      try {
        const one = await seek();
        await one.scrollIntoView();
        await one.tap();
        return;
      } catch (error) {
        if (Date.now() > until) throw error;
      }
    }
  };
  const textOf = (selector: string) => page.$eval(selector, (element) => element.textContent ?? '');
  return {
    page,
    button,
    field,
    press: async (name) => (await button(name)).click(),
    tap: (name) => tapOn(() => button(name)),
    tapField: (label) => tapOn(() => field(label)),
    tabTo: async (name, { role, isBack = false } = {}) => {
      for (let press = 0; press < MOST_TABS; press++) {
        if (isBack) await page.keyboard.down('Shift');
        await page.keyboard.press('Tab');
        if (isBack) await page.keyboard.up('Shift');
        const at = (await page.evaluate(FOCUSED)) as { readonly label: string; readonly role: string };
        if (at.label.startsWith(name) && (role === undefined || at.role === role)) return;
      }
      throw new Error(`no Tab leads to ${name}`);
    },
    textOf,
    tookBack: (says) => expect.poll(() => textOf('.take-back'), { timeout: WAIT_MS }).toContain(says),
    handOver: async (path, ask) => {
      const [chooser] = await Promise.all([page.waitForFileChooser(), ask()]);
      await chooser.accept([path]);
    },
    downloaded: async (ending) => {
      let name: string | undefined;
      await expect
        .poll(
          () => {
            const names = readdirSync(downloads);
            name = names.some((one) => one.endsWith('.part'))
              ? undefined
              : names.find((one) => one.endsWith(ending));
            return name !== undefined && readFileSync(join(downloads, name)).length > 0;
          },
          { timeout: WAIT_MS },
        )
        .toBe(true);
      return readFileSync(join(downloads, name ?? ''));
    },
  };
}
