package trammel.read;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import trammel.quantity.Dimension;
import trammel.quantity.Instrument;

/**
 * What a quantity component is and how one comes by it. Every component that holds quantities, in a
 * list or map too, has one.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Measured {
  Dimension value();

  /** How it was come by where the file does not say: gives the uncertainty if no ± is written. */
  Instrument by() default Instrument.READ;

  /** How to measure it, as an instruction. */
  String how() default "";

  /** What a fitter would call it; the component's own name in words if not given. */
  String name() default "";

  /** The least value that can be meant, in the dimension's kept unit. */
  double min() default Double.NEGATIVE_INFINITY;

  /** The greatest value that can be meant, in the dimension's kept unit. */
  double max() default Double.POSITIVE_INFINITY;
}
