import { el, label, line } from '../svg.ts';
import { type DrawnDevice, type PartId, x, y } from './layout.ts';
import type { DrawnZone } from './points.ts';
import {
  cells,
  converter,
  earth,
  fuse,
  gang,
  inlet,
  joint,
  light,
  machine,
  pvModule,
  receptacle,
  switchPole,
  terminal,
} from './symbols.ts';

/** What is known of the conductors of a zone. `plain`: nothing is said, as on the front page. */
export type ZoneState = 'live' | 'dead' | 'unknown' | 'plain';
/** How a device is drawn. `locked` is open with its padlock on. */
export type DeviceState = 'closed' | 'open' | 'locked';

/** What the regions need to draw themselves. */
export interface PlantView {
  zones: Readonly<Partial<Record<DrawnZone, ZoneState>>>;
  devices: Readonly<Partial<Record<DrawnDevice, DeviceState>>>;
  /** How many identical PV strings and battery packs this site has, 1 or more. */
  strings: number;
  packs: number;
  /** There is a second source on the AC input. */
  source: boolean;
  /** Names printed on the parts, in lines. */
  names: Readonly<Record<PartId | 'fuse' | 'pack', readonly string[]>>;
}

function wire(view: PlantView, zone: DrawnZone, ...xy: number[]): string {
  return line(`pd-wire pd-${view.zones[zone] ?? 'plain'}`, ...xy);
}

function isOpen(view: PlantView, device: DrawnDevice): boolean {
  const state = view.devices[device] ?? 'closed';
  return state !== 'closed';
}

/** PV strings, their isolator, and the run to the inverter. */
export function pvRegion(view: PlantView): string {
  const open = isOpen(view, 'pv');
  const top = y.modules;
  const echo =
    view.strings > 1
      ? el('rect', { class: 'pd-echo', x: x.plus + 8, y: top - 7, width: x.minus - x.plus, height: 36 })
      : '';
  return [
    wire(view, 'pvString', x.plus, top + 18, x.plus, y.p1),
    wire(view, 'pvString', x.minus, top + 18, x.minus, y.p1),
    wire(view, 'pvString', x.plus, y.p1, x.plus, y.p1 + 12),
    wire(view, 'pvString', x.minus, y.p1, x.minus, y.p1 + 12),
    echo,
    pvModule(x.plus - 6, top, 36, 36),
    el('path', { class: 'pd-gang', d: `M${x.plus + 30} ${top + 18}H${x.minus - 30}` }),
    pvModule(x.minus - 30, top, 36, 36),
    light(x.plus - 14, top + 2),
    switchPole(x.plus, y.p1 + 12, y.p2 - 12, open, 'isolator'),
    switchPole(x.minus, y.p1 + 12, y.p2 - 12, open, 'isolator', 1),
    gang(x.plus + (open ? -8 : 0), x.minus + (open ? 8 : 0), y.p1 + 36),
    wire(view, 'pvBus', x.plus, y.p2 - 12, x.plus, y.inverterTop),
    wire(view, 'pvBus', x.minus, y.p2 - 12, x.minus, y.inverterTop),
    terminal(x.plus, y.p1),
    terminal(x.minus, y.p1),
    terminal(x.plus, y.p2),
    terminal(x.minus, y.p2),
    label('pd-name', 108, 24, view.names.strings),
    label('pd-name', 8, y.p1 + 30, view.names.pvIsolator),
  ].join('');
}

/** The inverter with its terminals. */
export function inverterRegion(view: PlantView): string {
  const top = y.inverterTop;
  const bottom = y.inverterBottom;
  const text = (atX: number, atY: number, words: string) => label('pd-pole', atX, atY, words, 'middle');
  return [
    el('rect', { class: 'pd-body pd-case', x: 40, y: top, width: 356, height: bottom - top, rx: 6 }),
    converter(100, top + 26, 44),
    label('pd-name pd-strong', 238, top + 55, view.names.inverter, 'middle'),
    text(x.plus, top + 22, 'PV+'),
    text(x.minus, top + 22, 'PV−'),
    text(x.l1, top + 22, 'L1'),
    text(x.neutral, top + 22, 'N'),
    text(x.l2, top + 22, 'L2'),
    text(x.plus, bottom - 12, '+'),
    text(x.minus, bottom - 12, '−'),
    text(x.l1, bottom - 12, 'L1'),
    text(x.neutral, bottom - 12, 'N'),
    text(x.l2, bottom - 12, 'L2'),
    ...[x.plus, x.minus, x.l1, x.neutral, x.l2].flatMap((atX) => [terminal(atX, top), terminal(atX, bottom)]),
  ].join('');
}

