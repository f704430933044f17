import { quantityMessages } from './quantity.ts';

type Params = Readonly<Record<string, string | number>>;

/** What is wrong with an answer, and what is expected, by message id. */
const runMessages: Readonly<Record<string, (params: Params) => string>> = {
  'run.problem.emptyNote': () => 'The note is empty. Type what you want to remember.',
  'run.problem.longNote': ({ longest }) => `The note is too long. The most is ${longest} characters.`,
  'run.problem.otherTab': () =>
    'Another tab has gone on with this visit, so this answer was not taken. Look at where the visit stands now.',
  'run.problem.notLoaded': () =>
    'The next step could not be loaded, so this answer was not taken. Try again; with no network, save the guide for use offline first.',
  'run.problem.closed': () => 'This visit is closed. Only a note can be added.',
  'run.problem.guideChanged': () =>
    'This guide has changed since the visit began. Go on by the new version first.',
  'run.problem.nothingToUndo': () => 'There is nothing here that you are said to have done.',
  'run.problem.atEnd': () => 'The run has come to its end. Meet the items and close the visit.',
  'run.problem.notAtEnd': () => 'The run has not come to an end, so it cannot be closed here.',
  'run.problem.noWay': () => 'The guide has no way on for this answer. Choose “Not sure”.',
  'run.bar.other-procedure': () =>
    'That question stands outside the procedure you are in. End this procedure first: finish it, or leave it by its own way out.',
  'run.bar.stands-otherwise': () =>
    'A handle, switch or plug was moved since that was answered. Put it back first: answers can be corrected, deeds only reversed.',
  'run.bar.state': () => 'The plant is not as this step needs it.',
  'run.bar.current-not-shown': () =>
    'It has not just been shown that no current flows here. Show 0 A on the zeroed clamp again first.',
  'run.bar.tester-not-proved': () =>
    'The tester has not just been shown on a known live source, or the wait for stored charge is not done.',
  'run.bar.already-proved': () =>
    'This place is proved dead already. Volts here now mean: stop and get away.',
  'run.bar.trip-not-explained': () =>
    'This device tripped, and why is neither known nor ruled out. It must not be closed again yet.',
  'run.bar.trip-not-noted': () => 'No trip is noted here. Go back and look at the packs again.',
  'run.bar.packs-not-alike': () => 'The packs are not shown to be alike in volts and in charge.',
  'run.bar.resistor-still-on': () => 'The pre-charge resistor is still on. Take it off first.',
  'run.bar.under-load': () =>
    'This must not be opened under load. Loads off, inverter off and the source stopped first.',
  'run.bar.polarity-not-proved': () =>
    'Signed volts on the source side have not been read since the conductors were moved.',
  'run.bar.unit-running': () =>
    'Turn the inverter off first: this PV isolator is not made to close onto a running tracker.',
  'run.bar.neutral-in-doubt': () =>
    'The neutral is not shown to hold. Prove it with the loads off, then with one test load.',
  'run.bar.restore-not-ready': () =>
    'It is not confirmed since the last work that tools are out, covers on and people told. Begin bringing back from its first step.',
  'run.bar.sides-not-read': () => 'Both sides of the open switch have not just been read.',
  'run.bar.not-precharged': () => 'The bus is not pre-charged, or the resistor is off again.',
  'run.bar.not-proved-dead': () => 'This place is not proved dead now.',
  'run.problem.back.barred': () =>
    'The plant is no longer as that step needs it, so you cannot go back to it.',
  'run.problem.back.notAsked': () =>
    'Nothing was asked there. A thing that was done is undone by its own step, or with “I did not do that”.',
  'run.problem.back.closed': () => 'This visit is closed, or that step is no longer part of it.',
  'run.problem.missingFacts': () => 'The site sheet lacks facts that this step needs. Enter them first.',
  'run.problem.noSuchItem': ({ item }) => `There is no item “${item}” here.`,
  'run.problem.itemByReading': () => 'This is met by a reading, not by a tick. Go back and take the reading.',
  'run.problem.itemUnmet': () => 'This is not met yet. Meet it, then tick it.',
  'run.problem.noSuchChoice': ({ choice, choices }) =>
    choices === ''
      ? `“${choice}” cannot be chosen here.`
      : `“${choice}” cannot be chosen here. Choose one of: ${choices}.`,
  'run.problem.answerFirst': () => 'Answer this step first.',
  'run.problem.cannotWork': () =>
    'This cannot be worked out from the readings on record: one is missing or over range. Choose “Not sure”, or go back and read again.',
  'run.problem.unsupported': () =>
    'The readings on record do not bear this verdict out. Go back and take them again.',
  'run.problem.pair.noGrid': () => 'This step has no pairs to choose from.',
  'run.problem.pair.noOptions': () => 'No option is typed. Type at least the one that is set now.',
  'run.problem.pair.manyOptions': () =>
    'More than six options. Leave out those that are for another chemistry or another voltage.',
  'run.problem.pair.longOption': () => 'An option is longer than 60 characters. Shorten it.',
  'run.problem.pair.twiceOption': () => 'An option stands twice. Type each one once.',
  'run.problem.pair.notFound': () => 'Choose what is set now: it must be one of the options typed.',
  'run.problem.pair.notNamed': () => 'What the papers name must be one of the options typed.',
  'run.problem.pair.noPair': () => 'Choose a pair to try.',
  'run.problem.pair.strange': () => 'That pair is not made of the options typed.',
  'run.problem.pair.tried': () => 'That pair was tried already. Choose another.',
  'run.problem.noReadings': () => 'This step asks for no number.',
  'run.problem.noSuchReading': ({ reading, readings }) =>
    `This step has no reading “${reading}”. It asks for: ${readings}.`,
  'run.problem.waitNotOver': ({ seconds }) => `The wait is not over: ${seconds} s more.`,
  'run.problem.plantNotLeft': () =>
    'The plant is not as this end needs it. Look at what is still open or closed before you leave.',
  'run.problem.wantsSeries': () => 'This asks for several values, each with its time in seconds.',
  'run.problem.wantsOne': () => 'This asks for one value.',
  'run.problem.seriesShort': ({ least, typed }) =>
    `${typed} of at least ${least} timed values are typed. Add the others.`,
  'run.problem.seriesTime': ({ row, typed }) =>
    `Row ${row}: “${typed}” is not a time. Type seconds from the start, such as 2.5.`,
  'run.problem.seriesOrder': ({ row }) => `Row ${row}: its time is not later than the one before it.`,
  'run.problem.seriesOverRange': ({ row }) => `Row ${row}: over range is no value on a curve. Take it again.`,

  'walk.subject': ({ names }) =>
    `This guide is about one PV string. Name it as "subject" in the answers file: ${names}.`,
  'walk.facts': ({ facts }) => `The site sheet lacks facts that this guide needs: ${facts}.`,
  'walk.begins': ({ begins }) => `"begins" must be one of: ${begins}.`,
  'walk.unknownBlocks': ({ blocks }) =>
    `The answers file speaks of steps that this guide has not: ${blocks}.`,
  'walk.holdText': ({ given }) =>
    `"${given}" is no answer here. Write "done" when everything is met, an object of items, or cant, unsure or stop.`,
  'walk.unknownItems': ({ items }) => `Items are true or false, and this step has none called: ${items}.`,
  'walk.unknownReadings': ({ readings }) => `This step has no reading called: ${readings}.`,
};

/** The sentence of a message about a typed number or a run. */
export function sayRun({ id, params }: { id: string; params?: Params }): string {
  const words = runMessages[id] ?? quantityMessages[id];
  if (!words) throw new Error(`no words for ${id}`);
  return words(params ?? {});
}
