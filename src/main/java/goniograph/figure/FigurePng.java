package goniograph.figure;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import org.apache.batik.transcoder.ErrorHandler;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** A drawing as PNG on white, at 300 dots an inch. */
public final class FigurePng {
  private static final double DOTS_A_MM = 300 / 25.4;

  private FigurePng() {}

  /**
   * The picture of an SVG written by this room.
   *
   * @param widthMm the drawing's width on paper
   * @throws IllegalArgumentException where the renderer reports anything at all
   */
  public static byte[] of(String svg, double widthMm) {
    PNGTranscoder transcoder = new PNGTranscoder();
    transcoder.setErrorHandler(new Strict());
    transcoder.addTranscodingHint(PNGTranscoder.KEY_WIDTH, (float) Math.round(widthMm * DOTS_A_MM));
    transcoder.addTranscodingHint(PNGTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    try {
      transcoder.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput(png));
    } catch (TranscoderException e) {
      throw new IllegalArgumentException("not SVG that can be drawn", e);
    }
    return png.toByteArray();
  }

  /** Every report is a failure: a drawing of ours gives no reason for one. */
  private static final class Strict implements ErrorHandler {
    @Override
    public void error(TranscoderException e) throws TranscoderException {
      throw e;
    }

    @Override
    public void fatalError(TranscoderException e) throws TranscoderException {
      throw e;
    }

    @Override
    public void warning(TranscoderException e) throws TranscoderException {
      throw e;
    }
  }
}
