package goniograph.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.figure.Figure;
import goniograph.figure.FigurePng;
import goniograph.figure.Style;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.pose.Scene;
import goniograph.source.DiskFiles;
import goniograph.source.Files;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/**
 * All figures of the library on one picture for each style, to be looked at by people. They are
 * written anew with the guide; otherwise only their size is looked at: a place for every figure.
 */
class ContactSheetTest {
  private static final Files DOCS = DiskFiles.at(Path.of("docs"));
  private static final int COLUMNS = 4;
  private static final int WIDE = 560;
  private static final int HIGH = 330;
  private static final int NAME = 26;

  @Test
  void everyFigureHasItsPlace() throws IOException {
    List<Scene> scenes = new ArrayList<>();
    GuideDrawings.LIBRARY
        .figures()
        .forEach(
            (id, file) ->
                PoseReader.read(file, GuideDrawings.LIBRARY.figures(), finding -> {})
                    .forEach(pose -> scenes.add(PoseSolver.solve(pose).scene())));
    for (Style style : Style.values()) {
      String name = "figures-" + style.name().toLowerCase(Locale.ROOT) + ".png";
      if (Boolean.getBoolean("goniograph.write-docs")) {
        DOCS.write(name, png(scenes, style));
      }
      BufferedImage there =
          ImageIO.read(new ByteArrayInputStream(DOCS.bytes(name).orElse(new byte[0])));
      assertEquals(HIGH * rows(scenes.size()), there == null ? 0 : there.getHeight(), name);
    }
  }

  private static int rows(int figures) {
    return (figures + COLUMNS - 1) / COLUMNS;
  }

  private static byte[] png(List<Scene> scenes, Style style) throws IOException {
    BufferedImage sheet =
        new BufferedImage(COLUMNS * WIDE, HIGH * rows(scenes.size()), BufferedImage.TYPE_INT_RGB);
    Graphics2D paper = sheet.createGraphics();
    paper.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    paper.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    paper.setColor(Color.WHITE);
    paper.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
    paper.setColor(Color.BLACK);
    paper.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 18));
    for (int i = 0; i < scenes.size(); i++) {
      int x = WIDE * (i % COLUMNS);
      int y = HIGH * (i / COLUMNS);
      draw(paper, scenes.get(i), style, x, y);
    }
    paper.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(sheet, "png", out);
    return out.toByteArray();
  }

  private static void draw(Graphics2D paper, Scene scene, Style style, int x, int y)
      throws IOException {
    Figure figure = GuideDrawings.figure(scene, style);
    byte[] png = FigurePng.of(figure.svg("f", scene.id(), scene.id()), figure.width());
    BufferedImage drawn = ImageIO.read(new ByteArrayInputStream(png));
    double scale =
        Math.min((WIDE - 12.0) / drawn.getWidth(), (HIGH - NAME - 8.0) / drawn.getHeight());
    int width = (int) (scale * drawn.getWidth());
    int height = (int) (scale * drawn.getHeight());
    paper.drawImage(
        drawn.getScaledInstance(width, height, java.awt.Image.SCALE_AREA_AVERAGING),
        x + (WIDE - width) / 2,
        y + HIGH - NAME - height,
        null);
    paper.drawString(scene.id(), x + 8, y + HIGH - 8);
  }
}
