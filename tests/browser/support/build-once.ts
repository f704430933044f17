import { build } from '../../../src/commands/build.ts';
import { wantedBuild } from '../../../src/commands/build-options.ts';
import { isFresh } from '../../../src/commands/build-stamp.ts';

/** Before any browser test: the site stands built from what is here now. */
export default async function setup(): Promise<void> {
  const options = wantedBuild();
  if (!(await isFresh(options))) await build(options);
}
