/**
 * From findings to a report: records that hold everything a page or a drawing needs, and the
 * writers that print them. The writers compute nothing.
 */
@org.jspecify.annotations.NullMarked
package trammel.report;
