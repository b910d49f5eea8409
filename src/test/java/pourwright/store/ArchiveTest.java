package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Her data is hers: out in open formats, and in again, from either database to the other. */
class ArchiveTest {
  private static final Archive.Made MADE =
      new Archive.Made(Instant.parse("2026-03-02T09:00:00Z"), "test");

  @TempDir Path corner;

  /** Rows as text, so that the two databases' own number types do not matter. */
  private static Map<String, List<String>> everything(Store store) {
    Map<String, List<String>> all = new TreeMap<>();
    BackupTest.everything(store)
        .forEach(
            (table, rows) ->
                all.put(table, rows.stream().map(r -> new TreeMap<>(r).toString()).toList()));
    return all;
  }

  @Test
  void everyTableGoesFromOneDatabaseToTheOtherAndBack() throws Exception {
    try (Postgres server = Postgres.start();
        Store postgres = PostgresStore.open(server.freshDatabase())) {
      HashedFiles files = new HashedFiles(corner.resolve("files"));
      Bench first = new Bench(SqliteStore.open(folder("one")), corner.resolve("files"));
      Filled.fill(first);
      Map<String, List<String>> before = everything(first.store);
      Path out = corner.resolve("out.zip");
      Archive.write(first.store, files, out, Archive.Profile.DATA, MADE);
      first.close();

      HashedFiles there = new HashedFiles(corner.resolve("there"));
      Import.from(out, postgres, there);
      assertThat(everything(postgres)).isEqualTo(before);
      assertThat(postgres.keptRowsWrong()).isZero();
      assertThatThrownBy(() -> Import.from(out, postgres, there)).hasMessageContaining("not empty");

      Path back = corner.resolve("back.zip");
      Archive.write(postgres, there, back, Archive.Profile.DATA, MADE);
      try (Store second = SqliteStore.open(folder("two"))) {
        Import.from(back, second, new HashedFiles(corner.resolve("home")));
        assertThat(everything(second)).isEqualTo(before);
        assertThat(second.unsound()).isEmpty();
      }
      String hash = files.keep(new java.io.ByteArrayInputStream(bytes("pixels"))).sha256();
      try (InputStream in = new HashedFiles(corner.resolve("home")).open(hash).orElseThrow()) {
        assertThat(in.readAllBytes()).isEqualTo(bytes("pixels"));
      }
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private StudioFolder folder(String name) {
    return new StudioFolder(corner.resolve(name));
  }

  private String table(Archive.Profile profile, String name) throws IOException {
    Bench bench =
        new Bench(
            SqliteStore.open(folder(profile.name() + name.hashCode())), corner.resolve("files"));
    Filled.fill(bench);
    Path out = corner.resolve(profile + ".zip");
    Archive.write(bench.store, new HashedFiles(corner.resolve("files")), out, profile, MADE);
    bench.close();
    try (ZipIn zip = ZipIn.checked(out, Archive.FORMAT);
        InputStream in = zip.open(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void aNameThatLooksLikeAFormulaIsHarmlessInASpreadsheetAndNumbersAreLeftAlone()
      throws IOException {
    String lots = table(Archive.Profile.SPREADSHEET, "tables/lot.csv");
    assertThat(lots).contains(",'=1+1,").doesNotContain(",=1+1,");
    String movements = table(Archive.Profile.SPREADSHEET, "tables/movement.csv");
    assertThat(movements).contains(",-900000000,DRAWN,").doesNotContain("'-");
  }

  @Test
  void theDataProfileChangesNothing() throws IOException {
    assertThat(table(Archive.Profile.DATA, "tables/lot.csv")).contains(",=1+1,");
  }

  @Test
  void theListOfTablesIsComplete() {
    try (SqliteStore store = SqliteStore.open(folder("complete"))) {
      List<String> there =
          store.look(
              h ->
                  h.createQuery(
                          "SELECT name FROM sqlite_schema WHERE type = 'table'"
                              + " AND name NOT LIKE 'sqlite_%' AND name <> 'schema_history'")
                      .mapTo(String.class)
                      .list());
      List<String> named = Tables.names(Tables.FACTS);
      named.addAll(Tables.names(Tables.KEPT));
      named.addAll(Tables.names(Tables.ASIDE));
      assertThat(there).containsExactlyInAnyOrderElementsOf(named);
    }
  }
}
