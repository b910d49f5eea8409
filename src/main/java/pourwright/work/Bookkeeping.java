package pourwright.work;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Mark;
import pourwright.batch.PieceEvent;
import pourwright.cost.Accounts;
import pourwright.cost.Journal;
import pourwright.cost.Journal.Entry;
import pourwright.cost.Journal.Posting;
import pourwright.cost.Valuation;
import pourwright.quantity.Counted;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Lot;
import pourwright.stock.Movement;

/**
 * The books of account, told from the ledger: purchases, what stock is worth, what was sold and
 * what it had cost, by double entries. Maths: docs/models/cost.md 8.
 *
 * @param journal every entry in order
 * @param costs what each piece's materials cost
 * @param sales what was sold
 * @param purchases what was bought
 */
public record Bookkeeping(
    Journal journal, PieceCosts costs, List<Sale> sales, List<Purchase> purchases) {

  /** Keeps its own copies. */
  public Bookkeeping {
    sales = List.copyOf(sales);
    purchases = List.copyOf(purchases);
  }

  /**
   * A piece that was sold.
   *
   * @param minor its price in cents, null where none was written down
   * @param costMinor what its materials cost
   */
  public record Sale(
      LocalDate day,
      String order,
      String channel,
      String design,
      String mark,
      @Nullable Long minor,
      long costMinor) {}

  /** A delivery; cents are null where its price is not known. */
  public record Purchase(
      LocalDate day,
      String material,
      String lot,
      @Nullable String supplier,
      Amount amount,
      @Nullable Long minor) {}

  /** Tells the books of a studio whose days are those of a zone. */
  public static Bookkeeping of(Books books, ZoneId zone) {
    return new Telling(books, zone).told();
  }

  /** Sales of a period. */
  public List<Sale> sales(LocalDate from, LocalDate to) {
    return sales.stream().filter(s -> !s.day().isBefore(from) && s.day().isBefore(to)).toList();
  }

  /** Purchases of a period. */
  public List<Purchase> purchases(LocalDate from, LocalDate to) {
    return purchases.stream().filter(p -> !p.day().isBefore(from) && p.day().isBefore(to)).toList();
  }

  /** What the pieces sold in a period had cost, by the pieces themselves. */
  public long costOfSales(LocalDate from, LocalDate to) {
    return sales(from, to).stream().mapToLong(Sale::costMinor).sum();
  }

  /** One reading of the ledger. */
  private static final class Telling {
    private final Books books;
    private final ZoneId zone;
    private final String currency;
    private final Map<Long, Sum> byDeed = new TreeMap<>();
    private final BatchCosts batches = new BatchCosts();
    private final List<Sale> sales = new ArrayList<>();
    private final List<Purchase> purchases = new ArrayList<>();
    private long unpricedLots;
    private long unpricedSales;

    /** What one deed did to the accounts. */
    private static final class Sum {
      final Instant at;
      final String words;
      final Map<String, Long> accounts = new TreeMap<>();

      Sum(Instant at, String words) {
        this.at = at;
        this.words = words;
      }
    }

    Telling(Books books, ZoneId zone) {
      this.books = books;
      this.zone = zone;
      this.currency = books.settings().value("currency").orElse("EUR");
    }

    private LocalDate day(Instant at) {
      return LocalDate.ofInstant(at, zone);
    }

    private void post(
        long deed, Instant at, String words, String debit, String credit, long minor) {
      if (minor != 0) {
        Sum sum = byDeed.computeIfAbsent(deed, d -> new Sum(at, words));
        sum.accounts.merge(debit, minor, Math::addExact);
        sum.accounts.merge(credit, -minor, Math::addExact);
      }
    }

    Bookkeeping told() {
      Valuation.Method method = StockValue.method(books);
      for (String material : books.accounts().materials()) {
        material(material, method);
      }
      List<PieceEvent> passages = books.accounts().passages();
      batches.carry(books.batches().carried());
      PieceCosts costs = PieceCosts.of(books, batches.all(), passages);
      pieces(passages, costs);
      List<Entry> entries = new ArrayList<>();
      emptyBatches(costs, entries);
      byDeed.forEach((deed, sum) -> entry(deed, sum).ifPresent(entries::add));
      money(entries);
      entries.sort(Comparator.comparing(Entry::day));
      CloseBooks.all(books).forEach((last, stood) -> keepClosed(entries, last, stood));
      return new Bookkeeping(
          new Journal(currency, entries, notes(method)), costs, sales, purchases);
    }

    /** The days up to a closing stand as they stood; what was corrected since counts after it. */
    private void keepClosed(List<Entry> entries, LocalDate last, Map<String, Long> stood) {
      LocalDate open = last.plusDays(1);
      Map<String, Long> now = new Journal(currency, entries, List.of()).balances(open);
      stood.forEach((account, minor) -> now.merge(account, -minor, Math::addExact));
      List<Posting> back = new ArrayList<>();
      List<Posting> later = new ArrayList<>();
      now.forEach(
          (account, minor) -> {
            if (minor != 0) {
              back.add(new Posting(account, -minor));
              later.add(new Posting(account, minor));
            }
          });
      if (!later.isEmpty()) {
        entries.add(new Entry(last, "C" + last, "as the books were closed", back));
        entries.add(
            new Entry(open, "C" + open, "corrections of days that were closed by then", later));
        entries.sort(Comparator.comparing(Entry::day));
      }
    }

    private void material(String material, Valuation.Method method) {
      StockEntries entries = StockEntries.of(books, material);
      unpricedLots += entries.withoutPrice().size();
      Map<Long, Lot> lots = new HashMap<>();
      String account = Accounts.MATERIALS + Accounts.part(material);
      List<Valuation.Issued> issued = entries.valued(method).issued();
      int next = 0;
      for (int i = 0; i < entries.entries().size(); i++) {
        Movement movement = entries.movements().get(i);
        if (entries.entries().get(i) instanceof Valuation.Entry.In in) {
          received(movement, in.minor(), account, lots);
        } else {
          long minor = issued.get(next++).minor();
          issued(movement, entries.entries().get(i).amount(), minor, account);
        }
      }
    }

    private void received(Movement movement, long minor, String account, Map<Long, Lot> lots) {
      if (movement.cause() != Cause.RECEIVED) {
        return;
      }
      Lot lot =
          lots.computeIfAbsent(movement.lot(), id -> books.lots().shelf(id).orElseThrow().lot());
      String supplier = lot.supplier();
      purchases.add(
          new Purchase(
              day(movement.at()),
              lot.material(),
              lot.code(),
              supplier,
              movement.change(),
              lot.price() == null ? null : lot.price().minor()));
      post(
          movement.deed(),
          movement.at(),
          "received " + lot.material() + " lot " + lot.code(),
          account,
          Accounts.SUPPLIERS,
          minor);
    }

    private void issued(Movement movement, long units, long minor, String account) {
      Long batch = movement.batch();
      if (batch != null) {
        batches.add(batch, movement, units, minor);
        post(movement.deed(), movement.at(), "batch " + batch, Accounts.PIECES, account, minor);
        return;
      }
      String where =
          switch (movement.cause()) {
            case TEST -> Accounts.TESTS;
            case GIFT -> Accounts.GIFTS;
            case SOLD -> Accounts.SOLD;
            case COUNTED -> Accounts.MISSING;
            default -> Accounts.WASTE;
          };
      post(movement.deed(), movement.at(), movement.cause().words(), where, account, minor);
    }

    private void pieces(List<PieceEvent> passages, PieceCosts costs) {
      Map<Long, Long> marks = new HashMap<>();
      books.accounts().pieces().forEach(p -> marks.put(p.piece(), p.mark()));
      Map<Long, AccountBook.LineOf> lines = books.accounts().lines();
      Prices prices = new Prices(books, books.money().agreed(lines.keySet()));
      Map<Long, Long> pickedFor = new HashMap<>();
      Map<Long, String> candles = new HashMap<>();
      Set<Long> withShops = new HashSet<>();
      for (PieceEvent event : passages) {
        long piece = event.piece();
        switch (event.step()) {
          case POURED -> candles.put(piece, Objects.requireNonNullElse(event.design(), ""));
          case PICKED -> {
            long line = Objects.requireNonNullElse(event.orderLine(), 0L);
            pickedFor.put(piece, line);
            AccountBook.LineOf head = lines.get(line);
            if (head != null && head.channel().equals(LeaveWithShop.CHANNEL)) {
              withShops.add(piece);
              leave(event, head.order(), Accounts.WITH_SHOPS, Accounts.PIECES, costs);
            }
          }
          case UNPICKED -> {
            pickedFor.remove(piece);
            fetch(event, "fetched from a shop", withShops, costs);
          }
          case SOLD -> {
            fetch(event, "sold by a shop", withShops, costs);
            Long line = event.orderLine() == null ? pickedFor.get(piece) : event.orderLine();
            AccountBook.LineOf head = line == null ? null : lines.get(line);
            if (head == null) {
              head = new AccountBook.LineOf("", candles.getOrDefault(piece, ""), "by hand");
            }
            Optional<Long> price = prices.of(line == null ? 0 : line, head, event.deed());
            sold(event, head, price.orElse(null), costs.of(piece), marks.getOrDefault(piece, 0L));
          }
          case CAME_BACK -> leave(event, "came back", Accounts.PIECES, Accounts.SOLD, costs);
          // the wax is burnt: an empty vessel comes in again at nothing
          case REFILLED ->
              leave(event, "cleared for a refill", Accounts.SOLD, Accounts.PIECES, costs);
          case GIVEN -> leave(event, "given away", Accounts.GIFTS, Accounts.PIECES, costs);
          case TESTED -> leave(event, "taken for test", Accounts.TESTS, Accounts.PIECES, costs);
          case SCRAPPED -> {
            fetch(event, "scrapped", withShops, costs);
            leave(event, "scrapped", Accounts.FAILED, Accounts.PIECES, costs);
          }
          default -> {}
        }
      }
    }

    private void fetch(PieceEvent event, String words, Set<Long> withShops, PieceCosts costs) {
      if (withShops.remove(event.piece())) {
        leave(event, words, Accounts.PIECES, Accounts.WITH_SHOPS, costs);
      }
    }

    private void leave(
        PieceEvent event, String words, String debit, String credit, PieceCosts costs) {
      post(event.deed(), event.at(), words, debit, credit, costs.of(event.piece()));
    }

    private void sold(
        PieceEvent event, AccountBook.LineOf head, @Nullable Long price, long cost, long mark) {
      String words = head.order().isEmpty() ? "sold" : "sold for order " + head.order();
      post(event.deed(), event.at(), words, Accounts.SOLD, Accounts.PIECES, cost);
      if (price == null) {
        unpricedSales++;
      } else {
        post(
            event.deed(),
            event.at(),
            words,
            Accounts.CUSTOMERS,
            Accounts.SALES + Accounts.part(head.channel()),
            price);
      }
      sales.add(
          new Sale(
              day(event.at()),
              head.order(),
              head.channel(),
              head.design(),
              mark == 0 ? "" : Mark.ofNumber(mark).text(),
              price,
              cost));
    }

    /** A finished batch of which nothing came has cost what it drew. */
    private void emptyBatches(PieceCosts costs, List<Entry> entries) {
      Map<Long, Instant> finished = books.accounts().finished();
      costs
          .withoutPieces()
          .forEach(
              (batch, minor) -> {
                Instant at = finished.get(batch);
                if (at != null && minor != 0) {
                  entries.add(
                      new Entry(
                          day(at),
                          "B" + batch,
                          "nothing came of batch " + batch,
                          List.of(
                              new Posting(Accounts.FAILED, minor),
                              new Posting(Accounts.PIECES, -minor))));
                }
              });
    }

    private Optional<Entry> entry(long deed, Sum sum) {
      List<Posting> postings = new ArrayList<>();
      sum.accounts.forEach(
          (account, minor) -> {
            if (minor != 0) {
              postings.add(new Posting(account, minor));
            }
          });
      return postings.isEmpty()
          ? Optional.empty()
          : Optional.of(new Entry(day(sum.at), "D" + deed, sum.words, postings));
    }

    private void money(List<Entry> entries) {
      for (MoneyFact fact : books.money().all()) {
        String debit = fact.kind().debit();
        String credit = fact.kind().credit();
        if (debit != null && credit != null && fact.minor() > 0) {
          String words = fact.kind().words() + " " + Objects.requireNonNullElse(fact.order(), "");
          entries.add(
              new Entry(
                  fact.day(),
                  "M" + fact.id(),
                  (words.strip() + " " + fact.words()).strip(),
                  List.of(new Posting(debit, fact.minor()), new Posting(credit, -fact.minor()))));
        }
      }
    }

    private List<String> notes(Valuation.Method method) {
      List<String> notes = new ArrayList<>();
      notes.add("Told from the ledger of the studio. Not tax advice.");
      notes.add(
          "Stock is valued "
              + (method == Valuation.Method.FIFO ? "first in, first out" : "at a moving average")
              + " at what was paid for materials; hands are not in it.");
      notes.add(
          "Prices are as written down, tax "
              + books.settings().value("books.tax").orElse("in or out not said")
              + ".");
      if (unpricedLots > 0) {
        notes.add(
            Counted.of(unpricedLots, "lot", "lots") + " without a price: counted as nothing.");
      }
      if (unpricedSales > 0) {
        String sold = Counted.of(unpricedSales, "piece", "pieces");
        notes.add(sold + " sold without a written price: no income is told.");
      }
      return notes;
    }
  }
}
