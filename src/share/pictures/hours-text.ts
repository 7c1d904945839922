import { MS_PER_HOUR } from "../../analysis/units.ts";
import { formatDuration } from "../../ui/format.ts";

/** Hours fished, written. To the whole millisecond first, as 1.15 hours must not lose a minute. */
export const hoursText = (hours: number): string => formatDuration(Math.round(hours * MS_PER_HOUR));
