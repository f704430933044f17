import { describe, expect } from 'vitest';
import { guides, procedures } from '../../machines/index.ts';
import { wantedBuild } from '../../src/commands/build-options.ts';
import { filesUnder } from '../../src/commands/build-worker.ts';
import { wholeBook } from '../../src/components/guide/lookup.ts';
import { test } from './support/visitor.ts';
import { knowledgeOf } from './support/walked.ts';

/** Pages that hold a long guide in one; a short one is whole as it is. */
const pages = new Set(
  (await filesUnder(wantedBuild().folder)).map((path) => path.replace(/index\.html$/, '')),
);

describe('without a script', () => {
  for (const machine of [...guides, ...procedures]) {
    const { id, kind } = machine;
    test(`${id} is a whole decision page, its hazards before its actions`, async ({ newVisitor }) => {
      const visitor = await newVisitor({ phone: { javaScriptEnabled: false } });
      const whole = `${kind}s/${id}/${wholeBook}/`;
      const page = await visitor.open(pages.has(whole) ? whole : `${kind}s/${id}/`);
      // With scripts off, what the test asks of the page still runs.
      const plates = await page.locator('section.plate[data-block]').evaluateAll((sections) =>
        sections.map((section) => {
          const shown = (element: Element) =>
            element.checkVisibility() && element.closest('details:not([open])') === null;
          const action = section.querySelector('[data-role="do"]');
          const hazards = [...section.querySelectorAll('[data-hazard]')];
          return {
            block: section.getAttribute('data-block') ?? '',
            shown: shown(section),
            hidden: hazards.filter((hazard) => !shown(hazard)).length,
            late: hazards.filter(
              (hazard) =>
                action && !(hazard.compareDocumentPosition(action) & Node.DOCUMENT_POSITION_FOLLOWING),
            ).length,
            hazards: hazards.map((hazard) => hazard.getAttribute('data-hazard') ?? ''),
            outcomes: [...section.querySelectorAll('[data-role="outcomes"] [data-outcome]')].map(
              (outcome) => ({
                id: outcome.getAttribute('data-outcome') ?? '',
                to: outcome.querySelector('a')?.getAttribute('href') ?? '',
              }),
            ),
          };
        }),
      );
      const { steps } = machine;
      const reached = new Set([...knowledgeOf(id).compiled.flat.nodes.values()].map(({ block }) => block));
      // An ending that nothing leads to is left out; every other step stands on the page.
      const due = Object.keys(steps).filter((step) => steps[step]!.kind === 'perform' || reached.has(step));
      const missing = due.filter(
        (step) => !plates.some(({ block }) => block === step) && steps[step]!.kind !== 'end',
      );
      expect(missing).toEqual([]);
      expect(plates.length).toBeGreaterThan(1);
      for (const plate of plates) {
        const step = steps[plate.block]!;
        expect(plate).toMatchObject({ shown: true, hidden: 0, late: 0, hazards: [...(step.hazards ?? [])] });
        if (step.kind === 'end' || step.kind === 'perform') continue;
        expect([plate.block, plate.outcomes.filter(({ to }) => !to.includes('#'))]).toEqual([
          plate.block,
          [],
        ]);
        for (const way of ['cant', 'unsure', 'stop'])
          expect([plate.block, plate.outcomes.map((each) => each.id)]).toEqual([
            plate.block,
            expect.arrayContaining([way]),
          ]);
      }
    });
  }

  test('a link of an outcome leads to its step', async ({ newVisitor }) => {
    const visitor = await newVisitor({ phone: { javaScriptEnabled: false } });
    const page = await visitor.open('procedures/pre-charge/');
    const link = page.locator('#ready [data-outcome="done"] a');
    const to = (await link.getAttribute('href')) ?? '';
    await link.click();
    expect(new URL(page.url()).hash).toBe(to);
    expect(await page.locator(to).isVisible()).toBe(true);
  });
});
