// Before the first paint: the lighting chosen earlier, and the word that a visit is to be gone on with.
const root = document.documentElement;
try {
  const lighting = localStorage.getItem('faultwright-lighting');
  if (['sun', 'shade', 'dark'].includes(lighting)) root.dataset.lighting = lighting;
} catch {
  // Storage is blocked.
}
if (new URLSearchParams(location.search).has('visit')) {
  root.dataset.resuming = '';
  // A run that does not start leaves the book to read.
  setTimeout(() => delete root.dataset.resuming, 6000);
}
