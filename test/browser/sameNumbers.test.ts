import { join } from 'node:path';
import { chromium } from 'playwright-core';
import puppeteer from 'puppeteer-core';
import { build } from 'vite';
import { beforeAll, expect, test } from 'vitest';
import { elementaryBits } from '../fixtures/elementaryBits.ts';
import { CHROMIUM, FIREFOX } from './pageFolder.ts';

/** The fixture as one script, whose value is what it found. */
let script: string;

beforeAll(async () => {
  const built = await build({
    logLevel: 'error',
    configFile: false,
    build: {
      write: false,
      target: 'es2022',
      lib: {
        entry: join(import.meta.dirname, '..', 'fixtures', 'elementaryBits.ts'),
        formats: ['iife'],
        name: 'bits',
      },
    },
  });
  const [output] = Array.isArray(built) ? built : [built];
  if (!output || !('output' in output)) throw new Error('nothing was built');
  script = `(() => { ${output.output[0].code}; return bits.elementaryBits(); })()`;
}, 60_000);

test('Chromium has every elementary function to the last bit as Node has it', async () => {
  const browser = await chromium.launch({ executablePath: CHROMIUM });
  try {
    const page = await browser.newPage();
    expect(await page.evaluate(script)).toEqual(elementaryBits());
  } finally {
    await browser.close();
  }
}, 60_000);

test('Firefox, too', async () => {
  const browser = await puppeteer.launch({ browser: 'firefox', executablePath: FIREFOX, headless: true });
  try {
    const page = await browser.newPage();
    expect(await page.evaluate(script)).toEqual(elementaryBits());
  } finally {
    await browser.close();
  }
}, 60_000);
