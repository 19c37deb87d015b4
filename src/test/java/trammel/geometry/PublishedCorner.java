package trammel.geometry;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.FieldVector3D;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.util.Binary64;
import org.hipparchus.util.Binary64Field;

/**
 * Rows of a reference file whose first cell says what they hold; a file's points are rows {@code
 * point[,corner],name,fore,out,up}.
 */
record PublishedCorner(Map<String, Vector3D> points) {

  /** The rows of one kind, without it. */
  static List<String[]> rows(String file, String kind) {
    try {
      return Files.readAllLines(Path.of("shared/reference", file)).stream()
          .filter(line -> line.startsWith(kind + ","))
          .map(line -> line.substring(kind.length() + 1).split(",", -1))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The points of one corner in a file, or of the only one. */
  static PublishedCorner of(String file, String kind) {
    Map<String, Vector3D> points = new HashMap<>();
    for (String[] row : rows(file, kind)) {
      points.put(
          row[0],
          new Vector3D(
              Double.parseDouble(row[1]), Double.parseDouble(row[2]), Double.parseDouble(row[3])));
    }
    return new PublishedCorner(points);
  }

  FieldVector3D<Binary64> at(String name) {
    Vector3D point = points.get(name);
    if (point == null) {
      throw new IllegalArgumentException("no point " + name);
    }
    return new FieldVector3D<>(Binary64Field.getInstance(), point);
  }

  HardPoints<Binary64> hardPoints(double camber, double toe) {
    Map<HardPoint, Vector3D> named = new EnumMap<>(HardPoint.class);
    for (HardPoint point : HardPoint.ofWishbones()) {
      named.put(point, at(point.name()).toVector3D());
    }
    return HardPoints.of(named, camber, toe);
  }
}
