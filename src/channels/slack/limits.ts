/** Published limits of Block Kit and modals (Slack's reference pages on blocks, elements, composition objects and views), in characters or counts. */
export const limits = {
  blocksOfMessage: 50,
  blocksOfView: 100,
  header: 150,
  buttonText: 75,
  buttonValue: 2000,
  buttonsInRow: 25,
  label: 2000,
  input: 3000,
  placeholder: 150,
  optionText: 75,
  optionValue: 150,
  options: 100,
  radioButtons: 10,
  blockId: 255,
  actionId: 255,
  callbackId: 255,
  metadata: 3000,
  viewTitle: 24,
  viewButton: 24,
  /** Not published: about 13,200 characters over all blocks are refused, so less is sent. */
  allText: 12_000,
  /** Ours: a rich text block's length isn't published, so it is kept to a section's. */
  text: 3000,
  /** Ours: five buttons stand beside each other on a phone. */
  row: 5,
} as const;
