package goniograph.render.pdf;

import com.openhtmltopdf.pdfboxout.PdfBoxFSFont;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver.FontDescription;
import goniograph.type.FaceOrder;
import java.util.List;

/** A font as the layout engine handles it: the faces to try and a size in its dots. */
final class SheetFont extends PdfBoxFSFont {
  private final FaceOrder order;

  SheetFont(FaceOrder order, float size, List<FontDescription> descriptions) {
    super(descriptions, size);
    this.order = order;
  }

  FaceOrder order() {
    return order;
  }
}
