package pourwright.order;

import static org.assertj.core.api.Assertions.assertThat;
import static pourwright.order.OrderFiles.DETECT;
import static pourwright.order.OrderFiles.NAMES;
import static pourwright.order.OrderFiles.head;
import static pourwright.order.OrderFiles.in;
import static pourwright.order.OrderFiles.marked;
import static pourwright.order.OrderFiles.said;
import static pourwright.order.OrderFiles.utf8;
import static pourwright.order.OrderFiles.workbook;
import static pourwright.order.OrderFiles.zip;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files as shops really write them: each is read right or stopped, none is read silently wrong. */
class NastyFilesTest {
  private static final String H = "Order,Item,Qty,Due\n";

  /**
   * One file.
   *
   * @param name what is nasty about it
   * @param bytes the file
   * @param choices what a person said
   * @param expected the whole outcome, or how it begins where it ends in …
   */
  record Case(String name, byte[] bytes, ImportChoices choices, String expected) {
    @Override
    public String toString() {
      return name;
    }
  }

  private final List<Case> cases = new ArrayList<>();

  private void csv(String name, String text, String expected) {
    cases.add(new Case(name, utf8(text), DETECT, expected));
  }

  private void file(String name, byte[] bytes, String expected) {
    cases.add(new Case(name, bytes, DETECT, expected));
  }

  private void told(String name, String text, ImportChoices choices, String expected) {
    cases.add(new Case(name, utf8(text), choices, expected));
  }

  static List<Case> cases() {
    NastyFilesTest corpus = new NastyFilesTest();
    corpus.delimitersAndQuotes();
    corpus.headers();
    corpus.encodings();
    corpus.quantities();
    corpus.dates();
    corpus.moreDates();
    corpus.lines();
    corpus.workbooks();
    corpus.notTables();
    return corpus.cases;
  }

  private void delimitersAndQuotes() {
    csv("plain", H + "1,cog-fig,2,2026-04-03\n", "ready: 1 2 cog-fig 2026-04-03");
    csv("semicolons", "Order;Item;Qty\n1;cog-fig;2\n", "ready: 1 2 cog-fig");
    csv("tabs", "Order\tItem\tQty\n1\tcog-fig\t2\n", "ready: 1 2 cog-fig");
    csv("bars", "Order|Item|Qty\n1|cog-fig|2\n", "ready: 1 2 cog-fig");
    csv("the delimiter is said", "sep=;\nOrder;Item;Qty\n1;cog-fig;2\n", "ready: 1 2 cog-fig");
    csv(
        "semicolons with commas in the names",
        "Order;Item;Qty\n1;Bollard, Rain on slate;2\n",
        "ready: 1 2 bollard-rain");
    csv(
        "a comma in quotation marks",
        "Order,Item,Qty\n1,\"Bollard, Rain on slate\",2\n",
        "ready: 1 2 bollard-rain");
    csv(
        "a comma without quotation marks",
        "Order,Item,Qty\n1,Bollard, Rain on slate,2\n",
        "bad: 2 4 columns instead of 3; …");
    csv(
        "a line break in quotation marks",
        "Order,Note,Item,Qty\n1,\"two\nlines\",cog-fig,2\n2,,cog-fog,1\n",
        "bad: 4 no candle is called 'cog-fog'; did you mean cog-fig?");
    csv(
        "doubled quotation marks",
        "Order,Customer,Item,Qty\n1,\"Ann \"\"Fig\"\" Lee\",cog-fig,2\n",
        "ready: 1 2 cog-fig");
    csv(
        "a quotation mark that is never closed",
        "Order,Item,Qty\n1,cog-fig,2\n2,\"cog-fig,3\n3,cog-fig,4\n",
        "bad: 3 from here on the quotation marks do not match up; …");
    csv(
        "line ends of three kinds",
        "Order,Item,Qty\r\n1,cog-fig,2\n2,cog-fig,3\r3,cog-fig,4\r\n",
        "ready: 1 2 cog-fig; 2 3 cog-fig; 3 4 cog-fig");
    csv("no line end at the end", "Order,Item,Qty\n1,cog-fig,2", "ready: 1 2 cog-fig");
    csv("empty lines between", "Order,Item,Qty\n\n1,cog-fig,2\n,,\n", "ready: 1 2 cog-fig");
    csv("delimiters at the line's end", "Order,Item,Qty,\n1,cog-fig,2,,\n", "ready: 1 2 cog-fig");
    csv(
        "two delimiters that cut alike",
        "Order;a,Item;b,Qty;c\n1;1,cog-fig;2,3;4\n",
        "ambiguous: delimiter: the columns could be cut at several characters");
  }

