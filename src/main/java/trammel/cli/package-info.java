/** The commands: thin, they read, judge, report and print. */
@org.jspecify.annotations.NullMarked
package trammel.cli;
