/** When a thing is to be done that nobody waits for. */

/** After the next frame is painted; at once where nothing is painted because the page is out of sight. */
export function afterPaint(then: () => void): void {
  if (document.hidden) then();
  else requestAnimationFrame(() => setTimeout(then));
}

/** Once the person has something to look at and the page nothing to do. */
export function whenQuiet(then: () => void): void {
  setTimeout(() => {
    // A browser that does not tell when it is idle gets it now.
    if ('requestIdleCallback' in globalThis) requestIdleCallback(then, { timeout: 2000 });
    else then();
  }, 500);
}
