/** The server's own limits; written here anew, so that a wrong one of ours is found. */
export const textLimitOfServer = 4096;
export const captionLimitOfServer = 1024;

/** Length as the server measures it: Unicode code points. */
export function pointsIn(text: string): number {
  return Array.from(text).length;
}
