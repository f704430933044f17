import { leadsOf } from '../../components/guide/leads.ts';
import type { DrawnDevice } from '../../drawings/plant/layout.ts';
import { plantSvg } from '../../drawings/plant/plant-svg.ts';
import { type AnchorId, type DrawnZone, type PointId, testPoints } from '../../drawings/plant/points.ts';
import type { DeviceState, ZoneState } from '../../drawings/plant/regions.ts';
import type { Reading } from '../../guide/vocabulary.ts';
import { type Energy, hasDevice } from '../../safety/energy.ts';
import type { Zone } from '../../safety/plant.ts';
import { provedDead } from '../../safety/states.ts';
import type { RunState } from '../../visit/fold.ts';
import { plantWords } from '../../words/en/points.ts';
import { freshId, svgElement } from './dom.ts';

const drawnDevices: readonly DrawnDevice[] = ['packs', 'main', 'pv', 'acIn', 'acOut'];

function deviceStates(energy: Energy): Partial<Record<DrawnDevice, DeviceState>> {
  return Object.fromEntries(
    drawnDevices.map((device) => [
      device,
      hasDevice(energy.closed, device) ? 'closed' : hasDevice(energy.held, device) ? 'locked' : 'open',
    ]),
  );
}

/** Zones that are live for certain; of the others only a proof says more than "treat as live". */
function isLive(energy: Energy, zone: DrawnZone): boolean {
  const closed = (device: DrawnDevice) => hasDevice(energy.closed, device);
  const battery = closed('packs') && closed('main');
  switch (zone) {
    case 'packPost':
    case 'pvString':
      return true;
    case 'battBus':
      return closed('packs');
    case 'invDC':
      return battery;
    case 'pvBus':
      return closed('pv');
    case 'acOut':
      return energy.inverterOn && battery;
    case 'loadPanel':
      return energy.inverterOn && battery && closed('acOut');
    case 'acIn':
      return energy.sourceRuns && closed('acIn');
    case 'inlet':
      return energy.sourceRuns;
    default:
      return false;
  }
}

const drawnZones: readonly DrawnZone[] = [
  'packPost',
  'battBus',
  'invDC',
  'pvString',
  'pvBus',
  'acOut',
  'loadPanel',
  'acIn',
  'inlet',
];

function zoneStates(energy: Energy): Partial<Record<DrawnZone, ZoneState>> {
  const stateOf = (zone: DrawnZone): ZoneState =>
    isLive(energy, zone) ? 'live' : provedDead(energy, zone as Zone) ? 'dead' : 'unknown';
  return Object.fromEntries(drawnZones.map((zone) => [zone, stateOf(zone)]));
}

/** The plant as the run knows it, with the leads of one reading on it. */
export function plantDrawing(
  { sheet, energy, variant }: RunState,
  title: string,
  reading: Reading | undefined,
  at: readonly Zone[],
): SVGElement {
  const leads = reading && leadsOf(reading);
  const point = reading && reading.point in testPoints ? (reading.point as PointId) : undefined;
  const anchor = (id: string | undefined) => id as AnchorId | undefined;
  const nothingOpen = at.length === 0 && !leads;
  return svgElement(
    plantSvg({
      id: freshId('plant'),
      title,
      words: plantWords,
      zones: nothingOpen ? {} : zoneStates(energy),
      devices: deviceStates(energy),
      strings: Math.max(1, sheet.strings.length),
      packs: sheet.battery.packs,
      source: variant.source !== 'none',
      ...(point ? { point } : {}),
      ...(leads?.red ? { redAt: anchor(leads.red)! } : {}),
      ...(leads?.black ? { blackAt: anchor(leads.black)! } : {}),
      ...(leads?.clamp ? { clampAt: anchor(leads.clamp)! } : {}),
    }),
  );
}
