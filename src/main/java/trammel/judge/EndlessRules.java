package trammel.judge;

/** Rules that fire far more often, or longer, than any check needs: so there is no verdict. */
public final class EndlessRules extends RuntimeException {
  EndlessRules(String message) {
    super(message);
  }
}
