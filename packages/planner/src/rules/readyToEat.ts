/** Hard rule: the first whole day something may be eaten is the one on which it is ripe; Infinity when it never is. */
export const firstReadyDay = (ripeDay: number): number => Math.max(0, Math.ceil(ripeDay - 1e-9));
