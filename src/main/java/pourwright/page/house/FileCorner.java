package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Optional;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.FileKind;
import pourwright.page.guard.TurnedAway;
import pourwright.work.Act;
import pourwright.work.AttachFile;
import pourwright.work.Attachment;
import pourwright.work.Outcome;
import pourwright.work.Subject;

/** Photos and papers kept with a piece, a batch, a lot. */
public final class FileCorner implements Corner {
  /** Largest file, bytes. */
  static final long SIZE_MAX = 25L * 1024 * 1024;

  private final Desk desk;

  /** The files of this studio. */
  public FileCorner(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.post("/files", this::attach);
    routes.get("/files/{id}", this::show);
  }

  private void attach(Context http) throws IOException {
    Form form = Form.of(http);
    Subject subject = subject(form.value("subject"));
    String back = Numbers.ownPath(form.value("back"));
    UploadedFile file = http.uploadedFile("file");
    if (file == null || file.size() == 0) {
      Show.done(http, Said.refused("No file was chosen.", "Choose one and try again."), back);
      return;
    }
    if (file.size() > SIZE_MAX) {
      throw new TurnedAway(413, "That file is too large", "At most 25 MB. Nothing was kept.");
    }
    byte[] bytes;
    try (InputStream in = file.content()) {
      bytes = in.readAllBytes();
    }
    Optional<FileKind> kind = FileKind.of(bytes);
    if (kind.isEmpty()) {
      Show.done(
          http,
          Said.refused(
              "That kind of file is not taken.",
              "Pictures (JPEG, PNG, WebP), PDF and plain text are. The content counts, not the name."),
          back);
      return;
    }
    byte[] kept = kind.get().cleaned(bytes);
    keep(http, form, new AttachFile.Request(subject, kind.get().type(), name(file)), kept, back);
  }

  private void keep(
      Context http, Form form, AttachFile.Request request, byte[] bytes, String back) {
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.done(
          http,
          Said.refused(
              "Nothing was kept: nobody said who works here.",
              "Put your initials in at the head of the page, then choose the file again."),
          back);
      return;
    }
    Outcome<Attachment> outcome =
        desk.studio().attachFile.run(act.get(), request, new ByteArrayInputStream(bytes));
    Show.done(
        http,
        outcome instanceof Outcome.Refused<Attachment> refused
            ? Said.refused(refused)
            : Said.done(outcome.made().name() + " is kept."),
        back);
  }

  private static String name(UploadedFile file) {
    String name = file.filename().replaceAll("[\\p{Cntrl}/\\\\]", "_").strip();
    return name.isEmpty() ? "file" : name.substring(0, Math.min(120, name.length()));
  }

  private static Subject subject(String text) {
    int slash = text.indexOf('/');
    try {
      String kind = text.substring(0, Math.max(0, slash)).toUpperCase(Locale.ROOT);
      return new Subject(Subject.Kind.valueOf(kind), text.substring(slash + 1));
    } catch (IllegalArgumentException e) {
      throw new TurnedAway(400, "Nothing says what the file belongs to", "Load the page again.");
    }
  }

  private void show(Context http) throws IOException {
    long id = Numbers.of(http.pathParam("id"));
    Optional<Attachment> found = desk.studio().look(books -> books.attachments().attachment(id));
    Optional<InputStream> bytes =
        found.isEmpty() ? Optional.empty() : desk.studio().files().open(found.get().sha256());
    if (found.isEmpty() || bytes.isEmpty()) {
      throw new TurnedAway(404, "There is no such file", "It may have been taken back.");
    }
    try (InputStream in = bytes.get()) {
      http.header("Content-Security-Policy", "sandbox; default-src 'none'");
      Show.inline(http, in.readAllBytes(), found.get().mediaType(), found.get().name());
    }
  }
}
