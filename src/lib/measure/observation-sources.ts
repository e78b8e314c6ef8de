/** Where the rows of the observations were read. */
export const newDressmaker = 'The New Dressmaker, 1921';
export const dressmaker = 'The Dressmaker, 2nd ed., c. 1916';
export const fittingDresses = 'Fitting Dresses, US Department of Agriculture, rev. 1946';
export const garmentFitting = 'Garment Fitting, E.M. 2246, 1962';
export const swayBack = 'Sway back alterations, an analysis, 2010';
export const practice = 'common practice, no source';
