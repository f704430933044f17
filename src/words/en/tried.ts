/**
 * What became of a cause that was found: nothing is called cured that no re-test has shown to be.
 * @param retest what the last re-test showed, where one could tell
 * @param closed how the visit was closed; a healthy plant has nothing to cure
 */
export const triedText = (title: string, retest: string | undefined, closed?: string): string => {
  if (retest === 'failed') return `Tried: ${title}. The re-test failed: it did not cure.`;
  if (retest === 'cured') return `Tried: ${title}. The re-test passed.`;
  return closed === 'healthy' ? `Found: ${title}.` : `Found: ${title}. No re-test has shown a cure.`;
};
