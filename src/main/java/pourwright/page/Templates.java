package pourwright.page;

import gg.jte.CodeResolver;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import gg.jte.resolve.DirectoryCodeResolver;
import java.nio.file.Path;
import java.util.Map;

/**
 * The templates, compiled with the program. With the system property {@code pourwright.templates}
 * naming a folder they are compiled from there as they are asked for, which suits work on them.
 */
final class Templates {
  private static final String FOLDER = "pourwright.templates";

  private final TemplateEngine engine;

  Templates() {
    String folder = System.getProperty(FOLDER, "");
    this.engine =
        folder.isEmpty()
            ? TemplateEngine.createPrecompiled(ContentType.Html)
            : fromFolder(Path.of(folder));
  }

  private static TemplateEngine fromFolder(Path folder) {
    CodeResolver resolver = new DirectoryCodeResolver(folder);
    Path classes = Path.of("target", "jte-" + ProcessHandle.current().pid());
    return TemplateEngine.create(
        resolver, classes, ContentType.Html, Templates.class.getClassLoader());
  }

  String render(String template, Map<String, Object> parameters) {
    StringOutput output = new StringOutput();
    engine.render(template, parameters, output);
    return output.toString();
  }
}
