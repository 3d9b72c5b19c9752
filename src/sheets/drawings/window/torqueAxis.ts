/** A torque axis from 0: where a torque stands, and the torques that get a tick. */
export type TorqueAxis = {
  readonly to_Nm: number;
  readonly ticks_Nm: readonly number[];
  readonly at: (torque_Nm: number) => number;
};

/** An axis from `left` to `right` that shows every torque given, with round ticks at least `apart` from each other. */
export function torqueAxis(torques_Nm: readonly number[], left: number, right: number, apart: number): TorqueAxis {
  const to_Nm = Math.max(4, headroom * Math.max(0, ...torques_Nm));
  const perNm = (right - left) / to_Nm;
  const step = roundSteps(to_Nm).find((it) => it * perNm >= apart) ?? to_Nm;
  const ticks_Nm = Array.from({ length: Math.floor(to_Nm / step + 1e-9) + 1 }, (_, i) => i * step);
  return { to_Nm, ticks_Nm, at: (torque_Nm) => left + Math.min(Math.max(torque_Nm, 0), to_Nm) * perNm };
}

/** The axis goes a little beyond its last torque. */
const headroom = 1.07;

/** 1, 2, 5, 10, 20, 50 and so on: whole newton metres, as wrenches are marked. */
const roundSteps = (to_Nm: number): readonly number[] =>
  Array.from({ length: 2 + Math.ceil(Math.log10(to_Nm)) }, (_, power) =>
    [1, 2, 5].map((digit) => digit * 10 ** power),
  ).flat();
