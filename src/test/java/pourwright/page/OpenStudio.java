package pourwright.page;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import pourwright.card.Card;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.material.Material;
import pourwright.store.HashedFiles;
import pourwright.store.SqliteStore;
import pourwright.store.StudioFolder;
import pourwright.work.Act;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;
import pourwright.work.Studio;

/** A studio with real books in a folder, its pages on loopback, for tests that do the work. */
public final class OpenStudio implements AutoCloseable {
  private final AtomicInteger keys = new AtomicInteger();
  private final SqliteStore store;
  public final Studio studio;
  public final Server server;

  public OpenStudio(Path folder) {
    this(folder, Clock.systemUTC());
  }

  public OpenStudio(Path folder, Clock clock) {
    StudioFolder data = new StudioFolder(folder.resolve("data"));
    this.store = SqliteStore.open(data);
    this.studio = new Studio(store.unitOfWork(), clock, new HashedFiles(data));
    Desk desk = new Desk(studio, clock, ZoneOffset.UTC, Locale.UK);
    Site site = TestStudio.promising(desk);
    this.server = TestStudio.open(site, ServerSettings.onAnyPort("Test studio"), folder);
  }

  public String base() {
    return "http://127.0.0.1:" + server.port();
  }

  public Visitor visitor() {
    return new Visitor(server.port());
  }

  public Act act() {
    return Act.of("AB", "test-" + keys.incrementAndGet());
  }

  /** Writes the invented studio's cards and materials down. */
  public OpenStudio withDemoCards() {
    CardBook book = DemoCards.book();
    for (Material material : book.materials().all()) {
      save(Drawers.MATERIAL, material.code(), material);
    }
    for (Drawer<? extends Card> drawer : Drawers.ofCards()) {
      saveAll(drawer, book);
    }
    return this;
  }

  private <T extends Card> void saveAll(Drawer<T> drawer, CardBook book) {
    book.all(drawer.type()).forEach(card -> save(drawer, card.code(), card));
  }

  public <T> void save(Drawer<T> drawer, String code, T body) {
    SaveCard.Saving<T> saving =
        studio.saveCard.run(act(), SaveCard.Request.of(drawer, code, 0, body));
    if (!(saving instanceof SaveCard.Saving.Saved)) {
      throw new IllegalStateException(saving.toString());
    }
  }

  @Override
  public void close() {
    server.close();
    store.close();
  }
}
