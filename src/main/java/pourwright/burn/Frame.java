package pourwright.burn;

/**
 * The candle at one time, for drawing: melted shares of the surface seen from above and of a
 * section through the first wick along the length.
 *
 * @param hours since lighting
 * @param cellMm size of a cell across
 * @param plan liquid fraction by row and column, NaN outside the wax; the whole vessel
 * @param section liquid fraction by height (lowest first) and column, −1 in the vessel, NaN in air
 * @param tallMm heights of the section's rows
 */
public record Frame(
    double hours, double cellMm, float[][] plan, float[][] section, double[] tallMm) {}
