package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reading and solving published forms of project scheduling instances; the instances are ours. */
class PsplibBenchTest {
  private static final String BASIC =
      """
      ****
      jobs (incl. supersource/sink ):  5
      PROJECT INFORMATION:
      pronr.  #jobs rel.date duedate tardcost  MPM-Time
          1      3      0        9       0        5
      PRECEDENCE RELATIONS:
      jobnr.    #modes  #successors   successors
         1        1          3           2   3   4
         2        1          1           5
         3        1          1           5
         4        1          1           5
         5        1          0
      ****
      REQUESTS/DURATIONS:
      jobnr. mode duration  R 1  R 2
      ----
        1      1     0       0    0
        2      1     5       2    0
        3      1     3       1    1
        4      1     4       1    1
        5      1     0       0    0
      ****
      RESOURCEAVAILABILITIES:
        R 1  R 2
          2    1
      """;

  /**
   * Two activities on one machine; the second starts 2 to 4 after the first, which lasts {@code d}.
   */
  private static String withLags(int d) {
    return """
        2\t1\t0\t0
        0\t1\t2\t1\t2\t[0]\t[0]
        1\t1\t2\t2\t3\t[2]\t[%d]
        2\t1\t2\t1\t3\t[-4]\t[3]
        3\t1\t0
        0\t1\t0\t0
        1\t1\t%d\t1
        2\t1\t3\t1
        3\t1\t0\t0
        1
        """
        .formatted(d, d);
  }

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private int bench(String... words) throws IOException {
    PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
    return Benches.run(words, print, print);
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void instancesOfBothFormsAreSolvedToProof(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("basic.sm"), BASIC);
    Files.writeString(folder.resolve("fits.sch"), withLags(4));
    Files.writeString(folder.resolve("never.SCH"), withLags(5));
    Files.writeString(
        folder.resolve("optimum.csv"),
        "problem,optimum\nbasic.sm,12\nfits.sch,5..7\nnever.SCH,unsat\n");
    assertThat(bench("psplib", folder.toString(), "--seconds", "20", "--workers", "1")).isZero();
    assertThat(printed())
        .containsPattern("basic.sm +12 +12 +yes")
        .containsPattern("fits.sch +5..7 +7 +yes")
        .containsPattern("never.SCH +unsat +unsat +yes")
        .contains("3 instances, 3 proven, 3 as listed, 0 against the list");
  }

  @Test
  void aProofAgainstTheListIsSaid(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("basic.sm"), BASIC);
    Files.writeString(folder.resolve("optimum.csv"), "problem,optimum\nbasic.sm,11\n");
    assertThat(bench("psplib", folder.toString())).isEqualTo(1);
    assertThat(printed()).contains("1 against the list");
  }

  @Test
  void pagesAreReadInADataFolderThatIsThere() throws IOException {
    assertThat(bench("pages", "/no/such/folder")).isEqualTo(2);
    assertThat(bench("pages", ".", "--seconds", "many")).isEqualTo(2);
    assertThat(printed()).contains("a data folder is needed").contains("whole number from 1");
  }

  @Test
  void aFolderThatIsNotThereIsRefused() throws IOException {
    assertThat(bench("psplib", "/no/such/folder")).isEqualTo(2);
    assertThat(printed()).contains("a folder of instances is needed");
  }
}
