import { checks } from '../../sheet-check/checks.ts';
import { checkWords, sheetCheckWords as words } from '../../words/en/sheet-check.ts';

/** The name of a check, with the string or tracker that it is of. */
export function nameOfCheck({ check, name }: { check: string; name?: string }): string {
  const title = checkWords[check]?.title;
  if (title === undefined) throw new Error(`no words for the check ${check}`);
  if (name === undefined) return title;
  const of = checks.find(({ id }) => id === check)?.of === 'tracker' ? 'tracker' : 'string';
  return `${title}, ${words.of[of](name)}`;
}
