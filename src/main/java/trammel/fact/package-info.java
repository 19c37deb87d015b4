/**
 * What rules judge: facts with their quantities. The names of these records and of their
 * components, in kebab case, are the vocabulary of every rule book.
 */
@org.jspecify.annotations.NullMarked
package trammel.fact;
