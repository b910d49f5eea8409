package pourwright.page.board;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.card.Card;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;

/** New and edit pages for one kind of card, with a page for two who edit the same one. */
final class CardRoutes<T extends Card> {
  private static final String TEMPLATE = "board/edit.jte";

  private final Desk desk;
  private final CardDesk<T> cards;
  private final String root;

  CardRoutes(Desk desk, CardDesk<T> cards) {
    this.desk = desk;
    this.cards = cards;
    this.root = "/board/" + cards.drawer().name();
  }

  void addTo(RoutesConfig routes) {
    routes.get(root + "/new", this::showNew);
    routes.post(root + "/new", this::saveNew);
    routes.get(root + "/{code}/edit", this::showEdit);
    routes.post(root + "/{code}/edit", this::saveEdit);
  }

  private void showNew(Context http) {
    Map<String, String> fresh = desk.studio().look(b -> cards.fresh(Drawers.book(b)));
    Show.page(http, TEMPLATE, page("new", Form.startingFrom(fresh), 0, List.of()));
  }

  private void showEdit(Context http) {
    CardVersion<T> version = current(http.pathParam("code"));
    Form form = Form.startingFrom(cards.written(version.body()));
    Show.page(http, TEMPLATE, page(version.code(), form, version.version(), List.of()));
  }

  private CardVersion<T> current(String code) {
    return desk.studio()
        .look(b -> b.cards().current(cards.drawer(), code))
        .orElseThrow(() -> new NotFoundResponse("no such " + cards.singular()));
  }

  private void saveNew(Context http) {
    Form form = Form.of(http);
    String code = freeCode(form.text("name", "a name"));
    save(http, form, "new", code, Optional.empty());
  }

  private void saveEdit(Context http) {
    String code = http.pathParam("code");
    save(http, Form.of(http), code, code, Optional.of(current(code).body()));
  }

  private void save(Context http, Form form, String at, String code, Optional<T> before) {
    int basedOn = form.count("based_on", "the version", 0, Integer.MAX_VALUE).orElse(0);
    Optional<T> card = readable(form, code, before);
    Optional<Act> act = form.act(http, form.optionalText("change_note"));
    if (card.isEmpty() || act.isEmpty() || !form.ok()) {
      Show.again(http, TEMPLATE, page(at, form, basedOn, List.of()));
      return;
    }
    SaveCard.Saving<T> saving =
        desk.studio()
            .saveCard
            .run(act.get(), SaveCard.Request.of(cards.drawer(), code, basedOn, card.get()));
    if (saving instanceof SaveCard.Saving.Saved<T> saved) {
      String what = card.get().name() + " saved, version " + saved.version().version() + ".";
      Show.done(http, Said.done(what), landing(code));
    } else if (saving instanceof SaveCard.Saving.Conflict<T> conflict) {
      int theirs = conflict.theirs().version();
      List<EditPage.Difference> both = differences(conflict.theirs().body(), form);
      Show.again(http, TEMPLATE, page(at, form, theirs, both));
    } else if (saving instanceof SaveCard.Saving.Refused<T> refused) {
      form.complain("name", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, TEMPLATE, page(at, form, basedOn, List.of()));
    }
  }

  private String landing(String code) {
    boolean hasPage = List.of("vessel", "candle").contains(cards.drawer().name());
    return hasPage ? root + "/" + code : "/board";
  }

  private Optional<T> readable(Form form, String code, Optional<T> before) {
    try {
      return cards.read(form, code, before);
    } catch (OutOfRange e) {
      form.complain(known(form, e.field()), e.sentence() + ": " + e.hint() + ".");
      return Optional.empty();
    }
  }

  /** The field to complain at: the refusal's own where the form has one, else the name. */
  private String known(Form form, String field) {
    return form.value(field).isEmpty() ? "name" : field;
  }

  private List<EditPage.Difference> differences(T theirs, Form mine) {
    Map<String, String> their = cards.written(theirs);
    List<EditPage.Difference> all = new ArrayList<>();
    for (EntryGroup group : groups()) {
      for (Entry entry : group.entries()) {
        String a = their.getOrDefault(entry.name(), "");
        String b = mine.value(entry.name());
        if (!a.equals(b)) {
          all.add(new EditPage.Difference(group.title() + ": " + entry.label(), a, b));
        }
      }
    }
    return all;
  }

  private List<EntryGroup> groups() {
    return desk.studio().look(b -> cards.entries(Drawers.book(b)));
  }

  private EditPage page(String at, Form form, int basedOn, List<EditPage.Difference> differences) {
    boolean fresh = at.equals("new");
    String title = (fresh ? "New " : "Edit ") + cards.singular();
    String action = fresh ? root + "/new" : root + "/" + at + "/edit";
    return new EditPage(title, action, groups(), form, basedOn, differences);
  }

  private String freeCode(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String code = plain.replaceAll("^-+|-+$", "");
    String start = code.isEmpty() ? cards.drawer().name() : code;
    String cut = start.length() > 50 ? start.substring(0, 50) : start;
    return desk.studio()
        .look(
            b -> {
              String free = cut;
              for (int i = 2; b.cards().lastVersion(cards.drawer(), free) > 0; i++) {
                free = cut + "-" + i;
              }
              return free;
            });
  }
}
