/** A PV device may be moved up to this current on a zeroed clamp [A]. This project's choice; safety rule I6. */
export const pvZeroAmps = 0.5;
/** A battery circuit may be opened up to this current, which standby electronics draw [A]. This project's choice; safety rule I2 and I20. */
export const batteryZeroAmps = 2;
