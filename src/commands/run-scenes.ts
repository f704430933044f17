import type { Page } from 'playwright-core';
import type { WalkAnswers } from '../visit/walk.ts';
import { Driver } from './drive-run.ts';

/** Answers that lead a run of the PV guide past a reading to a hold point, on the first demo site. */
const answers: WalkAnswers = {
  answers: {
    'first-look': 'quiet',
    'someone-knows': 'done',
    events: 'none',
    symptom: 'volts-no-watts',
    light: 'bright',
    screen: { volts: '312' },
    'battery-screen': { volts: '53.2' },
    'charge-permit': { amps: '80' },
    'load-before': { watts: '0' },
    'load-on': 'done',
    'load-after': { watts: '0' },
    settings: 'all-right',
    'isolator-handle': 'on',
    'ready-string': 'done',
    'clamp-string': { amps: '0.00' },
    'cell-temp': { cell: '113' },
    'volts-still': { p2: '-312.5', p1: '-312.4' },
  },
};

/** Steps that are worth a picture: a choice, a reading, an energised measurement, a hold point in a procedure. */
const scenes: Readonly<Record<string, string>> = {
  symptom: 'run-choice',
  screen: 'run-reading',
  'volts-still': 'run-live-reading',
  'open-string--ready': 'run-hold',
};

/** Pictures of a run under way, step by step, and of its record. */
export async function runScenes(
  page: Page,
  root: string,
  shoot: (name: string) => Promise<void>,
): Promise<void> {
  const driver = new Driver(page);
  await driver.begin(root, { page: 'guides/pv-no-start', site: 'Sallow Creek Apiary', subject: 'East' });
  await driver.drive(answers, async (block) => {
    const scene = scenes[block];
    if (scene) await shoot(scene);
  });
  const visit = new URL(page.url()).searchParams.get('visit');
  await page.goto(`${root}visits/record/?visit=${visit}`, { waitUntil: 'networkidle' });
  await shoot('record');
}
