/** Words of the steps that are more than a choice or a single reading. */
export const runStep = {
  series: {
    start: 'Start the clock',
    restart: 'Start the clock again',
    running: (seconds: string) => `Clock: ${seconds} s`,
    take: 'Take a value now',
    time: 'Time, s',
    value: (unit: string) => `Value, ${unit}`,
    row: (row: number, what: string) => `Row ${row}: ${what}`,
    add: 'Add a row',
    hint: (least: number) =>
      `At least ${least} values, each with its time from the start. Press “Take a value now” as you read the meter, then type what it showed.`,
  },
  hold: { met: 'Met', unmet: 'Not met yet', byReading: 'Met by the reading', goOn: 'All met: go on' },
  wait: {
    left: (text: string) => `${text} to wait`,
    over: 'The wait is over.',
    goOn: 'Go on',
    note: 'The wait is counted from when this step was reached. It goes on while the screen sleeps.',
  },
  work: { title: 'Worked out', goOn: 'Go on', open: 'Open the worksheet', inputs: 'From' },
} as const;
