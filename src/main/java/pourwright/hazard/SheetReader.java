package pourwright.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pourwright.quantity.OutOfRange;

/**
 * Reads the composition from section 3 of a safety data sheet as it is pasted from a file: line by
 * line, a substance beginning where a CAS number stands. Nothing is guessed silently: what is
 * doubtful is said and stays text until it is confirmed, and every number of the result stands in
 * the text.
 */
public final class SheetReader {
  private static final int LINES_MAX = 2_000;
  private static final int LENGTH_MAX = 1_000;

  /** A whole number as it stands, never a part of a longer one. */
  private static final String NUMBER =
      "(?<![0-9.,])[0-9]{1,6}(?:[.,][0-9]{1,6})?(?![0-9]|[.,][0-9])";

  /** Nothing before it that could make it the end of a longer number. */
  private static final String ALONE = "(?<![0-9-])(?<![0-9][.,])";

  private static final Pattern CAS =
      Pattern.compile(ALONE + "([1-9][0-9]{1,6}-[0-9]{2}-[0-9])(?![0-9-])");

  /** Where a substance begins: its CAS number, or the words that it has none. */
  private static final Pattern START = Pattern.compile("(?i)" + CAS.pattern() + "|\\bno cas\\b");

  private static final Pattern OTHER_NUMBERS =
      Pattern.compile(
          ALONE
              + "(?:[0-9]{3}-[0-9]{3}-[0-9]|[0-9]{3}-[0-9]{3}-[0-9]{2}-[0-9X]"
              + "|[0-9]{2}-[0-9]{10}-[0-9]{2}(?:-[0-9X]{4})?)(?![0-9-])");
  private static final Pattern STATEMENT =
      Pattern.compile("\\b(?:EUH|H|P)[0-9]{3}[A-Za-z]{0,3}\\b");
  private static final Pattern CLASS =
      Pattern.compile(
          "(?i)\\b(?:acute tox|skin corr|skin irrit|eye dam|eye irrit|resp\\. ?sens|skin sens"
              + "|muta|carc|repr|lact|stot se|stot re|asp\\. ?tox|flam\\. ?liq|aquatic acute"
              + "|aquatic chronic|ed hh|ed env)\\.? ?[1-4]?[abc]?(?![a-z0-9])"
              + "(?: ?\\((?:oral|dermal|inhalation|h33[56])\\))?");
  private static final Pattern LIMIT =
      Pattern.compile(
          "(?i)("
              + CLASS.pattern().replace("(?i)", "")
              + ")[;:, ]{0,3}(?:H[0-9]{3}[a-z]{0,3})?[;:, ]{0,3}C ?(?:≥|>=|>) ?("
              + NUMBER
              + ") ?%");
  private static final Pattern FACTOR =
      Pattern.compile(
          "(?i)\\bM(?:-?factor)? ?(?:\\(?(acute|chronic)\\)?)? ?[=:] ?([0-9]{1,7})(?![0-9]|[.,][0-9])");
  private static final Pattern ESTIMATE =
      Pattern.compile("(?i)\\b(?:ATE|LD50)\\b([^0-9%\\n]{0,40})(" + NUMBER + ") ?mg/kg");
  private static final Pattern RANGE =
      Pattern.compile(
          "(?:≥|>=|>)? ?("
              + NUMBER
              + ") ?%? ?(?:-|–|—|to|bis|à|a) ?(?:<|≤|<=)? ?("
              + NUMBER
              + ") ?(%)?");
  private static final Pattern SINGLE = Pattern.compile("(<=|<|≤|>=|>|≥)? ?(" + NUMBER + ") ?(%)");

  private SheetReader() {}

  /** What was read, and the lines that were left over. */
  public record Result(List<SheetLine> lines, List<String> unread) {
    /** Copies the lists. */
    public Result {
      lines = List.copyOf(lines);
      unread = List.copyOf(unread);
    }
  }

  /**
   * Reads pasted text.
   *
   * @throws OutOfRange when the text is longer than a sheet can be
   */
  public static Result read(String text) {
    List<String> lines = text.lines().limit(LINES_MAX + 1).toList();
    if (lines.size() > LINES_MAX) {
      throw new OutOfRange(
          "sheet", "the text has more than " + LINES_MAX + " lines", "paste section 3 only");
    }
    List<Block> blocks = new ArrayList<>();
    List<String> unread = new ArrayList<>();
    String before = "";
    for (int i = 0; i < lines.size(); i++) {
      String line = tidy(lines.get(i));
      if (line.length() > LENGTH_MAX) {
        unread.add(line.substring(0, 60) + " … (this line is too long to be one of a sheet)");
        continue;
      }
      Matcher cas = START.matcher(line);
      if (cas.find()) {
        blocks.add(new Block(i + 1, before, cas.start(), line));
        before = "";
      } else if (!blocks.isEmpty() && continues(line)) {
        blocks.get(blocks.size() - 1).add(line);
        before = "";
      } else if (!line.isBlank()) {
        unread.add(line);
        before = line;
      }
    }
    return new Result(blocks.stream().map(Block::read).toList(), unread);
  }

