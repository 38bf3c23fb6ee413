/** Published limits of Discord (its API documentation, August 2026), in characters or pieces. */
export const limits = {
  content: 2000,
  /** All text of a message of laid-out parts, labels counted in to be sure. */
  laidOut: 4000,
  parts: 40,
  rowButtons: 5,
  rows: 5,
  label: 80,
  customId: 100,
  selectOptions: 25,
  optionText: 100,
  placeholder: 150,
  modalTitle: 45,
  modalParts: 5,
  fieldLabel: 45,
  fieldDescription: 100,
  textInput: 4000,
  inputPlaceholder: 100,
  nonce: 25,
  commandName: 32,
  commandWords: 100,
  commandOptions: 25,
  choiceName: 100,
  threadName: 100,
} as const;

/** When an answer that isn't there yet is deferred, in milliseconds; Discord gives up at 3000. */
export const deferAfter = 1500;

/** The least age that Discord asks for in its terms; some countries ask for more. */
export const minimumAge = 13;

/** How many interactions are answered at the same time; a class of thirty presses far less, and each takes memory. */
export const mostInFlight = 200;
