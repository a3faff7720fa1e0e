import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { CHROMIUM, pageFolder } from './pageFolder.ts';

/** The page in Chromium for the tests of one file: opened anew for each, from disk, by a double click. */
export interface InChromium {
  /** A window of its own; what the last test opened is closed. */
  readonly open: (options?: BrowserContextOptions & { readonly isOffline?: boolean }) => Promise<Page>;
  /** Where the built page lies: files for tests may be put beside it. */
  readonly folder: () => string;
  /** Addresses that the page has asked for since it was opened, and what went wrong in it: nothing may, in any test. */
  readonly asked: string[];
  readonly troubles: string[];
}

/** Sees to it that the page is built and the browser started before the tests of a file, and gone after them. */
export function inChromium(): InChromium {
  const asked: string[] = [];
  const troubles: string[] = [];
  let opened: Awaited<ReturnType<typeof pageFolder>>;
  let browser: Browser;
  let context: BrowserContext | undefined;
  beforeAll(async () => {
    opened = await pageFolder();
    browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    opened?.remove();
  });
  afterEach(async () => {
    await context?.close();
    expect(asked.filter((address) => !/^(file|blob|data):/.test(address))).toEqual([]);
    expect(troubles).toEqual([]);
  });
  return {
    asked,
    troubles,
    folder: () => opened.folder,
    open: async ({ isOffline = false, ...options } = {}) => {
      asked.length = 0;
      troubles.length = 0;
      context = await browser.newContext({
        viewport: { width: 1440, height: 900 },
        locale: 'en-GB',
        acceptDownloads: true,
        ...options,
      });
      // Without this picker, saving is a download, which a test can catch.
      await context.addInitScript(() => Reflect.deleteProperty(globalThis, 'showSaveFilePicker'));
      if (isOffline) await context.setOffline(true);
      const page = await context.newPage();
      page.on('request', (request) => asked.push(request.url()));
      page.on('pageerror', (error) => troubles.push(error.message));
      page.on('console', (message) => {
        if (message.type() === 'error') troubles.push(message.text());
      });
      await page.goto(opened.address);
      return page;
    },
  };
}
