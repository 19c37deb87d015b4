package trammel.build;

import java.util.Arrays;
import java.util.List;
import trammel.build.BuildSheet.FenderHeight;
import trammel.build.BuildSheet.Gap;
import trammel.build.BuildSheet.Waiver;
import trammel.quantity.Quantity;
import trammel.read.Place;
import trammel.read.Problems;
import trammel.read.QuantityWriter;
import trammel.read.Words;
import trammel.subject.Axle;
import trammel.subject.Position;
import trammel.subject.Station;
import trammel.subject.Subject;

/** Finds what contradicts itself in a build sheet. */
final class SheetCheck {
  private final Problems problems;

  SheetCheck(Problems problems) {
    this.problems = problems;
  }

  void check(BuildSheet sheet, Place noContactPlace) {
    sheet.asFound().noContact().forEach(subject -> station(subject, noContactPlace, "no-contact"));
    List<Gap> gaps = sheet.measurements().gaps();
    for (int i = 0; i < gaps.size(); i++) {
      for (Gap before : gaps.subList(0, i)) {
        agree(before, gaps.get(i));
        shrink(before, gaps.get(i));
        shrink(gaps.get(i), before);
      }
      touching(sheet, gaps.get(i));
      pose(gaps.get(i).at(), gaps.get(i).steer(), gaps.get(i).place());
    }
    List<FenderHeight> heights = sheet.measurements().heights();
    for (int i = 0; i < heights.size(); i++) {
      for (FenderHeight before : heights.subList(0, i)) {
        FenderHeight here = heights.get(i);
        if (before.at() == here.at() && before.state() == here.state()) {
          agree(before.height(), here.height(), before.place(), here.place());
        }
      }
    }
    sheet.waivers().forEach(this::waiver);
  }

  /** Whether the subject is {@code all}, or a place with one of the stations. */
  private void station(Subject subject, Place place, String key) {
    if (key.equals("no-contact") && subject.toString().equals("all")) {
      return;
    }
    List<String> wheres = Arrays.stream(BuildSheet.Where.values()).map(w -> w.toString()).toList();
    List<String> stations = Arrays.stream(Station.values()).map(Station::toString).toList();
    if (!wheres.contains(subject.where())) {
      problems.add(
          place,
          key
              + ": found the place "
              + Words.quoted(subject.where())
              + "; expected a wheel or an axle",
          Words.didYouMean(subject.where(), wheres, "Write for example front-left:rear-mount."));
    }
    if (!stations.contains(subject.detail())) {
      problems.add(
          place,
          key
              + ": found the station "
              + Words.quoted(subject.detail())
              + "; expected "
              + Words.anyOf(stations),
          Words.didYouMean(subject.detail(), stations, "Write for example front-left:rear-mount."));
    } else if (wheres.contains(subject.where()) && !subject.where().equals("all")) {
      Axle axle = subject.where().startsWith("rear") ? Axle.REAR : Axle.FRONT;
      List<String> here =
          Arrays.stream(Station.values())
              .filter(station -> station.belongsTo(axle))
              .map(Station::toString)
              .toList();
      if (!here.contains(subject.detail())) {
        problems.add(
            place,
            key + ": a " + axle + " wheel has no station " + Words.quoted(subject.detail()),
            "Its stations are " + String.join(", ", here) + ".");
      }
    }
  }

  private void agree(Gap before, Gap here) {
    if (before.at().equals(here.at())
        && before.steer() == here.steer()
        && before.height() == here.height()
        && before.state() == here.state()) {
      agree(before.gap(), here.gap(), before.place(), here.place());
    }
  }

  private void agree(Quantity before, Quantity here, Place placeBefore, Place place) {
    if (before.isKnown()
        && here.isKnown()
        && Math.abs(before.value() - here.value()) > before.expanded() + here.expanded()) {
      problems.add(
          place,
          "measured "
              + QuantityWriter.uncertain(here)
              + ", and at "
              + placeBefore
              + " the same was measured as "
              + QuantityWriter.uncertain(before),
          "Keep the one that was taken in the pose and state named, and remove the other.");
    }
  }

  /** A wheel that rises comes no farther from what is above it. */
  private void shrink(Gap rest, Gap bump) {
    boolean same =
        rest.at().equals(bump.at())
            && rest.steer() == bump.steer()
            && rest.state() == bump.state()
            && rest.height() == Station.Height.REST
            && bump.height() == Station.Height.BUMP_STOP
            && rest.gap().isKnown()
            && bump.gap().isKnown();
    if (same
        && bump.gap().value() - rest.gap().value()
            > bump.gap().expanded() + rest.gap().expanded()) {
      problems.add(
          bump.place(),
          "on the bump stop the gap is "
              + QuantityWriter.uncertain(bump.gap())
              + ", at rest ("
              + rest.place()
              + ") it is "
              + QuantityWriter.uncertain(rest.gap()),
          "A tire that rises comes closer: measure both again.");
    }
  }

  /** A gap is at a station of one wheel, and its pose must be one that its axle can take. */
  void pose(Subject at, Station.Steer steer, Place place) {
    station(at, place, "at");
    boolean wheel = Position.running().stream().anyMatch(p -> p.toString().equals(at.where()));
    if (!wheel) {
      problems.add(
          place,
          "at: found " + Words.quoted(at.where()) + "; expected one wheel, such as front-left",
          "Write the gap of each wheel by itself.");
    }
    if (at.where().startsWith("rear") && steer != Station.Steer.STRAIGHT) {
      problems.add(
          place, "steer: a rear wheel does not steer; found " + steer, "Write steer: straight.");
    }
  }

  private void touching(BuildSheet sheet, Gap gap) {
    boolean soundHere =
        sheet.asFound().noContact().stream().anyMatch(subject -> covers(subject, gap.at()));
    if (soundHere
        && gap.state() == BuildSheet.State.AS_FOUND
        && gap.gap().isKnown()
        && gap.gap().value() < -gap.gap().expanded()) {
      problems.add(
          gap.place(),
          gap.at()
              + " is said to have no contact, and its gap is "
              + QuantityWriter.uncertain(gap.gap()),
          "Measure it again, or take it out of no-contact.");
    }
  }

  /** Whether a no-contact entry speaks of a wheel's station. */
  static boolean covers(Subject entry, Subject station) {
    if (entry.where().equals("all")) {
      return entry.detail().isEmpty() || entry.detail().equals(station.detail());
    }
    if (!entry.detail().equals(station.detail())) {
      return false;
    }
    return Arrays.stream(Position.values())
        .anyMatch(
            position ->
                position.toString().equals(station.where())
                    && (entry.where().equals(station.where())
                        || position
                            .axle()
                            .map(axle -> axle.toString().equals(entry.where()))
                            .orElse(false)));
  }

  private void waiver(Waiver waiver) {
    if (!waiver.finding().matches("[a-z-]+[.][a-z0-9-]+@\\S+")) {
      problems.add(
          waiver.place(),
          "finding: found " + Words.quoted(waiver.finding()) + "; expected a finding's identity",
          "Copy it from the report: clearance.arch@front-left:arch.");
    }
  }
}
