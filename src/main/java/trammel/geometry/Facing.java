package trammel.geometry;

/** Which way something on an axle faces in side view: a pinion, a shackle's end, a wedge's. */
public enum Facing {
  FORWARD,
  REARWARD
}
