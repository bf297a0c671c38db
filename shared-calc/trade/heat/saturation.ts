/*
 * The saturation line of water: IAPWS R7-97(2012), industrial formulation 1997, region 4 (equations 30 and 31). Worked
 * out in MPa and K as printed there; results in kPa and degC.
 */

const n = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

const KELVIN_AT_ZERO = 273.15;
const COLDEST_K = 273.15;
const HOTTEST_K = 647.096;

export const LEAST_STEAM_KPA = 0.611213;
export const MOST_STEAM_KPA = 22064;

/** kPa at which water boils at this temperature in degC; `undefined` below 0 degC and above 373.946 degC. */
export function saturationPressureKpa(degC: number): number | undefined {
  const kelvin = degC + KELVIN_AT_ZERO;
  if (!(kelvin >= COLDEST_K && kelvin <= HOTTEST_K)) return undefined;
  const theta = kelvin + n[8] / (kelvin - n[9]);
  const a = theta ** 2 + n[0] * theta + n[1];
  const b = n[2] * theta ** 2 + n[3] * theta + n[4];
  const c = n[5] * theta ** 2 + n[6] * theta + n[7];
  return ((2 * c) / (-b + Math.sqrt(b ** 2 - 4 * a * c))) ** 4 * 1000;
}

/** Temperature in degC at which water boils under this pressure; `undefined` outside 0.611213 to 22,064 kPa. */
export function saturationTemperatureC(kPa: number): number | undefined {
  if (!(kPa >= LEAST_STEAM_KPA && kPa <= MOST_STEAM_KPA)) return undefined;
  const beta = (kPa / 1000) ** 0.25;
  const e = beta ** 2 + n[2] * beta + n[5];
  const f = n[0] * beta ** 2 + n[3] * beta + n[6];
  const g = n[1] * beta ** 2 + n[4] * beta + n[7];
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  const sum = n[9] + d;
  return (sum - Math.sqrt(sum ** 2 - 4 * (n[8] + n[9] * d))) / 2 - KELVIN_AT_ZERO;
}
