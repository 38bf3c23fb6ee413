import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import {
  chromium,
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Page,
} from 'playwright-core';

/** Where Debian's package puts it; CHROMIUM names another place. */
export const chromiumPath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
export const hasChromium = existsSync(chromiumPath);

/** The name under which tests are skipped where there is no browser, so that the report says so. */
export const skippedName = 'Chromium is not here, skipped';

/** Opens the browser of a test file. */
export function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: chromiumPath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

/** A fresh context in which nothing but this machine can be reached; what was tried beyond it is kept in `outside`. */
export async function openContext(
  browser: Browser,
  options: BrowserContextOptions = {},
): Promise<{ readonly context: BrowserContext; readonly outside: string[] }> {
  const context = await browser.newContext({ reducedMotion: 'reduce', ...options });
  const outside: string[] = [];
  await context.route(
    ({ hostname }) => hostname !== '127.0.0.1',
    (route) => {
      outside.push(route.request().url());
      return route.abort();
    },
  );
  return { context, outside };
}

/** Comes in by a code. */
export async function comeIn(page: Page, url: string, code: string): Promise<void> {
  await page.goto(url);
  await page.getByLabel('The code on your slip').fill(code);
  await page.getByRole('button', { name: 'Come in' }).click();
  await page.getByRole('navigation', { name: 'Pages' }).waitFor();
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds in a page by all its rules (WCAG 2.2 A and AA, good practices) or only some, one line each. */
export async function findings(page: Page, rules: readonly string[] = []): Promise<string[]> {
  const options = rules.length === 0 ? {} : { runOnly: { type: 'rule', values: rules } };
  // Through the debugger's own world, since the page's policy forbids script from elsewhere.
  if ((await page.evaluate('typeof axe')) === 'undefined') await page.evaluate(axe);
  const found = await page.evaluate<AxeViolation[]>(
    `axe.run(document, ${JSON.stringify(options)}).then((it) => it.violations)`,
  );
  return found.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
  );
}

interface AxeViolation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}
