package trammel.geometry;

/** Hard points that make no linkage: what is wrong with them, in a fitter's words. */
public final class OutOfReachException extends RuntimeException {
  private static final long serialVersionUID = 1;

  OutOfReachException(String message) {
    super(message);
  }
}
