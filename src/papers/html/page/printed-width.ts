// How wide a drawing on a printed page is, in pixels of 1/96 inch: A4 less the margins of the page, 180 mm. Drawn so wide,
// its words are printed in the size that they were given.

export const PRINTED_WIDTH = 680;
