@org.jspecify.annotations.NullMarked
package trammel.compare;
