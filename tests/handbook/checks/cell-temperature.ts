import {
  cellFromBackC,
  faimanCellC,
  noctCellC,
  rossByMounting,
  rossCellC,
  samCellC,
  sandiaByMounting,
  sandiaCellC,
} from '../../../src/worksheets/pv/cell-temp.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'cell-temperature';
const pvlib = (test: string): string => `pvlib-python tests/test_temperature.py, ${test}`;
const params = 'pvlib-python pvlib/temperature.py, Ross coefficients after Skoplaki & Palyvos 2009';

const at = (irradiance: number, airC: number, windMs = 0) => ({ irradiance, airC, windMs });
/** Open rack, glass on both sides: the set that the published figures were worked with. */
const glassGlass = { a: -3.47, b: -0.0594, deltaC: 3 };

const check = (
  id: string,
  source: string,
  what: string,
  published: number,
  worked: () => number,
  tolerance: OutsideCheck['tolerance'] = 'rounded',
): OutsideCheck => ({ id, worksheet, source, origin: 'published', what, published, worked, tolerance });

export const cellTemperatureChecks: OutsideCheck[] = [
  check('4j', pvlib('test_ross'), 'NOCT 50 °C at 1000 W/m², 30 °C', 67.5, () => noctCellC(at(1000, 30), 50)),
  check('4j-k', pvlib('test_ross'), 'the same by its coefficient', 67.5, () =>
    rossCellC(at(1000, 30), 0.0375),
  ),
  check('4j-700', pvlib('test_ross'), 'NOCT 50 °C at 700 W/m², 30 °C', 56.25, () =>
    noctCellC(at(700, 30), 50),
  ),
  check('4j-600', pvlib('test_ross'), 'NOCT 50 °C at 600 W/m², 40 °C', 62.5, () =>
    noctCellC(at(600, 40), 50),
  ),
  check('ross-open', params, 'rise at 1000 W/m², free standing', 20.8, () =>
    rossCellC(at(1000, 0), rossByMounting['open-rack']),
  ),
  check('ross-gap', params, 'rise at 1000 W/m², roof poorly vented', 34.2, () =>
    rossCellC(at(1000, 0), rossByMounting['roof-gap']),
  ),
  check('ross-flush', params, 'rise at 1000 W/m², roof not vented', 56.3, () =>
    rossCellC(at(1000, 0), rossByMounting['roof-flush']),
  ),
  check('4i', pvlib('test_faiman_default'), '900 W/m², 20 °C, 5 m/s', 35.203, () =>
    faimanCellC(at(900, 20, 5)),
  ),
  check('4i-kwargs', pvlib('test_faiman_kwargs'), 'u0 22, u1 6', 37.308, () =>
    faimanCellC(at(900, 20, 5), 22, 6),
  ),
  check('faiman-list', pvlib('test_faiman_list'), '500 W/m², 10 °C, 5 m/s', 18.446, () =>
    faimanCellC(at(500, 10, 5)),
  ),
  check('sapm-cell', pvlib('test_sapm_cell'), '900 W/m², 20 °C, 5 m/s', 43.509, () =>
    sandiaCellC(at(900, 20, 5), glassGlass),
  ),
  check('sapm-array', pvlib('test_sapm_ndarray'), '500 W/m², 10 °C, 5 m/s', 23.06066166, () =>
    sandiaCellC(at(500, 10, 5), glassGlass),
  ),
  check(
    'sapm-from-module',
    pvlib('test_sapm_cell_from_module'),
    'cell over a back of 50 °C at 900 W/m²',
    52.7,
    () => cellFromBackC(50, 900, 'open-rack'),
  ),
  check(
    '4k',
    pvlib('test_noct_sam'),
    'NOCT 45 °C, efficiency 0.2, 1000 W/m², 25 °C, 1 m/s',
    55.230790492,
    () => samCellC(at(1000, 25, 1), 45, 0.2),
    'fullPrecision',
  ),
  {
    id: 'sandia-close-roof',
    worksheet,
    source: 'SAND2004-3535, table of thermal coefficients, close roof mount: worked',
    origin: 'worked apart',
    what: '1000 W/m², 30 °C, 1 m/s: 30 + 1000·e^(−3.0271) + 1',
    published: 79.456,
    worked: () => sandiaCellC(at(1000, 30, 1), sandiaByMounting['roof-gap']),
    tolerance: 'rounded',
  },
];
