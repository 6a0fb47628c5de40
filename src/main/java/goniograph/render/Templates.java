package goniograph.render;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The compiled templates and their styles, from the class path. */
final class Templates {
  private static final TemplateEngine ENGINE =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "goniograph.render.templates");

  private Templates() {}

  /** Fills a template in. */
  static String fill(String template, Map<String, Object> arguments) {
    StringOutput out = new StringOutput();
    ENGINE.render(template, arguments, out);
    return out.toString();
  }

  /** A style sheet of this room. */
  static String style(String name) {
    try (InputStream in = Templates.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the style " + name + " is not on the class path");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
