/** Fresh water at the pressure of the air, 0 to 40 °C. */

export interface Water {
  /** kg/m³ and Pa·s. */
  density: number;
  viscosity: number;
}

const KELVIN_AT_ZERO_C = 273.15;

/**
 * Density in kg/m³ at a temperature in °C. Source: Tanaka et al. 2001, "Recommended table for the
 * density of water between 0 °C and 40 °C", Metrologia 38:301 (coefficients from memory, held
 * against IAPWS-95).
 */
const densityAt = (celsius: number): number =>
  999.97495 *
  (1 - ((celsius - 3.983035) ** 2 * (celsius + 301.797)) / (522528.9 * (celsius + 69.34881)));

/**
 * Viscosity in Pa·s at a temperature in °C. Source: IAPWS SR6-08, "Revised Supplementary Release on
 * Properties of Liquid Water at 0.1 MPa" (coefficients from memory, held against R12-08).
 */
function viscosityAt(celsius: number): number {
  const t = (celsius + KELVIN_AT_ZERO_C) / 300;
  return (
    1e-6 * (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40)
  );
}

/** Water at a temperature from 0 to 40 °C. */
export const waterAt = (celsius: number): Water => ({
  density: densityAt(celsius),
  viscosity: viscosityAt(celsius),
});
