package pourwright.main;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import pourwright.cli.Doors;
import pourwright.cli.ExitCode;
import pourwright.work.BookTables;
import pourwright.work.Bookkeeping;
import pourwright.work.SheetTable;
import pourwright.work.TablePrinter;

/** The books of account without pages. */
final class BookDoors {
  private final Path data;
  private final String db;
  private final Clock clock;
  private final PrintStream out;
  private final PrintWriter err;

  BookDoors(Path data, String db, Clock clock, PrintStream out, PrintStream err) {
    this.data = data;
    this.db = db;
    this.clock = clock;
    this.out = out;
    this.err = Commands.writer(err);
  }

  /** Writes what is wished for, or says why not. */
  int write(Doors.BooksWish wish) {
    LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
    Optional<LocalDate> from = day(wish.from(), today.withDayOfYear(1));
    Optional<LocalDate> until = day(wish.until(), today);
    if (from.isEmpty() || until.isEmpty()) {
      return ExitCode.USAGE;
    }
    if (until.get().isBefore(from.get())) {
      return refuse("the last day, " + until.get() + ", lies before the first, " + from.get());
    }
    Path target = wish.target();
    if (target != null && Files.exists(target)) {
      return refuse(target + " is there already and is not replaced; choose another name");
    }
    if (db.isEmpty() && !Wiring.hasStudio(data)) {
      return refuse("there is no studio in " + data + "; say with --data where it is");
    }
    try (Wiring wiring = Wiring.open(data, db, clock)) {
      Bookkeeping books = wiring.studio().look(b -> Bookkeeping.of(b, clock.getZone()));
      Optional<byte[]> file = file(books, from.get(), until.get().plusDays(1), wish);
      if (file.isEmpty()) {
        return ExitCode.USAGE;
      }
      if (target == null) {
        out.write(file.get());
        out.flush();
      } else {
        Files.write(target, file.get());
      }
      return ExitCode.OK;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Optional<byte[]> file(
      Bookkeeping books, LocalDate from, LocalDate to, Doors.BooksWish wish) {
    BookTables tables = new BookTables(books, from, to);
    switch (wish.format()) {
      case "journal" -> {
        String text = books.journal().between(from, to).text();
        return Optional.of(text.getBytes(StandardCharsets.UTF_8));
      }
      case "xlsx" -> {
        return Optional.of(TablePrinter.ofTheHouse().workbook(tables.all()));
      }
      case "csv" -> {
        Optional<SheetTable> table =
            tables.all().stream().filter(t -> t.name().equals(wish.table())).findFirst();
        if (table.isEmpty()) {
          refuse(
              "there is no table '"
                  + wish.table()
                  + "'; say overview, sales, purchases, stock, months or accounts");
        }
        return table.map(TablePrinter.ofTheHouse()::csv);
      }
      default -> {
        refuse("'" + wish.format() + "' is no format; say journal, xlsx or csv");
        return Optional.empty();
      }
    }
  }

  private Optional<LocalDate> day(String text, LocalDate absent) {
    try {
      return Optional.of(text.isEmpty() ? absent : LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      refuse("'" + text + "' is not a day; write it as 2026-01-31");
      return Optional.empty();
    }
  }

  private int refuse(String sentence) {
    err.println("pourwright: " + sentence);
    return ExitCode.USAGE;
  }
}
