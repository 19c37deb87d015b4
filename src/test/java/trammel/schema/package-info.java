/**
 * The JSON Schemas and the list of facts under {@code shared/schema}: made from the records, and
 * held against what the program reads and writes.
 */
@org.jspecify.annotations.NullMarked
package trammel.schema;
