/** Where on a vehicle something is: axle, side, wheel, clearance station and pose. */
@org.jspecify.annotations.NullMarked
package trammel.subject;
