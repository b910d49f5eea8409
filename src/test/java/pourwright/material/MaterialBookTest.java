package pourwright.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pourwright.quantity.Origin;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;

/** The book of materials: typical values with their source, and no half-read file. */
class MaterialBookTest {
  private static final String HEADER =
      "code,kind,name,property,value,unit,relative_uncertainty,source\n";

  @Test
  void portlandCementHasTheParticleDensityOfTheHandbooks() {
    // source: PCA text as restated on secondary pages: 3.15 (3.10-3.25), loose 0.83-1.65 g/cm3
    Material cement = MaterialBook.typical().get("portland-cement");
    Sourced particle = cement.required(Property.PARTICLE_DENSITY_G_PER_ML);
    assertThat(particle.value()).isEqualTo(3.15);
    assertThat(particle.origin()).isEqualTo(Origin.TYPICAL);
    Sourced bulk = cement.required(Property.BULK_DENSITY_G_PER_ML);
    assertThat(bulk.value()).isBetween(0.83, 1.65);
    assertThat(bulk.relativeUncertainty()).isGreaterThan(0.15);
  }

  @Test
  void aPremixOfThirtyPercentCementHasTheDensityOfItsVolumes() {
    // source: absolute volumes, 1/(0.3/3.15 + 0.7/2.65) = 2.7825
    Material premix = MaterialBook.typical().get("premix-30-cement");
    assertThat(premix.required(Property.PARTICLE_DENSITY_G_PER_ML).value())
        .isCloseTo(1 / (0.3 / 3.15 + 0.7 / 2.65), org.assertj.core.api.Assertions.within(5e-5));
  }

  @Test
  void everyTypicalMaterialSaysWhereItsValuesAreFrom() {
    List<Material> all = MaterialBook.typical().all();
    assertThat(all).hasSizeGreaterThan(30);
    assertThat(all).allSatisfy(m -> assertThat(m.note()).isNotBlank());
    assertThat(all).extracting(Material::kind).contains(MaterialKind.WAX, MaterialKind.SEALER);
  }

  @Test
  void aMissingPropertyIsAskedForByName() {
    Material fume = MaterialBook.typical().get("silica-fume");
    assertThatThrownBy(() -> fume.required(Property.FLASH_POINT_C))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("Silica fume has no flash_point_c");
  }

  @Test
  void anUnreadableNumberStopsWithFileLineAndColumn() {
    String text =
        HEADER
            + "a-b,powder,A,particle_density_g_per_ml,3,g_per_ml,0.1,x\n"
            + "a-b,powder,A,bulk_density_g_per_ml,1.2.3,g_per_ml,0.1,x\n";
    assertThatThrownBy(() -> MaterialFile.read("my.csv", new StringReader(text)))
        .isInstanceOf(UnreadableData.class)
        .hasMessage("my.csv, line 3, column value: '1.2.3' is not a number");
  }

  @Test
  void aUnitThatThePropertyDoesNotSayStopsTheReading() {
    refused("a-b,powder,A,particle_density_g_per_ml,3,kg_per_m3,0.1,x", "line 2, column unit");
    refused("a-b,powder,A,particle_density_g_per_ml,300,g_per_ml,0.1,x", "line 2, column value");
    refused("a-b,powder,A,particle_density_g_per_ml,3,g_per_ml,0.1,", "line 2, column source");
    refused("a-b,stone,A,particle_density_g_per_ml,3,g_per_ml,0.1,x", "line 2, column kind");
    refused("A B,powder,A,particle_density_g_per_ml,3,g_per_ml,0.1,x", "line 2, column code");
    refused("a-b,powder,A,particle_density_g_per_ml,3,g_per_ml", "line 2, column 6");
    refused("a-b,powder,A,heaviness,3,1,0.1,x", "line 2, column value");
  }

  private static void refused(String line, String where) {
    assertThatThrownBy(() -> MaterialFile.read("my.csv", new StringReader(HEADER + line + "\n")))
        .isInstanceOf(UnreadableData.class)
        .hasMessageContaining(where);
  }

  @Test
  void aMaterialOfHerOwnTakesThePlaceOfATypicalOne() {
    Material mine =
        Material.of(
            "portland-cement",
            "My cement",
            MaterialKind.POWDER,
            Map.of("particle_density_g_per_ml", Sourced.measured(3.11, 0.01)));
    MaterialBook book = MaterialBook.typical().with(List.of(mine));
    assertThat(book.get("portland-cement").name()).isEqualTo("My cement");
    assertThatThrownBy(() -> book.get("moon-dust")).hasMessageContaining("moon-dust");
  }

  @Test
  void piecesAreRoundedUpAndGramsToTheMicrogram() {
    assertThat(UnitKind.COUNT.toSmall(2.1)).isEqualTo(3);
    assertThat(UnitKind.COUNT.toSmall(2.0)).isEqualTo(2);
    assertThat(UnitKind.MASS.toSmall(1.2345678)).isEqualTo(1_234_568);
  }
}
