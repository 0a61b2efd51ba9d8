/** Millimetres in one inch, exact by definition (international yard and pound agreement, 1959). */
export const mmPerInch = 25.4;
