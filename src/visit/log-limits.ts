/** Version of the log's format. A change that old readers would misread raises it. */
export const logVersion = 1;

/** The longest note, text typed and label kept, in characters. */
export const longestNote = 2000;
export const longestTyped = 200;
export const longestLabel = 400;
