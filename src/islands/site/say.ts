import { formatAsTyped, formatQuantity } from '../../quantity/format.ts';
import type { UnitSystem } from '../../quantity/kinds.ts';
import type { MessageRef } from '../../quantity/message.ts';
import { readFact, readNumberFact, unitOfFact } from '../../site/draft.ts';
import type { Fact } from '../../site/facts.ts';
import { quantityMessages } from '../../words/en/quantity.ts';
import { factLabel, siteMessages, siteWords } from '../../words/en/site.ts';
import { choiceWords, factWords } from '../../words/en/site-facts.ts';

/** The sentence of a message about a typed number or a site sheet. */
export function say(message: MessageRef): string {
  const words = siteMessages[message.id] ?? quantityMessages[message.id];
  if (!words) throw new Error(`no words for ${message.id}`);
  return words(message.params ?? {});
}

/** The same sentence in an error summary, which must say what field it speaks of. */
export function sayOf(message: MessageRef, concreteId: string): string {
  const sentence = say(message);
  return message.id.startsWith('quantity.') ? `${factLabel(concreteId)}: ${sentence}` : sentence;
}

/** A fact's label with its unit, as it stands over the box; without the row, which the heading names. */
export function boxLabel(fact: Fact, units: UnitSystem): string {
  const label = factWords[fact.id]?.label ?? fact.id;
  const unit = unitOfFact(fact, units);
  return unit === '' ? label : `${label} (${unit})`;
}

export const hintOf = (fact: Fact): string | undefined => factWords[fact.id]?.hint;

export interface Option {
  value: string;
  label: string;
}

/** The answers of a choice or a yes/no. */
export function optionsOf(fact: Fact): Option[] {
  if (fact.answer.type === 'yesNo') {
    return [
      { value: 'yes', label: siteWords.yes },
      { value: 'no', label: siteWords.no },
    ];
  }
  if (fact.answer.type !== 'choice') return [];
  return fact.answer.choices.map((choice) => ({
    value: String(choice),
    label: choiceWords[fact.id]?.[String(choice)] ?? String(choice),
  }));
}

/** What was understood of a typed number, in the unit it was typed in and in the usual one; empty while nothing was. */
export function echoOf(fact: Fact, text: string, units: UnitSystem): string {
  if (fact.answer.type !== 'number' || text.trim() === '' || !readFact(fact, text, units).ok) return '';
  const reading = readNumberFact(fact, text, units);
  if (!reading.ok) return '';
  const { kind } = fact.answer;
  const typed = formatAsTyped(reading.value, reading.resolution, reading.unit, kind);
  const usual = formatQuantity(reading.value, kind, {
    system: units,
    unit: kind === 'wireSize' ? undefined : unitOfFact(fact, units),
  });
  const same = !reading.unitTyped || reading.unit === unitOfFact(fact, units) || typed === usual;
  return siteWords.readAs(same ? typed : `${typed} = ${usual}`);
}

/** The keypad a box asks for: decimals only where no sign can be needed, since phone keypads lack a minus. */
export function keypadOf(fact: Fact): 'decimal' | 'numeric' | undefined {
  const { answer } = fact;
  if (answer.type !== 'number' || answer.min < 0 || answer.kind === 'wireSize') return undefined;
  if (answer.kind === 'temperature') return undefined;
  return answer.kind === 'count' ? 'numeric' : 'decimal';
}

/** An id for the box of a concrete fact. */
export const boxId = (concreteId: string): string => `f-${concreteId.replace(/[^\w]+/g, '-')}`;