/** Main switch, fuse, bus bars, packs and the data link. */
export function batteryRegion(view: PlantView): string {
  const open = isOpen(view, 'main');
  const several = view.packs > 1;
  const packs = several ? [44, 140] : [44];
  return [
    wire(view, 'invDC', x.plus, y.inverterBottom, x.plus, y.s2 + 12),
    wire(view, 'invDC', x.minus, y.inverterBottom, x.minus, y.s2 + 12),
    switchPole(x.plus, y.s2 + 12, y.s1 - 12, open, 'isolator'),
    switchPole(x.minus, y.s2 + 12, y.s1 - 12, open, 'isolator', 1),
    gang(x.plus + (open ? -8 : 0), x.minus + (open ? 8 : 0), y.s2 + 34),
    wire(view, 'battBus', x.plus, y.s1 - 12, x.plus, 458),
    wire(view, 'battBus', x.plus, 486, x.plus, y.plusBus),
    fuse(x.plus, 458, 486),
    wire(view, 'battBus', x.minus, y.s1 - 12, x.minus, y.minusBus),
    wire(view, 'battBus', 44, y.plusBus, several ? 140 : x.plus, y.plusBus),
    wire(view, 'battBus', 92, y.minusBus, several ? 188 : x.minus, y.minusBus),
    ...packs.map((left, i) => pack(view, left, i + 1)),
    joint(x.plus, y.plusBus),
    joint(x.minus, y.minusBus),
    terminal(x.plus, y.s2),
    terminal(x.minus, y.s2),
    terminal(x.plus, y.s1),
    terminal(x.minus, y.s1),
    label('pd-name', 8, y.s2 + 24, view.names.mainSwitch),
    label('pd-name', x.plus - 16, 477, view.names.fuse, 'end'),
    several ? label('pd-name', 8, 656, view.names.packs) : label('pd-name', 128, 634, view.names.pack),
    dataLink(view, several),
  ].join('');
}

/** One pack: its breaker, its two posts, its cells. */
function pack(view: PlantView, left: number, number: number): string {
  const right = left + 48;
  return [
    wire(view, 'battBus', left, y.plusBus, left, 534),
    switchPole(left, 534, 562, isOpen(view, 'packs'), 'breaker'),
    wire(view, 'packPost', left, 562, left, y.posts),
    wire(view, 'battBus', right, y.minusBus, right, 552),
    wire(view, 'packPost', right, 552, right, y.posts),
    el('rect', {
      class: 'pd-body',
      x: left - 16,
      y: y.posts,
      width: 80,
      height: y.packBottom - y.posts,
      rx: 4,
    }),
    cells(left, right, y.posts + 18),
    label('pd-pole', left + 24, y.packBottom - 8, String(number), 'middle'),
    terminal(left, y.posts),
    terminal(right, y.posts),
    joint(left, y.plusBus),
    joint(right, y.minusBus),
  ].join('');
}

function dataLink(view: PlantView, several: boolean): string {
  const end = several ? `V${y.posts}` : 'V612H108';
  return [
    el('path', { class: 'pd-data', d: `M${x.link} ${y.inverterBottom}${end}` }),
    el('rect', { class: 'pd-body', x: x.link - 12, y: 342, width: 24, height: 20, rx: 2 }),
    joint(x.link - 5, 352),
    joint(x.link + 5, 352),
    label('pd-name', x.link - 8, 452, view.names.dataLink, 'end'),
  ].join('');
}