  private void headers() {
    csv("the header in capitals", "ORDER , ITEM ,QTY\n1,cog-fig,2\n", "ready: 1 2 cog-fig");
    csv(
        "a title above the header",
        "Orders of March\n\nOrder,Item,Qty\n1,cog-fig,2\n",
        "ready: 1 2 cog-fig");
    csv(
        "a total below the orders",
        "Order,Item,Qty\n1,cog-fig,2\n,Total,2\n",
        "bad: 3 there is no order number");
    csv(
        "two columns called quantity",
        "Order,Item,Qty,Quantity\n1,cog-fig,2,3\n",
        "ambiguous: quantity: several columns could be the quantity");
    csv(
        "no column for the quantity",
        "Order,Item,Colour\n1,cog-fig,red\n",
        "ambiguous: quantity: it is not clear which column is the quantity");
    csv(
        "a date column that may mean anything is left alone",
        "Order,Item,Qty,Date\n1,cog-fig,2,03/04/2026\n",
        "ready: 1 2 cog-fig");
    Map<ImportField, String> map =
        ImportChoices.readMap("order=Name,design=Lineitem name,quantity=Lineitem quantity");
    told(
        "columns mapped by hand",
        "Name,Lineitem quantity,Lineitem name\n#1001,2,cog-fig\n",
        DETECT.withMap(map),
        "ready: #1001 2 cog-fig");
    told(
        "a mapped column that is not there",
        "Name,Lineitem qty,Lineitem name\n#1001,2,cog-fig\n",
        DETECT.withMap(map),
        "ambiguous: quantity: no column is called 'Lineitem quantity'");
    told(
        "a mapped column that stands twice",
        "Name,Name,Lineitem name,Lineitem quantity\n1,2,cog-fig,2\n",
        DETECT.withMap(map),
        "ambiguous: order: several columns could be the order's number");
    csv(
        "only a header",
        "Order,Item,Qty\n",
        "unreadable: there is no order below the column names");
    csv(
        "headers in German",
        "Bestellnummer;Artikel;Menge;Liefertermin\n7;cog-fig;2;03.04.2026\n",
        "ready: 7 2 cog-fig 2026-04-03");
  }

  private void encodings() {
    String umlaut = "Order;Item;Qty\n1;Tr\u00f6g \u00dcber;2\n";
    String right = "ready: 1 2 trough-ueber";
    csv("UTF-8", umlaut, right);
    file("UTF-8 with a mark", marked(new int[] {0xef, 0xbb, 0xbf}, utf8(umlaut)), right);
    file("UTF-16 little end first", marked(new int[] {0xff, 0xfe}, in("UTF-16LE", umlaut)), right);
    file("UTF-16 big end first", marked(new int[] {0xfe, 0xff}, in("UTF-16BE", umlaut)), right);
    file("UTF-16 without a mark", in("UTF-16LE", umlaut), right);
    file("windows-1252", in("windows-1252", umlaut), right);
    file(
        "the euro sign of windows-1252",
        in("windows-1252", "Order;Price \u20ac;Item;Qty\n1;3;Tr\u00f6g \u00dcber;2\n"),
        right);
    file(
        "letters written twice over",
        utf8(new String(utf8(umlaut), java.nio.charset.Charset.forName("windows-1252"))),
        "ambiguous: encoding: letters look as if they had been written twice over, …");
    file(
        "letters lost before",
        utf8("Order;Item;Qty\n1;Tr\ufffdg;2\n"),
        "unreadable: the file holds replacement characters: …");
    file(
        "bytes of no encoding",
        marked(new int[] {'O', 0x81, 0x8d, ';'}, utf8("rder;Item;Qty\n1;cog-fig;2\n")),
        "unreadable: the letters fit neither …");
    csv("a zero byte", "Order,Item,Qty\n1,cog\0-fig,2\n", "bad: 2 there is a zero byte …");
    csv("umlauts in two code points", "Order;Item;Qty\n1;Tro\u0308g U\u0308ber;2\n", right);
    csv(
        "no-break and zero-width blanks",
        "Order,Item,Qty\n\u00a01,\u200bcog-fig\u00a0,2\u202f\n",
        "ready: 1 2 cog-fig");
  }

