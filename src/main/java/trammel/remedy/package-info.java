/** What would settle a finding: parts of the catalog, each tried on the build and judged again. */
@org.jspecify.annotations.NullMarked
package trammel.remedy;
