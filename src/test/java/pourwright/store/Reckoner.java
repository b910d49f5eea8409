package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/** An independent reader of plain-text accounting journals, from the system's packages. */
final class Reckoner {
  private final Path journal;

  private Reckoner(Path journal) {
    this.journal = journal;
  }

  /** Reads a journal; the test is skipped with a sentence where no reader can be had. */
  static Reckoner reading(Path folder, String text) throws IOException, InterruptedException {
    Process there = new ProcessBuilder("sh", "dev/accounting").redirectErrorStream(true).start();
    String said = new String(there.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    Assumptions.assumeTrue(there.waitFor() == 0, said);
    Path file = folder.resolve("books.journal");
    Files.writeString(file, text);
    return new Reckoner(file);
  }

  /** Runs one of its commands; a journal that it does not accept fails the test. */
  String run(String... words) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("hledger", "-f", journal.toString()));
    command.addAll(List.of(words));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(String.join(" ", command) + "\n" + out).isZero();
    return out;
  }

  /** What stands on an account and those under it, in cents. */
  long cents(String account, String... more) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of("balance", "--flat", "-O", "csv", "^" + account));
    words.addAll(List.of(more));
    long sum = 0;
    for (String line : run(words.toArray(String[]::new)).lines().skip(1).toList()) {
      String[] cells = line.replace("\"", "").split(",", 2);
      if (!cells[0].startsWith("total") && !cells[0].startsWith("Total")) {
        String number = cells[1].replaceAll("[^0-9.-]", "");
        sum +=
            number.isEmpty()
                ? 0
                : new java.math.BigDecimal(number).movePointRight(2).longValueExact();
      }
    }
    return sum;
  }
}
