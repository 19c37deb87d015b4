/**
 * Rule books that people write as sheets: read and checked, with every problem at its place, and
 * interpreted plainly, condition by condition. The rules engine reads the same records.
 */
@org.jspecify.annotations.NullMarked
package trammel.book;
