package pourwright.sheet;

import java.io.ByteArrayOutputStream;
import pourwright.wick.WickTemplate;
import pourwright.work.TemplatePrinter;

/** The house's printer of wick templates. */
public final class TemplatePdf implements TemplatePrinter {
  @Override
  public byte[] print(String name, WickTemplate template, String paper) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WickSheet.print(name, template, Paper.of(paper), out);
    return out.toByteArray();
  }
}
