package pourwright.page.stockroom;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Kept;
import pourwright.page.stockroom.StockPages.Fact;
import pourwright.page.stockroom.StockPages.LotPage;
import pourwright.page.stockroom.StockPages.LotRow;
import pourwright.page.stockroom.StockPages.MaterialPage;
import pourwright.page.stockroom.StockPages.Notice;
import pourwright.page.stockroom.StockPages.Overview;
import pourwright.page.stockroom.StockPages.Row;
import pourwright.quantity.Counted;
import pourwright.stock.Amount;
import pourwright.stock.FirstExpiredFirstOut;
import pourwright.stock.Lot;
import pourwright.stock.Movement;
import pourwright.stock.Shelf;
import pourwright.work.Attachment;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.PageOf;
import pourwright.work.Subject;

/** What the stockroom shows, read from the books. */
final class ShelfView {
  private static final int ROWS = 30;
  private static final int CANDLE_DAYS = 365;

  private final Desk desk;
  private final Kept<Map<String, Integer>> poured = new Kept<>();

  ShelfView(Desk desk) {
    this.desk = desk;
  }

  Overview overview(String purpose, String from) {
    return desk.studio().look(books -> overview(books, purpose, from));
  }

  private Overview overview(Books books, String purpose, String from) {
    MaterialBook materials = Drawers.materials(books);
    Map<String, Amount> onHand = books.lots().onHand();
    Map<String, Amount> drawable = books.lots().drawable(desk.today());
    Map<String, String> settings = books.settings().all();
    List<Notice> notices = notices(books, materials);
    List<Row> rows = new ArrayList<>();
    String next = "";
    for (Map.Entry<String, Amount> entry : onHand.entrySet()) {
      String code = entry.getKey();
      if (code.compareTo(from) <= 0 && !from.isEmpty()) {
        continue;
      }
      if (rows.size() == ROWS) {
        next = rows.get(ROWS - 1).code();
        break;
      }
      Amount free = drawable.getOrDefault(code, Amount.none(entry.getValue().kind()));
      rows.add(
          row(materials, code, entry.getValue(), badge(settings, code, entry.getValue(), free)));
    }
    lowNotices(settings, onHand, materials).forEach(notices::add);
    notices.addAll(oldCandles(books, settings));
    return new Overview(purpose, rows, notices, from, next);
  }

  private Row row(MaterialBook materials, String code, Amount onHand, String badge) {
    Material material = materials.find(code).orElse(null);
    return new Row(
        code,
        material == null ? code : material.name(),
        material == null ? "" : material.kind().words(),
        StockWords.amount(onHand, desk.locale()),
        badge);
  }

  private String badge(Map<String, String> settings, String code, Amount all, Amount free) {
    if (isLow(settings, code, all)) {
      return "low";
    }
    return free.compareTo(all) < 0 ? StockWords.amount(free, desk.locale()) + " may be drawn" : "";
  }

  private static boolean isLow(Map<String, String> settings, String code, Amount onHand) {
    String low = settings.getOrDefault("low." + code, "");
    return !low.isEmpty() && onHand.units() < Long.parseLong(low);
  }

  private List<Notice> lowNotices(
      Map<String, String> settings, Map<String, Amount> onHand, MaterialBook materials) {
    List<Notice> notices = new ArrayList<>();
    settings.forEach(
        (key, value) -> {
          if (!key.startsWith("low.") || value.isEmpty()) {
            return;
          }
          String code = key.substring(4);
          materials
              .find(code)
              .ifPresent(
                  m -> {
                    Amount have = onHand.getOrDefault(code, Amount.none(m.unit()));
                    if (have.units() < Long.parseLong(value)) {
                      notices.add(
                          new Notice(
                              m.name() + ": " + StockWords.amount(have, desk.locale()) + " left",
                              "/stockroom/material/" + code,
                              false));
                    }
                  });
        });
    return notices;
  }

