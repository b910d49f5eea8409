package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server stops without waiting for lines on which nothing happens, and finishes the others. */
class ServerStopTest {
  private static final int A_WHILE_MS = 300;

  @Test
  void whatIsUnderWayIsFinished(@TempDir Path folder) throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    Server server = serve(folder, begun);
    CompletableFuture<HttpResponse<String>> slow =
        CompletableFuture.supplyAsync(() -> new Visitor(server.port()).get("/slow"));
    assertThat(begun.await(30, TimeUnit.SECONDS)).isTrue();
    server.close();
    assertThat(slow.get(30, TimeUnit.SECONDS).body()).isEqualTo("finished");
  }

  /** The machine may be busy with other things: the quickest of three counts. */
  @Test
  void aQuietLineHoldsNobodyUp(@TempDir Path folder) {
    Duration quickest = Duration.ofDays(1);
    for (int i = 0; i < 3; i++) {
      Server server = serve(folder.resolve("studio-" + i), new CountDownLatch(1));
      Visitor quiet = new Visitor(server.port());
      assertThat(quiet.get("/healthz").statusCode()).isEqualTo(200);
      long from = System.nanoTime();
      server.close();
      Duration took = Duration.ofNanos(System.nanoTime() - from);
      quickest = took.compareTo(quickest) < 0 ? took : quickest;
    }
    assertThat(quickest).isLessThan(Duration.ofMillis(900));
  }

  private static Server serve(Path folder, CountDownLatch begun) {
    Site site =
        Site.of(TestStudio.desk(folder, Clock.systemUTC()), () -> "")
            .and(
                routes ->
                    routes.get(
                        "/slow",
                        http -> {
                          begun.countDown();
                          TimeUnit.MILLISECONDS.sleep(A_WHILE_MS);
                          http.result("finished");
                        }));
    return TestStudio.open(site, ServerSettings.onAnyPort("Test studio"), folder);
  }
}
