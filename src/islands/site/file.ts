/** Hands a text to the person as a file to keep. */
export function saveFile(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads the file after the click: the address must outlive it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** `faultwright-sallow-creek-2031-05-04.json` */
export function fileName(what: string, now: Date): string {
  const slug = what
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `faultwright-${slug || 'site'}-${now.toISOString().slice(0, 10)}.json`;
}
