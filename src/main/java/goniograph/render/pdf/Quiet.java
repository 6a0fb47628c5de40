package goniograph.render.pdf;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/** Keeps the layout engine from printing: what it has to say comes as data. */
final class Quiet implements XRLogger {
  private Quiet() {}

  static void layoutEngine() {
    XRLog.setLoggerImpl(new Quiet());
  }

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
