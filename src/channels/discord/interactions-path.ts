/** Where Discord's interactions arrive over HTTP. */
export const interactionsPath = '/discord/interactions';
