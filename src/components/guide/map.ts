import Cant from './Cant.astro';
import Do from './Do.astro';
import Expect from './Expect.astro';
import Item from './Item.astro';
import Outcome from './Outcome.astro';
import Reading from './Reading.astro';
import Sign from './Sign.astro';
import Step from './Step.astro';
import Unsure from './Unsure.astro';

/** The components a guide's or procedure's words may use. Content files import nothing; these are handed to them. */
export const guideComponents = { Step, Do, Reading, Expect, Sign, Outcome, Item, Cant, Unsure };