  /**
   * Candles that should be sold first, by name. House: within twelve months of pouring. Counted
   * again when a piece or a card moved or the day changed: every candle on the shelf is asked.
   */
  private List<Notice> oldCandles(Books books, Map<String, String> settings) {
    String days = settings.getOrDefault("candle.sell-within-days", "");
    int within = days.matches("[1-9][0-9]{0,3}") ? Integer.parseInt(days) : CANDLE_DAYS;
    LocalDate oldest = desk.today().minusDays(within);
    Instant before = oldest.atStartOfDay(desk.zone()).toInstant();
    List<Notice> notices = new ArrayList<>();
    poured
        .get(
            List.of(books.pieces().edition(), books.cards().edition(), oldest),
            () -> byName(books, books.recalls().pouredBefore(before)))
        .forEach(
            (candle, count) ->
                notices.add(
                    new Notice(
                        candle
                            + ": "
                            + Counted.of(count, "candle was", "candles were")
                            + " poured more than "
                            + Counted.of(within, "day", "days")
                            + " ago (house): sell the oldest first",
                        "/stockroom/market",
                        false)));
    return notices;
  }

  private static Map<String, Integer> byName(Books books, Map<String, Integer> byCode) {
    Map<String, Integer> named = new LinkedHashMap<>();
    byCode.forEach(
        (code, count) ->
            named.merge(
                books
                    .cards()
                    .current(Drawers.CANDLE, code)
                    .map(design -> design.body().name())
                    .orElse(code),
                count,
                Integer::sum));
    return named;
  }

  private List<Notice> notices(Books books, MaterialBook materials) {
    List<Notice> notices = new ArrayList<>();
    List<String> perishable =
        materials.all().stream()
            .filter(m -> m.shelfLife().closedDays() != null)
            .map(Material::code)
            .toList();
    LocalDate soon = desk.today().plusDays(StockWords.SOON_DAYS);
    for (Shelf shelf : books.lots().toLookAt(soon, perishable)) {
      Material material = materials.find(shelf.lot().material()).orElse(null);
      LocalDate last =
          material == null
              ? shelf.lot().expiresOn()
              : StockWords.lastGoodDay(shelf.lot(), material);
      String notice = StockWords.notice(last, desk.today());
      if (!notice.isEmpty() || shelf.held()) {
        String name = material == null ? shelf.lot().material() : material.name();
        String what = shelf.held() ? "on hold" : notice;
        boolean stop = shelf.held() || (last != null && last.isBefore(desk.today()));
        notices.add(
            new Notice(
                name + ", lot " + shelf.lot().code() + ": " + what,
                "/stockroom/lot/" + shelf.lot().id(),
                stop));
      }
    }
    notices.sort((a, b) -> Boolean.compare(b.stop(), a.stop()));
    return notices.size() > ROWS ? new ArrayList<>(notices.subList(0, ROWS)) : notices;
  }

  /** The materials to choose from, by name. */
  Map<String, String> choices() {
    Map<String, String> choices = new LinkedHashMap<>();
    choices.put("", "choose a material");
    desk.studio().look(Drawers::materials).all().stream()
        .sorted(java.util.Comparator.comparing(Material::name))
        .forEach(m -> choices.put(m.code(), m.name()));
    return choices;
  }

  java.util.Optional<Material> material(String code) {
    return desk.studio().look(Drawers::materials).find(code);
  }

  MaterialPage materialPage(Material material, Form form) {
    return desk.studio().look(books -> materialPage(books, material, form));
  }

  private MaterialPage materialPage(Books books, Material material, Form form) {
    List<LotRow> lots = new ArrayList<>();
    Amount sum = Amount.none(material.unit());
    List<Shelf> shelves =
        FirstExpiredFirstOut.inOrder(books.lots().shelves(material.code()), material.shelfLife());
    for (Shelf shelf : shelves) {
      LocalDate last = StockWords.lastGoodDay(shelf.lot(), material);
      lots.add(
          new LotRow(
              shelf.lot().id(),
              shelf.lot().code(),
              StockWords.amount(shelf.onHand(), desk.locale()),
              last == null ? "" : desk.day(last),
              StockWords.notice(last, desk.today()),
              shelf.held()));
      sum = shelf.onHand().kind() == sum.kind() ? sum.plus(shelf.onHand()) : shelf.onHand();
    }
    String low = books.settings().value("low." + material.code()).orElse("");
    return new MaterialPage(
        material.code(),
        material.name(),
        material.kind().words(),
        StockWords.amount(sum, desk.locale()),
        low.isEmpty()
            ? ""
            : StockWords.amount(new Amount(material.unit(), Long.parseLong(low)), desk.locale()),
        life(material),
        lots,
        form);
  }

