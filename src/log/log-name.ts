/** The database's name, the same in all tabs and their workers. */
export const LOG_NAME = "pegscribe";
