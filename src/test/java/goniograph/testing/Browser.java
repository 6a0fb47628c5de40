package goniograph.testing;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.Media;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The system's Chromium without a window and without a network, for looking at pages as they are.
 */
public final class Browser implements AutoCloseable {
  private static final String RUN_AXE =
      """
      async () => {
        const found = await axe.run(document, {runOnly:
          ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']});
        return found.violations.map(v => v.id + ': ' + v.help + ' at '
          + v.nodes.map(n => n.target.join(' ')).join(', '));
      }
      """;

  private final Playwright playwright;
  private final com.microsoft.playwright.Browser chromium;

  private Browser(Playwright playwright, com.microsoft.playwright.Browser chromium) {
    this.playwright = playwright;
    this.chromium = chromium;
  }

  /** Starts the browser; where there is none the test is skipped, or fails where it must not be. */
  public static Browser start() {
    Programs.need("chromium", "chromium");
    Playwright playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    return new Browser(
        playwright,
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(chromium())
                    .setArgs(
                        List.of(
                            "--no-sandbox",
                            "--disable-gpu",
                            "--disable-quic",
                            "--no-first-run",
                            "--disable-background-networking",
                            "--disable-component-update",
                            "--disable-sync"))));
  }

  /**
   * What axe-core finds wrong with a page (WCAG 2.2 A and AA, best practice); empty for a sound
   * one.
   */
  public List<String> violations(String html, boolean dark) {
    try (BrowserContext context = context(1366, dark);
        Page page = context.newPage()) {
      page.setContent(html);
      page.evaluate(axe());
      List<String> found = new ArrayList<>();
      for (Object one : (List<?>) page.evaluate(RUN_AXE)) {
        found.add(String.valueOf(one));
      }
      return found;
    }
  }

  /** What a script says of a page in a window of this width. */
  public Object ask(String html, int width, String script) {
    try (BrowserContext context = context(width, false);
        Page page = context.newPage()) {
      page.setContent(html);
      return page.evaluate(script);
    }
  }

  /** What a page is looked at as. */
  public enum As {
    SCREEN,
    STILL_SCREEN,
    PRINT
  }

  /** Opens a page as one medium for a test to use. */
  public Page open(String html, As as) {
    Page page = context(1366, false).newPage();
    page.emulateMedia(
        new Page.EmulateMediaOptions()
            .setMedia(as == As.PRINT ? Media.PRINT : Media.SCREEN)
            .setReducedMotion(
                as == As.STILL_SCREEN ? ReducedMotion.REDUCE : ReducedMotion.NO_PREFERENCE));
    page.setContent(html);
    return page;
  }

  private BrowserContext context(int width, boolean dark) {
    return chromium.newContext(
        new com.microsoft.playwright.Browser.NewContextOptions()
            .setViewportSize(width, 900)
            .setOffline(true)
            .setColorScheme(
                dark
                    ? com.microsoft.playwright.options.ColorScheme.DARK
                    : com.microsoft.playwright.options.ColorScheme.LIGHT));
  }

  private static Path chromium() {
    for (String folder : System.getenv().getOrDefault("PATH", "").split(":")) {
      Path program = Path.of(folder, "chromium");
      if (Files.isExecutable(program)) {
        return program;
      }
    }
    throw new IllegalStateException("chromium is not on the path");
  }

  private static String axe() {
    try (InputStream in = Browser.class.getResourceAsStream("/goniograph/web/axe.min.js")) {
      if (in == null) {
        throw new IllegalStateException("axe-core is not on the class path");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    chromium.close();
    playwright.close();
  }
}
