/** What axe-core finds on a page as it stands, a line each. */
import axe from 'axe-core';
import type { Page } from 'playwright-core';

export async function faults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const runner: typeof axe = Reflect.get(window, 'axe');
    return (await runner.run(document)).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}
