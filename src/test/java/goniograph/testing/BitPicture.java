package goniograph.testing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.imageio.ImageIO;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/** A picture in black and white alone, as a copier sees it; asked in mm of the original. */
public final class BitPicture {
  private final BufferedImage picture;
  private final double dots;

  private BitPicture(BufferedImage picture, double dots) {
    this.picture = picture;
    this.dots = dots;
  }

  /**
   * A picture.
   *
   * @param width how wide it is on paper, mm
   */
  public static BitPicture of(byte[] png, double width) throws IOException {
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(png));
    return new BitPicture(picture, picture.getWidth() / width);
  }

  /**
   * A copy: smaller, scanned at some dots an inch, every dot black or white.
   *
   * @param size of the copy against what is copied
   * @param dotsAnInch of the copier
   */
  public BitPicture copied(double size, int dotsAnInch) {
    double mm = picture.getWidth() / dots; // in mm of the original, whatever was copied before
    double copiedDots = dotsAnInch / 25.4 * size;
    int width = (int) Math.round(mm * copiedDots);
    int height = (int) Math.round(picture.getHeight() / dots * copiedDots);
    BufferedImage grey = averaged(width, height);
    BufferedImage bits = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        boolean black = (grey.getRGB(x, y) & 255) < 140;
        bits.setRGB(x, y, (black ? Color.BLACK : Color.WHITE).getRGB());
      }
    }
    return new BitPicture(bits, copiedDots);
  }

  /** Every dot sees the mean of what lies under it. */
  private BufferedImage averaged(int width, int height) {
    BufferedImage grey = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = grey.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    g.drawImage(
        picture.getScaledInstance(width, height, java.awt.Image.SCALE_AREA_AVERAGING), 0, 0, null);
    g.dispose();
    return grey;
  }

  private boolean black(double x, double y) {
    int column = (int) Math.floor(x * dots);
    int row = (int) Math.floor(y * dots);
    return column >= 0
        && row >= 0
        && column < picture.getWidth()
        && row < picture.getHeight()
        && (picture.getRGB(column, row) & 255) < 128;
  }

  private interface Dot {
    void at(double x, double y);
  }

  private void eachDot(Geometry area, Dot dot) {
    IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(area);
    Envelope box = area.getEnvelopeInternal();
    for (double y = (Math.floor(box.getMinY() * dots) + .5) / dots;
        y < box.getMaxY();
        y += 1 / dots) {
      for (double x = (Math.floor(box.getMinX() * dots) + .5) / dots;
          x < box.getMaxX();
          x += 1 / dots) {
        if (locator.locate(new Coordinate(x, y)) != Location.EXTERIOR) {
          dot.at(x, y);
        }
      }
    }
  }

  /** The black share of an area. */
  public double black(Geometry area) {
    int[] count = new int[2];
    eachDot(area, (x, y) -> count[black(x, y) ? 1 : 0]++);
    return count[1] / Math.max(1.0, count[0] + count[1]);
  }

  /** How many pieces the black of an area falls into; specks of one or two dots are none. */
  public int pieces(Geometry area) {
    boolean[][] left = new boolean[picture.getHeight()][picture.getWidth()];
    eachDot(
        area,
        (x, y) -> {
          if (black(x, y)) {
            left[(int) Math.floor(y * dots)][(int) Math.floor(x * dots)] = true;
          }
        });
    int pieces = 0;
    for (int y = 0; y < left.length; y++) {
      for (int x = 0; x < left[y].length; x++) {
        pieces += left[y][x] && size(left, x, y) > 2 ? 1 : 0;
      }
    }
    return pieces;
  }

  /** The dots that hang together with one, which are taken out. */
  private static int size(boolean[][] left, int x, int y) {
    Deque<int[]> open = new ArrayDeque<>();
    open.add(new int[] {x, y});
    left[y][x] = false;
    int size = 0;
    while (!open.isEmpty()) {
      int[] at = open.remove();
      size++;
      for (int dy = -1; dy <= 1; dy++) {
        for (int dx = -1; dx <= 1; dx++) {
          int nx = at[0] + dx;
          int ny = at[1] + dy;
          if (ny >= 0 && ny < left.length && nx >= 0 && nx < left[ny].length && left[ny][nx]) {
            left[ny][nx] = false;
            open.add(new int[] {nx, ny});
          }
        }
      }
    }
    return size;
  }

  /** How many stretches of black a straight scan meets. */
  public int runs(Coordinate from, Coordinate to) {
    int steps = (int) Math.ceil(from.distance(to) * dots * 4);
    int runs = 0;
    boolean before = false;
    for (int i = 0; i <= steps; i++) {
      double t = i / (double) steps;
      boolean now = black(from.x + t * (to.x - from.x), from.y + t * (to.y - from.y));
      runs += now && !before ? 1 : 0;
      before = now;
    }
    return runs;
  }
}
