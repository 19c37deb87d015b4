package trammel.catalog;

/** The records of catalog files that only their reader sees. */
public final class CatalogFileTypes {
  private CatalogFileTypes() {}

  /** What {@code catalog.yaml} becomes. */
  public static Class<?> head() {
    return CatalogFiles.Head.class;
  }

  /** What a file of parts becomes. */
  public static Class<?> family() {
    return CatalogFiles.Family.class;
  }
}