  private static String tidy(String line) {
    String plain = line.replace('\u00a0', ' ').replace('\t', ' ').replace('|', ' ');
    return plain.replaceAll(" {2,}", " ").strip();
  }

  private static boolean continues(String line) {
    return CLASS.matcher(line).find()
        || STATEMENT.matcher(line).find()
        || FACTOR.matcher(line).find()
        || ESTIMATE.matcher(line).find()
        || RANGE.matcher(withoutNumbers(line)).find()
        || SINGLE.matcher(withoutNumbers(line)).find();
  }

  private static String withoutNumbers(String line) {
    String plain = CAS.matcher(line).replaceAll(" ");
    for (Pattern other : List.of(OTHER_NUMBERS, LIMIT, FACTOR, ESTIMATE, CLASS, STATEMENT)) {
      plain = other.matcher(plain).replaceAll(" ; ");
    }
    return plain;
  }

  /** The lines of one substance. */
  private static final class Block {
    private final int number;
    private final String above;
    private final int casAt;
    private final StringBuilder text;
    private final List<String> doubts = new ArrayList<>();

    Block(int number, String above, int casAt, String line) {
      this.number = number;
      this.above = above;
      this.casAt = casAt;
      this.text = new StringBuilder(line);
    }

    void add(String line) {
      text.append('\n').append(line);
    }

    SheetLine read() {
      String all = text.toString();
      String cas = cas(all);
      String name = name(all);
      Map<HazardClass, String> limits = limits(all);
      Set<HazardClass> classes = classes(LIMIT.matcher(all).replaceAll(" "));
      String[] share = share(all);
      String acuteM = factor(all, "acute");
      String chronicM = factor(all, "chronic");
      String oral = estimate(all, "oral");
      String dermal = estimate(all, "dermal");
      return new SheetLine(
          number, all, name, cas, share[0], share[1], classes, limits, acuteM, chronicM, oral,
          dermal, doubts);
    }

    private String cas(String all) {
      Matcher matcher = CAS.matcher(all);
      String found = matcher.find() ? matcher.group(1) : "";
      if (!found.isEmpty() && !CasNumber.isValid(found)) {
        doubts.add(
            "the check digit of " + found + " is wrong, so it was not taken as a CAS number");
        return "";
      }
      if (found.isEmpty()) {
        doubts.add("no CAS number: lines are added up by their names");
      } else if (matcher.find()) {
        doubts.add("a second CAS number stands in this entry: is it one substance or two?");
      }
      return found;
    }

    private String name(String all) {
      String beforeCas = all.substring(0, casAt);
      String name = letters(beforeCas);
      if (name.isEmpty() && !above.isEmpty()) {
        doubts.add("the name was taken from the line above");
        name = letters(above);
      }
      if (name.isEmpty()) {
        String afterCas = withoutNumbers(all.substring(casAt));
        name = letters(afterCas.split("[;0-9%<>≥≤]", 2)[0]);
        if (!name.isEmpty()) {
          doubts.add("the name was taken from behind the number");
        }
      }
      if (name.isEmpty()) {
        doubts.add("no name was found");
        name = "substance of line " + number;
      }
      return name;
    }

    private static String letters(String text) {
      String plain = OTHER_NUMBERS.matcher(text).replaceAll(" ");
      plain =
          plain.replaceAll(
              "(?i)\\b(?:CAS|EC|EG|CE|REACH|INDEX)\\b[ -]?(?:no|nr|number|num)?\\.?", " ");
      plain = plain.replaceAll("[:;,•*]+ *$", "").replaceAll("^[\\s:;,•*.-]+", "");
      plain = plain.replaceAll(" {2,}", " ").strip();
      plain = plain.replaceAll("[:;,(\\[ -]+$", "");
      return plain.chars().anyMatch(Character::isLetter) ? plain : "";
    }

    private Set<HazardClass> classes(String all) {
      Set<HazardClass> classes = new LinkedHashSet<>();
      Matcher matcher = CLASS.matcher(all);
      while (matcher.find()) {
        try {
          HazardClass found = HazardClass.parse(matcher.group());
          String rest = all.substring(matcher.end(), Math.min(all.length(), matcher.end() + 12));
          Matcher code = STATEMENT.matcher(rest);
          boolean near = found.lacksDetail() && code.find() && code.start() <= 4;
          classes.add(near ? HazardClass.parse(found.code() + " " + code.group()) : found);
        } catch (OutOfRange e) {
          doubts.add("'" + matcher.group() + "' looks like a class and is none");
        }
      }
      statements(all, classes);
      for (HazardClass c : classes) {
        if (c.lacksDetail()) {
          doubts.add(c.code() + ": route or effect was not found");
        }
      }
      return classes;
    }