/** Second source, inlet and input breaker. */
export function acInRegion(view: PlantView): string {
  if (!view.source) return '';
  const open = isOpen(view, 'acIn');
  const fan = (atX: number, fromX: number) => wire(view, 'inlet', fromX, 76, fromX, 96, atX, 96, atX, 108);
  return [
    fan(x.l1, x.neutral - 14),
    wire(view, 'inlet', x.neutral, 80, x.neutral, 108),
    fan(x.l2, x.neutral + 14),
    machine(x.neutral, 56, 26, 'G'),
    ...[x.l1, x.neutral, x.l2].map((atX) => inlet(atX, 120)),
    ...[x.l1, x.l2].map((atX) => wire(view, 'inlet', atX, 120, atX, 154)),
    wire(view, 'inlet', x.neutral, 120, x.neutral, 154),
    switchPole(x.l1, 154, 192, open, 'breaker'),
    switchPole(x.l2, 154, 192, open, 'breaker'),
    gang(x.l1 - (open ? 8 : 0), x.l2 - (open ? 8 : 0), 174),
    wire(view, 'acIn', x.neutral, 154, x.neutral, y.inverterTop),
    ...[x.l1, x.l2].map((atX) => wire(view, 'acIn', atX, 192, atX, y.inverterTop)),
    label('pd-name', x.neutral + 34, 30, view.names.generator),
  ].join('');
}

/** Output breaker, load panel, receptacle and a 240 V load. */
export function acOutRegion(view: PlantView): string {
  const open = isOpen(view, 'acOut');
  const { l1, neutral, l2 } = x;
  const branch = (atX: number, from: number, to: number) =>
    wire(view, 'loadPanel', atX, from, atX, 462) +
    switchPole(atX, 462, 486, false, 'breaker') +
    wire(view, 'loadPanel', atX, 486, atX, to);
  return [
    ...[l1, l2].map((atX) => wire(view, 'acOut', atX, y.inverterBottom, atX, 354)),
    wire(view, 'acOut', neutral, y.inverterBottom, neutral, y.panelTop),
    switchPole(l1, 354, 390, open, 'breaker'),
    switchPole(l2, 354, 390, open, 'breaker'),
    gang(l1 - (open ? 8 : 0), l2 - (open ? 8 : 0), 374),
    ...[l1, l2].map((atX) => wire(view, 'acOut', atX, 390, atX, y.panelTop)),
    el('rect', {
      class: 'pd-body pd-case',
      x: l1 - 16,
      y: y.panelTop,
      width: l2 - l1 + 36,
      height: y.panelBottom - y.panelTop,
      rx: 4,
    }),
    branch(l1, y.panelTop, 580),
    wire(view, 'loadPanel', neutral, y.panelTop, neutral, 580),
    branch(l2, y.panelTop, 538),
    wire(view, 'loadPanel', l2, 538, 390, 554, 390, 571),
    wire(view, 'loadPanel', l1, 446, 348, 446),
    joint(l1, 446),
    branch(348, 446, 538),
    wire(view, 'loadPanel', 348, 538, 370, 554, 370, 571),
    receptacle(l1 - 10, y.receptacle - 6, neutral - l1 + 20, 40),
    wire(view, 'loadPanel', l1, 548, l1 + 8, 572, l1 + 8, 588),
    wire(view, 'loadPanel', neutral, 548, neutral - 8, 572, neutral - 8, 588),
    machine(380, 590, 22, 'M'),
    ...[l1, neutral, l2].map((atX) => terminal(atX, y.panelTop)),
    label('pd-name', x.l2 + 14, 368, view.names.outputBreaker),
    label('pd-name', l2 + 28, 444, view.names.loadPanel),
    label('pd-name', 380, 634, view.names.loads, 'middle'),
  ].join('');
}

/** The equipment-grounding conductor, from the module frames to the ground bar. */
export function groundRegion(view: PlantView): string {
  const g = x.ground;
  return [
    el('path', { class: 'pd-earth', d: `M${x.minus + 6} ${y.modules + 26}H${g}V${y.inverterTop}` }),
    el('path', { class: 'pd-earth', d: `M${g} ${y.inverterBottom}V636` }),
    el('path', { class: 'pd-earth', d: `M${g} 494H${x.l1 - 16}` }),
    joint(g, 494),
    earth(g, 636),
    terminal(g, y.p1),
    label('pd-name', g + 22, 644, view.names.ground),
  ].join('');
}
