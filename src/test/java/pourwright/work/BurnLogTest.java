package pourwright.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

/** Logs of scales and thermometers as they come. */
class BurnLogTest {
  private static final Instant LIT = Instant.parse("2026-03-02T08:00:00Z");
  private static final BurnLog.Burnt FOUR_HOURS =
      new BurnLog.Burnt(LIT, Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC);

  private static BurnLog read(String text) {
    return BurnLog.read(text.getBytes(StandardCharsets.UTF_8), "mass_g", FOUR_HOURS);
  }

  @Test
  void minutesAndGramsWithoutAHead() {
    BurnLog log = read("0,402.5\n60,397.4\n\n240,382\n");
    assertThat(log.complaints()).isEmpty();
    assertThat(log.looks()).extracting(BurnTest.Look::minute).containsExactly(0.0, 60.0, 240.0);
    assertThat(log.looks()).extracting(BurnTest.Look::massG).containsExactly(402.5, 397.4, 382.0);
  }

  @Test
  void theHeadSaysWhichColumnIsWhat() {
    BurnLog log =
        read("\uFEFFTime;Weight [g];Temperature (°C);Battery\n0;402,5;21,0;98\n30;400;;98\n");
    assertThat(log.complaints()).isEmpty();
    assertThat(log.looks()).hasSize(2);
    assertThat(log.looks().get(0).massG()).isEqualTo(402.5);
    assertThat(log.looks().get(0).wallC()).isEqualTo(21.0);
    assertThat(log.looks().get(1).wallC()).isNull();
  }

  @Test
  void datesCountFromLightingAndWhatLiesOutsideIsLeftAside() {
    BurnLog log =
        read(
            "date,mass\n2026-03-02 07:59:00,403\n2026-03-02 08:00,402.5\n2026-03-02T09:30:00,395\n"
                + "2026-03-02 12:05:00,380\n");
    assertThat(log.complaints()).isEmpty();
    assertThat(log.looks()).extracting(BurnTest.Look::minute).containsExactly(0.0, 90.0);
    assertThat(log.aside()).isEqualTo(2);
  }

  @Test
  void ofALogEverySecondTheFirstOfEachMinuteIsKept() {
    StringBuilder lines = new StringBuilder("seconds\tmass_g\n");
    for (int s = 0; s <= 180; s++) {
      lines.append(s).append('\t').append(400 - s * 0.001).append('\n');
    }
    BurnLog log = read(lines.toString());
    assertThat(log.looks()).extracting(BurnTest.Look::minute).containsExactly(0.0, 1.0, 2.0, 3.0);
  }

  @Test
  void aBadLineIsNamedAndNothingIsRead() {
    BurnLog log = read("minute,mass_g\n0,402.5\n30,4OO.1\n60,-5\n");
    assertThat(log.complaints())
        .containsExactly(
            "Line 3 is not a time and a value: 30 4OO.1",
            "Line 4 is not a time and a value: 60 -5");
    assertThat(read("PK\0\1").complaints()).containsExactly("It is no text: save it as CSV.");
    assertThat(read("\n").complaints()).containsExactly("No line holds a time and a value.");
    assertThat(read("500,1\n").complaints())
        .containsExactly("Every line lies before it was lit or after it was out.");
  }
}
