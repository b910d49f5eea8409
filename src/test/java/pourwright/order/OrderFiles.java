package pourwright.order;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import pourwright.card.CandleDesign;
import pourwright.card.WickPlan;

/** Builders of order files as shops make them, and a short way to say what came of reading one. */
final class OrderFiles {
  static final ImportChoices DETECT =
      ImportChoices.detect(LocalDate.of(2026, 3, 1), ZoneId.of("Europe/Berlin"));
  static final DesignNames NAMES =
      DesignNames.of(
          List.of(
              candle("bollard-rain", "Bollard, Rain on slate"),
              candle("cog-fig", "Cog Fig loft"),
              candle("trough-ueber", "Tr\u00f6g \u00dcber")),
          Map.of("3-wick thing", "trough-ueber"));

  private OrderFiles() {}

  static CandleDesign candle(String code, String name) {
    return new CandleDesign(
        code,
        name,
        "bollard",
        "grey",
        "plain",
        "rain",
        new WickPlan("wick", 1, 100, null, null, List.of()),
        CandleDesign.HEADSPACE_MM,
        null,
        1,
        List.of(),
        null);
  }

  static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  static byte[] in(String charset, String text) {
    return text.getBytes(Charset.forName(charset));
  }

  static byte[] marked(int[] mark, byte[] rest) {
    byte[] all = new byte[mark.length + rest.length];
    for (int i = 0; i < mark.length; i++) {
      all[i] = (byte) mark[i];
    }
    System.arraycopy(rest, 0, all, mark.length, rest.length);
    return all;
  }

  /** Fills a sheet of a workbook. */
  interface Filling {
    void fill(Workbook workbook, Worksheet sheet) throws IOException;
  }

  static byte[] workbook(Filling filling) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(bytes, "Shop", "1.0")) {
      filling.fill(workbook, workbook.newWorksheet("Orders"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  static void head(Worksheet sheet, String... names) {
    for (int i = 0; i < names.length; i++) {
      sheet.value(0, i, names[i]);
    }
  }

  static byte[] zip(Map<String, byte[]> entries) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (var entry : entries.entrySet()) {
        zip.putNextEntry(new ZipEntry(entry.getKey()));
        zip.write(entry.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** What came of it, on one line. */
  static String said(OrderImport outcome) {
    if (outcome instanceof OrderImport.Ready ready) {
      return ready.lines().stream()
          .map(OrderImport.Read::line)
          .map(
              l ->
                  l.order()
                      + " "
                      + l.quantity()
                      + " "
                      + l.design()
                      + (l.dueOn() == null ? "" : " " + l.dueOn()))
          .collect(Collectors.joining("; ", "ready: ", ""));
    }
    if (outcome instanceof OrderImport.Bad bad) {
      return bad.lines().stream()
          .map(l -> l.lineNumber() + " " + l.reason())
          .collect(Collectors.joining("; ", "bad: ", ""));
    }
    if (outcome instanceof OrderImport.Ambiguous ambiguous) {
      return ambiguous.questions().stream()
          .map(q -> q.about() + ": " + q.sentence())
          .collect(Collectors.joining("; ", "ambiguous: ", ""));
    }
    return "unreadable: " + ((OrderImport.Unreadable) outcome).reason();
  }
}