  private void quantities() {
    csv("2.0 pieces", "Order,Item,Qty\n1,cog-fig,2.0\n", "ready: 1 2 cog-fig");
    csv("2,00 pieces", "Order;Item;Qty\n1;cog-fig;2,00\n", "ready: 1 2 cog-fig");
    csv(
        "3.000 pieces",
        "Order,Item,Qty\n1,cog-fig,3.000\n",
        "ambiguous: decimal: a quantity of 3.000 …");
    csv(
        "3,000 pieces",
        "Order;Item;Qty\n1;cog-fig;3,000\n",
        "ambiguous: decimal: a quantity of 3,000 …");
    told(
        "3.000 pieces, the comma is the mark",
        "Order,Item,Qty\n1,cog-fig,3.000\n",
        DETECT.withDecimal(','),
        "ready: 1 3000 cog-fig");
    told(
        "3.000 pieces, the point is the mark",
        "Order,Item,Qty\n1,cog-fig,3.000\n",
        DETECT.withDecimal('.'),
        "ready: 1 3 cog-fig");
    csv(
        "another value shows the mark",
        "Order;Item;Qty\n1;cog-fig;3.000\n2;cog-fig;1,0\n",
        "ready: 1 3000 cog-fig; 2 1 cog-fig");
    csv(
        "both marks in one column",
        "Order;Item;Qty\n1;cog-fig;3.0\n2;cog-fig;1,0\n",
        "ambiguous: decimal: the quantities use both …");
    csv("1'234 pieces", "Order;Item;Qty\n1;cog-fig;1'234\n", "ready: 1 1234 cog-fig");
    csv(
        "1'234,50 pieces",
        "Order;Item;Qty\n1;cog-fig;1'234,50\n",
        "bad: 2 the quantity '1'234,50' …");
    csv("a narrow blank", "Order;Item;Qty\n1;cog-fig;1\u202f234\n", "ready: 1 1234 cog-fig");
    csv("1.234,00 pieces", "Order;Item;Qty\n1;cog-fig;1.234,00\n", "ready: 1 1234 cog-fig");
    csv("half a candle", "Order;Item;Qty\n1;cog-fig;2.5\n", "bad: 2 the quantity '2.5' is not …");
    csv("none", "Order,Item,Qty\n1,cog-fig,0\n", "bad: 2 the quantity is 0; …");
    csv("less than none", "Order,Item,Qty\n1,cog-fig,-2\n", "bad: 2 the quantity is -2; …");
    csv("words", "Order,Item,Qty\n1,cog-fig,two\n", "bad: 2 the quantity 'two' is not a number");
    csv("a unit", "Order,Item,Qty\n1,cog-fig,2 pcs\n", "bad: 2 the quantity '2 pcs' is not …");
    csv("a power", "Order,Item,Qty\n1,cog-fig,1e3\n", "bad: 2 the quantity '1e3' is not …");
    csv("a formula", "Order,Item,Qty\n1,cog-fig,=1+1\n", "bad: 2 the quantity '=1+1' is not …");
    csv("empty", "Order,Item,Qty\n1,cog-fig,\n", "bad: 2 there is no quantity");
    csv("wide digits", "Order,Item,Qty\n1,cog-fig,\uff12\n", "ready: 1 2 cog-fig");
    csv(
        "far too many",
        "Order,Item,Qty\n1,cog-fig,90000\n",
        "bad: 2 the quantity '90000' is above …");
  }

  private void dates() {
    date("03/04/2026", "ambiguous: dates: a date of 03/04/2026 …");
    date("13/04/2026", "ready: 1 2 cog-fig 2026-04-13");
    date("04/13/2026", "ready: 1 2 cog-fig 2026-04-13");
    date("05/05/2026", "ready: 1 2 cog-fig 2026-05-05");
    date("03/04/05", "ambiguous: dates: …");
    date("26/04/03", "ready: 1 2 cog-fig 2026-04-03");
    date("03.04.2026", "ready: 1 2 cog-fig 2026-04-03");
    date("3.4.2026", "ready: 1 2 cog-fig 2026-04-03");
    date("03-04-2026", "ambiguous: dates: …");
    date("2026/04/03", "ready: 1 2 cog-fig 2026-04-03");
    date("20260403", "ready: 1 2 cog-fig 2026-04-03");
    date("3 Apr 2026", "ready: 1 2 cog-fig 2026-04-03");
    date("April 3rd 2026", "ready: 1 2 cog-fig 2026-04-03");
    date("3. M\u00e4rz 2026", "ready: 1 2 cog-fig 2026-03-03");
    date("3 ao\u00fbt 2026", "ready: 1 2 cog-fig 2026-08-03");
    date("3 de abril de 2026", "ready: 1 2 cog-fig 2026-04-03");
    date("2026-04-03 10:30:00", "ready: 1 2 cog-fig 2026-04-03");
    date("2026-04-03T23:30:00Z", "ready: 1 2 cog-fig 2026-04-04");
    date("2026-04-03 23:30:00 -0500", "ready: 1 2 cog-fig 2026-04-04");
    date("2026-02-30", "bad: 2 '2026-02-30' is not a date");
    date("31.06.2026", "bad: 2 '31.06.2026' is not a date");
    date("45/13/2026", "bad: 2 '45/13/2026' is not a date …");
    date("46115", "bad: 2 '46115' is not a date; it looks like a spreadsheet's day number, …");
    date("soon", "bad: 2 'soon' is not a date");
    date("1926-04-03", "bad: 2 the date '1926-04-03' is years away from today");
    date("0026-04-03", "bad: 2 …");
  }

