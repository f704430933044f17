/**
 * A run of a guide goes through the steps of the procedures it performs. Their words stand once in the site, on the
 * procedures' own pages (kept offline like every page), so a run borrows the plates from there when it gets there.
 */

/** Prefix that the anchors of a procedure's steps have inside another run: `isolate--open-main`. */
const inside = (procedure: string, step: string): string => `${procedure}--${step}`;

/**
 * The plates of a procedure's page, made to stand on this page: anchors, links between them and labels carry the
 * procedure's id, as the blocks of a run do.
 * @param procedure the procedure's id
 * @param url the procedure's page on this site
 * @throws Error when the page cannot be had or holds no steps
 */
export async function borrowSteps(procedure: string, url: string): Promise<HTMLElement[]> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
  const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
  const plates = [...page.querySelectorAll<HTMLElement>('section[data-block]')];
  if (plates.length === 0) throw new Error(`${url} holds no steps`);
  const base = new URL(url, location.href);
  return plates.map((plate) => {
    const own = document.importNode(plate, true);
    const block = inside(procedure, own.dataset.block!);
    own.dataset.block = block;
    own.id = block;
    for (const link of own.querySelectorAll<HTMLAnchorElement>('a[href]')) {
      const target = link.getAttribute('href')!;
      if (target.startsWith('#')) link.setAttribute('href', `#${inside(procedure, target.slice(1))}`);
      else link.href = new URL(target, base).href;
    }
    return own;
  });
}
