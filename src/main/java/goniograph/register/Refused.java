package goniograph.register;

/** Something may not be signed or released; the message says why and what to do. */
public final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1;

  Refused(String message) {
    super(message);
  }
}
