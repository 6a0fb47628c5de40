package goniograph.render.pdf;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.extend.FontResolver;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.FontResolverHelper;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver.FontDescription;
import com.openhtmltopdf.render.FSFont;
import goniograph.type.Face;
import goniograph.type.FaceOrder;
import goniograph.type.Family;
import goniograph.type.Weight;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The fonts of one document: from a style sheet's wish to the cluster fonts that go into the PDF.
 */
final class SheetFonts implements FontResolver {
  private static final int BOLD_FROM = 600;

  /** So high that the layout engine never thickens a face by a stroke of its own. */
  private static final int HEAVIEST = 1000;

  private final String language;
  private final Map<Face, FontDescription> descriptions = new HashMap<>();

  SheetFonts(String language) {
    this.language = language;
  }

  @Override
  public FSFont resolveFont(SharedContext context, FontSpecification wish) {
    return resolve(wish);
  }

  SheetFont resolve(FontSpecification wish) {
    FaceOrder order = FaceOrder.of(families(wish), weight(wish), language);
    List<FontDescription> all = order.faces().stream().map(this::description).toList();
    return new SheetFont(order, wish.size, all);
  }

  /** The document's font of a face, as the output device wants it. */
  FontDescription description(Face face) {
    return descriptions.computeIfAbsent(
        face, f -> new FontDescription(new ClusterFont(f), IdentValue.NORMAL, HEAVIEST));
  }

  private static List<Family> families(FontSpecification wish) {
    return wish.families == null
        ? List.of()
        : Arrays.stream(wish.families).map(Family::named).flatMap(Optional::stream).toList();
  }

  private static Weight weight(FontSpecification wish) {
    int weight = FontResolverHelper.convertWeightToInt(wish.fontWeight);
    return weight >= BOLD_FROM ? Weight.BOLD : Weight.REGULAR;
  }
}
