package pourwright.work;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import pourwright.label.LabelText;

/**
 * Issues a proof folder: prints it, keeps the file under its hash, and writes down what stood in
 * it. An issued folder is never changed; what is new is the next version.
 */
public final class IssueFolder {
  private static final String VERB = "issued a proof folder";
  private final Doing doing;
  private final AttachmentFiles files;

  IssueFolder(Doing doing, AttachmentFiles files) {
    this.doing = doing;
    this.files = files;
  }

  /**
   * A folder to be issued.
   *
   * @param folder what stands in it
   * @param text its label
   * @param label how that is set
   * @param riskNotes the maker's words on risks
   */
  public record Request(
      ProofFolder folder, LabelText text, IssuedFolder.Label label, String riskNotes) {}

  /** Issues, or says what stands against it; nothing new gives no new version. */
  public Outcome<CardVersion<IssuedFolder>> run(Act act, Request request, FolderPrinter printer) {
    ProofFolder folder = request.folder();
    Optional<CardVersion<IssuedFolder>> last =
        doing.look(books -> books.cards().current(Drawers.FOLDER, folder.candle()));
    int next = doing.look(books -> books.cards().lastVersion(Drawers.FOLDER, folder.candle())) + 1;
    FolderPrinter.Issue issue = new FolderPrinter.Issue(next, doing.today(), act.by());
    Optional<AttachmentFiles.Kept> kept =
        refusal(folder, last).isPresent()
            ? Optional.empty()
            : Optional.of(keep(request, issue, printer));
    return doing.once(
        act,
        VERB,
        turn -> {
          Optional<Outcome<CardVersion<IssuedFolder>>> refused = refusal(folder, last);
          return refused.isPresent() || kept.isEmpty()
              ? refused.orElseThrow()
              : write(turn, request, next, kept.get());
        },
        (books, deed) ->
            Doing.known(
                books.cards().history(Drawers.FOLDER, folder.candle()).stream()
                    .filter(v -> v.deed() == deed.id())
                    .findFirst(),
                deed));
  }

  private static Optional<Outcome<CardVersion<IssuedFolder>>> refusal(
      ProofFolder folder, Optional<CardVersion<IssuedFolder>> last) {
    List<String> against = folder.against();
    if (!against.isEmpty()) {
      return Optional.of(
          Outcome.refused(
              Reason.INPUT_CANNOT_BE,
              "a proof folder is for a candle that may be sold: " + String.join("; ", against),
              "put that right first"));
    }
    if (last.isPresent() && last.get().body().lines().equals(folder.lines())) {
      return Optional.of(
          Outcome.refused(
              Reason.IT_IS_ALREADY_ANSWERED,
              "nothing has changed since version " + last.get().version(),
              "download that one"));
    }
    return Optional.empty();
  }

  private AttachmentFiles.Kept keep(
      Request request, FolderPrinter.Issue issue, FolderPrinter printer) {
    byte[] pdf =
        printer.print(
            request.folder(),
            issue,
            request.text(),
            request.label().widthMm(),
            request.label().heightMm());
    try {
      return files.keep(new ByteArrayInputStream(pdf));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Outcome<CardVersion<IssuedFolder>> write(
      Turn turn, Request request, int version, AttachmentFiles.Kept kept) {
    String candle = request.folder().candle();
    if (turn.books().cards().lastVersion(Drawers.FOLDER, candle) + 1 != version) {
      return Outcome.refused(
          Reason.IT_WAS_CHANGED_MEANWHILE,
          "somebody else issued this folder in the meantime",
          "look at theirs first");
    }
    Deed deed = turn.deed(Subject.card(Drawers.CANDLE, candle));
    turn.books()
        .attachments()
        .append(
            new Attachment(
                0,
                Subject.card(Drawers.CANDLE, candle),
                kept.sha256(),
                kept.bytes(),
                "application/pdf",
                "proof-folder-" + candle + "-" + version + ".pdf",
                turn.now(),
                turn.act().by(),
                deed.id()));
    IssuedFolder issued =
        new IssuedFolder(
            candle,
            request.folder().candleVersion(),
            request.riskNotes(),
            request.label(),
            request.folder().lines(),
            kept.sha256());
    CardVersion<IssuedFolder> written =
        new CardVersion<>(
            Drawers.FOLDER, candle, version, issued, false, turn.now(), turn.act().by(), deed.id());
    turn.books().cards().append(written);
    return Turn.done(deed, written);
  }
}