  private void date(String date, String expected) {
    csv("due " + date, "Order;Item;Qty;Due\n1;cog-fig;2;" + date + "\n", expected);
  }

  private void moreDates() {
    String two = "Order;Item;Qty;Due\n1;cog-fig;2;%s\n2;cog-fig;3;%s\n";
    csv(
        "a later date decides",
        two.formatted("03/04/2026", "13/04/2026"),
        "ready: 1 2 cog-fig 2026-04-03; 2 3 cog-fig 2026-04-13");
    csv(
        "dates that contradict each other",
        two.formatted("04/13/2026", "13/04/2026"),
        "ambiguous: dates: the dates contradict each other: …");
    csv(
        "one date sure, one in doubt",
        two.formatted("13.04.2026", "03/04/2026"),
        "ambiguous: dates: a date of 03/04/2026 …");
    told(
        "the order of dates is said",
        two.formatted("03/04/2026", "05/06/2026"),
        DETECT.withDates(DateOrder.MONTH_DAY_YEAR),
        "ready: 1 2 cog-fig 2026-03-04; 2 3 cog-fig 2026-05-06");
    told(
        "the order of dates is said and one does not fit",
        two.formatted("03/04/2026", "13/06/2026"),
        DETECT.withDates(DateOrder.MONTH_DAY_YEAR),
        "bad: 3 '13/06/2026' is not a date");
    csv(
        "the date stands on the order's first line alone",
        "Order;Item;Qty;Due\n1;cog-fig;2;2026-04-03\n1;bollard-rain;1;\n",
        "ready: 1 2 cog-fig 2026-04-03; 1 1 bollard-rain 2026-04-03");
    csv(
        "no date anywhere in the order",
        "Order;Item;Qty;Due\n1;cog-fig;2;2026-04-03\n2;bollard-rain;1;\n",
        "bad: 3 there is no due date");
  }

  private void lines() {
    StringBuilder seventeen = new StringBuilder("Order,Customer,Item,Qty,Due\n");
    for (int line = 2; line <= 20; line++) {
      String name = line == 9 ? "\"=HYPERLINK(\"\"http://x\"\")\"" : "Ann";
      seventeen.append(line).append(',').append(name).append(",cog-fig,2,");
      seventeen.append(line == 17 ? "2026-13-45" : "2026-04-03").append('\n');
    }
    csv(
        "a bad date on line 17 and a formula in a name",
        seventeen.toString(),
        "bad: 17 '2026-13-45' is not a date");
    csv(
        "several bad lines are all named",
        H + "1,cog-fig,x,2026-04-03\n2,nothing,1,2026-04-03\n3,cog-fig,1,never\n",
        "bad: 2 the quantity 'x' is not a number; 3 no candle is called 'nothing'; 4 'never' …");
    csv(
        "one candle twice in an order",
        "Order,Item,Qty\n1,cog-fig,2\n1,cog-fig,2\n",
        "ready: 1 2 cog-fig; 1 2 cog-fig");
    csv("an alias", "Order,Item,Qty\n1,3-WICK  thing,2\n", "ready: 1 2 trough-ueber");
    csv("a number as the order's name", "Order,Item,Qty\n007,cog-fig,2\n", "ready: 007 2 cog-fig");
    csv("a short line", "Order,Item,Qty\n1,cog-fig\n", "bad: 2 there is no quantity");
  }

