/**
 * Marks on a guide's map the way taken in the open visit. The run leaves its trail in session storage under
 * `faultwright-path`: `{ guide, path }`, with `path` the paths of the steps in order, the present one last.
 */

interface Trail {
  guide: string;
  path: readonly string[];
}

function trailOf(guide: string): readonly string[] {
  try {
    const trail = JSON.parse(sessionStorage.getItem('faultwright-path') ?? 'null') as Trail | null;
    if (trail?.guide !== guide || !Array.isArray(trail.path)) return [];
    // A step inside a procedure is on the map as the step that has it done.
    const own = trail.path.map((path) => String(path).split('/')[0]!);
    return own.filter((block, at) => block !== own[at - 1]);
  } catch {
    return []; // Storage is blocked or holds something else: the map stands unmarked.
  }
}

class GuidePath extends HTMLElement {
  connectedCallback(): void {
    const path = trailOf(this.dataset.guide ?? '');
    const here = path.at(-1);
    for (const block of new Set(path)) {
      for (const node of this.querySelectorAll(`[data-node="${CSS.escape(block)}"]`)) {
        node.classList.add('gm-done');
        if (node instanceof HTMLLIElement) this.#say(node);
        if (block !== here) continue;
        node.classList.add('gm-here');
        node.setAttribute('aria-current', 'step');
      }
    }
    path.slice(1).forEach((to, at) => {
      const from = path[at]!;
      const way = this.querySelector(`.gm-way[data-from="${CSS.escape(from)}"][data-to="${CSS.escape(to)}"]`);
      way?.classList.add('gm-taken');
    });
  }

  #say(item: HTMLLIElement): void {
    const note = document.createElement('span');
    note.className = 'small';
    note.textContent = ` (${this.dataset.taken})`;
    item.querySelector('a')?.after(note);
  }
}

customElements.define('guide-path', GuidePath);
