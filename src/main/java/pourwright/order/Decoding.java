package pourwright.order;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Bytes to text: a byte-order mark decides; without one UTF-16 by its zero bytes, then strict
 * UTF-8, then windows-1252.
 *
 * @param text without a byte-order mark
 * @param encoding its name, as it is shown
 */
record Decoding(String text, String encoding) {
  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final Map<String, Charset> KNOWN =
      Map.of(
          "utf-8", StandardCharsets.UTF_8,
          "utf-16le", StandardCharsets.UTF_16LE,
          "utf-16be", StandardCharsets.UTF_16BE,
          "windows-1252", WINDOWS);

  /** UTF-8 that was read as windows-1252 and written again, e.g. u-umlaut as A-tilde and ¼. */
  private static final Pattern TWICE =
      Pattern.compile(
          "[\u00c2-\u00df][\u0080-\u00bf\u2018-\u201e\u2020-\u2026\u2030\u0152-\u0178]");

  static Decoding of(byte[] bytes, @Nullable String chosen) throws Stop {
    if (chosen != null) {
      Charset charset = KNOWN.get(chosen.toLowerCase(Locale.ROOT));
      if (charset == null) {
        throw Stop.unreadable("'" + chosen + "' is not an encoding", "use " + KNOWN.keySet());
      }
      return checked(decode(bytes, 0, charset), chosen, true);
    }
    if (startsWith(bytes, 0xef, 0xbb, 0xbf)) {
      return checked(decode(bytes, 3, StandardCharsets.UTF_8), "UTF-8 with mark", false);
    }
    if (startsWith(bytes, 0xff, 0xfe)) {
      return checked(decode(bytes, 2, StandardCharsets.UTF_16LE), "UTF-16LE", false);
    }
    if (startsWith(bytes, 0xfe, 0xff)) {
      return checked(decode(bytes, 2, StandardCharsets.UTF_16BE), "UTF-16BE", false);
    }
    return withoutMark(bytes);
  }

  private static Decoding withoutMark(byte[] bytes) throws Stop {
    int even = 0;
    int odd = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == 0) {
        if (i % 2 == 0) {
          even++;
        } else {
          odd++;
        }
      }
    }
    int pairs = Math.max(1, bytes.length / 2);
    if (odd > pairs * 0.7 && even < pairs * 0.1) {
      return checked(decode(bytes, 0, StandardCharsets.UTF_16LE), "UTF-16LE", false);
    }
    if (even > pairs * 0.7 && odd < pairs * 0.1) {
      return checked(decode(bytes, 0, StandardCharsets.UTF_16BE), "UTF-16BE", false);
    }
    try {
      return checked(strictly(bytes, 0, StandardCharsets.UTF_8), "UTF-8", false);
    } catch (CharacterCodingException notUtf8) {
      return checked(decode(bytes, 0, WINDOWS), "windows-1252", false);
    }
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if ((bytes[i] & 0xff) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static String decode(byte[] bytes, int from, Charset charset) throws Stop {
    try {
      return strictly(bytes, from, charset);
    } catch (CharacterCodingException e) {
      throw Stop.unreadable(
          charset.equals(WINDOWS)
              ? "the letters fit neither UTF-8 nor windows-1252"
              : "the text is not " + charset.name() + " throughout",
          "export it again as CSV in UTF-8");
    }
  }

  private static String strictly(byte[] bytes, int from, Charset charset)
      throws CharacterCodingException {
    return charset
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT)
        .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
        .toString();
  }

  private static Decoding checked(String text, String encoding, boolean chosen) throws Stop {
    String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
    int nul = plain.indexOf('\0');
    if (nul >= 0) {
      long line = plain.substring(0, nul).chars().filter(c -> c == '\n').count() + 1;
      throw Stop.bad(null, line, "there is a zero byte in the text; export the file again");
    }
    if (plain.indexOf('\ufffd') >= 0) {
      throw Stop.unreadable(
          "the file holds replacement characters: letters were lost before it came here",
          "export it again as CSV in UTF-8");
    }
    if (!chosen && !encoding.equals("windows-1252") && TWICE.matcher(plain).find()) {
      throw Stop.ambiguous(
          new OrderImport.Question(
              "encoding",
              "letters look as if they had been written twice over, such as '"
                  + sample(plain)
                  + "'; export the file again, or say that it is meant so",
              List.of("UTF-8")));
    }
    return new Decoding(plain, encoding);
  }

  private static String sample(String text) {
    var match = TWICE.matcher(text);
    return match.find() ? match.group() : "";
  }
}
