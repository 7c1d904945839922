/** What every trial of a promise takes and gives, so that one command can run and print them all. */

export interface TrialOptions {
  /** Where the app as built is served, with a slash at the end. */
  url: string;
  /** Gives the same moments, faults and inputs again. */
  seed: number;
  /** How often the browser is killed. */
  kills: number;
}

/** One row of the table that `npm run trials` prints. */
export interface Line {
  /** A few words, the same in all lines of one promise. */
  promise: string;
  /** What was done to it. */
  tried: string;
  cases: number;
  /** What came out wrong, each in a sentence; none if the promise holds. */
  faults: readonly string[];
  /** Figures worth telling beside that. */
  figures?: string;
}

export type Trial = (options: TrialOptions) => Promise<Line[]>;
