/** The plant behind the guides: build one, fault it, settle it, probe it, look at it, work it. */
export { type Asked, type Asker, answerReading, extraProbe } from './answer.ts';
export {
  type Fault,
  type Frequency,
  type Group,
  groups,
  type Sampled,
  type Severity,
} from './faults/fault.ts';
export { faults, faultsOf, type SampleInput, samplePlant } from './faults/index.ts';
export { type Moment, measure, type Probe, type Taken } from './meter/measure.ts';
export type { Shown } from './meter/show.ts';
export { type MeterFunction, type MeterSpec, meterOf } from './meter/spec.ts';
export { type Random, randomFrom } from './numeric/random.ts';
export { type Displays, displays, eventsOf, type Looks, looks, temperature, underSky } from './observe.ts';
export { type Act, type Acted, advance, busCurve, type Consequence, operate, touchVolts } from './operate.ts';
export { firstSubject, type Subject } from './places.ts';
export { type Settled, settle } from './settle.ts';
export { type Conditions, soundPlant } from './site.ts';
export { asFound, type Plant, type PlantSpec, type PlantState } from './spec.ts';
