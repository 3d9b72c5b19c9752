import type { WindowProps } from "../../../src/sheets/drawings/window/windowProps.ts";

/** Figures of an invented chain-case port, M20x1.5, hurt and closed with sealant. */
export const openWindow: WindowProps = {
  need_Nm: 4.6,
  limit_Nm: 22.5,
  cautiousRule_Nm: 33,
  medianStrip_Nm: 51.7,
  floor_Nm: null,
  advice_Nm: 5,
  bookFigures: [{ torque_Nm: 46, label: "service sheet, page 12" }],
  wrench: { name: "W-1", least_Nm: 5, most_Nm: 25 },
  caption: "Sealant, 3.5 turns",
};

/** The same with a copper washer. */
export const emptyWindow: WindowProps = {
  need_Nm: 30,
  limit_Nm: 11,
  cautiousRule_Nm: 18,
  medianStrip_Nm: 27,
  floor_Nm: 10,
  advice_Nm: null,
  bookFigures: [{ torque_Nm: 46, label: "service sheet, page 12" }],
  wrench: { name: "W-2", least_Nm: 20, most_Nm: 100 },
  caption: "Copper washer, 2.2 turns",
};

/** An invented port in grey iron that has just room for one setting. */
export const narrowWindow: WindowProps = {
  need_Nm: 41,
  limit_Nm: 47,
  cautiousRule_Nm: 58,
  medianStrip_Nm: 95,
  floor_Nm: 10,
  advice_Nm: 44,
  bookFigures: [
    { torque_Nm: 42, label: "service sheet, page 12" },
    { torque_Nm: 55, label: "plate on the case" },
  ],
  wrench: { name: "W-2", least_Nm: 20, most_Nm: 80 },
  caption: "Copper washer, grey iron, 5 turns",
};

/** A port with nothing hurt: the book figure lies in its window. */
export const healthyWindow: WindowProps = {
  need_Nm: 16,
  limit_Nm: 74,
  cautiousRule_Nm: 92,
  medianStrip_Nm: 160,
  floor_Nm: 10,
  advice_Nm: 46,
  bookFigures: [{ torque_Nm: 46, label: "service sheet, page 12" }],
  wrench: { name: "W-2", least_Nm: 20, most_Nm: 100 },
  caption: "Fibre washer, nothing hurt",
};
