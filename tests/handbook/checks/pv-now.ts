import { cellFromBackC } from '../../../src/worksheets/pv/cell-temp.ts';
import { moduleNow } from '../../../src/worksheets/pv/module-now.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'pv-now';
const diodeModel =
  'De Soto et al. 2006 single-diode model, example module of pvlib-python tests/conftest.py, worked by pvlib';
const pvlibSeen = 'pvlib-python tests/test_pvsystem.py, De Soto case at 800 W/m² and 25 °C';

/** The example module: 18 cells, its label at 1000 W/m² and 25 °C, its slopes between 25 and 65 °C. */
const label = {
  vocVolts: 10.40112,
  vmpVolts: 8.39952,
  iscAmps: 7.50015,
  impAmps: 6.6,
  vocPerC: (8.62206 / 10.40112 - 1) / 40,
  vmpPerC: (6.63285 / 8.39952 - 1) / 40,
  iscPerC: 0.003 / 7.545,
  cells: 18,
};

const check = (
  id: string,
  source: string,
  what: string,
  published: number,
  worked: () => number,
  tolerance: OutsideCheck['tolerance'],
): OutsideCheck => ({ id, worksheet, source, origin: 'published', what, published, worked, tolerance });

export const pvNowChecks: OutsideCheck[] = [
  check(
    'now-voc-800-25',
    pvlibSeen,
    'Voc',
    10.29603,
    () => moduleNow(label, 800, 25).vocVolts,
    'linearModel',
  ),
  check('now-isc-800-25', pvlibSeen, 'Isc', 6.00726, () => moduleNow(label, 800, 25).iscAmps, 'linearModel'),
  check('now-vmp-800-25', pvlibSeen, 'Vmp', 8.40941, () => moduleNow(label, 800, 25).vmpVolts, 'linearModel'),
  check('now-imp-800-25', pvlibSeen, 'Imp', 5.29053, () => moduleNow(label, 800, 25).impAmps, 'linearModel'),
  check(
    'now-voc-800-50',
    diodeModel,
    'Voc at 800 W/m², 50 °C',
    9.17769,
    () => moduleNow(label, 800, 50).vocVolts,
    'linearModel',
  ),
  check(
    'now-isc-800-50',
    diodeModel,
    'Isc at 800 W/m², 50 °C',
    6.06698,
    () => moduleNow(label, 800, 50).iscAmps,
    'linearModel',
  ),
  check(
    'now-vmp-800-50',
    diodeModel,
    'Vmp at 800 W/m², 50 °C',
    7.28982,
    () => moduleNow(label, 800, 50).vmpVolts,
    'linearModel',
  ),
  check(
    'now-imp-800-50',
    diodeModel,
    'Imp at 800 W/m², 50 °C',
    5.32366,
    () => moduleNow(label, 800, 50).impAmps,
    'about',
  ),
  check(
    'now-pmp-800-50',
    diodeModel,
    'power at 800 W/m², 50 °C',
    38.80849,
    () => {
      const now = moduleNow(label, 800, 50);
      return now.vmpVolts * now.impAmps;
    },
    'about',
  ),
  check(
    'now-voc-cold',
    diodeModel,
    'Voc at 1000 W/m², −10 °C',
    11.94005,
    () => moduleNow(label, 1000, -10).vocVolts,
    'linearModel',
  ),
  check(
    'now-back',
    'pvlib-python tests/test_temperature.py, test_sapm_cell_from_module',
    'cell over a back of 50 °C at 900 W/m², open rack',
    52.7,
    () => cellFromBackC(50, 900, 'open-rack'),
    'fullPrecision',
  ),
];
