package pourwright.cast;

/** Port: finds the molds that make the most of a leftover. */
@FunctionalInterface
public interface LeftoverPacking {
  /**
   * The filling of greatest value that fits the volume, the free molds and their number; among
   * fillings of equal value the one that uses the most slurry. Each mold is filled whole or not at
   * all.
   */
  Leftover.Filling fill(Leftover leftover);
}
