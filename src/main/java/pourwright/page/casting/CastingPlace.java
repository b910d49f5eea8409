package pourwright.page.casting;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.card.CardBook;
import pourwright.card.MixCard;
import pourwright.card.Vessel;
import pourwright.page.Desk;
import pourwright.page.Place;
import pourwright.page.Show;
import pourwright.work.Books;
import pourwright.work.Drawers;

/** Mix, cast, set, demold, sand, seal, prove tight. */
public final class CastingPlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public CastingPlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Casting bench";
  }

  @Override
  public String path() {
    return "/casting";
  }

  @Override
  public String purpose() {
    return "Mix, cast, set, demold, sand, seal, prove tight.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
    new SheetDesk(desk).addTo(routes);
    new PiecesDesk(desk).addTo(routes);
    new TrayDesk(desk).addTo(routes);
    new HistoryDesk(desk).addTo(routes);
    new MoldsDesk(desk).addTo(routes);
    new AbsorptionDesk(desk).addTo(routes);
    new RestDesk(desk).addTo(routes);
    new CastDesk(desk).addTo(routes);
  }

  private void show(Context http) {
    Show.page(http, "casting/casting.jte", desk.studio().look(this::page));
  }

  private CastingPage page(Books books) {
    CardBook book = Drawers.book(books);
    List<CastingPage.Running> running = new ArrayList<>();
    for (Batch batch : books.batches().running()) {
      if (batch.plan().kind() == BatchKind.CAST) {
        running.add(
            new CastingPage.Running(
                batch.mark().text(),
                "/casting/" + batch.id(),
                CastReader.what(batch, book),
                CastReader.next(books, batch)));
      }
    }
    boolean ready = !book.all(MixCard.class).isEmpty() && !book.all(Vessel.class).isEmpty();
    return new CastingPage(purpose(), running, standing(books), ready);
  }

  private static List<CastingPage.Standing> standing(Books books) {
    List<String> states = Stream.of(Bay.values()).map(Bay::state).toList();
    Map<String, Long> counts = books.pieces().inStates(states);
    List<CastingPage.Standing> standing = new ArrayList<>();
    for (Bay bay : Bay.values()) {
      long count = counts.getOrDefault(bay.state(), 0L);
      standing.add(
          new CastingPage.Standing(
              bay.words(), "/casting/pieces/" + bay.state(), count, bay.next()));
    }
    return standing;
  }
}