  private static String life(Material material) {
    Integer closed = material.shelfLife().closedDays();
    Integer opened = material.shelfLife().openedDays();
    if (closed == null && opened == null) {
      return "keeps, as far as anyone has written down";
    }
    return (closed == null ? "closed: not stated" : "closed: " + Counted.of(closed, "day", "days"))
        + "; "
        + (opened == null ? "opened: not stated" : "opened: " + Counted.of(opened, "day", "days"));
  }

  LotPage lotPage(Shelf shelf, Form form, String after) {
    return desk.studio().look(books -> lotPage(books, shelf, form, after));
  }

  private LotPage lotPage(Books books, Shelf shelf, Form form, String after) {
    Material material = Drawers.materials(books).find(shelf.lot().material()).orElse(null);
    PageOf<Movement> moved =
        books.lots().movements(shelf.lot().id(), after.isEmpty() ? null : after, ROWS);
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Received", desk.day(shelf.lot().receivedOn())));
    LocalDate opened = shelf.lot().openedOn();
    facts.add(new Fact("Opened", opened == null ? "not yet" : desk.day(opened)));
    LocalDate last =
        material == null ? shelf.lot().expiresOn() : StockWords.lastGoodDay(shelf.lot(), material);
    facts.add(
        new Fact(
            "Last good day",
            last == null
                ? "not known"
                : desk.day(last) + notice(StockWords.notice(last, desk.today()))));
    if (shelf.held()) {
      facts.add(new Fact("On hold", "not drawn, picked, labelled or promised"));
    }
    String seen = shelf.onHand().units() + "";
    String next = moved.next();
    return new LotPage(
        shelf.lot().id(),
        shelf.lot().material(),
        material == null ? shelf.lot().material() : material.name(),
        shelf.lot().code(),
        StockWords.amount(shelf.onHand(), desk.locale()),
        StockWords.unit(shelf.onHand(), desk),
        seen,
        shelf.held(),
        opened != null,
        facts,
        moved.items().stream().map(this::movement).toList(),
        next == null ? "" : next,
        books.settings().value("tare.lot-" + shelf.lot().id()).orElse(""),
        papers(books, shelf.lot()),
        form);
  }

  /** Papers of this lot, then of the lots of the same material before it. */
  private static List<StockPages.Paper> papers(Books books, Lot lot) {
    List<StockPages.Paper> papers = new ArrayList<>();
    for (Attachment paper : books.attachments().of(Subject.of(Subject.Kind.LOT, lot.id()))) {
      papers.add(new StockPages.Paper(paper.name(), "/files/" + paper.id()));
    }
    for (Shelf other : books.lots().list(lot.material(), null, ROWS).items()) {
      if (other.lot().id() != lot.id() && papers.size() < ROWS) {
        Subject subject = Subject.of(Subject.Kind.LOT, other.lot().id());
        for (Attachment paper : books.attachments().of(subject)) {
          papers.add(
              new StockPages.Paper(
                  paper.name() + " (lot " + other.lot().code() + ")", "/files/" + paper.id()));
        }
      }
    }
    return papers;
  }

  private static String notice(String words) {
    return words.isEmpty() ? "" : " (" + words + ")";
  }

  private Fact movement(Movement movement) {
    String sign = movement.change().isPositive() ? "+" : "";
    return new Fact(
        desk.dayAndTime(movement.at()) + ", " + movement.cause().words(),
        sign + StockWords.amount(movement.change(), desk.locale()));
  }
}
