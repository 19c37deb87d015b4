package trammel.read;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What files call it: a record among the variants of a sealed interface, or a component whose key
 * is no Java name. Without it the Java name counts, in kebab case.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.RECORD_COMPONENT})
public @interface Named {
  String value();
}
