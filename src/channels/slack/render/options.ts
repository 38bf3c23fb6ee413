import type {
  Checkboxes,
  MultiStaticSelect,
  PlainTextOption,
  RadioButtons,
  StaticSelect,
} from '@slack/types';
import { limits } from '../limits.js';
import { beginning, parted, plain } from '../plain.js';
import { say } from '../words.js';
import { plainText } from './rich.js';

interface OptionSource {
  readonly value: string;
  readonly label: string;
  /** What stands around it in its text, by which two of the same label are told apart. */
  readonly beside: string | null;
}

/** From so many options on, two of the same label are told apart by their number, since what stands around them would be too much for a view. */
const manyOptions = 150;

function optionOf({ value, label, beside }: OptionSource, twice: boolean, nth: number): PlainTextOption {
  const bare = plain(label).replace(/\s+/gu, ' ').trim() || '…';
  const clean = nth > 1 ? `${bare} (${nth})` : bare;
  const [first = '', rest = ''] =
    clean.length > limits.optionText && clean.length <= 2 * limits.optionText
      ? [
          parted(clean, limits.optionText)[0] ?? '',
          clean.slice((parted(clean, limits.optionText)[0] ?? '').length),
        ]
      : [beginning(clean, limits.optionText)];
  const around = twice && beside !== null ? plain(beside).replace(/\s+/gu, ' ').trim() : '';
  const more = rest !== '' ? rest : around === '' ? '' : `…${around}…`;
  return {
    text: plainText(first.trimEnd() || '…'),
    value,
    ...(more === '' ? {} : { description: plainText(beginning(more, limits.optionText)) }),
  };
}

/** Options of a field; `whole` are the texts that an option can't hold and that have to stand above it. Values that Slack can't carry (over 150 characters) are left out by the shape of our ids. */
export function optionsOf(sources: readonly OptionSource[]): {
  readonly options: readonly PlainTextOption[];
  readonly whole: readonly string[];
} {
  const counts = new Map<string, number>();
  for (const { label } of sources) counts.set(label, (counts.get(label) ?? 0) + 1);
  const usable = sources.filter(({ value }) => value !== '' && value.length <= limits.optionValue);
  const many = usable.length > manyOptions;
  const before = new Map<string, number>();
  const nthOf = (label: string): number => {
    before.set(label, (before.get(label) ?? 0) + 1);
    return many ? (before.get(label) ?? 1) : 1;
  };
  return {
    options: usable.map((one) => optionOf(one, !many && (counts.get(one.label) ?? 0) > 1, nthOf(one.label))),
    whole: usable
      .map(({ label }) => plain(label).replace(/\s+/gu, ' ').trim())
      .filter((label) => label.length > 2 * limits.optionText),
  };
}

function groupsOf(options: readonly PlainTextOption[]): NonNullable<StaticSelect['option_groups']> {
  const groups: NonNullable<StaticSelect['option_groups']> = [];
  for (let at = 0; at < options.length; at += limits.options) {
    const some = options.slice(at, at + limits.options);
    const label = say('letters from to', { from: at + 1, to: at + some.length });
    groups.push({ label: plainText(label), options: some });
  }
  return groups.slice(0, limits.options);
}

/** An element to pick from: buttons where there are few, else a list, in groups where there are more than a list may hold. */
export function selectOf(
  options: readonly PlainTextOption[],
  value: string | undefined,
  many: boolean,
): Checkboxes | RadioButtons | StaticSelect | MultiStaticSelect {
  const few = options.length <= limits.radioButtons;
  const wanted = many ? (value ?? '').split(',') : [value];
  const chosen = options.filter((one) => wanted.includes(one.value));
  const [first] = chosen;
  if (few) {
    return many
      ? {
          type: 'checkboxes',
          action_id: 'in',
          options: [...options],
          ...(first ? { initial_options: chosen } : {}),
        }
      : {
          type: 'radio_buttons',
          action_id: 'in',
          options: [...options],
          ...(first ? { initial_option: first } : {}),
        };
  }
  const list =
    options.length <= limits.options ? { options: [...options] } : { option_groups: groupsOf(options) };
  const placeholder = plainText(say('pick one'));
  return many
    ? {
        type: 'multi_static_select',
        action_id: 'in',
        placeholder,
        ...list,
        ...(first ? { initial_options: chosen } : {}),
      }
    : {
        type: 'static_select',
        action_id: 'in',
        placeholder,
        ...list,
        ...(first ? { initial_option: first } : {}),
      };
}
