/**
 * Where linkages put axles and wheels: pure functions over the mathematics library's field
 * elements.
 */
@org.jspecify.annotations.NullMarked
package trammel.geometry;
