package pourwright.cli;

import java.io.PrintStream;
import java.util.Locale;

/** A table of measured figures against the bars they have to clear, printed line by line. */
final class Bars {
  private final PrintStream out;
  private boolean failed;

  Bars(PrintStream out) {
    this.out = out;
    line("%-66s %10s  %-10s %s", "what", "measured", "bar", "");
  }

  /** A figure without a bar. */
  void tell(String what, double measured, String unit) {
    line("%-66s %10s", what, number(measured) + unit);
  }

  /** A figure that must not be above its bar. */
  void atMost(String what, double measured, double bar, String unit) {
    put(what, measured, "<= " + number(bar) + unit, unit, measured <= bar);
  }

  /** A figure that must not be below its bar. */
  void atLeast(String what, double measured, double bar, String unit) {
    put(what, measured, ">= " + number(bar) + unit, unit, measured >= bar);
  }

  private void put(String what, double measured, String bar, String unit, boolean kept) {
    failed |= !kept;
    line("%-66s %10s  %-10s %s", what, number(measured) + unit, bar, kept ? "pass" : "FAIL");
  }

  /** A remark under a figure. */
  void remark(String words, Object... values) {
    line("    " + words, values);
  }

  /** True when some bar was missed. */
  boolean failed() {
    return failed;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private void line(String words, Object... values) {
    out.println(String.format(Locale.ROOT, words, values).stripTrailing());
    out.flush();
  }
}
