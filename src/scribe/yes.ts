import { reviewWords } from "../words/review.ts";

/** Whether a line says no more than that what was asked is right. */
export const isYes = (line: string): boolean =>
  reviewWords.yes.includes(
    line
      .toLowerCase()
      .replaceAll("’", "'")
      .replaceAll(/[^a-z' ]/g, " ")
      .replaceAll(/ +/g, " ")
      .trim(),
  );
