package pourwright.main;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.page.Desk;
import pourwright.page.Site;
import pourwright.page.now.WorkAhead;
import pourwright.page.plan.BuyDesk;
import pourwright.page.plan.PlanCorner;
import pourwright.page.plan.PromiseDesk;
import pourwright.page.plan.SeasonDesk;
import pourwright.plan.Planner;
import pourwright.plan.Promising;
import pourwright.solve.CpSatPlanner;
import pourwright.solve.CpSatPromising;
import pourwright.solve.CpSatPurchasing;
import pourwright.store.Backups;
import pourwright.store.HashedFiles;
import pourwright.store.PostgresStore;
import pourwright.store.ResultFiles;
import pourwright.store.SqliteStore;
import pourwright.store.Store;
import pourwright.store.StudioFolder;
import pourwright.work.Studio;

/** An open studio: its store, its use cases, its pages, put together with plain constructors. */
public final class Wiring implements AutoCloseable {
  private final StudioFolder folder;
  private final Store store;
  private final Studio studio;
  private final Clock clock;

  private Wiring(StudioFolder folder, Store store, Clock clock) {
    this.folder = folder;
    this.store = store;
    this.clock = clock;
    this.studio = new Studio(store.unitOfWork(), clock, new HashedFiles(folder));
    studio.keepResultsIn(new ResultFiles(folder));
  }

  /**
   * Opens the studio of a folder.
   *
   * @param root the data folder
   * @param db a PostgreSQL address, or an empty string for the file in the folder
   * @param clock the moment and the studio's zone
   */
  public static Wiring open(Path root, String db, Clock clock) {
    return open(root, db, clock, false);
  }

  /**
   * As above.
   *
   * @param copyMade whether she says that a copy of an older PostgreSQL database exists
   */
  static Wiring open(Path root, String db, Clock clock, boolean copyMade) {
    StudioFolder folder = new StudioFolder(root);
    Store store = db.isEmpty() ? SqliteStore.open(folder) : PostgresStore.open(db, copyMade);
    return new Wiring(folder, store, clock);
  }

  /** The clock of this machine, in its zone. */
  public static Clock systemClock() {
    return Clock.system(ZoneId.systemDefault());
  }

  /** The use cases and books. */
  public Studio studio() {
    return studio;
  }

  /** The store below. */
  public Store store() {
    return store;
  }

  /** The store, where it is the file in the data folder. */
  Optional<SqliteStore> file() {
    return store instanceof SqliteStore file ? Optional.of(file) : Optional.empty();
  }

  /** The backups in the data folder. */
  Backups backups() {
    return new Backups(folder);
  }

  /** The folder. */
  public Path root() {
    return folder.root();
  }

  /** Whether a studio was begun in a folder. */
  public static boolean hasStudio(Path root) {
    return new StudioFolder(root).hasStudio();
  }

  /** What the studio calls itself. */
  public String name() {
    return settings().getOrDefault("studio.name", "Your studio");
  }

  private Map<String, String> settings() {
    return studio.look(books -> books.settings().all());
  }

  /** The desk that pages are made at. */
  public Desk desk() {
    Locale locale = Locale.forLanguageTag(settings().getOrDefault("locale", "en-GB"));
    return new Desk(studio, clock, clock.getZone(), locale);
  }

  /**
   * The pages.
   *
   * @param startOwn what begins a studio of her own, where this is the sample; else null
   */
  public Site site(@Nullable Runnable startOwn) {
    Desk desk = desk();
    WorkAhead ahead = new WorkAhead(desk);
    return Site.of(desk, ahead, this::trouble)
        .offering(startOwn)
        .and(new PlanCorner(desk, ahead, planner(), PlanCorner.LIMIT))
        .and(new PromiseDesk(desk, promising(), PlanCorner.LIMIT.multipliedBy(2)))
        .and(new SeasonDesk(desk))
        .and(new BuyDesk(desk, ahead, list -> new CpSatPurchasing().buy(list)));
  }

  /** The optimal planner; the solver's library loads when something is planned. */
  private static Planner planner() {
    return (problem, effort) -> CpSatPlanner.usual().plan(problem, effort);
  }

  /** The same for promises. */
  private static Promising promising() {
    return (problem, goal, standing, effort) ->
        new CpSatPromising().earliest(problem, goal, standing, effort);
  }

  /** An empty string while the books can be read, else what is wrong. */
  private String trouble() {
    try {
      studio.look(books -> books.settings().value("studio.name"));
      return "";
    } catch (RuntimeException e) {
      return String.valueOf(e.getMessage());
    }
  }

  /** Sentences about what is not as it should be. */
  public List<String> unsound() {
    return store.unsound();
  }

  @Override
  public void close() {
    store.close();
  }
}
