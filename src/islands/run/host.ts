import type { MessageRef } from '../../quantity/message.ts';
import type { RunState } from '../../visit/fold.ts';
import type { Input, InputProblem } from '../../visit/input.ts';
import type { Knowledge } from '../../visit/knowledge.ts';
import type { StepView } from '../../visit/step.ts';
import type { Plate } from './plate.ts';

/** What the parts of a run's page may ask of it. */
export interface Host {
  readonly know: Knowledge;
  readonly state: RunState;
  /** Hands an input in; the page goes on by itself. False when it was refused. */
  give(input: Input): Promise<boolean>;
  titleOf(block: string): string;
  /** Says something to those who cannot see the screen. */
  announce(text: string): void;
}

/** The controls of the present step. */
export interface Controls {
  elements: readonly HTMLElement[];
  /** Shows what is wrong with an input; what was typed stays. */
  showProblems?(
    problems: readonly InputProblem[],
    say: (message: MessageRef) => string,
  ): readonly { text: string; go: () => void }[];
  /** The run has changed and still stands at this step. */
  update?(view: StepView): void;
  /** Called each second. */
  tick?(nowMs: number): void;
}

export type BuildControls = (host: Host, plate: Plate, view: StepView) => Controls;

/** A field of a step that a reading is typed in. */
export interface ReadingField {
  id: string;
  element: HTMLElement;
  /** Shows what is wrong with it; nothing takes the message away. */
  showProblem(message: string): void;
  focus(): void;
  /** The id to link to in an error summary. */
  inputId: string;
}
