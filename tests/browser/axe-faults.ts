import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** Every accessibility fault on the page as it stands: the rule, then the places. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate<readonly string[]>(
    'axe.run().then(({ violations }) => violations.map((each) => `${each.id}: ${each.nodes.map((node) => node.html.slice(0, 160)).join(" | ")}`))',
  );
}
