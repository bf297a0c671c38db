import axe from 'axe-core';
import type { Page } from 'playwright-core';

/**
 * Every accessibility fault of the page, or of a part of it, in its current state: the rule, then the elements.
 * `colours` checks only colours.
 */
export async function axeFaults(page: Page, only?: 'colours', within = 'html'): Promise<readonly string[]> {
  if (!(await page.evaluate("'axe' in globalThis"))) await page.evaluate(axe.source);
  const runOnly = { type: 'rule', values: ['color-contrast', 'link-in-text-block'] };
  // Passed rules are not reported in full: that would take longer than the check itself.
  // The rule of the size of targets (WCAG 2.2, AA) is off unless it is asked for.
  const rules = { 'target-size': { enabled: true } };
  const options = JSON.stringify({
    resultTypes: ['violations'],
    selectors: false,
    ...(only ? { runOnly } : { rules }),
  });
  return page.evaluate<readonly string[]>(
    `axe.run(${within === 'html' ? 'document' : JSON.stringify(within)}, ${options}).then(({ violations }) => violations.map((each) => \`\${each.id}: \${each.nodes.map((node) => node.html.slice(0, 160)).join(" | ")}\`))`,
  );
}
