package goniograph.source;

/** The changes of one folder's files, as they come. Changes made before are not told. */
public interface Changes extends AutoCloseable {

  /**
   * Waits until files have changed and then stood still for a moment, as an editor may write one in
   * several steps. A change between two calls is told by the next.
   *
   * @return false where the thread was interrupted and nothing more shall be waited for
   */
  boolean await();

  @Override
  void close();
}
