import type { Block } from '../../../../shared/messages.js';

/** A button that leads to a look. */
export function look(label: string, name: string): readonly Block[] {
  return [
    {
      type: 'choices',
      prompt: null,
      choices: [{ label, action: { kind: 'look', name, args: {} }, main: true }],
    },
  ];
}
