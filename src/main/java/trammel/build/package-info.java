/**
 * What a customer wants done: the records of build sheets and order files, and the build resolved
 * from them.
 */
@org.jspecify.annotations.NullMarked
package trammel.build;
