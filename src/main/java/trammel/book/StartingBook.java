package trammel.book;

import java.util.LinkedHashMap;
import java.util.Map;
import trammel.vocabulary.Vocabulary;

/** A book to begin with: a manifest and one commented sheet, which can be tried as it is. */
public final class StartingBook {
  private static final String MANIFEST =
      """
      # What this book says of itself. Its rules stand in sheets, NAME.rules.yaml.
      book: VEHICLE-seen            # its name: a to z, digits, hyphens
      title: What we have seen on the VEHICLE
      version: 1.0               # raise it when a rule changes
      author: who answers for it
      license: not for publication
      kind: shop
      vehicles: [VEHICLE]        # leave out for any vehicle
      vocabulary: VOCABULARY     # the names it asks of: trammel rules facts SHEET
      """;

  private static final String SHEET =
      """
      # One rule to change, then add others after it. Try it before it is in force:
      #   trammel rules try FOLDER         what each case comes to, and why
      #   trammel rules proofread FOLDER   what is wrong or doubtful
      #   trammel rules gaps FOLDER        what no case watches
      rules:
        - rule: clearance.mud-behind-front       # group.name, in no other book
          title: Twelve millimeters stay free behind the front wheel
          # conflict: does not fit. alignment: cannot be set. companion: something
          # more is needed. caution: fits, and someone must know.
          kind: caution
          # What the finding says; names of the fact's values stand in braces.
          says: "{gap} is left at the {station}; mud takes more than that."
          reason: Packed mud rubs the tire through on a long way home.
          source: common practice                # who says so, and where
          since: 1.0                             # the version that had it first
          about: clearance                       # one finding for each such fact
          where: { value: clearance.station, is: rear-mount }
          demands: { value: clearance.gap, at-least: 12 mm }
          # At least four: where it speaks, where it just does not, where it is too
          # close to call, and where a value is missing.
          cases:
            - case: eight millimeters are left
              clearance: { station: rear-mount, gap: 8 mm ± 2 mm }
              expects: caution
            - case: just enough is left
              clearance: { station: rear-mount, gap: 14.5 mm ± 2 mm }
              expects: nothing
            - case: too close to call
              clearance: { station: rear-mount, gap: 12 mm ± 5 mm }
              expects: possibly caution
            - case: nobody has measured
              clearance: { station: rear-mount, gap: absent }
              expects: possibly caution
            - case: at another place
              clearance: { station: arch, gap: 8 mm ± 2 mm }
              expects: nothing
      """;

  private StartingBook() {}

  /**
   * Its files by name.
   *
   * @param vehicle the name of the vehicle that it is for, as files write it
   */
  public static Map<String, String> files(String vehicle) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(
        "book.yaml",
        MANIFEST
            .replace("VEHICLE", vehicle)
            .replace("VOCABULARY", Vocabulary.version().toString()));
    files.put("seen.rules.yaml", SHEET);
    return files;
  }
}
