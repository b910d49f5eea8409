package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.material.Material;
import pourwright.work.Act;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/** Her data is hers, from the command line: backup, restore, export, import, and their codes. */
class KeepingTest {
  private static final String FORMULA = "=HYPERLINK(\"http://example.invalid/\",\"Ann\")";
  private static final String ORDERS =
      "Order,Customer,Item,Qty,Due\n1,\""
          + FORMULA.replace("\"", "\"\"")
          + "\",cog-fig,2,2027-05-01\n2,Ann,bollard-rain,1,2027-05-02\n";

  private Path home = Path.of("");
  private Path data = Path.of("");
  private String out = "";
  private String err = "";

  @BeforeEach
  void freshHome(@TempDir Path folder) {
    home = folder;
    data = folder.resolve("studio");
  }

  private int run(Object... words) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    ByteArrayOutputStream complained = new ByteArrayOutputStream();
    try (PrintStream toOut = new PrintStream(said, true, StandardCharsets.UTF_8);
        PrintStream toErr = new PrintStream(complained, true, StandardCharsets.UTF_8)) {
      int code =
          Main.run(
              Stream.of(words).map(Object::toString).toArray(String[]::new),
              new Machine(Map.of(), "Linux", home),
              new ByteArrayInputStream(new byte[0]),
              toOut,
              toErr);
      out = said.toString(StandardCharsets.UTF_8);
      err = complained.toString(StandardCharsets.UTF_8);
      return code;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void layTheCards() {
    try (Wiring wiring = Wiring.open(data, "", Wiring.systemClock())) {
      for (Material material : DemoCards.materials()) {
        save(wiring, Drawers.MATERIAL, material.code(), material);
      }
      for (Drawer<? extends Card> drawer : Drawers.ofCards()) {
        saveAll(wiring, drawer);
      }
    }
  }

  private static <T extends Card> void saveAll(Wiring wiring, Drawer<T> drawer) {
    DemoCards.book().all(drawer.type()).forEach(card -> save(wiring, drawer, card.code(), card));
  }

  private static <T> void save(Wiring wiring, Drawer<T> drawer, String code, T body) {
    wiring
        .studio()
        .saveCard
        .run(Act.of("MB", drawer.name() + code), SaveCard.Request.of(drawer, code, 0, body));
  }

  private Path orders(String text) throws IOException {
    return Files.writeString(home.resolve("orders.csv"), text, StandardCharsets.UTF_8);
  }

  private long ordersIn(Path folder) {
    try (Wiring wiring = Wiring.open(folder, "", Wiring.systemClock())) {
      return wiring.studio().look(books -> books.orders().wanting()).size();
    }
  }

  private static Map<String, String> parts(Path zip) throws IOException {
    Map<String, String> parts = new TreeMap<>();
    try (ZipFile file = new ZipFile(zip.toFile())) {
      for (Enumeration<? extends ZipEntry> all = file.entries(); all.hasMoreElements(); ) {
        ZipEntry entry = all.nextElement();
        byte[] bytes = file.getInputStream(entry).readAllBytes();
        parts.put(entry.getName(), new String(bytes, StandardCharsets.UTF_8));
      }
    }
    parts.remove("manifest.json");
    return parts;
  }

  @Test
  void everyCommandOfKeepingIsInTheHelpAndShowsAnExample() {
    assertThat(run("--help")).isZero();
    assertThat(out).contains("backup", "restore", "export", "import");
    for (String command : List.of("backup", "restore", "export", "import")) {
      assertThat(run(command, "--help")).isZero();
      assertThat(out).contains("Example", "pourwright " + command);
    }
  }

  @Test
  void aBackupOfARunningStudioIsRestoredElsewhere() throws IOException {
    layTheCards();
    assertThat(run("import", orders(ORDERS), "--data", data)).as(err).isZero();
    Path zip = home.resolve("studio.zip");
    try (DataFolder held = DataFolder.hold(data);
        Wiring open = Wiring.open(held.path(), "", Wiring.systemClock())) {
      assertThat(run("backup", "--data", data, "--to", zip)).as(err).isZero();
      assertThat(out).contains(zip.toString());
      assertThat(open.unsound()).isEmpty();
    }
    Path other = home.resolve("other");
    assertThat(run("restore", zip, "--data", other)).as(err).isZero();
    assertThat(ordersIn(other)).isEqualTo(2);
  }

  @Test
  void aBackupWithoutAPlaceLiesBesideTheDataAndInAFolderGetsAName() throws IOException {
    layTheCards();
    assertThat(run("backup", "--data", data)).as(err).isZero();
    try (Stream<Path> files = Files.list(data.resolve("backups"))) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .singleElement()
          .asString()
          .matches("backup-.*\\.zip");
    }
    Path stick = Files.createDirectory(home.resolve("stick"));
    assertThat(run("backup", "--data", data, "--to", stick)).as(err).isZero();
    try (Stream<Path> files = Files.list(stick)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void restoringKeepsWhatWasThere() throws IOException {
    layTheCards();
    Path zip = home.resolve("before.zip");
    assertThat(run("backup", "--data", data, "--to", zip)).isZero();
    assertThat(run("import", orders(ORDERS), "--data", data)).as(err).isZero();
    assertThat(run("restore", zip, "--data", data)).as(err).isZero();
    assertThat(ordersIn(data)).isZero();
    Path kept =
        Path.of(out.lines().findFirst().orElse("").replace("What was there is kept in ", ""));
    Path other = home.resolve("other");
    assertThat(run("restore", kept, "--data", other)).as(err).isZero();
    assertThat(ordersIn(other)).isEqualTo(2);
  }

  @Test
  void aDamagedStudioIsReplacedByABackupAndItsFileKeptAsItIs() throws IOException {
    layTheCards();
    Path zip = home.resolve("good.zip");
    assertThat(run("backup", "--data", data, "--to", zip)).isZero();
    byte[] rubbish = "this was a database once ".repeat(400).getBytes(StandardCharsets.UTF_8);
    Files.write(data.resolve("studio.db"), rubbish);
    assertThat(run("backup", "--data", data)).isEqualTo(13);
    assertThat(run("restore", zip, "--data", data)).as(err).isZero();
    Path kept =
        Path.of(out.lines().findFirst().orElse("").replace("What was there is kept in ", ""));
    assertThat(kept.resolve("studio.db")).hasBinaryContent(rubbish);
    assertThat(run("inspect", "--data", data)).as(out + err).isZero();
  }

  @Test
  void whatIsMissingOrInTheWayIsTwo() throws IOException {
    assertThat(run("backup", "--data", data)).isEqualTo(2);
    assertThat(err).contains("there is no studio in " + data);
    assertThat(run("export", "--data", data, "--to", home.resolve("all.zip"))).isEqualTo(2);
    assertThat(run("restore", home.resolve("none.zip"), "--data", data)).isEqualTo(2);
    assertThat(run("import", home.resolve("none.zip"), "--data", data)).isEqualTo(2);
    layTheCards();
    Path there = Files.writeString(home.resolve("there.zip"), "mine");
    assertThat(run("backup", "--data", data, "--to", there)).isEqualTo(2);
    assertThat(run("export", "--data", data, "--to", there)).isEqualTo(2);
    assertThat(there).hasContent("mine");
    assertThat(run("export", "--data", data)).isEqualTo(2);
    Path all = home.resolve("all.zip");
    assertThat(run("export", "--data", data, "--to", all, "--profile", "poster")).isEqualTo(2);
    assertThat(run("export", "--data", data, "--to", all)).as(err).isZero();
    assertThat(run("restore", all, "--data", data)).isEqualTo(2);
    assertThat(err).contains("use 'restore' for backups and 'import' for archives");
    assertThat(run("import", all, "--data", data)).isEqualTo(2);
    assertThat(err).contains("not empty");
  }

  @Test
  void aStudioThatIsOpenElsewhereIsNotReplacedWhichIsTen() {
    layTheCards();
    Path zip = home.resolve("studio.zip");
    Path all = home.resolve("all.zip");
    assertThat(run("backup", "--data", data, "--to", zip)).isZero();
    assertThat(run("export", "--data", data, "--to", all)).isZero();
    try (DataFolder held = DataFolder.hold(data)) {
      assertThat(run("restore", zip, "--data", held.path())).isEqualTo(10);
      assertThat(run("import", all, "--data", held.path())).isEqualTo(10);
      assertThat(run("export", "--data", data, "--to", home.resolve("two.zip"))).isZero();
    }
  }

  @Test
  void aNewerBackupIsTwelveATornOneThirteenAndAPlaceThatTakesNothingFourteen() throws IOException {
    layTheCards();
    Path zip = home.resolve("studio.zip");
    assertThat(run("backup", "--data", data, "--to", zip)).isZero();
    Path torn = home.resolve("torn.zip");
    byte[] whole = Files.readAllBytes(zip);
    Files.write(torn, java.util.Arrays.copyOf(whole, whole.length / 2));
    Path other = home.resolve("other");
    assertThat(run("restore", torn, "--data", other)).isEqualTo(13);
    assertThat(run("import", torn, "--data", other)).isEqualTo(13);
    assertThat(Wiring.hasStudio(other)).isFalse();
    try (java.util.zip.ZipOutputStream newer =
        new java.util.zip.ZipOutputStream(Files.newOutputStream(home.resolve("newer.zip")))) {
      newer.putNextEntry(new ZipEntry("manifest.json"));
      String later =
          "{\"format\":\"pourwright-backup\",\"formatVersion\":1,\"program\":\"later\",\"step\":9999,"
              + "\"madeAt\":\"2030-01-01T00:00:00Z\",\"rows\":{},\"members\":[]}";
      newer.write(later.getBytes(StandardCharsets.UTF_8));
    }
    assertThat(run("restore", home.resolve("newer.zip"), "--data", other)).as(err).isEqualTo(12);
    assumeTrue(Files.isDirectory(Path.of("/proc")), "a folder that takes no file from anybody");
    Path nowhere = Path.of("/proc/pourwright.zip");
    assertThat(run("backup", "--data", data, "--to", nowhere)).as(err).isEqualTo(14);
    assertThat(run("export", "--data", data, "--to", nowhere)).as(err).isEqualTo(14);
  }

  @Test
  void aFormulaInACustomersOrDesignsNameIsHarmlessInASpreadsheet() throws IOException {
    layTheCards();
    try (Wiring wiring = Wiring.open(data, "", Wiring.systemClock())) {
      wiring.studio().saveSetting.run(Act.of("MB", "name"), "studio.name", "@SUM(1+1)");
    }
    layADesignCalled("=1+1 slate");
    String all = ORDERS + "3,Ann,=1+1 slate,1,2027-05-03\n";
    assertThat(run("import", orders(all), "--data", data)).as(err).isZero();
    assertThat(ordersIn(data)).isEqualTo(3);
    Path sheet = home.resolve("sheet.zip");
    Path plain = home.resolve("plain.zip");
    assertThat(run("export", "--data", data, "--to", sheet, "--profile", "spreadsheet")).isZero();
    assertThat(run("export", "--data", data, "--to", plain)).isZero();
    assertThat(cells(parts(sheet), "tables/customer.csv")).contains("'" + FORMULA);
    assertThat(cells(parts(plain), "tables/customer.csv")).contains(FORMULA);
    for (String part : parts(sheet).keySet()) {
      if (part.endsWith(".csv")) {
        assertThat(cells(parts(sheet), part))
            .as(part)
            .noneMatch(c -> c.matches("(?s)[=+@\t\r\n-].*") && !c.matches("-?[0-9.eE+-]+"));
      }
    }
  }

  private void layADesignCalled(String name) {
    CandleDesign like = DemoCards.book().all(CandleDesign.class).get(0);
    try (Wiring wiring = Wiring.open(data, "", Wiring.systemClock())) {
      save(
          wiring,
          Drawers.CANDLE,
          "summed",
          new CandleDesign(
              "summed",
              name,
              like.vessel(),
              like.mix(),
              like.finish(),
              like.pour(),
              like.wicks(),
              like.headspaceMm(),
              like.restDays(),
              like.piecesPerBox(),
              like.boxed(),
              like.note()));
    }
  }

  private static List<String> cells(Map<String, String> parts, String name) {
    String text = java.util.Objects.requireNonNull(parts.get(name));
    try (CsvReader<CsvRecord> rows = CsvReader.builder().ofCsvRecord(text)) {
      return rows.stream().flatMap(r -> r.getFields().stream()).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void whatIsExportedForProgramsComesBackWithoutLoss() throws IOException {
    layTheCards();
    assertThat(run("import", orders(ORDERS), "--data", data)).as(err).isZero();
    Path first = home.resolve("first.zip");
    Path second = home.resolve("second.zip");
    Path other = home.resolve("other");
    assertThat(run("export", "--data", data, "--to", first)).isZero();
    assertThat(run("import", first, "--data", other)).as(err).isZero();
    assertThat(run("export", "--data", other, "--to", second)).isZero();
    assertThat(parts(second)).isEqualTo(parts(first));
    assertThat(ordersIn(other)).isEqualTo(2);
  }

  @Test
  void aBadDateOnLineSeventeenBesideAFormulaKeepsEveryLineOut() throws IOException {
    layTheCards();
    StringBuilder text = new StringBuilder("Order,Customer,Item,Qty,Due\n");
    for (int line = 2; line <= 20; line++) {
      String name = line == 9 ? "\"" + FORMULA.replace("\"", "\"\"") + "\"" : "Ann";
      text.append(line).append(',').append(name).append(",cog-fig,1,");
      text.append(line == 17 ? "2027-02-31\n" : "2027-05-01\n");
    }
    assertThat(run("import", orders(text.toString()), "--data", data)).isEqualTo(2);
    assertThat(err).contains("line 17").doesNotContain("line 9");
    assertThat(ordersIn(data)).isZero();
  }

  @Test
  void ordersAreTakenInAfterABackupOfHowItWas() throws IOException {
    layTheCards();
    assertThat(run("import", orders(ORDERS), "--data", data)).as(err).isZero();
    Path made;
    try (Stream<Path> files = Files.list(data.resolve("backups"))) {
      made =
          files.filter(f -> f.getFileName().toString().startsWith("auto-")).findAny().orElseThrow();
    }
    Path other = home.resolve("other");
    assertThat(run("restore", made, "--data", other)).as(err).isZero();
    assertThat(ordersIn(other)).isZero();
  }
}
