/**
 * The lighting switch: sets `data-lighting` on the root element and remembers it where storage is allowed. The choice made
 * earlier is put in force by `early.js`, before the first paint.
 */
const key = 'faultwright-lighting';

function remember(lighting: string): void {
  try {
    localStorage.setItem(key, lighting);
  } catch {
    // Blocked or full: the page is lit as asked all the same.
  }
}

function inForce(): string {
  const chosen = document.documentElement.dataset.lighting;
  if (chosen) return chosen;
  if (matchMedia('(prefers-contrast: more)').matches) return 'sun';
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'shade';
}

function showPressed(): void {
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-set-lighting]')) {
    button.setAttribute('aria-pressed', String(button.dataset.setLighting === inForce()));
  }
}

showPressed();

for (const group of document.querySelectorAll<HTMLElement>('.lighting-switch')) {
  group.hidden = false;
  group.addEventListener('click', (event) => {
    const button = (event.target as Element).closest<HTMLButtonElement>('[data-set-lighting]');
    const lighting = button?.dataset.setLighting;
    if (!lighting) return;
    document.documentElement.dataset.lighting = lighting;
    remember(lighting);
    showPressed();
  });
}
