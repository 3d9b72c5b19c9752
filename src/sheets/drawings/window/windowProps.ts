/** The figures of one torque window. `floor_Nm` is null where nothing need hold the plug against shaking loose. */
export type WindowProps = {
  readonly need_Nm: number;
  readonly limit_Nm: number;
  readonly cautiousRule_Nm: number;
  readonly medianStrip_Nm: number;
  readonly floor_Nm: number | null;
  readonly advice_Nm: number | null;
  readonly bookFigures: readonly { readonly torque_Nm: number; readonly label: string }[];
  readonly wrench: { readonly name: string; readonly least_Nm: number; readonly most_Nm: number } | null;
  readonly caption: string;
};
