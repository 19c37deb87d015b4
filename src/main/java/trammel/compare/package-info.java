/**
 * The finished vehicle against what was predicted of it: which prediction failed, which input would
 * explain it, and what measuring has taught.
 */
@org.jspecify.annotations.NullMarked
package trammel.compare;
