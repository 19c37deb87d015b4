/** The command line: thin commands that read, ask the other packages, and print. */
@org.jspecify.annotations.NullMarked
package trammel.cli;