  private void workbooks() {
    file(
        "a workbook with real numbers and dates",
        workbook(
            (book, sheet) -> {
              head(sheet, "Order", "Item", "Qty", "Due");
              sheet.value(1, 0, 1001);
              sheet.value(1, 1, "cog-fig");
              sheet.value(1, 2, 2.0);
              sheet.value(1, 3, LocalDate.of(2026, 4, 3));
              sheet.style(1, 3).format("dd/mm/yyyy").set();
            }),
        "ready: 1001 2 cog-fig 2026-04-03");
    file(
        "a workbook with dates as text",
        workbook(
            (book, sheet) -> {
              head(sheet, "Order", "Item", "Qty", "Due");
              sheet.value(1, 0, "1");
              sheet.value(1, 1, "cog-fig");
              sheet.value(1, 2, "2");
              sheet.value(1, 3, "03/04/2026");
            }),
        "ambiguous: dates: a date of 03/04/2026 …");
    file(
        "a workbook with a bare day number",
        workbook(
            (book, sheet) -> {
              head(sheet, "Order", "Item", "Qty", "Due");
              sheet.value(1, 0, "1");
              sheet.value(1, 1, "cog-fig");
              sheet.value(1, 2, 2);
              sheet.value(1, 3, 46115);
            }),
        "bad: 2 '46115' is not a date; …");
    file(
        "a workbook with half a piece",
        workbook(
            (book, sheet) -> {
              head(sheet, "Order", "Item", "Qty");
              sheet.value(1, 0, "1");
              sheet.value(1, 1, "cog-fig");
              sheet.value(1, 2, 2.5);
            }),
        "bad: 2 the quantity '2.5' is not …");
    file(
        "a workbook with a formula that was never worked out",
        workbook(
            (book, sheet) -> {
              head(sheet, "Order", "Item", "Qty");
              sheet.value(1, 0, "1");
              sheet.value(1, 1, "cog-fig");
              sheet.formula(1, 2, "1+1");
            }),
        "bad: 2 quantity: …");
    file(
        "two sheets with orders",
        workbook(
            (book, sheet) -> {
              head(sheet, "Order", "Item", "Qty");
              sheet.value(1, 0, "1");
              head(book.newWorksheet("Old"), "Order", "Item", "Qty");
            }),
        "ambiguous: sheet: several sheets could be the orders");
    file(
        "a second sheet with something else",
        workbook(
            (book, sheet) -> {
              head(sheet, "Order", "Item", "Qty");
              sheet.value(1, 0, "1");
              sheet.value(1, 1, "cog-fig");
              sheet.value(1, 2, 3);
              book.newWorksheet("Colours").value(0, 0, "grey");
            }),
        "ready: 1 3 cog-fig");
    file(
        "an empty workbook",
        workbook((book, sheet) -> sheet.value(0, 0, "")),
        "unreadable: there is no sheet …");
  }

  private void notTables() {
    file("nothing", new byte[0], "unreadable: the file is empty");
    csv("blanks", " \n \n", "unreadable: the file is empty");
    csv(
        "a web page",
        "<html><table><tr><td>1</td></tr></table>",
        "unreadable: this is a web page …");
    csv("JSON", "{\"orders\":[]}", "unreadable: this is not a table");
    csv("a sentence", "The orders are on the wall\n", "unreadable: no line of it looks …");
    file(
        "an old workbook",
        marked(new int[] {0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1}, new byte[600]),
        "unreadable: this is an old or a locked workbook");
    file("another zip", zip(Map.of("a.txt", utf8("a"))), "unreadable: this is a zip, but …");
    file(
        "a workbook that unpacks to a flood",
        zip(Map.of("xl/workbook.xml", new byte[20_000_000])),
        "unreadable: the workbook unpacks to far more …");
    file(
        "a workbook that leads elsewhere",
        zip(Map.of("../../evil", utf8("x"), "xl/workbook.xml", utf8("<x/>"))),
        "unreadable: the workbook holds parts …");
    Map<String, byte[]> broken = new LinkedHashMap<>();
    broken.put("xl/workbook.xml", utf8("<workbook"));
    file("a damaged workbook", zip(broken), "unreadable: the workbook cannot be read");
    file("half a zip", marked(new int[] {'P', 'K', 3, 4}, new byte[20]), "unreadable: …");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isReadRightOrStopped(Case nasty) {
    String said = said(OrderFile.read(nasty.bytes(), NAMES, nasty.choices()));
    if (nasty.expected().endsWith("\u2026")) {
      String begin = nasty.expected().substring(0, nasty.expected().length() - 1).stripTrailing();
      assertThat(said).startsWith(begin);
    } else {
      assertThat(said).isEqualTo(nasty.expected());
    }
  }

  @Test
  void theCorpusHasAtLeastSixtyFiles() {
    assertThat(cases()).hasSizeGreaterThanOrEqualTo(60);
  }
}
