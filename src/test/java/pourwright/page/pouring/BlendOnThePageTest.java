package pourwright.page.pouring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Fragrance as the page blends it: the limit that binds is named. */
class BlendOnThePageTest extends PouringBench {
  /** By hand, invented sheets: fig binds at its certificate's 8.5 %, above its load of 8 %. */
  @Test
  void theLimitThatBindsIsNamedByEachFragrance() {
    String fig = visitor.page("/pouring/blend?pour=fig").text();
    assertThat(fig)
        .contains("the certificate of Fig loft 8.50 % binds; kept")
        .contains("what the wax holds 10.00 % kept")
        .contains("8.00 % on the total, 8.70 % on the wax")
        .contains("Fig loft 80.0 g 81.6 ml");
    assertThat(visitor.page("/pouring/blend?pour=fig&legal=7").text())
        .contains("the legal limit 7.00 % binds; exceeded")
        .contains("is above 7.00 %: the legal limit");
    assertThat(visitor.page("/pouring/blend?pour=fig&total=40&scale=1").text())
        .contains("more than 2 %");
    assertThat(visitor.page("/pouring/blend?pour=fig&total=-3").text())
        .contains("less than nothing");
    assertThat(
            visitor
                .page(
                    "/pouring/blend?pour=rain&scent_1=rain&grams_1=500&scent_2=hearth&grams_2=300")
                .text())
        .contains("in one melt 722.7 g");
    assertThat(visitor.page("/pouring/blend?pour=rain&scent_1=fig&grams_1=500").text())
        .contains("is poured in another wax");
  }

  @Test
  void aLegalLimitIsKeptWithTheFragranceAndBinds() {
    Map<String, String> limit = Map.of("fragrance", "scent-fig", "limit", "7.4", "by", "MB");
    visitor.post("/pouring/blend?pour=fig", "/pouring/blend/legal", limit);
    assertThat(visitor.page("/pouring/blend?pour=fig").text())
        .contains("Kept with Fig loft")
        .contains("the legal limit of Fig loft 7.40 % binds; exceeded")
        .contains("is above 7.40 %: the legal limit of Fig loft");
  }
}
