/**
 * From files to records: YAML becomes a tree in which every value knows its place, the tree becomes
 * records, and all problems of a file are told at once.
 *
 * <p>Three steps, each of which ends the reading if it finds a problem that the next could not get
 * past: bytes and characters, structure, and the binding of values to records. Nothing that was
 * read by halves leaves this package: {@link trammel.read.UnreadableFile} is thrown instead.
 */
@org.jspecify.annotations.NullMarked
package trammel.read;
