package pourwright.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** At, under and over each limit: composition in per cent, what it is, where the limit stands. */
class LimitsOfClassesTest {

  @ParameterizedTest(name = "{0} {1} is {2} ({3})")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          clp | x 5.000 Skin Corr. 1 | Skin Corr. 1, Eye Dam. 1 | check value 5, hand-worked public tests
          clp | x 4.999 Skin Corr. 1 | Skin Irrit. 2, Eye Dam. 1 | check values 5 and 8
          clp | x 1 Skin Corr. 1 | Skin Irrit. 2, Eye Irrit. 2 | E11
          clp | x 0.999 Skin Corr. 1 | none | check value 5
          clp | x 5.001 Skin Corr. 1B | Skin Corr. 1B, Eye Dam. 1 | CLP Table 3.2.3
          clp | a 3 Skin Corr. 1A; b 3 Skin Corr. 1B | Skin Corr. 1B, Eye Dam. 1 | CLP Table 3.2.3, subcategories
          clp | a 3 Skin Corr. 1A; b 2 Skin Corr. 1C | Skin Corr. 1C, Eye Dam. 1 | CLP Table 3.2.3, subcategories
          clp | a 3 Skin Corr. 1; b 3 Skin Corr. 1C | Skin Corr. 1C, Eye Dam. 1 | certain whatever a is, house
          clp | a 5 Skin Corr. 1; b 3 Skin Corr. 1C | Skin Corr. 1, Eye Dam. 1 | subcategory open, house
          clp | x 10.00 Skin Irrit. 2 | Skin Irrit. 2 | check value 6
          clp | x 9.99 Skin Irrit. 2 | none | check value 6
          clp | x 10.01 Skin Irrit. 2 | Skin Irrit. 2 | CLP Table 3.2.3
          clp | a 5 Skin Irrit. 2; b 5 Skin Irrit. 2 | Skin Irrit. 2 | CLP 3.2.3.3, sum
          clp | a 0.9 Skin Corr. 1B; b 1.5 Skin Irrit. 2 | none | E10, below the cut-off
          clp | a 1.0 Skin Corr. 1B; b 1.5 Skin Irrit. 2 | Skin Irrit. 2, Eye Irrit. 2 | CLP Table 3.2.3, 10 S1 + S2
          clp | a 0.6 Skin Corr. 1B + scl=Skin Corr. 1B:0.5 | Skin Corr. 1B, Eye Dam. 1 | CLP Article 10, specific limit
          clp | a 2.5 Skin Irrit. 2 + scl=Skin Irrit. 2:5; b 5 Skin Irrit. 2 | Skin Irrit. 2 | CLP 3.2.3.3.4, c/limit = 0.5 + 0.5
          clp | a 2.4 Skin Irrit. 2 + scl=Skin Irrit. 2:5; b 5 Skin Irrit. 2 | none | CLP 3.2.3.3.4, c/limit = 0.48 + 0.5
          ghs | a 4 Skin Corr. 1 + not-additive; b 5 Skin Irrit. 2; c 91 | Skin Corr. 1, Eye Dam. 1 | check value 4, UN E2 (3.2.3.3a)
          ghs | a 4 Skin Corr. 1; b 5 Skin Irrit. 2; c 91 | Skin Irrit. 2, Eye Dam. 1 | E2 with plain addition
          clp | a 3 Eye Irrit. 2 + not-additive | Eye Irrit. 2 | CLP Table 3.3.4, from memory
          clp | a 2.9 Eye Irrit. 2 + not-additive | none | CLP Table 3.3.4, from memory
          clp | x 3 Eye Dam. 1 | Eye Dam. 1 | check value 7
          clp | x 2.99 Eye Dam. 1 | Eye Irrit. 2 | check value 7
          clp | x 1 Eye Dam. 1 | Eye Irrit. 2 | E11
          clp | x 0.99 Eye Dam. 1 | none | check value 7
          clp | x 10 Eye Irrit. 2A | Eye Irrit. 2 | CLP Table 3.3.3
          clp | x 9.99 Eye Irrit. 2 | none | CLP Table 3.3.3
          clp | x 3 Skin Corr. 1 | Skin Irrit. 2, Eye Dam. 1 | check value 8
          clp | x 3 Skin Corr. 1 + Eye Dam. 1 | Skin Irrit. 2, Eye Dam. 1 | counted once, CLP 3.3.3.3
          clp | x 25 Aquatic Acute 1 + M1 | Aquatic Acute 1 | check value 9
          clp | x 24.99 Aquatic Acute 1 + M1 | none | check value 9
          clp | x 2.5 Aquatic Acute 1 + M10 | Aquatic Acute 1 | CLP Table 4.1.1
          clp | x 25 Aquatic Chronic 1 + M1 | Aquatic Chronic 1 | CLP Table 4.1.2
          clp | x 24.99 Aquatic Chronic 1 + M1 | Aquatic Chronic 2 | CLP Table 4.1.2
          clp | x 2.5 Aquatic Chronic 1 + M1 | Aquatic Chronic 2 | check value 10
          clp | x 2.49 Aquatic Chronic 1 + M1 | Aquatic Chronic 3 | CLP Table 4.1.2
          clp | x 0.25 Aquatic Chronic 1 + M1 | Aquatic Chronic 3 | check value 11
          clp | x 0.2499 Aquatic Chronic 1 + M1 | none | CLP Table 4.1.2
          clp | x 0.25 Aquatic Chronic 1 + M10 | Aquatic Chronic 2 | check value 12
          clp | x 25 Aquatic Chronic 2 | Aquatic Chronic 2 | CLP Table 4.1.2
          clp | x 24.99 Aquatic Chronic 2 | Aquatic Chronic 3 | CLP Table 4.1.2
          clp | x 2.5 Aquatic Chronic 2 | Aquatic Chronic 3 | CLP Table 4.1.2
          clp | x 25 Aquatic Chronic 3 | Aquatic Chronic 3 | CLP Table 4.1.2
          clp | x 24.99 Aquatic Chronic 3 | none | CLP Table 4.1.2
          clp | x 25 Aquatic Chronic 4 | Aquatic Chronic 4 | CLP Table 4.1.2
          clp | x 24.99 Aquatic Chronic 4 | none | CLP Table 4.1.2
          clp | a 2.4 Aquatic Chronic 1 + M1; b 2.0 Aquatic Chronic 2 | Aquatic Chronic 2 | E9
          clp | a 2.4 Aquatic Chronic 1 + M10; b 2.0 Aquatic Chronic 2 | Aquatic Chronic 2 | E9 with M 10
          ghs | a 0.01 Aquatic Acute 1 + Aquatic Chronic 1 + M10; b 1.0 Aquatic Acute 2 + Aquatic Chronic 2; c 25.0 Aquatic Chronic 4; d 73.99 | Aquatic Chronic 4 | check value 3, UN E3 (4.1a)
          ghs | a 2.5 Aquatic Acute 1 + M1 | Aquatic Acute 2 | UN GHS 4.1, ten times
          hazcom | a 60 Aquatic Chronic 1 + M1 | none | HazCom has no aquatic classes
          clp | x 1.0 Skin Sens. 1B | Skin Sens. 1B | check value 13
          clp | x 0.99 Skin Sens. 1B | none | check value 13
          clp | x 1.0 Skin Sens. 1 | Skin Sens. 1 | CLP Table 3.4.5
          clp | x 0.1 Skin Sens. 1A | Skin Sens. 1A | check value 14
          clp | x 0.09 Skin Sens. 1A | none | CLP Table 3.4.5
          hazcom | x 0.1 Skin Sens. 1 | Skin Sens. 1 | 29 CFR 1910.1200 A.4, from memory
          clp | x 0.1 Skin Sens. 1 | none | CLP Table 3.4.5
          clp | x 0.012 Skin Sens. 1A + scl=Skin Sens. 1A:0.01 | Skin Sens. 1A | check value 15
          clp | x 0.005 Skin Sens. 1A + scl=Skin Sens. 1A:0.01 | none | check value 15
          clp | x 1.0 Resp. Sens. 1 | Resp. Sens. 1 | CLP Table 3.4.5, solids and liquids
          clp | x 0.2 Resp. Sens. 1 | none | the gas figure must not be used
          clp | a 0.6 Skin Sens. 1B; b 0.6 Skin Sens. 1B | none | different substances are not added
          clp | x 0.1 Carc. 1B | Carc. 1B | check value 18
          clp | x 0.09 Carc. 1B | none | check value 18
          clp | x 1 Carc. 2 | Carc. 2 | CLP Table 3.6.2
          clp | x 0.99 Carc. 2 | none | CLP Table 3.6.2
          clp | x 0.3 Repr. 1B | Repr. 1B | check value 18
          clp | x 0.29 Repr. 1B | none | check value 18
          clp | x 3 Repr. 2 | Repr. 2 | CLP Table 3.7.2
          clp | x 2.99 Repr. 2 | none | CLP Table 3.7.2
          clp | x 0.3 Lact. | Lact. | CLP Table 3.7.2
          clp | x 0.1 Muta. 1B | Muta. 1B | CLP Table 3.5.2
          clp | x 1 Muta. 2 | Muta. 2 | CLP Table 3.5.2
          clp | x 0.99 Muta. 2 | none | CLP Table 3.5.2
          clp | x 10 STOT SE 1 | STOT SE 1 | CLP Table 3.8.3
          clp | x 2 STOT SE 1 | STOT SE 2 | check value 20
          clp | x 0.99 STOT SE 1 | none | CLP Table 3.8.3
          hazcom | x 2 STOT SE 1 | STOT SE 1 | check value 20, OSHA letter of 4 March 2014
          clp | x 10 STOT RE 2 | STOT RE 2 | CLP Table 3.9.4
          clp | x 9.99 STOT RE 2 | none | CLP Table 3.9.4
          clp | a 12 STOT SE 3 (H336); b 8 STOT SE 3 (H336) | STOT SE 3 | check value 21
          clp | a 12 STOT SE 3 (H336); b 7.9 STOT SE 3 (H336) | none | check value 21
          clp | a 12 STOT SE 3 (H336); b 8 STOT SE 3 (H335) | none | different effects are not added
          clp | x 7 Skin Corr. 1B; w 93 | Skin Corr. 1B, Eye Dam. 1 | E4 at the upper end of 3 to 7 %
          clp | x 4 Skin Corr. 1B; w 96 | Skin Irrit. 2, Eye Dam. 1 | E4 at the true 4 %
          """)
  void aMixtureIsWhatTheTablesSay(String regime, String written, String expected, String source) {
    assertThat(source).isNotBlank();
    List<String> classes =
        expected.equals("none") ? List.of() : Arrays.asList(expected.split(", ", -1));
    assertThat(Compositions.classify(Regime.of(regime), written).classes())
        .containsExactlyElementsOf(classes);
  }
}
