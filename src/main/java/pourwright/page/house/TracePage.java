package pourwright.page.house;

import java.util.List;

/**
 * One thing and its trace: finished strings.
 *
 * @param title what it is, such as {@code Piece 1042K}
 * @param facts what is known about it, each a word and its value
 * @param events what happened to it, oldest first
 * @param madeOf what it is made of, grouped
 * @param wentInto what it went into, grouped
 * @param holdPath where it is put on hold, or an empty string
 * @param files what is attached
 * @param ways what can be done with it next
 * @param subject what a photo would be attached to, such as {@code PIECE/12}
 * @param mistakes mistakes by name, and grades
 */
public record TracePage(
    String title,
    List<Fact> facts,
    List<String> events,
    List<Group> madeOf,
    List<Group> wentInto,
    String holdPath,
    List<Link> files,
    List<Link> ways,
    String subject,
    MistakesPart mistakes) {

  /** A word and its value. */
  public record Fact(String word, String value) {}

  /** A link with its words. */
  public record Link(String words, String path) {}

  /** Things of one kind. */
  public record Group(String heading, List<Link> links) {}
}
