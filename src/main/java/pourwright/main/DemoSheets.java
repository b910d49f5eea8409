package pourwright.main;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pourwright.hazard.HazardSheet;
import pourwright.hazard.SheetReader;

/** Invented safety data sheets of the demo's scents and waxes, read as pasted text is read. */
final class DemoSheets {
  private static final Map<String, String> SCENTS = scents();

  private DemoSheets() {}

  private static Map<String, String> scents() {
    Map<String, String> scents = new LinkedHashMap<>();
    scents.put(
        "scent-rain",
        """
        Linalool 78-70-6 5 - 10 % Skin Sens. 1B, Skin Irrit. 2, Eye Irrit. 2
        Linalyl acetate 115-95-7 1 - 5 % Skin Sens. 1B, Skin Irrit. 2, Eye Irrit. 2
        Citral 5392-40-5 0.1 - 1 % Skin Sens. 1, Skin Irrit. 2, Eye Irrit. 2
        """);
    scents.put(
        "scent-fig",
        """
        d-Limonene 5989-27-5 5 - 10 % Flam. Liq. 3, Skin Irrit. 2, Skin Sens. 1B, Asp. Tox. 1, Aquatic Acute 1, Aquatic Chronic 3, M (acute) = 1
        Polycyclic musk no CAS 5 - 10 % Aquatic Acute 1, Aquatic Chronic 1, M (acute) = 1, M (chronic) = 1
        """);
    scents.put(
        "scent-hearth",
        """
        Eugenol 97-53-0 10 - 15 % Skin Sens. 1B, Eye Irrit. 2
        Linalool 78-70-6 5 - 10 % Skin Sens. 1B, Skin Irrit. 2, Eye Irrit. 2
        Isoeugenol 97-54-1 0.1 % Acute Tox. 4 (oral), Skin Sens. 1A, Skin Sens. 1A: C ≥ 0.01 %
        """);
    return scents;
  }

  /** A sheet for each scent, and one that lists nothing for each wax. */
  static List<HazardSheet> all() {
    List<HazardSheet> sheets = new ArrayList<>();
    SCENTS.forEach(
        (material, text) ->
            sheets.add(
                HazardSheet.of(
                    material, "invented, demo 1", SheetReader.read(text).lines(), true)));
    for (String wax : List.of("soft-wax-a", "blend-b")) {
      sheets.add(new HazardSheet(wax, "invented, demo 1", List.of(), true));
    }
    return sheets;
  }
}
