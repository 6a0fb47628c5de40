package goniograph.render.pdf;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/** Settings of the layout engine that hold for the whole process. */
final class LayoutEngine {
  private static final String TRANSFORMER = "javax.xml.transform.TransformerFactory";
  private static final String JDK_TRANSFORMER =
      "com.sun.org.apache.xalan.internal.xsltc.trax.TransformerFactoryImpl";

  private LayoutEngine() {}

  /**
   * Keeps the engine from printing: what it has to say comes as data. And names the JDK's own XML
   * transformer, which the engine asks for once a document: unnamed it is searched for in every jar
   * of the class path, under locks; that took half the time of a page and kept two threads from
   * being faster than one.
   */
  static void prepare() {
    XRLog.setLoggerImpl(new Silence());
    if (System.getProperty(TRANSFORMER) == null) {
      System.setProperty(TRANSFORMER, JDK_TRANSFORMER);
    }
  }

  private static final class Silence implements XRLogger {
    @Override
    public void log(String where, Level level, String message) {}

    @Override
    public void log(String where, Level level, String message, Throwable thrown) {}

    @Override
    public void setLevel(String logger, Level level) {}

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
      return false;
    }
  }
}
