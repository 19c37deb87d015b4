package trammel.catalog;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trammel.catalog.AxleProfile.Layout;
import trammel.geometry.HardPoint;
import trammel.geometry.Mount.Carrier;
import trammel.quantity.Quantity;

/** Finds what a wheel carried in one way cannot have: a strut's top, an upper arm. */
final class LayoutCheck {
  private static final String WISHBONES =
      "Is it a double wishbone? Write layout: double-wishbone; ";
  private static final String STRUT = "Is it a strut? Write layout: strut; ";

  private final SurveyFaults faults;

  LayoutCheck(SurveyFaults faults) {
    this.faults = faults;
  }

  void check(AxleProfile axle) {
    Linkage linkage = axle.linkage();
    boolean strut = axle.layout() == Layout.STRUT;
    points(linkage.points(), strut);
    adjusters(axle, strut);
    if (strut) {
      upperArm(linkage);
    }
  }

  private void points(Map<HardPoint, SurveyPoint> points, boolean strut) {
    for (Map.Entry<HardPoint, SurveyPoint> entry : points.entrySet()) {
      HardPoint point = entry.getKey();
      if (strut ? point.ofUpperArm() : point.ofStrutAlone()) {
        faults.at(
            entry.getValue().out(),
            strut
                ? "is of an upper arm, which a strut corner has not; expected strut-top and"
                    + " strut-foot in its place"
                : "is of a strut, which this layout has not; expected the joints of its arms",
            (strut ? WISHBONES : STRUT) + "or take the " + point.words() + " out.");
        return;
      }
    }
  }

  private void upperArm(Linkage linkage) {
    for (Linkage.ArmRoom room : linkage.armRooms()) {
      faults.at(
          room.place(),
          "room about an upper arm, which a strut corner has not; expected no arm-rooms",
          WISHBONES + "or take it out.");
    }
    for (Quantity swing : List.of(linkage.upperSwing().limit(), linkage.upperSwing().atRest())) {
      if (swing.isKnown()) {
        faults.at(
            swing,
            "is a swing of an upper ball joint, which a strut corner has not; expected no"
                + " upper-swing",
            WISHBONES + "or take it out.");
        break;
      }
    }
    mount(linkage.spring());
    mount(linkage.damper());
    mount(linkage.sensor());
  }

  private void mount(Linkage.@Nullable MountProfile mount) {
    if (mount != null && mount.on() == Carrier.UPPER_ARM) {
      faults.at(
          mount.moving().out(),
          "is an end on an upper arm, which a strut corner has not; expected on: lower-arm or"
              + " upright",
          "What moves with the strut's tube is on the upright.");
    }
  }

  private void adjusters(AxleProfile axle, boolean strut) {
    boolean surveyed =
        axle.linkage().points().keySet().containsAll(axle.layout().joints())
            && !(axle.linkage().points().containsKey(HardPoint.KNUCKLE_UPPER_BOLT)
                && axle.linkage().points().containsKey(HardPoint.KNUCKLE_LOWER_BOLT));
    for (Adjuster adjuster : axle.adjusters()) {
      HardPoint point = adjuster.moves().points().get(0);
      if (strut ? point.ofUpperArm() : point.ofStrutAlone()) {
        faults.at(
            adjuster.place(),
            "an adjuster moves the "
                + adjuster.moves().words()
                + ", which "
                + (strut ? "a strut corner" : "this layout")
                + " has not; expected "
                + (strut
                    ? "the strut top, a bolt at the knuckle or a joint of the lower arm"
                    : "a joint of its arms"),
            (strut ? WISHBONES : STRUT) + "or correct what it moves.");
      } else if (adjuster.moves().atKnuckle() && surveyed) {
        faults.at(
            adjuster.place(),
            "an adjuster turns the knuckle about its bolts, and nobody says where they are;"
                + " expected both among the hard points",
            "Survey knuckle-upper-bolt and knuckle-lower-bolt; or take the adjuster out.");
      }
    }
  }
}
