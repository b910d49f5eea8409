package pourwright.main;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import org.slf4j.LoggerFactory;
import pourwright.cli.ExitCode;
import pourwright.page.PassphraseMissing;
import pourwright.page.PortTaken;
import pourwright.store.StoreTrouble;

/** Says what went wrong in a sentence and which exit code that is. */
final class Trouble {
  private Trouble() {}

  static int tell(Exception e, PrintWriter err) {
    int code = codeOf(e);
    err.println("pourwright: " + sentence(e, code));
    err.flush();
    if (code == ExitCode.ERROR && !(e instanceof StoreTrouble)) {
      LoggerFactory.getLogger(Trouble.class).error("the command failed", e);
    }
    return code;
  }

  static int codeOf(Throwable e) {
    if (e instanceof StoreTrouble trouble) {
      return trouble.kind().exitCode();
    }
    if (e instanceof FolderTaken) {
      return ExitCode.LOCKED;
    }
    if (e instanceof PortTaken) {
      return ExitCode.PORT;
    }
    if (e instanceof BadSetting || e instanceof PassphraseMissing) {
      return ExitCode.USAGE;
    }
    if (e instanceof IOException io && cannotWrite(io)) {
      return ExitCode.DISK;
    }
    Throwable cause = e.getCause();
    return cause == null || cause == e ? ExitCode.ERROR : codeOf(cause);
  }

  private static boolean cannotWrite(IOException e) {
    if (e instanceof AccessDeniedException) {
      return true;
    }
    String text = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
    return text.contains("no space left")
        || text.contains("read-only file system")
        || text.contains("disk quota")
        || text.contains("not enough space")
        || e.getCause() instanceof ReadOnlyFileSystemException;
  }

  private static String sentence(Throwable e, int code) {
    if (e instanceof StoreTrouble trouble) {
      return trouble.sentence() + "; " + trouble.hint();
    }
    if (code == ExitCode.DISK) {
      return "the disk is full or may not be written: " + deepest(e);
    }
    if (e.getCause() instanceof NoSuchFileException missing) {
      return "there is no file " + missing.getMessage();
    }
    return String.valueOf(e.getMessage());
  }

  private static String deepest(Throwable e) {
    Throwable at = e;
    while (at.getCause() != null && at.getCause() != at) {
      at = at.getCause();
    }
    boolean bare = at instanceof FileSystemException;
    return bare ? "may not write " + at.getMessage() : String.valueOf(at.getMessage());
  }
}
