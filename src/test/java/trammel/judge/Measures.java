package trammel.judge;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import trammel.catalog.VehicleProfile.VehicleClass;
import trammel.fact.LegalMeasures;
import trammel.fact.Standing;
import trammel.quantity.Absence;
import trammel.quantity.Decision;
import trammel.quantity.Dimension;
import trammel.quantity.Input;
import trammel.quantity.Instrument;
import trammel.quantity.Quantity;
import trammel.read.Measured;
import trammel.read.QuantityReader;
import trammel.read.Reading;
import trammel.subject.Subject;

/** What statutes measure, of which only what is stated is known; no added part is fitted. */
final class Measures {
  private static final Input BY_HAND = new Input("by hand", "", 1, "a test", Instrument.STATED);

  private Measures() {}

  static LegalMeasures of(VehicleClass vehicleClass, Map<String, String> stated) {
    RecordComponent[] components = LegalMeasures.class.getRecordComponents();
    Object[] values =
        Arrays.stream(components).map(one -> value(one, vehicleClass, stated)).toArray();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      Constructor<LegalMeasures> canonical = LegalMeasures.class.getConstructor(types);
      return canonical.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Object value(
      RecordComponent component, VehicleClass vehicleClass, Map<String, String> stated) {
    Class<?> type = component.getType();
    if (type == Quantity.class) {
      Dimension dimension = component.getAnnotation(Measured.class).value();
      String text = stated.get(FactMaker.kebab(component.getName()));
      if (text == null) {
        return Quantity.absent(
            dimension, new Absence(component.getName(), "not stated", Instrument.TAPE, ""));
      }
      Reading reading = QuantityReader.parse(text, dimension);
      return Quantity.read(
          component.getName(), dimension, reading.value(), reading.expanded().orElse(0), BY_HAND);
    } else if (type == Subject.class) {
      return Subject.VEHICLE;
    } else if (type == Standing.class) {
      return Standing.WORSE_OR_NEW;
    } else if (type == List.class) {
      return List.of();
    } else if (type == VehicleClass.class) {
      return vehicleClass;
    }
    return type == boolean.class ? true : Decision.NOT_MET;
  }
}
