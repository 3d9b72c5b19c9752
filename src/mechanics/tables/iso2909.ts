import { published, type Source } from "./source.ts";

/** Coefficients of a parabola a·Y² + b·Y + c, for mm²/s. */
export type Parabola = readonly [a: number, b: number, c: number];

/** L and H as parabolas of Y, for Y up to `upTo_mm2_s`; null leaves the last row open. */
export type IndexRow = {
  readonly upTo_mm2_s: number | null;
  readonly L: Parabola;
  readonly H: Parabola;
  readonly source: Source;
};

/** Below this viscosity at 100 °C no viscosity index is defined. ASTM D2270-10; ISO 2909:2002. */
export const leastForIndex_mm2_s = 2;

const POLYNOMIALS: Source = {
  document: "ISO 2909:2002, polynomials, within 0.11 % of the table of ASTM D2270",
  firmness: "from memory",
};
const ABOVE_70 = published("ASTM D2270-10, equations for more than 70 mm²/s at 100 °C");

const row = (upTo_mm2_s: number | null, L: Parabola, H: Parabola, source = POLYNOMIALS): IndexRow => ({
  upTo_mm2_s,
  L,
  H,
  source,
});

/** The parabolas that stand for the table of L and H, from thin to thick. */
export const indexRows: readonly IndexRow[] = [
  row(3.8, [1.14673, 1.7576, -0.109], [0.84155, 1.5521, -0.077]),
  row(4.4, [3.38095, -15.4952, 33.196], [0.78571, 1.7929, -0.183]),
  row(5, [2.5, -7.2143, 13.812], [0.82143, 1.5679, 0.119]),
  row(6.4, [0.101, 16.635, -45.469], [0.04985, 9.1613, -18.557]),
  row(7, [3.35714, -23.5643, 78.466], [0.22619, 7.7369, -16.656]),
  row(7.7, [0.01191, 21.475, -72.87], [0.79762, -0.7321, 14.61]),
  row(9, [0.41858, 16.1558, -56.04], [0.05794, 10.5156, -28.24]),
  row(12, [0.88779, 7.5527, -16.6], [0.26665, 6.7015, -10.81]),
  row(15, [0.7672, 10.7972, -38.18], [0.20073, 8.4658, -22.49]),
  row(18, [0.97305, 5.3135, -2.2], [0.28889, 5.9741, -4.93]),
  row(22, [0.97256, 5.25, -0.98], [0.24504, 7.416, -16.73]),
  row(28, [0.91413, 7.4759, -21.82], [0.20323, 9.1267, -34.23]),
  row(40, [0.87031, 9.7157, -50.77], [0.18411, 10.1015, -46.75]),
  row(55, [0.84703, 12.6752, -133.31], [0.17029, 11.4866, -80.62]),
  row(70, [0.85921, 11.1009, -83.19], [0.1713, 11.368, -76.94]),
  row(null, [0.8353, 14.67, -216], [0.1684, 11.85, -97], ABOVE_70),
];
