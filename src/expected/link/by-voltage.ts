import type { MessageRef } from '../../quantity/message.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { runByVoltage } from '../../worksheets/link/run-by-voltage.ts';
import type { ExpectContext, ScaleDef, WorkDef } from '../context.ts';
import { scaleOf } from '../pv/build.ts';

/** A setting read back may stand this far from its target, a cell [V]: units round, and a little low is no harm. */
const cellSlack = { above: 0.02, below: 0.06 };

function inputsOf({ battery, inverter }: SiteSheet) {
  const { floatCellV, cutCellV, restartCellV, chargeShare } = runByVoltage.inputs;
  return {
    cells: battery.cellsInSeries,
    chargeCellV: battery.cellChargeV,
    cellMaxV: battery.cellMaxV,
    cellMinV: battery.cellMinV,
    floatCellV: floatCellV.default,
    cutCellV: cutCellV.default,
    restartCellV: restartCellV.default,
    packs: battery.packs,
    packAmps: battery.packContinuousA,
    chargeShare: chargeShare.default,
    unitMinVolts: inverter.dcMinV,
    unitMaxVolts: inverter.dcMaxV,
  };
}

const limitsOf = ({ sheet }: ExpectContext) => {
  const inputs = inputsOf(sheet);
  return { inputs, result: runByVoltage.compute({ ...inputs, labelChargeVolts: undefined }) };
};

const answerOf = {
  fits: 'fits',
  unitCutsFirst: 'unit-cuts-first',
  unitTooLow: 'unit-too-low',
  otherCount: 'no-answer',
} as const;

/** The limits by volts on this site, and whether the inverter can hold them. */
const byVoltage: WorkDef = {
  id: 'link-run-by-voltage',
  answers: ['fits', 'unit-cuts-first', 'unit-too-low', 'no-answer'],
  work(context) {
    const { inputs, result } = limitsOf(context);
    const worksheet = 'run-by-voltage';
    if (!result.ok) return { ok: true, outcome: 'no-answer', worksheet, inputs, says: [result.reason] };
    const { chargeVolts = 0, floatVolts = 0, cutVolts = 0, restartVolts = 0, chargeAmps = 0 } = result.out;
    const params = { cells: inputs.cells, chargeVolts, floatVolts, cutVolts, restartVolts, chargeAmps };
    const says: MessageRef[] = [
      { id: 'expected.link.byVoltage', params },
      ...(runByVoltage.remarks?.({ ...inputs, labelChargeVolts: undefined }, result.out) ?? []),
    ];
    return { ok: true, outcome: answerOf[result.out.verdict], worksheet, inputs, says };
  },
};

type Limit = 'chargeVolts' | 'floatVolts' | 'cutVolts' | 'restartVolts';

/** A setting read back from the unit. Where there are no limits at all, nothing read back is right. */
function readBack(id: string, limit: Limit): ScaleDef {
  return {
    id,
    kind: 'voltage',
    zones: ['low', 'ok', 'high'],
    build(context) {
      const { inputs, result } = limitsOf(context);
      const target = (result.ok ? result.out[limit] : undefined) ?? 0;
      // Over the target is what hurts a cell when charging; a low cut or a restart may be set higher, never lower.
      const { above, below } = cellSlack;
      const [down, up] = limit === 'cutVolts' || limit === 'restartVolts' ? [above, below] : [below, above];
      const params = {
        target,
        cells: inputs.cells,
        low: target - down * inputs.cells,
        high: target + up * inputs.cells,
      };
      return {
        ok: true,
        scale: scaleOf(
          id,
          'voltage',
          [
            ['low', params.low],
            ['ok', params.high],
            ['high', null],
          ],
          {
            expected: 'ok',
            nominal: target,
            why: [{ id: 'expected.link.readBack', params }],
            uses: params,
          },
        ),
      };
    },
  };
}

export const byVoltageScales: readonly ScaleDef[] = [
  readBack('link-set-charge', 'chargeVolts'),
  readBack('link-set-float', 'floatVolts'),
  readBack('link-set-cut', 'cutVolts'),
  readBack('link-set-restart', 'restartVolts'),
];

/** Idle volts of a serial pair at each device alone, the same wire under the red lead: alike, or turned. */
const biasCompare: WorkDef = {
  id: 'link-bias-compare',
  answers: ['same', 'opposite', 'one-biases', 'none-biases'],
  work({ outcomes, readings }) {
    const pack = outcomes['pack-bias'];
    const unit = outcomes['unit-bias'];
    const packVolts = readings['pack-bias.volts'];
    const unitVolts = readings['unit-bias.volts'];
    if (pack === undefined || unit === undefined || packVolts === undefined || unitVolts === undefined)
      return { ok: false, missing: [] };
    const says = (outcome: string | undefined) => outcome === 'positive' || outcome === 'negative';
    const outcome =
      says(pack) && says(unit)
        ? pack === unit
          ? 'same'
          : 'opposite'
        : says(pack) || says(unit)
          ? 'one-biases'
          : 'none-biases';
    const params = { packVolts, unitVolts, threshold: 0.2 };
    return {
      ok: true,
      outcome,
      use: { worksheet: 'link-ends', inputs: { resistors: 2, endOhms: 120, supplyVolts: 5 } },
      says: [{ id: `expected.link.bias.${outcome}`, params }],
    };
  },
};

export const linkWorks: readonly WorkDef[] = [byVoltage, biasCompare];
