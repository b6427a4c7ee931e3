// Text from a file made fit for a terminal: no control signs, no marks that turn the reading direction round.

export const printable = (text: string): string => text.replace(UNFIT, ' ');

/* eslint-disable no-control-regex -- these very signs are to be found */
const UNFIT = /[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g;
/* eslint-enable no-control-regex */
