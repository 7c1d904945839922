/** Small controls. */
export const controlWords = {
  choose: "Choose",
  notSaid: "not said",
  down: (label: string, step: string) => `${label} down ${step}`,
  up: (label: string, step: string) => `${label} up ${step}`,
  none: (label: string) => `No ${label.toLowerCase()}`,
  part: (label: string, unit: string) => `${label}, ${unit}`,
} as const;