    /** Statements whose class is not listed beside them. */
    private void statements(String all, Set<HazardClass> classes) {
      Set<String> covered = new LinkedHashSet<>();
      for (HazardClass c : classes) {
        for (HazardClass each : c.cautious()) {
          ClassFacts facts = Tables.shared().facts(each);
          if (facts != null) {
            covered.add(facts.statement());
          }
        }
      }
      Matcher matcher = STATEMENT.matcher(all);
      while (matcher.find()) {
        String code = matcher.group();
        String plain = code.startsWith("H") ? code.substring(0, 4) : code;
        if (code.startsWith("P") || !covered.add(plain)) {
          continue;
        }
        try {
          HazardClass meant = HazardClass.parse(code);
          classes.add(meant);
          doubts.add(code + " stands without its class and was read as " + meant.fullCode());
        } catch (OutOfRange e) {
          doubts.add(code + " is not a statement that is classified here");
        }
      }
    }

    private Map<HazardClass, String> limits(String all) {
      Map<HazardClass, String> limits = new LinkedHashMap<>();
      Matcher matcher = LIMIT.matcher(all);
      while (matcher.find()) {
        String value = matcher.group(2);
        try {
          HazardClass limited = HazardClass.parse(matcher.group(1));
          double percent = Double.parseDouble(value.replace(',', '.'));
          if (percent > 0 && percent <= 100) {
            limits.put(limited, value);
            doubts.add("a specific limit of " + value + " % for " + limited.code() + " was read");
          }
        } catch (OutOfRange e) {
          doubts.add("'" + matcher.group() + "' looks like a limit and was not understood");
        }
      }
      return limits;
    }

    private String factor(String all, String which) {
      Matcher matcher = FACTOR.matcher(all);
      String found = "";
      while (matcher.find()) {
        String of = matcher.group(1) == null ? "" : matcher.group(1).toLowerCase(Locale.ROOT);
        if (of.equals(which) || of.isEmpty()) {
          if (of.isEmpty() && which.equals("acute")) {
            doubts.add(
                "M = " + matcher.group(2) + " says neither acute nor chronic: used for both");
          }
          found = matcher.group(2);
        }
      }
      if (!found.isEmpty() && !found.matches("10*")) {
        doubts.add("M = " + found + " is not a power of ten and was left out");
        return "";
      }
      return found;
    }

    private String estimate(String all, String route) {
      Matcher matcher = ESTIMATE.matcher(all);
      while (matcher.find()) {
        String words = matcher.group(1).toLowerCase(Locale.ROOT);
        String of = words.contains("oral") ? "oral" : words.contains("dermal") ? "dermal" : "";
        if (of.isEmpty()) {
          String note = "an estimate of " + matcher.group(2) + " mg/kg names no route: left out";
          if (!doubts.contains(note)) {
            doubts.add(note);
          }
        } else if (of.equals(route)) {
          return grouped(matcher.group(2)) ? "" : positive(matcher.group(2));
        }
      }
      return "";
    }

    private static String positive(String number) {
      return Double.parseDouble(number.replace(',', '.')) > 0 ? number : "";
    }

    /** A comma or point before exactly three digits may part thousands. */
    private boolean grouped(String number) {
      if (number.matches("[0-9]{1,3}[.,][0-9]{3}")) {
        doubts.add("'" + number + "' may be thousands or decimals and was left out: type it");
        return true;
      }
      return false;
    }

    /** Lower and upper end as written. */
    private String[] share(String all) {
      int casEnd = casAt;
      Matcher cas = START.matcher(all);
      if (cas.find()) {
        casEnd = cas.end();
      }
      String[] behind = shareIn(withoutNumbers(all.substring(casEnd)));
      if (!behind[1].isEmpty()) {
        return behind;
      }
      String[] before = shareIn(withoutNumbers(all.substring(0, casAt)));
      doubts.add(
          before[1].isEmpty()
              ? "no share was found: type it from the sheet"
              : "the share was found before the CAS number");
      return before;
    }

    private String[] shareIn(String text) {
      Matcher range = RANGE.matcher(text);
      Matcher single = SINGLE.matcher(text);
      boolean hasRange = range.find();
      boolean hasSingle = single.find();
      if (hasRange && (!hasSingle || range.start() <= single.start())) {
        return checked(range.group(1), range.group(2), range.group(3) != null);
      }
      if (!hasSingle) {
        return new String[] {"", ""};
      }
      String sign = single.group(1) == null ? "" : single.group(1);
      if (sign.startsWith(">") || sign.equals("≥")) {
        doubts.add("only a lower bound of " + single.group(2) + " % stands there: type the upper");
        return new String[] {"", ""};
      }
      return checked("", single.group(2), true);
    }

    private String[] checked(String low, String high, boolean percentSign) {
      double upper = Double.parseDouble(high.replace(',', '.'));
      double lower = low.isEmpty() ? 0 : Double.parseDouble(low.replace(',', '.'));
      if (upper > 100 || lower > upper) {
        doubts.add("'" + low + " to " + high + "' cannot be a share: type it from the sheet");
        return new String[] {"", ""};
      }
      if (!percentSign) {
        doubts.add("no % stands behind " + high + ": is it a share in per cent?");
      }
      return new String[] {low, high};
    }
  }
}
