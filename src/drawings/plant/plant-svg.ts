import { drawing, el, type Spot } from '../svg.ts';
import {
  anchors,
  type Crop,
  codes,
  cropOfPoint,
  crops,
  type DrawnDevice,
  deviceMarks,
  type PartId,
  partAreas,
  partIds,
  zoneMarks,
} from './layout.ts';
import { bolt, clamp, code, dead, lead, padlock, unknown } from './marks.ts';
import { type AnchorId, type DrawnZone, type PointId, pointIds } from './points.ts';
import {
  acInRegion,
  acOutRegion,
  batteryRegion,
  type DeviceState,
  groundRegion,
  inverterRegion,
  type PlantView,
  pvRegion,
  type ZoneState,
} from './regions.ts';

/** The words of the drawing; one such object a language. */
export interface PlantWords {
  /** The letters on the lead tags. */
  leadLetters: { red: string; black: string };
  /** Names printed beside the parts, in lines. */
  parts: PlantView['names'];
  /** What the mark for "proved dead" reads. */
  deadMark: string;
  /** The sentences of the description that is read out. */
  sentences: {
    red: (anchor: AnchorId) => string;
    black: (anchor: AnchorId) => string;
    clamp: (anchor: AnchorId) => string;
    zone: (zone: DrawnZone, state: Exclude<ZoneState, 'plain'>) => string;
    device: (device: DrawnDevice, state: DeviceState) => string;
  };
}

export interface PlantOptions {
  /** Unique on the page; the ids of the title and description begin with it. */
  id: string;
  title: string;
  words: PlantWords;
  redAt?: AnchorId;
  blackAt?: AnchorId;
  clampAt?: AnchorId;
  /** The test point of this step: its letters are drawn heavy. */
  point?: PointId;
  zones?: PlantView['zones'];
  devices?: PlantView['devices'];
  /** The part that the step is about. */
  focus?: PartId;
  /** Where a tap on a part leads: an address and what it is called. Makes the drawing a way in. */
  links?: Readonly<Partial<Record<PartId, { href: string; name: string }>>>;
  /** What to show; by itself, the surroundings of `point`, or everything. */
  crop?: Crop;
  strings?: number;
  packs?: number;
  source?: boolean;
}

/** The plant as one line drawing, in SVG. No script, no style attribute, no colour without a shape. */
export function plantSvg(options: PlantOptions): string {
  const { words, point } = options;
  const view: PlantView = {
    zones: options.zones ?? {},
    devices: options.devices ?? {},
    strings: options.strings ?? 2,
    packs: options.packs ?? 2,
    source: options.source ?? true,
    names: words.parts,
  };
  const crop = options.crop ?? (point ? cropOfPoint[point] : 'all');
  const links = options.links ?? {};
  return drawing(
    {
      className: `pd pd-crop-${crop}`,
      viewBox: crops[crop],
      id: options.id,
      title: options.title,
      desc: describe(options),
      interactive: partIds.some((id) => links[id]),
    },
    options.focus ? focusRing(options.focus) : '',
    groundRegion(view),
    ...regionsOf[crop].map((region) => region(view)),
    inverterRegion(view),
    ...stateMarks(view, words, crop),
    ...pointIds
      .filter((id) => isShown(id, crop) && (view.source || id !== 'A'))
      .map((id) => code(codes[id], id, id === point)),
    options.clampAt ? clamp(anchors[options.clampAt], clampOffset(options.clampAt)) : '',
    options.blackAt ? lead(anchors[options.blackAt], 'black', words.leadLetters.black) : '',
    options.redAt ? lead(anchors[options.redAt], 'red', words.leadLetters.red) : '',
    ...partIds.flatMap((id) => (links[id] ? [partLink(id, links[id])] : [])),
  );
}

/** The regions drawn in each crop, so that no half conductor hangs at an edge. */
const regionsOf: Readonly<Record<Crop, readonly ((view: PlantView) => string)[]>> = {
  all: [pvRegion, acInRegion, batteryRegion, acOutRegion],
  pv: [pvRegion],
  battery: [batteryRegion],
  acIn: [acInRegion],
  acOut: [acOutRegion],
  ac: [acInRegion, acOutRegion],
};

/** A test point's letters are printed where its region is drawn; the ground's own stand in every lower crop. */
function isShown(id: PointId, crop: Crop): boolean {
  if (crop === 'all') return true;
  if (crop === 'ac') return cropOfPoint[id] === 'acIn' || cropOfPoint[id] === 'acOut';
  return cropOfPoint[id] === crop || (id === 'E' && crop === 'battery');
}

function inside(spot: Spot, crop: Crop): boolean {
  const [left, top, width, height] = crops[crop];
  return spot.x > left && spot.x < left + width && spot.y > top && spot.y < top + height;
}

/** A clamp sits on the conductor beside the terminal, on the side away from the switch. */
function clampOffset(anchor: AnchorId): number {
  if (anchor === 'G' || anchor === 'GA') return 0;
  return /^(P1|S2|A|R|B)/.test(anchor) ? -15 : 15;
}

function focusRing(part: PartId): string {
  const [left, top, width, height] = partAreas[part];
  return el('rect', { class: 'pd-focus', x: left, y: top, width, height, rx: 8 });
}

function partLink(part: PartId, link: { href: string; name: string }): string {
  const [left, top, width, height] = partAreas[part];
  return el(
    'a',
    { class: 'pd-link', href: link.href, 'aria-label': link.name, 'data-part': part },
    el('rect', { x: left, y: top, width, height, rx: 8 }),
  );
}

function stateMarks(view: PlantView, words: PlantWords, crop: Crop): string[] {
  const zones = Object.entries(view.zones).map(([zone, state]) => {
    const at = zoneMarks[zone as DrawnZone];
    if (!inside(at, crop)) return '';
    if (state === 'live') return bolt(at);
    if (state === 'dead') return dead(at, words.deadMark);
    return state === 'unknown' ? unknown(at) : '';
  });
  const devices = Object.entries(view.devices).map(([device, state]) => {
    const at = deviceMarks[device as DrawnDevice];
    return state === 'locked' && inside(at, crop) ? padlock(at) : '';
  });
  return [...zones, ...devices];
}

/** What the drawing shows, in sentences: leads first, then states. */
function describe({ words, redAt, blackAt, clampAt, zones = {}, devices = {} }: PlantOptions): string {
  const { sentences } = words;
  const said: string[] = [];
  if (redAt) said.push(sentences.red(redAt));
  if (blackAt) said.push(sentences.black(blackAt));
  if (clampAt) said.push(sentences.clamp(clampAt));
  for (const [zone, state] of Object.entries(zones)) {
    if (state !== 'plain') said.push(sentences.zone(zone as DrawnZone, state));
  }
  for (const [device, state] of Object.entries(devices)) {
    said.push(sentences.device(device as DrawnDevice, state));
  }
  return said.join(' ');
}
