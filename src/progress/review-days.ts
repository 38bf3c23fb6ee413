/** Days after the first meeting on which a confirmed word comes back. Ours: about ten meetings make a word known, and these are the first four. */
export const reviewDays = [1, 3, 7, 21] as const;
