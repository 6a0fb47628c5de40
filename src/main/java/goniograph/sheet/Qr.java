package goniograph.sheet;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A text as a QR code (ISO/IEC 18004), with its quiet zone. */
final class Qr {
  private Qr() {}

  /** Rows of modules, {@code #} black and {@code .} white; level Q survives a quarter of damage. */
  static List<String> rows(String text) {
    try {
      BitMatrix matrix =
          new QRCodeWriter()
              .encode(
                  text,
                  BarcodeFormat.QR_CODE,
                  0,
                  0,
                  Map.of(
                      EncodeHintType.ERROR_CORRECTION,
                      ErrorCorrectionLevel.Q,
                      EncodeHintType.MARGIN,
                      2));
      List<String> rows = new ArrayList<>();
      for (int y = 0; y < matrix.getHeight(); y++) {
        StringBuilder row = new StringBuilder();
        for (int x = 0; x < matrix.getWidth(); x++) {
          row.append(matrix.get(x, y) ? '#' : '.');
        }
        rows.add(row.toString());
      }
      return rows;
    } catch (WriterException tooLong) {
      throw new IllegalArgumentException(
          "no QR code holds " + text.length() + " characters", tooLong);
    }
  }
}
