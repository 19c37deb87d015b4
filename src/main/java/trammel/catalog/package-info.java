/** What is known of vehicles and parts: the records that catalog files are read into. */
@org.jspecify.annotations.NullMarked
package trammel.catalog;
