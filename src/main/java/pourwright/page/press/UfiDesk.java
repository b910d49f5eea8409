package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.label.Ufi;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.quantity.OutOfRange;

/** Makes and checks the unique formula identifier of a mixture. */
final class UfiDesk {
  private static final Map<String, String> NAMES = Map.of("AT", "Austria", "FR", "France");

  void addTo(RoutesConfig routes) {
    routes.get("/press/ufi", this::show);
  }

  private void show(Context http) {
    Form form = Form.asked(http);
    String made = "";
    String checked = "";
    if (http.queryParam("vat") != null) {
      String vat = form.text("vat", "the VAT number");
      Optional<Long> formula = form.read("formula", "a whole number", Long::valueOf);
      if (!vat.isEmpty() && formula.isPresent()) {
        made = made(form, vat, formula.get());
      }
    } else if (http.queryParam("ufi") != null) {
      checked = checked(form.value("ufi"));
    }
    PressPages.UfiPage page = new PressPages.UfiPage(form, countries(), made, checked);
    if (form.ok()) {
      Show.page(http, "press/ufi.jte", page);
    } else {
      Show.again(http, "press/ufi.jte", page);
    }
  }

  private static String made(Form form, String vat, long formula) {
    try {
      return Ufi.of(form.value("country"), vat, formula).text();
    } catch (OutOfRange e) {
      String field = e.field().equals("formulation") ? "formula" : e.field();
      form.complain(field, e.sentence() + ": " + e.hint() + ".");
      return "";
    }
  }

  private static String checked(String typed) {
    try {
      return Ufi.read(typed).text() + " is well formed.";
    } catch (OutOfRange e) {
      return e.sentence() + ": " + e.hint() + ".";
    }
  }

  private static Map<String, String> countries() {
    Map<String, String> countries = new LinkedHashMap<>();
    new TreeMap<>(Ufi.countries())
        .forEach((code, form) -> countries.put(code, NAMES.getOrDefault(code, code) + ": " + form));
    return countries;
  }
}
