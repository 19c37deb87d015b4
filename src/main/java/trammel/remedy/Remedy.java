package trammel.remedy;

import java.util.List;

/**
 * Something that would settle a finding.
 *
 * @param kind what sort of remedy it is: a setting or a part
 * @param text what to do, in a fitter's words
 * @param parts the part numbers it takes
 */
public record Remedy(String kind, String text, List<String> parts) {}
