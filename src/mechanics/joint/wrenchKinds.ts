/** How a torque wrench tells that its figure is reached. */
export const wrenchKinds = ["click", "dial", "electronic", "beam"] as const;
