package pourwright.page.shelf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import pourwright.burn.Band;
import pourwright.burn.BurnResult;
import pourwright.burn.Frame;

/**
 * A finished simulation as bytes, so that the same question need not be computed again after the
 * studio was closed. Bytes of another form, or cut short, hold no simulation.
 *
 * @param id its number on the shelf
 * @param question all that was asked
 * @param title the same for people
 * @param besideName the tested candle that it was held against, or an empty string
 * @param besideTold what came of that
 * @param besideWarm wall and underside in degrees, or why not
 */
record RunFile(
    long id,
    String question,
    String title,
    List<Frame> frames,
    BurnResult result,
    @Nullable Band band,
    String besideName,
    String besideTold,
    String besideWarm) {
  private static final int FORM = 0x50573033;
  private static final int MOST = 100_000;

  /** The name under which the answer to a question is kept. */
  static String name(String question) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(question.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash, 0, 20);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(new GZIPOutputStream(bytes))) {
      out.writeInt(FORM);
      out.writeLong(id);
      out.writeUTF(question);
      out.writeUTF(title);
      out.writeInt(frames.size());
      for (Frame frame : frames) {
        out.writeDouble(frame.hours());
        out.writeDouble(frame.cellMm());
        table(out, frame.plan());
        table(out, frame.section());
        numbers(out, frame.tallMm());
      }
      result(out, result);
      out.writeBoolean(band != null);
      if (band != null) {
        numbers(out, band.hours());
        numbers(out, band.radiusLowMm());
        numbers(out, band.radiusHighMm());
        out.writeDouble(band.fullPoolLowH());
        out.writeDouble(band.fullPoolHighH());
      }
      out.writeUTF(besideName);
      out.writeUTF(besideTold);
      out.writeUTF(besideWarm);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  static Optional<RunFile> of(byte[] bytes) {
    try (DataInputStream in =
        new DataInputStream(new GZIPInputStream(new ByteArrayInputStream(bytes)))) {
      if (in.readInt() != FORM) {
        return Optional.empty();
      }
      long id = in.readLong();
      String question = in.readUTF();
      String title = in.readUTF();
      List<Frame> frames = new ArrayList<>();
      for (int left = count(in); left > 0; left--) {
        frames.add(new Frame(in.readDouble(), in.readDouble(), table(in), table(in), numbers(in)));
      }
      BurnResult result = result(in);
      Band band =
          in.readBoolean()
              ? new Band(numbers(in), numbers(in), numbers(in), in.readDouble(), in.readDouble())
              : null;
      String name = in.readUTF();
      String told = in.readUTF();
      String warm = in.readUTF();
      boolean whole = in.read() < 0; // only at the end is the checksum looked at
      return whole
          ? Optional.of(new RunFile(id, question, title, frames, result, band, name, told, warm))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static int count(DataInputStream in) throws IOException {
    int n = in.readInt();
    if (n < 0 || n > MOST) {
      throw new IOException("no simulation");
    }
    return n;
  }

  private static void numbers(DataOutputStream out, double[] values) throws IOException {
    out.writeInt(values.length);
    for (double value : values) {
      out.writeDouble(value);
    }
  }

  private static double[] numbers(DataInputStream in) throws IOException {
    double[] values = new double[count(in)];
    for (int i = 0; i < values.length; i++) {
      values[i] = in.readDouble();
    }
    return values;
  }

  private static void table(DataOutputStream out, float[][] rows) throws IOException {
    out.writeInt(rows.length);
    for (float[] row : rows) {
      out.writeInt(row.length);
      for (float value : row) {
        out.writeFloat(value);
      }
    }
  }

  private static float[][] table(DataInputStream in) throws IOException {
    float[][] rows = new float[count(in)][];
    for (int r = 0; r < rows.length; r++) {
      rows[r] = new float[count(in)];
      for (int i = 0; i < rows[r].length; i++) {
        rows[r][i] = in.readFloat();
      }
    }
    return rows;
  }

  private static void result(DataOutputStream out, BurnResult r) throws IOException {
    out.writeInt(r.pool().size());
    for (BurnResult.Pool p : r.pool()) {
      numbers(
          out,
          new double[] {
            p.hours(),
            p.equivalentRadiusMm(),
            p.lengthMm(),
            p.widthMm(),
            p.depthMm(),
            p.meltedSurface(),
            p.liquidG(),
            p.meanC(),
            p.wallC(),
            p.baseC()
          });
    }
    BurnResult.Balance b = r.balance();
    numbers(
        out,
        new double[] {
          r.fullPoolH(),
          r.wallMaxC(),
          r.baseMaxC(),
          r.remainingWaxG(),
          r.returnedShare(),
          b.heatInJ(),
          b.lostJ(),
          b.carriedJ(),
          b.storedJ(),
          b.massErrorFraction()
        });
    BurnResult.Effort e = r.effort();
    out.writeLong(e.cells());
    out.writeLong(e.sweeps());
    out.writeInt(e.symmetry());
    out.writeBoolean(e.axisymmetric());
    out.writeInt(r.warnings().size());
    for (String warning : r.warnings()) {
      out.writeUTF(warning);
    }
  }

  private static BurnResult result(DataInputStream in) throws IOException {
    List<BurnResult.Pool> pool = new ArrayList<>();
    for (int left = count(in); left > 0; left--) {
      double[] p = exactly(10, numbers(in));
      pool.add(new BurnResult.Pool(p[0], p[1], p[2], p[3], p[4], p[5], p[6], p[7], p[8], p[9]));
    }
    double[] v = exactly(10, numbers(in));
    BurnResult.Effort effort =
        new BurnResult.Effort(in.readLong(), in.readLong(), in.readInt(), in.readBoolean());
    List<String> warnings = new ArrayList<>();
    for (int left = count(in); left > 0; left--) {
      warnings.add(in.readUTF());
    }
    return new BurnResult(
        pool,
        v[0],
        v[1],
        v[2],
        v[3],
        v[4],
        new BurnResult.Balance(v[5], v[6], v[7], v[8], v[9]),
        effort,
        warnings);
  }

  private static double[] exactly(int n, double[] values) throws IOException {
    if (values.length != n) {
      throw new IOException("no simulation");
    }
    return values;
  }
}
