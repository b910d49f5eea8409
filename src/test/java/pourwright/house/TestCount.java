package pourwright.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/**
 * Counts what really ran, whichever engine ran it: the reports of two engines on one class are
 * written over each other, so that their sum says less than was done. One line for each run,
 * passed, failed and skipped, in {@code target/tests-ran}.
 */
public final class TestCount implements TestExecutionListener {
  private static final Path FOLDER = Path.of("target", "tests-ran");

  private final AtomicInteger passed = new AtomicInteger();
  private final AtomicInteger failed = new AtomicInteger();
  private final AtomicInteger skipped = new AtomicInteger();

  @Override
  public void executionFinished(TestIdentifier test, TestExecutionResult result) {
    boolean well = result.getStatus() == TestExecutionResult.Status.SUCCESSFUL;
    if (test.isTest()) {
      switch (result.getStatus()) {
        case SUCCESSFUL -> passed.incrementAndGet();
        case ABORTED -> skipped.incrementAndGet();
        case FAILED -> failed.incrementAndGet();
      }
    } else if (!well) {
      // A class whose preparation failed: none of its tests ran.
      failed.incrementAndGet();
    }
  }

  @Override
  public void executionSkipped(TestIdentifier test, String reason) {
    skipped.incrementAndGet();
  }

  @Override
  public void testPlanExecutionFinished(TestPlan plan) {
    String line =
        passed.getAndSet(0) + " " + failed.getAndSet(0) + " " + skipped.getAndSet(0) + "\n";
    try {
      Files.createDirectories(FOLDER);
      Files.writeString(
          FOLDER.resolve(ProcessHandle.current().pid() + ".txt"),
          line,
          StandardCharsets.UTF_8,
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
