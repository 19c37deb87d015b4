package trammel.derive;

import static trammel.quantity.Dimension.LENGTH;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import trammel.catalog.Shape;
import trammel.catalog.SurveyPoint;
import trammel.geometry.Obstacle;
import trammel.quantity.Formula;
import trammel.quantity.Quantity;
import trammel.subject.Station.FixedTo;

/**
 * A surveyed shape as an obstacle, and back: how uncertain the survey leaves the point of it that a
 * tire comes closest to.
 */
record SurveyedShape(Shape shape, Obstacle obstacle, boolean onBody) {
  private static final Formula PLACE =
      new Formula("place of the obstacle", "along it, between surveyed points", "definition");

  /** Every value of a shape that a sweep needs. */
  static List<Quantity> needed(Shape shape) {
    if (shape instanceof Shape.Spot spot) {
      return coordinates(spot.at());
    }
    if (shape instanceof Shape.Edge edge) {
      return both(edge.from(), edge.to());
    }
    if (shape instanceof Shape.Block block) {
      return both(block.from(), block.to());
    }
    Shape.Plate plate = (Shape.Plate) shape;
    List<Quantity> all = new java.util.ArrayList<>(both(plate.center(), plate.toward()));
    all.add(plate.radius());
    return List.copyOf(all);
  }

  private static List<Quantity> coordinates(SurveyPoint point) {
    return List.of(point.fore(), point.out(), point.up());
  }

  private static List<Quantity> both(SurveyPoint one, SurveyPoint other) {
    return List.of(one.fore(), one.out(), one.up(), other.fore(), other.out(), other.up());
  }

  /**
   * A shape as an obstacle.
   *
   * @param raised how much a body lift raises what is fixed to the body (mm)
   */
  static SurveyedShape of(Shape shape, FixedTo fixedTo, double raised) {
    boolean onBody = fixedTo == FixedTo.BODY;
    Obstacle.FixedTo part =
        switch (fixedTo) {
          case BODY, FRAME -> Obstacle.FixedTo.BODY;
          case KNUCKLE -> Obstacle.FixedTo.KNUCKLE;
          case ARM -> Obstacle.FixedTo.ARM;
        };
    Vector3D up = new Vector3D(0, 0, onBody ? raised : 0);
    return new SurveyedShape(shape, new Obstacle(form(shape, up), part), onBody);
  }

  private static Obstacle.Shape form(Shape shape, Vector3D up) {
    if (shape instanceof Shape.Spot spot) {
      return new Obstacle.Point(vector(spot.at()).add(up));
    }
    if (shape instanceof Shape.Edge edge) {
      return new Obstacle.Segment(vector(edge.from()).add(up), vector(edge.to()).add(up));
    }
    if (shape instanceof Shape.Block block) {
      Vector3D half = vector(block.to()).subtract(vector(block.from())).scalarMultiply(0.5);
      return new Obstacle.Box(
          vector(block.from()).add(half).add(up),
          new Vector3D(half.getX(), 0, 0),
          new Vector3D(0, half.getY(), 0),
          new Vector3D(0, 0, half.getZ()));
    }
    Shape.Plate plate = (Shape.Plate) shape;
    Vector3D center = vector(plate.center());
    return new Obstacle.Disc(
        center.add(up),
        vector(plate.toward()).subtract(center).normalize(),
        plate.radius().value());
  }

  static boolean known(SurveyPoint point) {
    return point.fore().isKnown() && point.out().isKnown() && point.up().isKnown();
  }

  static Vector3D vector(SurveyPoint point) {
    return new Vector3D(point.fore().value(), point.out().value(), point.up().value());
  }

  /**
   * Where on the shape a surveyed point is, as three quantities.
   *
   * @param raisedPoint the point (mm), with what a body lift adds
   * @param raised that body lift
   */
  List<Quantity> place(Vector3D raisedPoint, Quantity raised) {
    if (!onBody || raised.value() == 0) {
      return place(raisedPoint);
    }
    List<Quantity> place = place(raisedPoint.subtract(new Vector3D(0, 0, raised.value())));
    return List.of(place.get(0), place.get(1), PLACE.linear(1, place.get(2), 1, raised));
  }

  /** The same as surveyed. */
  private List<Quantity> place(Vector3D closest) {
    if (shape instanceof Shape.Spot spot) {
      return coordinates(spot.at());
    }
    if (shape instanceof Shape.Edge edge) {
      Vector3D along = vector(edge.to()).subtract(vector(edge.from()));
      double length = along.getNormSq();
      double share =
          length == 0 ? 0 : closest.subtract(vector(edge.from())).dotProduct(along) / length;
      return between(edge.from(), edge.to(), share, share, share);
    }
    if (shape instanceof Shape.Block block) {
      return between(
          block.from(),
          block.to(),
          share(block.from().fore(), block.to().fore(), closest.getX()),
          share(block.from().out(), block.to().out(), closest.getY()),
          share(block.from().up(), block.to().up(), closest.getZ()));
    }
    Shape.Plate plate = (Shape.Plate) shape;
    Vector3D off = closest.subtract(vector(plate.center()));
    return List.of(
        offset(plate.center().fore(), off.getX()),
        offset(plate.center().out(), off.getY()),
        offset(plate.center().up(), off.getZ()));
  }

  private static double share(Quantity from, Quantity to, double value) {
    double whole = to.value() - from.value();
    return whole == 0 ? 0 : Math.max(0, Math.min(1, (value - from.value()) / whole));
  }

  private static List<Quantity> between(
      SurveyPoint from, SurveyPoint to, double fore, double out, double up) {
    return List.of(
        PLACE.linear(1 - fore, from.fore(), fore, to.fore()),
        PLACE.linear(1 - out, from.out(), out, to.out()),
        PLACE.linear(1 - up, from.up(), up, to.up()));
  }

  private static Quantity offset(Quantity center, double off) {
    return PLACE.of(LENGTH, center.value() + off, new double[] {1}, center);
  }
}
