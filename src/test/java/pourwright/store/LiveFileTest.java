package pourwright.store;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Only SQLite opens the live database. One read of it by Java drops the locks that SQLite holds,
 * and another program that closes the file then throws the newest writes away.
 *
 * <p>Source: SQLite, "How To Corrupt An SQLite Database File", section 2.2.
 */
class LiveFileTest {
  @TempDir Path corner;

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("pourwright");

  /** Who may say where the database is: the store that opens it, and restore, which closes it. */
  private static final ArchRule FEW_KNOW_WHERE_IT_IS =
      noClasses()
          .that()
          .resideInAPackage("pourwright..")
          .and()
          .doNotHaveFullyQualifiedName("pourwright.store.SqliteStore")
          .and()
          .doNotHaveFullyQualifiedName("pourwright.store.Restore")
          .and()
          .doNotHaveFullyQualifiedName("pourwright.store.StudioFolder")
          .should()
          .callMethod(StudioFolder.class, "database");

  @Test
  void onlyTheStoreAndRestoreKnowWhereTheDatabaseIs() {
    FEW_KNOW_WHERE_IT_IS.check(HOUSE);
  }

  /** A seeded breach: names the database's file to do something with it. */
  static final class SeededBreach {
    private SeededBreach() {}

    static long size(StudioFolder folder) throws IOException {
      return Files.readAllBytes(folder.database()).length;
    }
  }

  @Test
  void theRuleNoticesABreach() {
    JavaClasses seeded = new ClassFileImporter().importClasses(SeededBreach.class);
    assertThat(FEW_KNOW_WHERE_IT_IS.evaluate(seeded).hasViolation()).isTrue();
  }

  private static final ArchRule THE_STORE_OPENS_NO_FILE =
      noClasses()
          .that()
          .haveFullyQualifiedName("pourwright.store.SqliteStore")
          .or()
          .haveFullyQualifiedName("pourwright.store.Sqlite")
          .should()
          .accessTargetWhere(
              new DescribedPredicate<>("opening a file with Java") {
                @Override
                public boolean test(JavaAccess<?> access) {
                  boolean reading =
                      resideInAPackage("java.nio.file..").test(access.getTargetOwner())
                          && List.of("copy", "newInputStream", "readAllBytes", "newByteChannel")
                              .contains(access.getTarget().getName());
                  return reading
                      || access.getTargetOwner().getName().startsWith("java.io.File")
                      || access.getTargetOwner().getName().endsWith("FileChannel");
                }
              });

  @Test
  void theStoreItselfOpensNoFile() {
    THE_STORE_OPENS_NO_FILE.check(HOUSE);
  }

  @Test
  void anotherProgramThatOpensAndClosesTheFileLosesNothing() throws Exception {
    StudioFolder folder = new StudioFolder(corner);
    try (Bench bench = new Bench(SqliteStore.open(folder), folder.attachments())) {
      for (int i = 0; i < 20; i++) {
        bench.lot("grey-powder", "P-" + i, 10);
        if (i % 5 == 0) {
          Path copy = corner.resolve("backups").resolve("c" + i + ".sqlite");
          ((SqliteStore) bench.store).copyInto(copy);
          Inspect.of(bench.store, folder);
          otherProgram(folder.database());
        }
      }
    }
    try (SqliteStore again = SqliteStore.open(folder)) {
      assertThat(again.look(Tables::counts)).containsEntry("lot", 20L);
    }
  }

  /** A second process that opens the file, reads it and closes it. */
  private static void otherProgram(Path database) throws Exception {
    Process process =
        new ProcessBuilder(
                "python3",
                "-c",
                "import sqlite3,sys; c=sqlite3.connect(sys.argv[1]);"
                    + " print(c.execute('select count(*) from lot').fetchone()); c.close()",
                database.toString())
            .redirectErrorStream(true)
            .start();
    process.getInputStream().readAllBytes();
    assertThat(process.waitFor()).isZero();
  }
}
