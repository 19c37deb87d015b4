package trammel.fact;

import java.util.List;
import trammel.subject.Subject;

/**
 * What the sheet alters that has to be set and looked at again after the work.
 *
 * @param arms whether an arm, a link, a bar or a strut that holds a wheel in its place changes
 * @param heights whether something that sets the vehicle's height changes or is set anew
 * @param steering whether something that sets the steering changes
 */
@Fact.Since("0.3")
public record AfterWork(
    Subject subject,
    Standing standing,
    List<String> parts,
    boolean arms,
    boolean heights,
    boolean steering)
    implements Fact {}
